import type { Written } from "../measure/index.ts";
import type { AmountReader } from "./amountReader.ts";
import { type Inquiry, settle } from "./settle.ts";
import type { Entry } from "./types.ts";
import { waterOf } from "./waterOf.ts";

export interface Drips {
  /** Entry ids where a feed began, with its flow in kg/s. */
  readonly on: ReadonlyMap<string, Written>;
  /** Entry ids where a feed ended. */
  readonly off: ReadonlySet<string>;
}

/**
 * Feeds that were switched on and off, as additions with the time they ran and the water they gave.
 *
 * @param entries all entries in time order
 * @param drips where feeds began and ended
 * @param read the log's reader of amounts
 * @param inquiry where answers come from and questions and problems go to
 * @returns the entries with quantities and durations filled in
 * @example
 * runDrips(entries, { on: new Map(), off: new Set() }, read, inquiry) // entries
 */
export function runDrips(
  entries: readonly Entry[],
  drips: Drips,
  read: AmountReader,
  inquiry: Inquiry,
): readonly Entry[] {
  if (drips.on.size === 0) return entries;
  const last = entries.at(-1)?.time ?? 0;
  return entries.map((entry, index) => {
    const rate = drips.on.get(entry.id);
    if (rate === undefined) return entry;
    const { quantity: _, ...bare } = entry;
    const end = entries.find(({ id }, at) => at > index && (drips.off.has(id) || drips.on.has(id)));
    const total = (until: number) =>
      until > entry.time ? waterOf(rate.si * (until - entry.time), "fl oz", read) : undefined;
    const remark: Entry = { ...bare, kind: "remark" };
    if (end === undefined && total(last) !== undefined && !entry.struck) {
      const answer = settle<"until the last row" | "not counted">(inquiry, {
        id: "drip end",
        asks: `How long did the feed of ${rate.text} run?`,
        line: entry.line,
        likeliest: "until the last row",
        open: true,
        answers: [
          {
            answer: "until the last row",
            says: "It ran until the last row.",
            changes: `As taken: ${total(last)?.text} went in.`,
          },
          {
            answer: "not counted",
            says: "It is not counted.",
            changes: `None of its ${total(last)?.text} would count.`,
          },
        ],
      });
      if (answer === "not counted") return remark;
    }
    const until = end?.time ?? last;
    const quantity = total(until);
    if (quantity !== undefined) return { ...bare, quantity, duration: until - entry.time };
    inquiry.problems.push({
      line: entry.line,
      read: entry.text ?? rate.text,
      expected: "a later row that shows how long the feed ran",
      remedy: 'Add a row "drip off", or write the water that went in as an amount.',
    });
    return remark;
  });
}
