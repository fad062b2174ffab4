import { type HoldReplayedData, holdReplayed } from "../../lib/figure/index.ts";
import { formatWithSpread } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import type { FigureInput, FigureMaker } from "../page/drawings.ts";
import { balanceOf, readsHighBy, targetOf, timeOf } from "./balanceOf.ts";

/** What the figure of the hold draws: readings less the thermometer's known error, pours, events, the bath's course. */
export function holdData(input: FigureInput): HoldReplayedData {
  const { run, notebook, system } = input;
  const { entries } = run.log;
  const balance = balanceOf(input);
  const target = targetOf(input);
  const high = readsHighBy(input);
  const misread = new Map(balance?.misread.map(({ id, reason }) => [id, reason]));
  const readings = entries.flatMap((entry) =>
    entry.kind === "reading" && entry.quantity
      ? [
          {
            id: entry.id,
            time: entry.time,
            temperature: entry.quantity.si - high,
            struck: entry.struck,
            apart: misread.has(entry.id),
            ...((entry.reason ?? misread.get(entry.id)) ? { reason: entry.reason ?? misread.get(entry.id) ?? "" } : {}),
          },
        ]
      : [],
  );
  const partsIn = timeOf(entries, "parts in", "first");
  const partsOut = timeOf(entries, "parts out", "last");
  const minutes = notebook.result("minutes in the band");
  return {
    readings,
    ...(target ? { target } : {}),
    ...(balance ? { hold: balance.hold } : {}),
    ...(partsIn === undefined ? {} : { partsIn }),
    ...(partsOut === undefined ? {} : { partsOut }),
    additions: entries.flatMap(({ kind, struck, quantity, time, duration }) =>
      kind === "addition" && !struck && quantity
        ? [{ time, mass: quantity.si, ...(duration ? { duration } : {}) }]
        : [],
    ),
    events: entries.flatMap(({ kind, struck, text, quantity, time }) =>
      !struck && (kind === "burner" || kind === "salt in") ? [{ time, text: text ?? quantity?.text ?? kind }] : [],
    ),
    ...(balance
      ? {
          course: balance.course.map(({ time, boilingPoint, standardUncertainty }) => ({
            time,
            value: boilingPoint,
            low: boilingPoint - 1.96 * standardUncertainty,
            high: boilingPoint + 1.96 * standardUncertainty,
          })),
        }
      : {}),
    ...(balance?.stretches ? { inBand: balance.stretches } : {}),
    ...(balance && minutes.state === "settled"
      ? {
          sums: {
            inBand: `in the band ${formatWithSpread(minutes.value as Value, "min", { system }).number} of ${Math.round((balance.hold.end - balance.hold.start) / 60)} min`,
          },
        }
      : {}),
  };
}

export const hold: FigureMaker = {
  title: "The hold, replayed",
  caption: (input) => {
    const high = readsHighBy(input);
    const shift =
      high === 0
        ? ""
        : ` Readings are drawn less the ${(Math.abs(high) * (input.system === "US" ? 1.8 : 1)).toFixed(1)} ${input.system === "US" ? "°F" : "°C"} that the thermometer reads ${high > 0 ? "high" : "low"}.`;
    return `The bright strip is the target band; a good hold never leaves it.${shift}`;
  },
  draw: (input) =>
    input.run.log.entries.some(({ kind }) => kind === "reading")
      ? holdReplayed(holdData(input), { document, width: input.width, system: input.system, narrow: input.narrow })
      : undefined,
};
