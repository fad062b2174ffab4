import type { Entry, Run } from "../lib/log/types.ts";
import { formatDuration, formatQuantity } from "../lib/measure/index.ts";
import { fitOf } from "./figures/balanceOf.ts";
import type { OpenedRun } from "./page/openedRun.ts";
import type { System } from "./page/showValue.ts";
import type { Suspect } from "./page/suspectList.ts";

/** A probability in words and in percent. */
export function howLikely(probability: number): string {
  const word =
    probability >= 0.9
      ? "almost surely"
      : probability >= 0.7
        ? "probably"
        : probability >= 0.5
          ? "more likely than not"
          : "perhaps";
  return `${word} (${Math.round(100 * Math.min(0.99, probability))} %)`;
}

/** A time as the log writes it: the clock of the row that stands there, else minutes from the first row. */
function timeSaid(entries: readonly Entry[], time: number): string {
  const row = entries.filter((entry) => entry.time <= time + 1e-6 && entry.line > 0).at(-1);
  return row?.clock && Math.abs(row.time - time) < 1 ? row.clock : formatDuration(time);
}

/** Between which two rows a time lies. */
function between(run: Run, time: number): string {
  const rows = run.entries.filter(({ line }) => line > 0);
  const before = rows.filter((entry) => entry.time <= time).at(-1);
  const after = rows.find((entry) => entry.time > time);
  const said = (entry: Entry) => entry.clock ?? formatDuration(entry.time);
  if (before && after) return `between the rows at ${said(before)} and ${said(after)}`;
  return before ? `after the row at ${said(before)}` : `before the row at ${after ? said(after) : "the start"}`;
}

const reading = (entry: Entry, system: System): string =>
  entry.quantity
    ? formatQuantity(entry.quantity.si, system === "US" ? "°F" : "°C", { system, dimension: entry.quantity.dimension })
    : "a reading";

/** What the log has probably left out or got wrong, likeliest first, each with what can be done about it. */
export function suspects(notebook: OpenedRun, run: Run, system: System): readonly Suspect[] {
  const fit = fitOf({ notebook });
  if (!fit) return [];
  const unit = system === "US" ? "fl oz" : "ml";
  const misread = fit.probablyMisread.flatMap(({ id, probability, reason }) => {
    const entry = run.entries.find((one) => one.id === id && !one.struck);
    if (!entry) return [];
    const what = reading(entry, system);
    return [
      {
        probability,
        says: `${what} at ${entry.clock ?? formatDuration(entry.time)} is ${howLikely(probability)} a mis-read`,
        reason,
        act: { does: "strike out" as const, what, entry },
      },
    ];
  });
  const unwritten = fit.probablyUnwritten.map(({ probability, time, mass, count, reason }) => {
    const amount = formatQuantity(mass.value, unit, { system, dimension: { mass: 1 }, decimals: 0 });
    const pours = count === 1 ? "a pour" : `${count} pours`;
    return {
      probability,
      says: `${pours} of about ${amount}${count === 1 ? "" : " in all"} ${count === 1 ? "was" : "were"} ${howLikely(probability)} made and not written, ${between(run, time)}`,
      reason,
      act: {
        does: "write this pour" as const,
        what: `${amount} at ${timeSaid(run.entries, time)}`,
        time: Math.max(0, Math.round(time)),
        text: amount.replaceAll("\u00a0", " "),
      },
    };
  });
  return [...misread, ...unwritten].sort((a, b) => b.probability - a.probability);
}
