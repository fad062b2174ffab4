import type { ListedCase } from "./caseList.ts";
import { drawCaseMark } from "./caseMark.ts";
import { cutTo } from "./cutTo.ts";
import { spreadOut } from "./spreadOut.ts";
import { linePath, svg } from "./svg.ts";
import { endText, type SweepFrame, type SweepLine } from "./sweepFrame.ts";

interface End {
  readonly line: SweepLine;
  /** px of the line's last number. */
  readonly at: readonly [x: number, y: number];
}

export interface SweepEnds {
  readonly elements: readonly SVGElement[];
  /** Cases that found no room for their names beside their lines, and those without a line. */
  readonly listed: readonly ListedCase[];
}

/**
 * The mark and the name of each case at the end of its line, with a leader; where there is no room for names, marks
 * alone and the names to be listed below.
 * @example sweepEnds(frame).listed.length // 0
 */
export function sweepEnds(frame: SweepFrame): SweepEnds {
  const { x, y, size, names, top, edge } = frame;
  const ends = frame.lines
    .flatMap((line): readonly End[] => {
      const last = line.runs.at(-1)?.at(-1);
      return last ? [{ line, at: [x.at(last.x), y.at(last.y.value)] }] : [];
    })
    .sort((a, b) => a.at[1] - b.at[1]);
  const wanted = ends.map((end) => end.at[1]);
  const room = { low: top - size * 0.6, high: edge + size * 0.6 };
  const tried = (height: (end: End) => number, gap: number) => spreadOut(wanted, ends.map(height), { gap, ...room });
  const lineCount = (end: End) => names?.[end.line.mark]?.length ?? 1;
  const second = (end: End) => (endText(end.line) === "" ? 0 : 1);
  const full = names && tried((end) => size * (1 + 1.2 * (lineCount(end) - 1 + second(end))), 6);
  const named = names && (full ?? tried((end) => size * (1 + 1.2 * (lineCount(end) - 1)), 3));
  const marked = named ?? tried(() => 11, 1);
  const without = frame.lines.filter((line) => line.runs.length === 0);
  const listing = (lines: readonly SweepLine[]) =>
    lines.map((line): ListedCase => ({ mark: line.mark, name: line.name, says: endText(line) || noNumber(line) }));
  return {
    elements: ends.map((end, index) =>
      drawEnd(frame, end, marked?.[index], [
        ...(named ? (names[end.line.mark] ?? []) : []).map((words) => ({ words, colour: "var(--ink)" })),
        ...(full && second(end) ? [{ words: endText(end.line), colour: "var(--faint)" }] : []),
      ]),
    ),
    listed: listing(named ? without : frame.lines),
  };
}

const noNumber = (line: SweepLine): string => (line.runs.length === 0 ? (line.gaps[0]?.says ?? "no number") : "");

function drawEnd(
  frame: SweepFrame,
  { line, at: [endX, endY] }: End,
  labelY: number | undefined,
  words: readonly { readonly words: string; readonly colour: string }[],
): SVGElement {
  const { document, right, width, size } = frame;
  if (labelY === undefined) return drawCaseMark(document, line.mark, endX, endY);
  const markX = right + 32;
  const room = width - markX - 10;
  const first = labelY + size * (0.34 - 0.6 * (words.length - 1));
  const texts = words.map(({ words: text, colour }, index) =>
    svg(document, "text", { x: markX + 10, y: first + index * size * 1.2, "font-size": size, fill: colour }, [
      cutTo(text, size, room),
    ]),
  );
  const leader = linePath([
    [endX + 2, endY],
    [right + 20, labelY],
    [markX - 6, labelY],
  ]);
  // A line that stops short of the rule's end gets no leader, which would look like more line, but its mark.
  const tie =
    right - endX < 8
      ? svg(document, "path", {
          d: leader,
          fill: "none",
          stroke: "var(--ink)",
          "stroke-width": 0.9,
          "data-mark": "leader",
        })
      : drawCaseMark(document, line.mark, endX, endY);
  return svg(document, "g", { "data-end": line.mark + 1 }, [
    tie,
    drawCaseMark(document, line.mark, markX, labelY),
    ...texts,
  ]);
}
