import type { BookFigureMaker } from "../page/tool/types.ts";
import { lengths } from "./lengthsFigure.ts";
import { plans } from "./plansFigure.ts";

/** Figures of the notebook by the names that it calls them by. */
export const newTankFigures: ReadonlyMap<string, BookFigureMaker> = new Map([
  ["the tanks to scale", plans],
  ["boil-off over lengths", lengths],
]);
