import { limitText } from "./drawPlate.ts";
import { figureUnits } from "./figureUnits.ts";
import type { PlannedHoldData } from "./planTypes.ts";
import type { FigureOptions } from "./types.ts";
import { counted, decimal, holdsWords } from "./words.ts";

/**
 * What "the planned hold" shows, in sentences.
 * @example
 * const nobody = [{ time: 600, value: 416, low: 415.4, high: 416.6 }];
 * const data = { target: { low: 415, high: 417 }, hold: 600, corrected: nobody, nobody, start: 415.8, startReads: 416, additions: [],
 *   poured: "nothing", holds: { nobody: 60, corrected: 90 } };
 * plannedHoldFinding(data, { system: "US" }); // "The planned hold. Target band 287.3–290.9 °F, for 10 min from parts in…"
 */
export function plannedHoldFinding(data: PlannedHoldData, options: Pick<FigureOptions, "system">): string {
  const { temperature } = figureUnits(options.system);
  const { target, hold, corrected, nobody, startReads, additions, poured, holds } = data;
  const degrees = (kelvin: number) => `${limitText(kelvin, temperature)} ${temperature.name}`;
  const range = (of: PlannedHoldData["corrected"]) => {
    const last = of.at(-1);
    return last ? `${degrees(last.low)} to ${degrees(last.high)}` : "nowhere";
  };
  return [
    "The planned hold.",
    `Target band ${limitText(target.low, temperature)}–${degrees(target.high)}, for ${decimal(hold / 60, 1)} min from parts in, started when it reads ${degrees(startReads)}.`,
    `With the correction table followed ${holdsWords(holds.corrected)} holds in 100 stay in the band; at the end 95 in 100 stand at ${range(corrected)}.`,
    `Nobody correcting it is ${holdsWords(holds.nobody)} in 100, at the end ${range(nobody)}.`,
    `Water: ${poured} in ${counted(additions.length, additions.some(({ duration = 0 }) => duration > 120) ? "steady feed" : "pour")}.`,
  ].join(" ");
}
