import type { Written } from "../measure/index.ts";
import type { AmountReader } from "./amountReader.ts";
import type { Problem } from "./types.ts";
import { waterOf } from "./waterOf.ts";

/**
 * A function that turns the rising totals of a water column, given in order, into what went in since the one before.
 *
 * @param read the log's reader of amounts
 * @param problems list that a falling total is added to
 * @returns a function of a total and its line; undefined where nothing went in
 * @example
 * const pour = totalsToPours(read, []); pour(total24, 2); pour(total48, 3)?.text // "24 fl oz"
 */
export function totalsToPours(
  read: AmountReader,
  problems: Problem[],
): (total: Written, line: number) => Written | undefined {
  let before = 0;
  let first = true;
  return (total, line) => {
    const rise = total.si - before;
    if (rise < 0) {
      problems.push({
        line,
        read: total.text,
        expected: "a running total that does not fall",
        remedy: "It was taken as a new count from here. Correct it, or answer that the amounts are no running total.",
      });
    }
    before = total.si;
    const pour = first || rise < 0 ? total : rise === 0 ? undefined : waterOf(rise, total.unit, read);
    first = false;
    return pour;
  };
}
