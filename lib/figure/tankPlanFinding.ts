import { lengthText } from "./tankDrawn.ts";
import type { FigureOptions, TankPlanData } from "./types.ts";

/**
 * What the plan of a tank shows, in sentences: its measures, then the part and how it lies.
 * @example
 * const tank = { length: 0.6096, width: 0.1524, depth: 0.127, freeboard: 0.1016 };
 * tankPlanFinding(tank, { system: "US" }); // "Tank 24 in long and 6 in wide inside, liquid 5 in deep. The wall rises 4 in above the liquid. No part is drawn."
 */
export function tankPlanFinding(data: TankPlanData, options: Pick<FigureOptions, "system">): string {
  const text = (metres: number) => lengthText(metres, options.system);
  const said = [`Tank ${text(data.length)} long and ${text(data.width)} wide inside, liquid ${text(data.depth)} deep.`];
  if (data.freeboard) said.push(`The wall rises ${text(data.freeboard)} above the liquid.`);
  const { part, clearance = 0 } = data;
  if (!part) return [...said, "No part is drawn."].join(" ");
  const lies = part.lies ? `, ${part.lies}` : "";
  said.push(`Part ${text(part.length)} long, ${text(part.width)} wide, ${text(part.thickness)} thick${lies}.`);
  if (clearance > 0) said.push(`Dashed: ${text(clearance)} clear of walls, bottom and surface.`);
  return said.join(" ");
}
