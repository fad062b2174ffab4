import type { Line, Lines, Result } from "../../../lib/lines/index.ts";
import { withUnit } from "../../../lib/measure/index.ts";
import { unitShown } from "../grid/amounts.ts";
import { isValue, valueIn } from "../shownIn.ts";
import { type System, written } from "../showValue.ts";

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

/** What a line comes to in a case, in words. */
export function lineWords(open: Lines, line: string, inCase: string, system: System): AmountWords | undefined {
  return amountWords(open.line(line), open.result(line, inCase), system);
}
