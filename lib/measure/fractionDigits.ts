import { digits } from "./digits.ts";

const glyphs = new Map([
  ["1/2", "½"],
  ["1/4", "¼"],
  ["3/4", "¾"],
  ["1/8", "⅛"],
  ["3/8", "⅜"],
  ["5/8", "⅝"],
  ["7/8", "⅞"],
]);

/**
 * A number as whole and fraction, to the nearest 1/`parts` in lowest terms: "3½", "5 3/16", "¾", "4".
 *
 * @param parts a power of 2 up to 64
 * @throws RangeError for other parts.
 * @example
 * fractionDigits(3.5, 16) // "3½"
 */
export function fractionDigits(number: number, parts: number): string {
  if (![2, 4, 8, 16, 32, 64].includes(parts))
    throw new RangeError(`invalid parts: ${parts}; 2, 4, 8, 16, 32 or 64 expected`);
  const all = Math.round(Math.abs(number) * parts);
  const whole = Math.floor(all / parts);
  let top = all % parts;
  let bottom = parts;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const sign = number < 0 && all > 0 ? "\u2212" : "";
  if (top === 0) return sign + digits(whole, 0);
  const fraction = glyphs.get(`${top}/${bottom}`);
  const shown = whole === 0 ? "" : digits(whole, 0);
  if (fraction) return sign + shown + fraction;
  return `${sign}${shown}${whole === 0 ? "" : " "}${top}/${bottom}`;
}
