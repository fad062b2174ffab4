import { divideDimensions, multiplyDimensions, powerDimension } from "./dimension.ts";
import { kindFacts } from "./kinds.ts";
import { remembering } from "./remembering.ts";
import type { Kind, Unit } from "./types.ts";
import { namedUnit } from "./unitNames.ts";

const superscripts = new Map([
  ["²", 2],
  ["³", 3],
]);
const number: Unit = { symbol: "", dimension: {}, factor: 1 };
const longest = 60;

interface Part {
  readonly unit: Unit;
  readonly end: number;
}

const raisedDigits = new Map([
  [2, "²"],
  [3, "³"],
]);

function scaled(unit: Unit, exponent: number): Unit {
  if (exponent === 1) return unit;
  const raised = raisedDigits.get(exponent) ?? `^${exponent}`;
  const symbol = unit.symbol === "" ? "" : `${/[ /]/u.test(unit.symbol) ? `(${unit.symbol})` : unit.symbol}${raised}`;
  return { symbol, dimension: powerDimension(unit.dimension, exponent), factor: unit.factor ** exponent };
}

function times(a: Unit, b: Unit): Unit {
  const symbol = a.symbol === "" || b.symbol === "" ? a.symbol + b.symbol : `${a.symbol} ${b.symbol}`;
  return { symbol, dimension: multiplyDimensions(a.dimension, b.dimension), factor: a.factor * b.factor };
}

function over(a: Unit, b: Unit): Unit {
  const below = b.symbol.includes(" ") && compound(b.symbol) ? `(${b.symbol})` : b.symbol;
  const symbol = `${a.symbol === "" ? "1" : a.symbol}/${below}`;
  return { symbol, dimension: divideDimensions(a.dimension, b.dimension), factor: a.factor / b.factor };
}

/** "h ft²" is two units, "fl oz" is one. */
function compound(symbol: string): boolean {
  return namedUnit(symbol) === undefined;
}

function exponentAt(text: string, at: number): { exponent: number; end: number } {
  const raised = superscripts.get(text.charAt(at));
  if (raised) return { exponent: raised, end: at + 1 };
  const found =
    /^\s*(?:\^|\*\*)\s*([-−]?\d{1,2})/u.exec(text.slice(at)) ?? /^([23])(?![\d\p{L}])/u.exec(text.slice(at));
  if (!found?.[1]) return { exponent: 1, end: at };
  return { exponent: Number(found[1].replace("−", "-")), end: at + found[0].length };
}

function skipBlanks(text: string, at: number): number {
  let end = at;
  while (/\s/u.test(text.charAt(end)) && end < text.length) end += 1;
  return end;
}

/** The longest name of the table that starts here. */
function nameAt(text: string, at: number, kind: Kind): Part | undefined {
  const stop = /[/*·()^]|\sper\s/u.exec(text.slice(at))?.index ?? text.length - at;
  for (let end = Math.min(at + stop, at + 30); end > at; end -= 1) {
    const wordGoesOn = /\p{L}/u.test(text.charAt(end)) && /\p{L}/u.test(text.charAt(end - 1));
    if (wordGoesOn || /\s/u.test(text.charAt(end - 1))) continue;
    const unit = namedUnit(text.slice(at, end), kind);
    if (unit) return { unit, end };
  }
  return undefined;
}

function factorAt(text: string, at: number, kind: Kind): Part | undefined {
  const start = skipBlanks(text, at);
  let part: Part | undefined;
  if (text.charAt(start) === "(") {
    const inner = quotientAt(text, start + 1, kind);
    if (!inner) return undefined;
    const close = skipBlanks(text, inner.end);
    if (text.charAt(close) !== ")") return undefined;
    part = { unit: inner.unit, end: close + 1 };
  } else if (start === 0 && /^1\s*(?:\/|per\s)/iu.test(text)) part = { unit: number, end: start + 1 };
  else part = nameAt(text, start, kind);
  if (!part) return undefined;
  const { exponent, end } = exponentAt(text, part.end);
  return { unit: scaled(part.unit, exponent), end };
}

/** Units side by side, or joined by a dot, belong together: "BTU/h ft2" is BTU for each h and ft². */
function productAt(text: string, at: number, kind: Kind): Part | undefined {
  let part = factorAt(text, at, kind);
  while (part) {
    let next = skipBlanks(text, part.end);
    const operator = text.charAt(next);
    const joined = operator === "*" || operator === "·" || operator === "⋅";
    if (joined) next += 1;
    if (!joined && (next >= text.length || operator === "/" || operator === ")" || /^per\s/iu.test(text.slice(next))))
      return part;
    const more = factorAt(text, next, kind);
    if (!more) return undefined;
    part = { unit: times(part.unit, more.unit), end: more.end };
  }
  return undefined;
}

function quotientAt(text: string, at: number, kind: Kind): Part | undefined {
  let part = productAt(text, at, kind);
  while (part) {
    const next = skipBlanks(text, part.end);
    const per = /^(?:\/|per(?=\s))/iu.exec(text.slice(next));
    if (!per) return part;
    const more = productAt(text, next + per[0].length, kind);
    if (!more) return undefined;
    part = { unit: over(part.unit, more.unit), end: more.end };
  }
  return undefined;
}

const found = remembering((text: string, kind: Kind): Unit | undefined => {
  const point = kindFacts(kind).dimension.point === true;
  const named = namedUnit(text, kind);
  if (named) {
    if (named.offset === undefined) return named;
    const { symbol, dimension, factor, offset } = named;
    return point ? { symbol, dimension: { ...dimension, point: true }, factor, offset } : { symbol, dimension, factor };
  }
  const part = quotientAt(text, 0, kind);
  if (!part || skipBlanks(text, part.end) !== text.length) return undefined;
  const { symbol, dimension, factor } = part.unit;
  return { symbol, dimension, factor };
});

/**
 * The unit that a text names, or undefined. Names and many of their spellings, products ("kW h"), quotients
 * ("fl oz/min", "lb per gal"), powers ("ft2", "ft^2", "ft²") and parentheses ("BTU/(h ft2)"). Units side by side bind
 * tighter than the stroke. `kind` settles spellings that mean two things (`namedUnit`), and °F, °C and K are points
 * on a scale when it is "temperature", else differences.
 *
 * @param text at most 60 characters
 * @example
 * findUnit("fl. oz. per minute")?.factor // 4.928921593749998e-7 (m³/s)
 */
export function findUnit(text: string, kind: Kind = "number"): Unit | undefined {
  const trimmed = text.trim();
  return trimmed === "" || trimmed.length > longest ? undefined : found(trimmed, kind);
}

/**
 * As `findUnit`, for texts that must be units.
 *
 * @throws RangeError for a text that is none.
 * @example
 * unit("lb").factor // 0.45359237
 */
export function unit(text: string, kind: Kind = "number"): Unit {
  if (text === "") return number;
  const found = findUnit(text, kind);
  if (!found)
    throw new RangeError(`unknown unit: ${text}; a unit of the table, or several with / * and powers, expected`);
  return found;
}
