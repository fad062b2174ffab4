import { doubtOf } from "./defaultUncertainty.ts";
import { sameDimension } from "./dimension.ts";
import { isUnread } from "./fitUnit.ts";
import { type ReadOptions, readQuantity } from "./readQuantity.ts";
import type { Unit, Written } from "./types.ts";
import { findUnit } from "./unit.ts";

const plusMinus = /±|\+\s?\/\s?[-−–]|\+[-−–]/u;

/** A number and the unit behind it: the first place from which on the text names a unit. */
function cut(head: string): { readonly number: string; readonly unit: Unit; readonly unitText: string } | undefined {
  for (const { index } of head.matchAll(/(?<=[\d½¼¾⅓⅔⅛\s])[^\d\s.,]/gu)) {
    const unitText = head.slice(index).trim();
    const unit = findUnit(unitText);
    if (unit) return { number: head.slice(0, index), unit, unitText };
  }
  return undefined;
}

/**
 * A quantity in a unit that has no kind of its own: "4.20 $/gal", "$4.20/gal", "1.5 ± 0.1 lb/ft". Without ± one with
 * money in it is exact, like a price; any other is as well known as a number of that way of knowing, by its share alone.
 *
 * @param usual the unit taken when none is written; one of another sort is refused
 * @returns undefined where it cannot be read so
 * @example
 * readCompound("$4.20/gal")?.unit // "$/gal"
 */
export function readCompound(text: string, usual?: Unit, options: ReadOptions = {}): Written | undefined {
  const trimmed = text.trim();
  if (trimmed.length > 200) return undefined;
  const sure = /\s+exact(?:ly)?$/iu.test(trimmed);
  const plain = trimmed.replace(/\s+exact(?:ly)?$/iu, "").replace(/\$\s*([\d.,]*\d)\s*(?=\/|per\s)/gu, "$1 $");
  const sign = plusMinus.exec(plain);
  const head = plain.slice(0, sign?.index ?? plain.length);
  const tail = sign ? plain.slice(sign.index + sign[0].length) : "";
  // The unit may stand behind both: "1.5 ± 0.1 lb/ft".
  const [first, second] = [cut(head), cut(tail)];
  const unit = first?.unit ?? (second && second.unitText !== "%" ? second.unit : undefined) ?? usual;
  if (!unit || (usual && !sameDimension(unit.dimension, usual.dimension))) return undefined;
  if (first && second && second.unitText !== "%" && second.unit.symbol !== unit.symbol) return undefined;
  const number = first?.number ?? head;
  const half = second && second.unitText !== "%" ? second.number : tail;
  const read = readQuantity(sign ? `${number} ± ${half}` : number, { kind: "number" }, options);
  if (isUnread(read)) return undefined;
  const si = read.si * unit.factor;
  const price = unit.dimension.money !== undefined && read.known === "measured";
  const isSure = price || options.doubts !== undefined || sure;
  // A floor is an amount of some other kind: only the share can be meant.
  const share = isSure ? 0 : doubtOf(read.known, "density").share;
  const standardUncertainty = sign ? read.standardUncertainty * unit.factor : share * Math.abs(si);
  return { text: trimmed, si, dimension: unit.dimension, unit: unit.symbol, standardUncertainty, known: read.known };
}
