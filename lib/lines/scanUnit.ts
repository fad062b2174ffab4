/** One word of a unit, with the digits that belong to it ("ft2", "inH2O"). */
const WORD = /(?:[\p{L}°µ][\p{L}\p{Nd}°]*\.?|[%"'′″$])/uy;
const POWER = /\s*\^\s*[-−]?\d{1,2}(?![\d.])|⁻?[¹²³]/uy;
const SIGN = /\s*[/*·×]\s*/uy;
const BRACKET = /\([^()]{1,40}\)/uy;

/** What a unit is asked of: whether a text is one, and whether a function with its bracket or a line stands at a character. */
export interface UnitAsk {
  readonly isUnit: (text: string) => boolean;
  readonly isCall: (at: number) => boolean;
  /** End of a line's name that stands at a character. */
  readonly lineTo: (at: number) => number | undefined;
}

/**
 * The longest unit that stands in a formula at a character, blanks skipped: `min`, `fl oz/min`, `lb / gal`, `BTU/(h ft2)`.
 * @param text The formula.
 * @param from Character to look at, from 0: the one after a number.
 * @param ask What is a unit, and what a function.
 * @returns The unit as it is asked for, and the character after it; undefined where none stands.
 * @example scanUnit("30 min * 2", 2, ask) // { unit: "min", to: 6 }
 */
export function scanUnit(text: string, from: number, ask: UnitAsk): { unit: string; to: number } | undefined {
  const start = skip(text, from);
  let to = longestFactor(text, start, start, ask);
  if (to === undefined) return undefined;
  // A unit has few factors: the limit keeps the work in bounds for any text.
  for (let factors = 0; factors < 6; factors++) {
    const sign = match(SIGN, text, to);
    if (sign === "") break;
    const next = longestFactor(text, start, to + sign.length, ask);
    if (next === undefined) break;
    to = next;
  }
  return { unit: plainUnit(text.slice(start, to)), to };
}

/** End of the longest unit that begins at `start` and whose last factor begins at `from`. */
function longestFactor(text: string, start: number, from: number, ask: UnitAsk): number | undefined {
  const bracket = from > start ? match(BRACKET, text, from) : "";
  if (bracket !== "")
    return ask.isUnit(plainUnit(text.slice(start, from + bracket.length))) ? from + bracket.length : undefined;
  if (from > start && ask.isCall(from)) return undefined;
  const ends: number[] = [];
  for (let at = from; ends.length < 6; ) {
    const word = match(WORD, text, at);
    if (word === "") break;
    ends.push(at + word.length);
    if (word.endsWith(".")) ends.push(at + word.length - 1);
    at = skip(text, at + word.length);
  }
  // Behind a sign a line may stand as well, and the longest name wins: "lb / min of firing".
  const lineTo = from > start ? (ask.lineTo(from) ?? 0) : 0;
  for (const end of ends.sort((a, b) => b - a)) {
    if (end <= lineTo) return undefined;
    const power = match(POWER, text, end);
    if (power !== "" && ask.isUnit(plainUnit(text.slice(start, end + power.length)))) return end + power.length;
    if (ask.isUnit(plainUnit(text.slice(start, end)))) return end;
  }
  return undefined;
}

function plainUnit(text: string): string {
  return text
    .replace(/\s*([/*^])\s*/gu, "$1")
    .replace(/\s*[·×]\s*/gu, "*")
    .replace(/−/gu, "-")
    .replace(/\s+/gu, " ");
}

function match(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? "";
}

function skip(text: string, from: number): number {
  let at = from;
  while (/\s/u.test(text.charAt(at))) at++;
  return at;
}
