import { drawCaseMark } from "./caseMark.ts";
import { cutTo } from "./cutTo.ts";
import { intervalBar } from "./intervalBar.ts";
import { svg } from "./svg.ts";
import { gapRow, type SweepFrame, type SweepGap, type SweepLine } from "./sweepFrame.ts";
import { textWidth } from "./textWidth.ts";
import type { Box } from "./types.ts";

/**
 * Where a case has no number: a row for each such case below the plot, its stretches as thin broken bars and the word
 * why over the longest.
 * @example root.append(...drawGaps(frame))
 */
export function drawGaps(frame: SweepFrame): readonly SVGElement[] {
  const gapped = frame.lines.filter((one) => one.gaps.length > 0);
  return gapped.map((line, row) => drawRow(frame, line, rowTop(frame, row)));
}

/** Boxes that the words of those rows take. */
export function gapBoxes(frame: SweepFrame): readonly Box[] {
  const gapped = frame.lines.filter((one) => one.gaps.length > 0);
  return gapped.map((line, row) => {
    const { start, length } = wordsOf(frame, line);
    return { x: start, y: rowTop(frame, row), width: length, height: frame.size };
  });
}

const rowTop = ({ bottom, size }: SweepFrame, row: number): number => bottom + row * gapRow(size) + 4;

function wordsOf(frame: SweepFrame, { gaps }: SweepLine) {
  const { size, x, left, right } = frame;
  const longest = gaps.reduce((best, gap) => (gap.to - gap.from > best.to - best.from ? gap : best));
  const marked = frame.lines.length > 1 ? 14 : 0;
  const words = cutTo(longest.says, size, right - left - marked);
  const length = textWidth(words, size) + marked;
  const middle = (x.at(longest.from) + x.at(longest.to)) / 2;
  return { words, marked, length, start: Math.max(left, Math.min(middle - length / 2, right - length)) };
}

function drawRow(frame: SweepFrame, line: SweepLine, top: number): SVGElement {
  const { document, size } = frame;
  const across = top + size + 8;
  const bars = line.gaps.map((gap) => {
    const [from, to] = endsOf(frame, gap);
    return svg(document, "path", {
      d: intervalBar({ from, to, across, tick: 3 }),
      fill: "none",
      stroke: "var(--ink)",
      "stroke-width": 1,
      "stroke-dasharray": "3 2",
      "data-mark": "gap",
    });
  });
  const { words, marked, start } = wordsOf(frame, line);
  return svg(document, "g", { "data-gaps": line.mark + 1 }, [
    ...bars,
    ...(marked > 0 ? [drawCaseMark(document, line.mark, start + 4, top + size * 0.48)] : []),
    svg(document, "text", { x: start + marked, y: top + size * 0.82, "font-size": size }, [words]),
  ]);
}

// A stretch of no length still shows.
function endsOf({ x, left, right }: SweepFrame, gap: SweepGap): readonly [number, number] {
  const [from, to] = [x.at(gap.from), x.at(gap.to)];
  if (to - from >= 6) return [from, to];
  const middle = Math.min(Math.max((from + to) / 2, left + 3), right - 3);
  return [middle - 3, middle + 3];
}
