export interface NumberRead {
  readonly number: number;
  /** Where the number ends in the text. */
  readonly end: number;
  /** Written with a stroke or as ½: "3 1/2", "¾". */
  readonly fraction: boolean;
}

export interface NumberOptions {
  /** Read "1,234" as 1.234 and "1.234" as 1234, as much of the world outside the US writes. */
  readonly decimalComma?: boolean;
}

const blank = "[ \\u00a0\\u2009\\u202f]";
const numeral = new RegExp(`^(?:\\d+(?:[.,]\\d+|${blank}\\d{3}(?!\\d|\\s*[/⁄]))*\\.?|[.,]\\d+)`, "u");
const glyph = "[\\u00bc-\\u00be\\u2150-\\u215e]";
const mixedGlyph = new RegExp(`^(\\d{1,9})\\s?(${glyph})`, "u");
const loneGlyph = new RegExp(`^()(${glyph})`, "u");
const mixed = /^(\d{1,9})(?:\s+|-)(\d{1,9})\s?[/⁄]\s?(\d{1,9})(?![\d.,])/u;
const stroke = /^()(\d{1,9})\s?[/⁄]\s?(\d{1,9})(?![\d.,])/u;

function inGroups(digits: string, mark: string): boolean {
  const [first = "", ...rest] = digits.split(mark);
  return /^[1-9]\d{0,2}$/u.test(first) && rest.every((group) => group.length === 3);
}

/** Digits with commas and dots as a number, NaN where the marks make no sense. */
function plainNumber(text: string, decimalComma: boolean): number {
  if (/\s/u.test(text) && !/^\d{1,3}(?:\s\d{3})+(?:[.,]\d*)?$/u.test(text)) return Number.NaN;
  const digits = text.replace(/\s/gu, "");
  const commas = digits.split(",").length - 1;
  const dots = digits.split(".").length - 1;
  const decimal = decimalMark(digits, commas, dots, decimalComma);
  const group = decimal === "," ? "." : ",";
  const [whole = "", ...fraction] = decimal === "" ? [digits] : digits.split(decimal);
  if (fraction.length > 1 || fraction.some((part) => part.includes(group))) return Number.NaN;
  const grouped = whole.includes(".") ? "." : ",";
  if (whole.includes(grouped) && !inGroups(whole, grouped)) return Number.NaN;
  return Number(`${whole.replaceAll(grouped, "") || "0"}.${fraction[0] || "0"}`);
}

function decimalMark(digits: string, commas: number, dots: number, decimalComma: boolean): "," | "." | "" {
  if (commas > 0 && dots > 0) return digits.lastIndexOf(",") > digits.lastIndexOf(".") ? "," : ".";
  if (commas > 1 || dots > 1) return "";
  if (commas === 1) return inGroups(digits, ",") && !decimalComma ? "" : ",";
  if (dots === 1) return inGroups(digits, ".") && decimalComma ? "" : ".";
  return "";
}

function fractionAt(text: string): NumberRead | undefined {
  const glyphs = mixedGlyph.exec(text) ?? loneGlyph.exec(text);
  const strokes = glyphs ? undefined : (mixed.exec(text) ?? stroke.exec(text));
  const found = glyphs ?? strokes;
  if (!found) return undefined;
  const [top, bottom] = glyphs ? (glyphs[2] ?? "").normalize("NFKC").split("⁄") : [strokes?.[2], strokes?.[3]];
  const number = Number(found[1] || "0") + Number(top) / Number(bottom);
  return { number, end: found[0].length, fraction: true };
}

/**
 * The number that a text begins with, or undefined. Reads "24", "1,234.5", "1.234,5", "3,5", "3 1/2", "3-1/2", "3½",
 * "½", "1e-3", a sign as +, -, − or –. With both marks the last one is the decimal mark. A lone comma before exactly
 * three digits ("1,234", not "0,234") divides thousands, any other lone comma is the decimal mark; `decimalComma`
 * turns that round. Blanks may stand between groups of three digits. A number out of range, or with marks that make
 * no sense ("1,23,4", "1/0"), comes back as NaN or infinite.
 *
 * @param text as typed, at most a few hundred characters
 * @example
 * readNumber("3 1/2 gal") // { number: 3.5, end: 5, fraction: true }
 */
export function readNumber(text: string, options: NumberOptions = {}): NumberRead | undefined {
  const sign = /^\s*([+\-−–]?)\s*/u.exec(text);
  const start = sign?.[0].length ?? 0;
  const rest = text.slice(start);
  const turn = sign?.[1] && sign[1] !== "+" ? -1 : 1;
  const fraction = fractionAt(rest);
  if (fraction) return { ...fraction, number: turn * fraction.number, end: start + fraction.end };
  const digits = numeral.exec(rest)?.[0];
  if (digits === undefined) return undefined;
  const exponent = /^e[+\-−–]?\d{1,4}(?![\d\p{L}])/iu.exec(rest.slice(digits.length))?.[0] ?? "";
  const power = Number(exponent.slice(1).replace(/[−–]/u, "-"));
  const plain = plainNumber(digits, options.decimalComma ?? false);
  const number = exponent === "" ? plain : Number(`${plain}e${power}`);
  return { number: turn * number, end: start + digits.length + exponent.length, fraction: false };
}
