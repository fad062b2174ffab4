import "../../../notebooks/page/style/colour.css";
import "../../../notebooks/page/style/type.css";
import "../../../notebooks/page/style/page.css";
import "../../../notebooks/page/style/ledger.css";
import "../../../notebooks/page/style/grid.css";
import { html, render } from "lit-html";
import { openLines } from "../../../lib/lines/index.ts";
import { drawSoon } from "../../../notebooks/page/drawSoon.ts";
import { grid } from "../../../notebooks/page/grid/grid.ts";
import type { Place } from "../../../notebooks/page/grid/types.ts";
import { Typing } from "../../../notebooks/page/Typing.ts";
import { longBook, slowWords, tanks } from "./books.ts";

/** A page with nothing but a grid, for tests: what the whole page hands to it is kept in a few variables here. */
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

function draw(): void {
  if (!root || !said) return;
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
      take: (place) => {
        inHand = place;
        redraw();
      },
      panel: (line, inCase) =>
        html`<p>${line} in ${inCase}: <input aria-label="formula of ${line}" .value=${open.text(line, inCase)} /></p>`,
      says: (words) => {
        said.textContent = words;
      },
      caseActions: () => "",
      redraw,
    }),
    root,
  );
}

open.observe(redraw);
Object.assign(window, { lines: open, timesDrawn: () => drawn, redrawNow: draw });
draw();
