import { startFrom } from "./compare/start.ts";
import compareSetups from "./compareSetups.ts";
import { startHold } from "./hold/start.ts";
import { newTankFigures } from "./newTank/figures.ts";
import { startNewTank } from "./newTank/start.ts";
import newTank from "./newTank.ts";
import type { ToolNotebook } from "./page/tool/types.ts";
import planAHold from "./planAHold.ts";

/** The notebooks that come with the tool beside One run, in the order of their places along the top edge. */
export const tools: readonly ToolNotebook[] = [
  {
    book: planAHold,
    start: (record) => startHold(planAHold, record),
    figures: new Map(),
  },
  {
    book: compareSetups,
    start: (record) => startFrom(compareSetups, record, []),
    figures: new Map(),
  },
  {
    book: newTank,
    start: (record) => startNewTank(newTank, record),
    figures: newTankFigures,
  },
];
