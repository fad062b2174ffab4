import { max, min } from "d3";
import { minutesText } from "./drawBandBar.ts";
import { limitText } from "./drawPlate.ts";
import { pouredWords } from "./drawWater.ts";
import { figureUnits } from "./figureUnits.ts";
import { apartWords, targetWords } from "./holdLabels.ts";
import type { FigureOptions, HoldReplayedData } from "./types.ts";
import { likelihood, unwrittenAmount } from "./unwritten.ts";
import { counted, minutesSeconds } from "./words.ts";

/**
 * What "the hold, replayed" shows, in sentences: the target and the time in it, when the bath stood out of it and
 * which way, the readings and their range, what was struck out, the water. For `aria-label`, captions and tests.
 * @example
 * const data = { readings: [{ id: "1", time: 0, temperature: 416, struck: false }], additions: [], events: [] };
 * holdReplayedFinding(data, { system: "metric" }) // "The hold, replayed. One reading, 142.9 °C. No water put in.…"
 */
export function holdReplayedFinding(data: HoldReplayedData, options: Pick<FigureOptions, "system">): string {
  const units = figureUnits(options.system);
  const zero = data.partsIn ?? 0;
  const frame = { units, zero };
  const clock = (time: number) => minutesSeconds(time - zero);
  const degrees = (kelvin: number) => `${limitText(kelvin, units.temperature)} ${units.temperature.name}`;
  const said = ["The hold, replayed."];

  if (data.target) said.push(`Target band ${targetWords(data, frame)}.`);
  const stretches = data.inBand ?? [];
  if (stretches.length > 0) {
    const length = (side: string) =>
      stretches.filter((one) => one.side === side).reduce((sum, one) => sum + one.end - one.start, 0);
    const total = length("inside") + length("over") + length("under");
    said.push(`In the band ${minutesText(length("inside"))} of ${minutesText(total)} min.`);
    const out = stretches.filter((one) => one.side !== "inside" && one.end - one.start >= 15);
    const longest = [...out].sort((a, b) => b.end - b.start - (a.end - a.start)).slice(0, 6);
    longest.sort((a, b) => a.start - b.start);
    const words = longest.map((one) => `${one.side} it from ${clock(one.start)} to ${clock(one.end)}`);
    const more = out.length > longest.length ? `, and ${counted(out.length - longest.length, "more time")}` : "";
    if (words.length > 0) said.push(`${words.join(", ").replace(/^./, (letter) => letter.toUpperCase())}${more}.`);
  }
  const counting = data.readings.filter((one) => !one.struck && !one.apart);
  const lowest = min(counting, (one) => one.temperature);
  const highest = max(counting, (one) => one.temperature);
  if (lowest === undefined || highest === undefined) said.push("No readings yet.");
  else if (counting.length === 1) said.push(`One reading, ${degrees(lowest)}.`);
  else
    said.push(
      `${counted(counting.length, "reading")} from ${degrees(lowest)} to ${degrees(highest)}.`.replace(/^./, upper),
    );

  const apart = data.readings.filter((one) => one.struck || one.apart);
  for (const one of apart.slice(0, 6)) said.push(`${apartWords(one, frame)}.`);
  if (apart.length > 6)
    said.push(`${counted(apart.length - 6, "more reading")} struck out or apart.`.replace(/^./, upper));
  const course = data.course ?? [];
  const first = course[0];
  const last = course[course.length - 1];
  if (first && last) {
    const name = data.sums?.course ?? "boiling point";
    said.push(`The ${name} goes from ${degrees(first.value)} to ${degrees(last.value)}, drawn with its 95 % spread.`);
  }
  said.push(data.additions.length > 0 ? `Water: ${pouredWords(data, frame)}.` : "No water put in.");
  for (const one of (data.unwritten ?? []).slice(0, 6))
    said.push(
      `${unwrittenAmount(one, frame)} at ${clock(one.time)} were perhaps poured and not written, ${likelihood(one.probability)}.`,
    );
  const from = data.partsIn === undefined ? "the first row" : "parts in";
  said.push(`Minutes count from ${from}.`);
  return said.join(" ");
}

const upper = (letter: string): string => letter.toUpperCase();
