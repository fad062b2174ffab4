import { minutesText } from "./drawBandBar.ts";
import { heatKinds, heatSplit, heatTotal, heatWriter, isNone, isUntold, pastName, pastTank } from "./heatSplit.ts";
import type { FigureOptions, HeatAmount, WhereHeatWentData } from "./types.ts";

/**
 * What "where the heat went" shows, in sentences: all of it with its mean, then each share with its 95 % spread, what
 * was none or is not known, and the gas. For `aria-label`, captions and tests.
 * @example
 * const steam = { value: 9.5e6, low: 9e6, high: 1e7 };
 * whereHeatWentFinding({ start: 0, end: 2400, steam }, { system: "metric" }) // "Where the heat went. Into the bath in 40 min: 9500 ±500 kJ…"
 */
export function whereHeatWentFinding(data: WhereHeatWentData, options: Pick<FigureOptions, "system">): string {
  const write = heatWriter(data, options);
  const total = heatTotal(data);
  const seconds = data.end - data.start;
  const said = ["Where the heat went."];
  if (!total) return "Where the heat went. Not known yet.";
  const mean = seconds > 0 ? `, a mean of ${write.mean(total, seconds)}` : "";
  const time = seconds > 0 ? ` in ${minutesText(seconds)} min` : "";
  said.push(`Into the bath${time}: ${write.text(total)}${mean}.`);
  const amountWords = (amount: HeatAmount | undefined): string => {
    if (!amount) return "not known";
    if (isNone(amount)) return "none";
    return isUntold(amount) ? write.untold(amount).join(", ") : write.text(amount);
  };
  const shares = heatKinds.map(({ key, long }) => `${long} ${amountWords(data[key])}`).join("; ");
  said.push(`${shares.replace(/^./, (letter) => letter.toUpperCase())}.`);
  const past = pastTank(data, total);
  if (data.fire && past && past.high >= 0)
    said.push(`Of ${write.text(data.fire)} of gas, ${amountWords(past)} went ${pastName(data)}.`);
  else if (data.fire)
    said.push(`${heatSplit(data, options).notes.at(-1) ?? ""}.`.replace(/^./, (g) => g.toUpperCase()));
  said.push("± is the 95 % spread.");
  return said.join(" ");
}
