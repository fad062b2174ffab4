import { runStrip, tankDrawn } from "../lib/figure/index.ts";
import { isUnread, readQuantity } from "../lib/measure/index.ts";
import type { KeptRun, Setup } from "../lib/record/index.ts";
import { holdData } from "./figures/hold.ts";
import type { OpenedRun } from "./page/openedRun.ts";
import { pageWidth } from "./page/pageWidth.ts";
import type { System } from "./page/showValue.ts";

/** A run as a small strip of steel for its row on the front page. */
export function strip(notebook: OpenedRun, run: KeptRun, system: System): SVGSVGElement | undefined {
  const page = Math.max(280, pageWidth());
  const narrow = page < 1000;
  // Beside the columns of its row on a desk, edge to edge below them on anything narrower.
  const width = narrow ? page : page - 740;
  const data = holdData({ run, notebook, system, width, narrow });
  if (data.readings.length === 0) return undefined;
  const end = Math.max(...data.readings.map(({ time }) => time), 60);
  return runStrip({ ...data, span: { start: 0, end } }, { document, width, system, narrow });
}

function metres(setup: Setup, line: string): number | undefined {
  const text = setup.facts[line]?.text;
  if (!text) return undefined;
  const read = readQuantity(text, { kind: "length", unit: "in" });
  return isUnread(read) ? undefined : read.si;
}

/** A setup's tank to scale, as far as its size is known. */
export function tank(setup: Setup, system: System): SVGSVGElement | undefined {
  const length = metres(setup, "tank length");
  const width = metres(setup, "tank width");
  const level = metres(setup, "liquid depth");
  const depth = metres(setup, "tank depth");
  if (!length || !width || !depth) return undefined;
  const room = Math.min(480, Math.max(280, pageWidth()) - 64);
  return tankDrawn(
    { length, width, depth, ...(level ? { level } : {}), scaleLength: Math.max(1.2, length) },
    { document, width: room, system, narrow: room < 400 },
  );
}
