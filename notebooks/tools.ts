import { compareFigures } from "./compare/figures.ts";
import { startFrom } from "./compare/start.ts";
import { supposedChanges } from "./compare/supposed.ts";
import { compareExtras } from "./compare/wins.ts";
import compareSetups from "./compareSetups.ts";
import { holdExtras } from "./hold/extras.ts";
import { holdFigures } from "./hold/figures.ts";
import { startHold } from "./hold/start.ts";
import { newTankExtras } from "./newTank/extras.ts";
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
    figures: holdFigures,
    extras: holdExtras,
  },
  {
    book: compareSetups,
    start: (record) => startFrom(compareSetups, record, supposedChanges(record)),
    figures: compareFigures,
    extras: compareExtras,
  },
  {
    book: newTank,
    start: (record) => startNewTank(newTank, record),
    figures: newTankFigures,
    extras: newTankExtras,
  },
];
