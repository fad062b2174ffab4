import { figureUnits } from "./figureUnits.ts";
import { spreadText } from "./spread.ts";
import type { FigureOptions, WaterGoneData } from "./types.ts";
import { counted, decimal, minutesSeconds } from "./words.ts";

/**
 * What "water gone" shows, in sentences: the rate with its 95 % spread, from when to when, and what the line left out.
 * @example
 * const slope = { value: 0.0023, low: 0.0022, high: 0.0024 };
 * waterGoneFinding({ points: [], slope, firstBoil: 0, end: 600 }, { system: "metric" }) // "Water gone against time. 138 ±6 ml/min…"
 */
export function waterGoneFinding(data: WaterGoneData, options: Pick<FigureOptions, "system">): string {
  const units = figureUnits(options.system);
  const clock = (time: number) => minutesSeconds(time - (data.partsIn ?? 0));
  const rate = spreadText(data.slope, { mass: 1, time: -1 }, units.waterRate.name, options.system);
  const gone = decimal(units.water.fromSI(data.slope.value * (data.end - data.firstBoil)), 0, options.system);
  const said = [
    "Water gone against time.",
    `${rate} from the first boil at ${clock(data.firstBoil)} to ${clock(data.end)}, ${gone} ${units.water.name} in all.`,
    `${counted(data.points.length, "reading")} of it.`.replace(/^./, (letter) => letter.toUpperCase()),
  ];
  const apart = data.points.filter((one) => one.weight < 0.5);
  for (const one of apart.slice(0, 5))
    said.push(`The one at ${clock(one.time)} stands apart${one.because ? `: ${one.because}` : ""}.`);
  if (apart.length > 5) said.push(`${decimal(apart.length - 5)} more stand apart.`);
  said.push("± and the fill are the 95 % spread.");
  return said.join(" ");
}
