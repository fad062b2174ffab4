import "../../../notebooks/page/style/colour.css";
import "../../../notebooks/page/style/type.css";
import "../../../notebooks/page/style/page.css";
import "../../../notebooks/page/style/ledger.css";
import "../../../notebooks/page/style/grid.css";
import "../../../notebooks/page/style/inHand.css";
import { render } from "lit-html";
import { functions, namesOf, openLines } from "../../../lib/lines/index.ts";
import { drawSoon } from "../../../notebooks/page/drawSoon.ts";
import { grid } from "../../../notebooks/page/grid/grid.ts";
import type { Place } from "../../../notebooks/page/grid/types.ts";
import { lineInHand } from "../../../notebooks/page/inHand/lineInHand.ts";
import { Typing } from "../../../notebooks/page/Typing.ts";
import { longBook, slowWords, tanks } from "./books.ts";

/** A page with nothing but a grid and its line in hand, for tests: what the whole page hands to it is kept in a few variables here. */
const root = document.querySelector<HTMLElement>("#page");
const said = document.querySelector<HTMLElement>("#said");
if (!root || !said) throw new Error("missing #page or #said; the page's own HTML has them");

const long = /^#long=(\d+)$/.exec(location.hash)?.[1];
const open = openLines(long === undefined ? tanks : longBook(Number(long), 6), { vocabulary: slowWords });
let inHand: Place | undefined;
let shownCase = "";
let drawn = 0;

const redraw = drawSoon(draw);
const typing = new Typing(redraw);

const say = (words: string): void => {
  if (said) said.textContent = words;
};
const take = (place: Place | undefined): void => {
  inHand = place;
  redraw();
};

function draw(): void {
  if (!root) return;
  drawn += 1;
  render(
    grid({
      open,
      system: "US",
      typing,
      shownCase,
      showCase: (name) => {
        shownCase = name;
        redraw();
      },
      inHand,
      take,
      panel: (line, inCase) =>
        lineInHand({
          open,
          line,
          inCase,
          system: "US",
          names: namesOf(open.names(), [...functions, ...slowWords.functions]),
          close: () => take(undefined),
          goTo: (next) => take({ line: next, inCase }),
          says: say,
          redraw,
        }),
      says: say,
      caseActions: () => "",
      redraw,
    }),
    root,
  );
}

open.observe(redraw);
Object.assign(window, { lines: open, timesDrawn: () => drawn, redrawNow: draw });
draw();
