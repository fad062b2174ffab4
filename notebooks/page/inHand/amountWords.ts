import type { Line, Lines, Result } from "../../../lib/lines/index.ts";
import { withUnit } from "../../../lib/measure/index.ts";
import { joinField } from "../fieldText.ts";
import { unitShown } from "../grid/amounts.ts";
import { isValue, valueIn } from "../shownIn.ts";
import { type System, written } from "../writtenAs.ts";

/** What a line came to, in words. */
export interface AmountWords {
  /** Number and unit: "9.4 lb". */
  readonly bare: string;
  /** With its spread: "9.4 ±0.7 lb". */
  readonly whole: string;
}

const once = (words: string): AmountWords => ({ bare: words, whole: words });

/** What a result is in words; undefined for a thing that words cannot show, or where there is none. */
export function amountWords(line: Line, result: Result, system: System): AmountWords | undefined {
  if (result.state !== "settled") return undefined;
  const { value } = result;
  if (typeof value === "boolean") return once(value ? "yes" : "no");
  if (typeof value === "string") return once(`"${value}"`);
  if (typeof value === "number") return once(String(value));
  const amount = valueIn(result);
  if (!amount || !isValue(value)) return undefined;
  const unit = unitShown(line, result, system);
  try {
    const { number, text } = written(amount, unit, system);
    const plain = line.kind !== "given" && line.plain === true;
    return { bare: withUnit(number, unit), whole: plain ? withUnit(number, unit) : text };
  } catch {
    return once(String(amount.value));
  }
}

/** What a line comes to in a case, in words; a given's number as the maker wrote it. */
export function lineWords(open: Lines, name: string, inCase: string, system: System): AmountWords | undefined {
  const line = open.line(name);
  const result = open.result(name, inCase);
  const words = amountWords(line, result, system);
  const text = line.kind === "given" ? open.text(name, inCase).trim() : "";
  if (!words || line.kind !== "given" || text === "" || text.includes("±") || !valueIn(result)) return words;
  return { ...words, bare: joinField(text, unitShown(line, result, system)) };
}
