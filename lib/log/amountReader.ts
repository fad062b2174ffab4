import { isUnread, type Kind, readQuantity, type Unread, type Written } from "../measure/index.ts";

const simpleComma = /^\d{1,7},\d{1,9}$/;

export type AmountReader = (text: string, kind: Kind, unit: string) => Written | Unread;

/**
 * A reader of written amounts that remembers what it has read: a logger writes the same few hundred numbers over
 * and over. Bounded, so that a hostile file cannot fill the memory.
 *
 * @param decimalComma whether "144,5" is a decimal in this log
 * @returns a function of text, kind and the unit to take where none is written
 * @example
 * amountReader(false)("24", "water", "fl oz") // { si: 0.70848..., unit: "fl oz", ... }
 */
export function amountReader(decimalComma: boolean): AmountReader {
  const remembered = new Map<string, Written | Unread>();
  const fitting = new Map<string, boolean>();
  const fits = (unit: string, kind: Kind) => {
    const key = `${kind}|${unit}`;
    const known = fitting.get(key) ?? (unit === "" || !isUnread(readQuantity(`1 ${unit}`, { kind })));
    fitting.set(key, known);
    return known;
  };
  return (text, kind, wanted) => {
    const unit = fits(wanted, kind) ? wanted : "";
    const key = `${kind}|${unit}|${text}`;
    const before = remembered.get(key);
    if (before !== undefined) return before;
    const read = decimalComma ? withComma(text, kind, unit) : readQuantity(text, { kind, unit });
    const finite = isUnread(read) || (Number.isFinite(read.si) && Number.isFinite(read.standardUncertainty));
    const result: Written | Unread = finite
      ? read
      : { at: 0, read: text.slice(0, 40), expected: "a number of a sensible size", remedy: "Correct the number." };
    if (remembered.size < 50_000) remembered.set(key, result);
    return result;
  };
}

/** With a decimal comma; where the same text would otherwise mean something else, it is kept with a point. */
function withComma(text: string, kind: Kind, unit: string): Written | Unread {
  const read = readQuantity(text, { kind, unit }, { decimalComma: true });
  if (isUnread(read)) return read;
  const plain = readQuantity(text, { kind, unit });
  return !isUnread(plain) && plain.si === read.si ? read : { ...read, text: text.replace(/\./g, "").replace(",", ".") };
}

/**
 * The bare number of an amount without its unit, or NaN.
 *
 * @param text an amount as written
 * @param decimalComma whether "144,5" is a decimal in this log
 * @returns the number
 * @example
 * bareNumber("3 1/2 cups", false) // 3.5
 */
export function bareNumber(text: string, decimalComma: boolean): number {
  const plain = Number(text);
  if (text !== "" && Number.isFinite(plain)) return plain;
  if (decimalComma && simpleComma.test(text)) return Number(text.replace(",", "."));
  const number = /^\s*(?:~|≈|about |approx\.? |ca\.? )?\s*([-+]?)(.*)$/i.exec(
    text.slice(0, 100).replace(/\u2212/g, "-"),
  );
  const digits = /^[\d.,/ ½¼¾⅓⅔⅛⅜⅝⅞-]*/.exec(number?.[2] ?? "")?.[0].trim() ?? "";
  if (digits === "") return Number.NaN;
  const read = readQuantity(digits, { kind: "number", unit: "" }, { decimalComma });
  return isUnread(read) ? Number.NaN : number?.[1] === "-" ? -read.si : read.si;
}

/**
 * Whether an amount names its unit itself.
 *
 * @param text an amount as written
 * @returns true for "24 oz", false for "24" and "about 24"
 * @example
 * namesUnit("24 ml") // true
 */
export function namesUnit(text: string): boolean {
  return /[\p{L}"'#%]/u.test(
    text.replace(/^\s*(?:about|approx\.?|ca\.?|around|roughly)/i, "").replace(/(\d)e[+-]?\d/i, "$1"),
  );
}
