import { bareNumber } from "./amountReader.ts";
import type { Column } from "./column.ts";
import type { Draft } from "./draft.ts";
import { type Inquiry, settle } from "./settle.ts";

export type WaterMeaning = "poured at that time" | "since the row before" | "running total";

/**
 * What the numbers of a water column are: each a pour at its row's time, what went in since the row before, or the
 * total so far. Taken as *since the row before* only where the heading says so, or where nearly every row but the
 * first has an amount, the amounts being uneven; as a *running total* where the heading says so or five amounts or more never fall.
 *
 * @param drafts the rows as read
 * @param columns the table's columns
 * @param decimalComma whether "144,5" is a decimal in this log
 * @param inquiry where answers come from and questions go to
 * @returns the meaning taken
 * @example
 * decideWater(drafts, columns, false, inquiry) // "poured at that time"
 */
export function decideWater(
  drafts: readonly Draft[],
  columns: readonly Column[],
  decimalComma: boolean,
  inquiry: Inquiry,
): WaterMeaning {
  const column = columns.find(({ role }) => role === "water" || role === "water total");
  if (column === undefined) return "poured at that time";
  const timed = drafts.filter(
    ({ mark, struck, aside }) => mark !== undefined && struck === undefined && aside === undefined,
  );
  const amounts = timed.map(
    ({ findings }) => findings.find(({ inColumn, struck }) => inColumn && struck === undefined)?.amount,
  );
  const numbers = amounts.flatMap((amount) => (amount === undefined ? [] : [bareNumber(amount, decimalComma)]));
  const filled = amounts.slice(1).filter((amount) => amount !== undefined).length / Math.max(1, amounts.length - 1);
  const rises = numbers.filter((number, index) => index > 0 && number > (numbers[index - 1] ?? number)).length;
  const neverFalls = numbers.every((number, index) => index === 0 || number >= (numbers[index - 1] ?? number));
  // Whoever pours by the cup writes the same amount again and again; what is read off a jug is uneven.
  const uneven = new Set(numbers).size > numbers.length / 2;
  const saysSince = /\bsince\b|\bbetween\b|\bused\b/i.test(column.heading);
  const saysTotal = column.role === "water total";
  const total = saysTotal || (neverFalls && rises >= 4 && rises >= 0.6 * (numbers.length - 1));
  const since = saysSince || (filled >= 0.8 && amounts.length >= 5 && amounts[0] === undefined && uneven);
  const likeliest: WaterMeaning =
    total && !saysSince ? "running total" : since ? "since the row before" : "poured at that time";
  const mayBeTotal = saysTotal || (neverFalls && rises >= 2 && numbers.length >= 4);
  const maySince = filled >= 0.5 && numbers.length >= 3;
  const sum = round(numbers.reduce((all, number) => all + number, 0));
  const rise = round(numbers.at(-1) ?? 0);
  const unit = column.unit ?? "";
  const all = (amount: number) => `${amount} ${unit}`.trim();
  const says: Record<WaterMeaning, string> = {
    "poured at that time": `${all(sum)} would have gone in, each amount at once at its row's time.`,
    "since the row before": `${all(sum)} would have gone in, each amount as a steady flow since the row before.`,
    "running total": `${all(rise)} would have gone in altogether instead of ${all(sum)}.`,
  };
  const open = !saysTotal && !saysSince && (mayBeTotal || maySince);
  const offered: WaterMeaning[] = [
    "poured at that time",
    "since the row before",
    ...(mayBeTotal ? ["running total" as const] : []),
  ];
  return settle<WaterMeaning>(inquiry, {
    id: "water column",
    asks: `What are the amounts under "${column.heading}"?`,
    line: timed[0]?.line ?? 1,
    likeliest,
    open,
    answers: offered.map((answer) => ({
      answer,
      says: `Each amount is ${answer === "running total" ? "the total so far" : answer === "since the row before" ? "what went in since the row before" : "a pour at that time"}.`,
      changes:
        answer === likeliest
          ? `As taken: ${says[answer].replace("would have gone", "went").replace(/ instead of .*\./, ".")}`
          : says[answer],
    })),
  });
}

function round(number: number): number {
  return Math.round(number * 1000) / 1000;
}
