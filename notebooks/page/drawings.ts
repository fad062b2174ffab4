import type { KeptRun } from "../../lib/record/index.ts";
import type { FigureProps } from "./figureShown.ts";
import type { OpenedRun } from "./openedRun.ts";
import { pageWidth } from "./pageWidth.ts";
import { runPictured, saveDrawing } from "./saveDrawing.ts";
import type { System } from "./showValue.ts";

export interface FigureInput {
  readonly run: KeptRun;
  readonly notebook: OpenedRun;
  readonly system: System;
  readonly width: number;
  readonly narrow: boolean;
}

/** A figure that a notebook names: how it is titled, said and drawn. `undefined` while there is nothing to draw. */
export interface FigureMaker {
  readonly title: string;
  readonly caption: (input: FigureInput) => string;
  readonly cautions?: (input: FigureInput) => readonly string[];
  readonly draw: (input: FigureInput) => SVGSVGElement | undefined;
  /** What stands beside the figure on a desk, and below it on anything narrower. */
  readonly beside?: (input: FigureInput) => Beside | undefined;
}

/** A ranked list beside a figure. */
export interface Beside {
  readonly title: string;
  readonly items: readonly { readonly what: string; readonly how: string; readonly gain: string }[];
}

export interface DrawingsProps {
  readonly names: readonly string[];
  readonly figures: ReadonlyMap<string, FigureMaker>;
  readonly run: KeptRun;
  readonly notebook: OpenedRun;
  readonly system: System;
  readonly answer: () => string;
}

interface Drawn {
  readonly version: number;
  readonly log: unknown;
  readonly width: number;
  readonly system: System;
  readonly drawing: SVGSVGElement | undefined;
  /** Why it could not be drawn: the rest of the page goes on. */
  readonly failed?: string;
}

const drawn = new WeakMap<OpenedRun, Map<string, Drawn>>();

function tried(maker: FigureMaker, input: FigureInput): Pick<Drawn, "drawing" | "failed"> {
  try {
    return { drawing: maker.draw(input) };
  } catch (error) {
    return { drawing: undefined, failed: error instanceof Error ? error.message : String(error) };
  }
}

/** Draws a figure, or gives the drawing from before where nothing it is made of has changed. */
function drawnOnce(
  name: string,
  maker: FigureMaker,
  input: FigureInput,
): Pick<Drawn, "drawing" | "failed"> & { readonly stale?: boolean } {
  const { notebook, run, width, system } = input;
  const all = drawn.get(notebook) ?? new Map<string, Drawn>();
  drawn.set(notebook, all);
  const before = all.get(name);
  const version = notebook.version();
  const same = before?.width === width && before.system === system;
  // While lines are worked, half of what is drawn would be new and half of it old: the whole stays as it was.
  if (same && before.drawing && notebook.busy()) return { drawing: before.drawing, stale: before.version !== version };
  if (before?.version === version && before.log === run.log && before.width === width && before.system === system)
    return before;
  const now = { version, log: run.log, width, system, ...tried(maker, input) };
  all.set(name, now);
  return now;
}

/** Draws a notebook's figures at the page's width, numbered as they come. */
export function drawings({ names, figures, run, notebook, system, answer }: DrawingsProps): readonly FigureProps[] {
  // A window that is closing or hidden may say it is a pixel wide.
  const width = pageWidth();
  const input = { run, notebook, system, width, narrow: width < 640 };
  let number = 0;
  return names.flatMap((name) => {
    const maker = figures.get(name);
    if (!maker) return [];
    const beside = maker.beside?.(input);
    // On a desk the figure leaves a third of the page to what stands beside it.
    const room = beside && width >= 1100 ? Math.round(0.64 * width) : width;
    const { drawing, failed, stale } = drawnOnce(name, maker, { ...input, width: room });
    if (!drawing && !beside && failed === undefined) return [];
    if (drawing) number += 1;
    const picture = () => {
      const desk = maker.draw({ ...input, width: 1200, narrow: false });
      return {
        drawing: (desk ?? drawing) as SVGSVGElement,
        figure: maker.title,
        title: answer(),
        of: runPictured(run),
      };
    };
    return [
      {
        number,
        title: maker.title,
        caption: maker.caption(input),
        drawing,
        failed,
        stale: stale === true,
        beside,
        cautions: maker.cautions?.(input) ?? [],
        savePng: () => void saveDrawing(picture(), "png"),
        saveSvg: () => void saveDrawing(picture(), "svg"),
      },
    ];
  });
}
