import type { HeatLabel } from "./heatSplit.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";

interface Run {
  readonly text: string;
  readonly size: number;
  readonly weight: number;
}

export interface HeatText {
  /** Lines of one run, or of a number and its smaller spread. */
  readonly lines: readonly (readonly Run[])[];
  readonly width: number;
  readonly height: number;
  readonly leading: number;
}

const between = 4;

/** A label of a piece laid out: a name, then the number and, smaller, its spread; the spread goes down a line past `room` px. */
export function heatText(label: HeatLabel, size: number, room = Number.POSITIVE_INFINITY): HeatText {
  const plain = (text: string): Run => ({ text, size, weight: 400 });
  const number: Run = { text: label.number ?? "", size: size + 2, weight: 600 };
  const spread = plain(label.spread ?? "");
  const amount = label.number === undefined ? [] : [[number, spread]];
  const width = (line: readonly Run[]): number =>
    line.reduce((sum, run, index) => sum + textWidth(run.text, run.size, run.weight) + (index > 0 ? between : 0), 0);
  const lines = [[plain(label.name)], ...amount, ...label.words.map((text) => [plain(text)])].flatMap((line) =>
    line.length > 1 && width(line) > room ? line.map((run) => [run]) : [line],
  );
  const leading = size * 1.3;
  return {
    lines,
    width: Math.max(0, ...lines.map(width)),
    height: size + leading * (lines.length - 1),
    leading,
  };
}

/** The label with its box's upper edge at `y`, from `x` on or centred on it. */
export function drawHeatText(
  document: Document,
  text: HeatText,
  { x, y, anchor }: { readonly x: number; readonly y: number; readonly anchor: "start" | "middle" },
): readonly SVGElement[] {
  const size = text.lines[0]?.[0]?.size ?? 0;
  return text.lines.map((line, index) =>
    svg(
      document,
      "text",
      { x, y: y + size * 0.82 + text.leading * index, "text-anchor": anchor, "font-size": size, fill: "var(--ink)" },
      line.map((run, place) => {
        const words = place > 0 ? ` ${run.text}` : run.text;
        return run.weight === 400
          ? words
          : svg(document, "tspan", { "font-size": run.size, "font-weight": run.weight }, [words]);
      }),
    ),
  );
}
