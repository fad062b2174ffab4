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
  const { length, width, depth, freeboard } = data;
  const tank = `Tank ${text(length)} long and ${text(width)} wide inside, liquid ${text(depth)} deep.`;
  return [tank, ...(freeboard ? [wallSaid(freeboard, options)] : []), partSaid(data, options)].join(" ");
}

/** How high the wall stands. */
export function wallSaid(freeboard: number, { system }: Pick<FigureOptions, "system">): string {
  return `The wall rises ${lengthText(freeboard, system)} above the liquid.`;
}

/** The part, how it lies, and what is kept clear. */
export function partSaid({ part, clearance = 0 }: TankPlanData, { system }: Pick<FigureOptions, "system">): string {
  if (!part) return "No part is drawn.";
  const [length, width, thickness] = [part.length, part.width, part.thickness].map((one) => lengthText(one, system));
  const lies = part.lies ? `, ${part.lies}` : "";
  const clear = clearance > 0 ? ` Dashed: ${lengthText(clearance, system)} clear of walls, bottom and surface.` : "";
  return `Part ${length} long, ${width} wide, ${thickness} thick${lies}.${clear}`;
}
