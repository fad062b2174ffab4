import { digits } from "../measure/digits.ts";

const minus = "\u2212";

/**
 * A number as a figure shows it: true minus, thousands grouped as the system does, at most `places` decimals and no
 * idle zeros. Throws a RangeError for a number that is not finite.
 * @example decimal(-1234.5, 2) // "−1,234.5"
 */
export function decimal(value: number, places = 0, system: "US" | "metric" = "US"): string {
  if (!Number.isFinite(value)) throw new RangeError(`invalid number for a figure: ${value}; a finite number`);
  const text = digits(value, places, system);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/**
 * Decimals that show `value` to three figures or so: 0 from 100 up, 1 from 10 up, 2 from 1 up …, at most 4.
 * @example decimal(4.567, figuresFor(4.567)) // "4.57"
 */
export function figuresFor(value: number): number {
  const size = Math.abs(value);
  if (!(size > 0)) return 0;
  return Math.min(4, Math.max(0, 2 - Math.floor(Math.log10(size))));
}

/**
 * Seconds as minutes and seconds, with a true minus before the start.
 * @example minutesSeconds(-95) // "−1:35"
 */
export function minutesSeconds(seconds: number): string {
  const whole = Math.round(Math.abs(seconds));
  const text = `${decimal(Math.floor(whole / 60))}:${String(whole % 60).padStart(2, "0")}`;
  return seconds < 0 && whole > 0 ? minus + text : text;
}

/**
 * A number and its noun, the number in words up to twelve.
 * @example counted(1, "reading") // "one reading"
 */
export function counted(count: number, one: string, many = `${one}s`): string {
  const words = "no one two three four five six seven eight nine ten eleven twelve".split(" ");
  return `${words[count] ?? decimal(count)} ${count === 1 ? one : many}`;
}

/**
 * So many of a hundred holds, whole: what nearly all do is never said to be all, nor what hardly any do to be none.
 * @example holdsWords(99.8) // "over 99"
 */
export function holdsWords(inHundred: number): string {
  if (inHundred >= 99.5) return "over 99";
  return inHundred < 0.5 ? "under 1" : decimal(inHundred, 0);
}

/**
 * Text cut to at most `length` characters at a word's end, with an ellipsis.
 * @example shortened("burner down to three quarters", 14) // "burner down…"
 */
export function shortened(text: string, length: number): string {
  const plain = text.replace(/\s+/g, " ").trim();
  const characters = [...plain];
  if (characters.length <= length) return plain;
  const cut = characters.slice(0, length - 1).join("");
  const space = cut.lastIndexOf(" ");
  return `${(space > length / 2 ? cut.slice(0, space) : cut).trimEnd()}…`;
}
