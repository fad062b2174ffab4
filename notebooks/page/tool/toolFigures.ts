import type { Notebook } from "../../../lib/lines/index.ts";
import type { FigureProps } from "../figureShown.ts";
import { pageWidth, sheetWidth } from "../pageWidth.ts";
import { saveDrawing } from "../saveDrawing.ts";
import type { OpenTool } from "./keptTool.ts";
import type { BookFigureInput, BookFigureMaker } from "./types.ts";

interface Drawn {
  readonly key: string;
  readonly version: number;
  readonly drawing: SVGSVGElement | undefined;
  /** Why it could not be drawn: the rest of the page goes on. */
  readonly failed: string | undefined;
}

const drawnBefore = new WeakMap<OpenTool, Map<string, Drawn>>();

export interface ToolFiguresProps {
  readonly opened: OpenTool;
  readonly book: Notebook;
  readonly figures: ReadonlyMap<string, BookFigureMaker>;
  readonly input: Pick<BookFigureInput, "open" | "system" | "shownCase">;
  readonly busy: boolean;
  readonly invented: boolean;
  /** The answer as one text: the title of a saved picture. */
  readonly answer: () => string;
}

/** Draws a figure, or gives what stood before where nothing has changed, and while lines are worked. */
function drawnOnce(props: ToolFiguresProps, name: string, maker: BookFigureMaker, input: BookFigureInput): Drawn {
  const all = drawnBefore.get(props.opened) ?? new Map<string, Drawn>();
  drawnBefore.set(props.opened, all);
  const before = all.get(name);
  const version = props.opened.kept.version();
  const key = JSON.stringify([input.width, input.system, input.shownCase, input.open.cases()]);
  if (before?.key === key && (before.version === version || (props.busy && before.drawing))) return before;
  const now = { key, version: props.busy ? -1 : version, ...tried(maker, input) };
  all.set(name, now);
  return now;
}

function tried(maker: BookFigureMaker, input: BookFigureInput): Pick<Drawn, "drawing" | "failed"> {
  try {
    return { drawing: maker.draw(input), failed: undefined };
  } catch (error) {
    return { drawing: undefined, failed: error instanceof Error ? error.message : String(error) };
  }
}

/** The figures that a notebook of the tool names, at the page's width, numbered as they come. */
export function toolFigures(props: ToolFiguresProps): readonly FigureProps[] {
  const { book, figures, busy, answer } = props;
  const width = pageWidth();
  const input = { ...props.input, width, narrow: width < 640 };
  let number = 0;
  return (book.figures ?? []).flatMap((name): FigureProps[] => {
    const maker = typeof name === "string" ? figures.get(name) : undefined;
    if (!maker || typeof name !== "string") return [];
    const beside = maker.beside?.(input);
    // On a desk the figure leaves a third of the page to what stands beside it.
    const whole = maker.inset ? sheetWidth() : width;
    const room = beside && width >= 1100 ? Math.round(0.64 * whole) : whole;
    const { drawing, failed } = drawnOnce(props, name, maker, { ...input, width: room });
    if (!drawing && !beside && failed === undefined) return [];
    if (drawing) number += 1;
    const caption = maker.caption(input);
    const picture = () => {
      const desk = maker.draw({ ...input, width: 1200, narrow: false });
      return {
        drawing: (desk ?? drawing) as SVGSVGElement,
        figure: maker.title,
        title: answer() || book.asks,
        of: { name: book.name ?? book.asks, foot: [`${book.asks} ${caption}`], invented: props.invented },
      };
    };
    return [
      {
        number,
        title: maker.title,
        caption,
        drawing,
        failed,
        stale: busy,
        beside,
        inset: maker.inset === true,
        cautions: maker.cautions?.(input) ?? [],
        savePng: () => void saveDrawing(picture(), "png"),
        saveSvg: () => void saveDrawing(picture(), "svg"),
      },
    ];
  });
}
