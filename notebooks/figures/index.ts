import type { FigureMaker } from "../page/drawings.ts";
import { heat } from "./heat.ts";
import { hold } from "./hold.ts";
import { ratio } from "./ratio.ts";
import { water } from "./water.ts";

/** Figures by the names that notebooks call them by. */
export const figures: ReadonlyMap<string, FigureMaker> = new Map([
  ["hold replayed", hold],
  ["ratio and boiling point", ratio],
  ["water gone", water],
  ["where the heat went", heat],
]);
