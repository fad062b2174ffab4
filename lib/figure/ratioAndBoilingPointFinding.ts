import { max, min } from "d3";
import { limitText } from "./drawPlate.ts";
import { figureUnits } from "./figureUnits.ts";
import type { FigureOptions, RatioAndBoilingPointData } from "./types.ts";
import { decimal, minutesSeconds } from "./words.ts";

/**
 * What "ratio and boiling point" shows, in sentences: both at the hold's start and end (or the line's), and the range.
 * @example
 * const course = [{ time: 0, ratio: 1.2, boilingPoint: 416, low: 415.6, high: 416.4 }];
 * ratioAndBoilingPointFinding({ course, ratioAt: () => 1.2 }, { system: "US" }) // "Ratio and boiling point. 10 lb/gal, …"
 */
export function ratioAndBoilingPointFinding(
  data: RatioAndBoilingPointData,
  options: Pick<FigureOptions, "system">,
): string {
  const units = figureUnits(options.system);
  const said = ["Ratio and boiling point."];
  const ratio = (value: number) =>
    `${decimal(units.ratio.fromSI(value), options.system === "US" ? 1 : 2, options.system)} ${units.ratio.name}`;
  const degrees = (kelvin: number) => `${limitText(kelvin, units.temperature)} ${units.temperature.name}`;
  const from = data.hold?.start ?? Number.NEGATIVE_INFINITY;
  const to = data.hold?.end ?? Number.POSITIVE_INFINITY;
  const within = data.course.filter((one) => one.time >= from && one.time <= to);
  const course = within.length > 0 ? within : data.course;
  const [first, last] = [course[0], course[course.length - 1]];
  if (!first || !last) return `${said.join(" ")} No boil read yet.`;
  const clock = (time: number) => minutesSeconds(time - (data.partsIn ?? 0));
  if (first === last) said.push(`${ratio(first.ratio)}, boiling at ${degrees(first.boilingPoint)}.`);
  else {
    said.push(
      `${data.hold ? "The hold began" : "It began"} at ${ratio(first.ratio)}, boiling at ${degrees(first.boilingPoint)} (${clock(first.time)}), and ended at ${ratio(last.ratio)}, ${degrees(last.boilingPoint)} (${clock(last.time)}).`,
    );
    const lowest = min(course, (one) => one.ratio) ?? first.ratio;
    const highest = max(course, (one) => one.ratio) ?? last.ratio;
    said.push(`In between it ran from ${ratio(lowest)} to ${ratio(highest)}.`);
  }
  if (data.target)
    said.push(`Target band ${limitText(data.target.low, units.temperature)}–${degrees(data.target.high)}.`);
  if (data.pressure) said.push(`Boiling points at ${data.pressure}.`);
  said.push("The fill is the 95 % spread.");
  return said.join(" ");
}
