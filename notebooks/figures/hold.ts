import { type HoldReplayedData, holdReplayed } from "../../lib/figure/index.ts";
import type { FigureInput, FigureMaker } from "../page/drawings.ts";
import { shownIn, written } from "../page/showValue.ts";
import { apart, balanceOf, fitOf, readsHighBy, targetOf, timeOf } from "./balanceOf.ts";

/** What the figure of the hold draws: readings less the thermometer's known error, pours, events, the bath's course. */
export function holdData(input: FigureInput): HoldReplayedData {
  const { run, notebook, system } = input;
  const { entries } = run.log;
  const balance = balanceOf(input);
  const target = targetOf(input);
  const high = readsHighBy(input);
  const fit = fitOf(input);
  const misread = apart(notebook);
  const likely = new Map(fit?.probablyMisread.map(({ id, probability }) => [id, probability]));
  const readings = entries.flatMap((entry) =>
    entry.kind === "reading" && entry.quantity
      ? [
          {
            id: entry.id,
            time: entry.time,
            temperature: entry.quantity.si - high,
            struck: entry.struck,
            apart: misread.has(entry.id),
            ...(likely.has(entry.id) ? { probability: Math.min(1, likely.get(entry.id) ?? 1) } : {}),
            ...((entry.reason ?? misread.get(entry.id)) ? { reason: entry.reason ?? misread.get(entry.id) ?? "" } : {}),
          },
        ]
      : [],
  );
  const partsIn = timeOf(entries, "parts in", "first");
  const partsOut = timeOf(entries, "parts out", "last");
  const minutes = shownIn(notebook.result("minutes in the band"));
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
    ...(fit
      ? {
          unwritten: fit.probablyUnwritten
            .filter(({ probability }) => probability >= 0.5)
            .map(({ time, mass, probability }) => ({
              time,
              mass: mass.value,
              low: mass.interval95[0],
              high: mass.interval95[1],
              probability: Math.min(1, probability),
            })),
        }
      : {}),
    events: entries.flatMap(({ kind, struck, text, quantity, time }) =>
      !struck && (kind === "burner" || kind === "salt in") ? [{ time, text: text ?? quantity?.text ?? kind }] : [],
    ),
    ...(fit
      ? { course: fit.course.map(({ time, T, low, high: above }) => ({ time, value: T, low, high: above })) }
      : {}),
    ...(balance && !fit
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
    sums: {
      ...(balance && minutes
        ? {
            inBand: `in the band ${written(minutes.value, "min", system).number} of ${Math.round((balance.hold.end - balance.hold.start) / 60)} min`,
          }
        : {}),
      ...(fit ? { course: "fitted bath" } : {}),
    },
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
