import { html, type TemplateResult } from "lit-html";
import { lineAcrossCases, lineAgainstLine, sweepDrawn } from "../../../lib/figure/index.ts";
import type { Lines, Notebook, OwnFigure, Result } from "../../../lib/lines/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import type { FigureProps } from "../figureShown.ts";
import { sheetWidth } from "../pageWidth.ts";
import { saveDrawing } from "../saveDrawing.ts";
import { type System, unitOfAmount, valueIn } from "../showValue.ts";
import { wordsOf } from "./form.ts";
import type { SweepShown, Sweeps } from "./sweeps.ts";

export interface OwnFiguresProps {
  readonly open: Lines;
  readonly book: Notebook;
  readonly system: System;
  readonly sweeps: Sweeps;
  /** Rises whenever a line came to something else. */
  readonly version: number;
  readonly busy: boolean;
  readonly invented: boolean;
  /** The answer as one text: the title of a saved picture. */
  readonly answer: () => string;
  readonly remove: (at: number) => void;
  /** Number of the first figure. */
  readonly from?: number;
}

interface Size {
  readonly document: Document;
  readonly width: number;
  readonly system: System;
}

const nameOf = (name: string): string => name || "as it is";

function says(result: Result): string {
  if (result.state === "waits") return `waits for ${result.for}`;
  if (result.state === "stopped") return result.says;
  return result.state === "settled" ? "no number" : result.state;
}

/** The unit that a line is drawn in: its own, or the usual one of what it came to in some case. */
function unitIn(open: Lines, line: string, values: readonly (Value | undefined)[], system: System): string {
  const value = values.find((one) => one !== undefined);
  return value ? unitOfAmount(open.line(line), value, system) : "";
}

function shownCases(open: Lines) {
  return open.cases().filter(({ hidden }) => !hidden);
}

function across({ open }: OwnFiguresProps, line: string, size: Size): SVGSVGElement {
  const cases = shownCases(open).map(({ name }) => {
    const result = open.result(line, name);
    const value = valueIn(result);
    return { name: nameOf(name), ...(value ? { value } : { says: says(result) }) };
  });
  const unit = unitIn(
    open,
    line,
    cases.map((one) => ("value" in one ? one.value : undefined)),
    size.system,
  );
  const base = shownCases(open).find((one) => one.base)?.name;
  return lineAcrossCases(
    { line, unit, cases, ...(cases.length > 1 && base !== undefined && { base: nameOf(base) }) },
    size,
  );
}

function against({ open }: OwnFiguresProps, line: string, other: string, size: Size): SVGSVGElement {
  const cases = shownCases(open).map(({ name }) => {
    const [up, along] = [open.result(line, name), open.result(other, name)];
    const [y, x] = [valueIn(up), valueIn(along)];
    const missing = !y ? says(up) : !x ? says(along) : undefined;
    return { name: nameOf(name), ...(x && { x }), ...(y && { y }), ...(missing !== undefined && { says: missing }) };
  });
  return lineAgainstLine(
    {
      line,
      unit: unitIn(
        open,
        line,
        cases.map(({ y }) => y),
        size.system,
      ),
      against: other,
      againstUnit: unitIn(
        open,
        other,
        cases.map(({ x }) => x),
        size.system,
      ),
      cases,
    },
    size,
  );
}

function swept(
  { open }: OwnFiguresProps,
  line: string,
  by: string,
  { swept: lines }: SweepShown,
  size: Size,
): SVGSVGElement | undefined {
  if (!lines) return undefined;
  const now = new Map(shownCases(open).map(({ name }) => [name, valueIn(open.result(by, name))]));
  const given = [...now.values()].find((value) => value !== undefined);
  const cases = lines.map(({ inCase, points }) => {
    const x = now.get(inCase)?.value;
    const y = valueIn(open.result(line, inCase));
    return { name: nameOf(inCase), points, ...(x !== undefined && { present: { x, ...(y && { y }) } }) };
  });
  const values = lines.flatMap(({ points }) => points.map(({ y }) => y));
  return sweepDrawn(
    {
      line,
      unit: unitIn(open, line, values, size.system),
      by,
      byUnit: given ? unitOfAmount(open.line(by), given, size.system) : (open.line(by).unit ?? ""),
      ...(given && { byDimension: given.dimension }),
      cases,
    },
    size,
  );
}

/** What a figure is called and what there is to see, in words. */
function inWords(figure: OwnFigure): { readonly title: string; readonly caption: string } {
  const { line } = figure;
  if (figure.draws === "a sweep")
    return {
      title: figure.title ?? `${line} over ${figure.by}`,
      caption: `${figure.by} from ${figure.from} to ${figure.to}, all else as it stands in each case; the fill is the 95 % spread.`,
    };
  if (figure.draws === "a line against another")
    return {
      title: figure.title ?? `${line} against ${figure.against}`,
      caption: "One mark to a case, with the 95 % of both.",
    };
  return { title: figure.title ?? `${line} in each case`, caption: "The number of each case with its 95 % interval." };
}

function drawn(
  props: OwnFiguresProps,
  figure: OwnFigure,
  sweep: SweepShown | undefined,
  size: Size,
): SVGSVGElement | undefined {
  if (figure.draws === "a sweep") return sweep && swept(props, figure.line, figure.by, sweep, size);
  if (figure.draws === "a line against another") return against(props, figure.line, figure.against, size);
  return across(props, figure.line, size);
}

function waiting({ share, stopped, stop, again }: SweepShown): TemplateResult | undefined {
  if (stopped)
    return html`<p class="small" role="status">stopped early. <button class="word" type="button" @click=${again}>work it again</button></p>`;
  if (share === undefined) return undefined;
  return html`<p class="small" role="status">working: ${Math.round(share * 100)} % of the amounts. <button class="word" type="button" @click=${stop}>stop</button></p>`;
}

const cache = new WeakMap<Sweeps, Map<string, { readonly key: string; readonly drawing: SVGSVGElement | undefined }>>();

/** Whether a notebook has a figure of the maker's own. */
export const hasOwnFigure = ({ figures = [] }: Notebook): boolean => figures.some((one) => typeof one !== "string");

/** The figures that the maker added to a notebook, numbered as they come. */
export function ownFigures(props: OwnFiguresProps): readonly FigureProps[] {
  const { open, book, system, sweeps, version, busy, from = 1 } = props;
  const width = sheetWidth();
  const all = cache.get(sweeps) ?? new Map();
  cache.set(sweeps, all);
  let number = from - 1;
  return (book.figures ?? []).flatMap((figure, at): FigureProps[] => {
    if (typeof figure === "string") return [];
    const { title, caption } = inWords(figure);
    const remove = html`<button class="word" type="button" aria-label=${`remove the figure ${title}`} @click=${() => props.remove(at)}>remove</button>`;
    const shown = {
      title,
      caption,
      beside: undefined,
      inset: true,
      cautions: [],
      tools: remove,
      savePng: () => {},
      saveSvg: () => {},
    };
    let sweep: SweepShown | undefined;
    try {
      sweep = figure.draws === "a sweep" ? sweeps.of(figure, version, busy) : undefined;
      if (sweep?.failed !== undefined) throw new Error(sweep.failed);
      const key = JSON.stringify([
        figure,
        width,
        system,
        sweep ? sweep.stale : version,
        sweep?.swept?.length,
        shownCases(open),
      ]);
      const before = all.get(String(at));
      const keep = before && (busy || sweep?.stale || (before.key === key && !sweep));
      const drawing =
        keep && before.drawing ? before.drawing : drawn(props, figure, sweep, { document, width, system });
      // What is drawn while lines are worked holds only until they have settled.
      all.set(String(at), { key: busy ? "" : key, drawing });
      if (drawing) number += 1;
      const picture = () => {
        const desk = drawn(props, figure, sweep, { document, width: 1200, system });
        return {
          drawing: (desk ?? drawing) as SVGSVGElement,
          figure: title,
          title: props.answer() || book.asks,
          of: { name: book.asks, foot: [`${book.asks} ${caption}`], invented: props.invented },
        };
      };
      return [
        {
          ...shown,
          number,
          drawing,
          failed: undefined,
          stale: busy || sweep?.stale === true,
          waiting: sweep && waiting(sweep),
          savePng: () => void saveDrawing(picture(), "png"),
          saveSvg: () => void saveDrawing(picture(), "svg"),
        },
      ];
    } catch (error) {
      return [{ ...shown, number, drawing: undefined, failed: wordsOf(error), stale: false }];
    }
  });
}
