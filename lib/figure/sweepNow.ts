import { drawCaseMark } from "./caseMark.ts";
import { dropLine } from "./dropLine.ts";
import { spreadOut } from "./spreadOut.ts";
import { linePath, svg } from "./svg.ts";
import { isOnRule, type SweepFrame } from "./sweepFrame.ts";
import { gapBoxes } from "./sweepGaps.ts";
import { textWidth } from "./textWidth.ts";

interface Now {
  readonly at: number;
  readonly text: string;
  readonly marks: readonly number[];
}

/**
 * Where the given stands now: a dropped line for each amount, named above the plot with the marks of its cases where
 * they differ, and each case's mark on its line there. An amount off the rule is left out.
 * @example root.append(...drawNow(frame))
 */
export function drawNow(frame: SweepFrame): readonly SVGElement[] {
  const { document, x, y, top, edge, size } = frame;
  const nows = nowsOf(frame);
  const placed = placeNames(frame, nows);
  const boxes = gapBoxes(frame);
  const stroke = { fill: "none", stroke: "var(--ink)", "stroke-width": 0.9 };
  const rowBottom = top - 4;
  const names = nows.map((now, index) => {
    const name = placed[index];
    const line = linePath([
      ...(name && Math.abs(name.middle - now.at) > 1 ? [[name.middle, rowBottom - size * 0.5] as const] : []),
      [now.at, rowBottom],
    ]);
    const down = dropLine(now.at, rowBottom, edge, boxes);
    const words =
      name && name.text !== ""
        ? [
            svg(
              document,
              "text",
              { x: name.start + marksWidth(name.marks), y: rowBottom - size * 0.75, "font-size": size },
              [name.text],
            ),
          ]
        : [];
    const marks = (name?.marks ?? []).map((mark, place) =>
      drawCaseMark(document, mark, (name?.start ?? 0) + 5 + place * 12, rowBottom - size * 1.1),
    );
    return svg(document, "g", { "data-now": index + 1 }, [
      svg(document, "path", { d: line + down, ...stroke }),
      ...marks,
      ...words,
    ]);
  });
  const wordless = placed.length > 0 && placed.every((one) => one.text === "");
  const word = wordless
    ? [svg(document, "text", { x: 4, y: rowBottom - size * 0.75, "font-size": size }, ["now"])]
    : [];
  return names.concat(
    word,
    frame.lines.flatMap(({ mark, present }) =>
      present?.y && isOnRule(frame, present.x)
        ? [
            svg(document, "g", { "data-mark": "now" }, [
              drawCaseMark(document, mark, x.at(present.x), y.at(present.y.value), 4.5),
            ]),
          ]
        : [],
    ),
  );
}

/** Amounts that fall on one px are one. */
function nowsOf(frame: SweepFrame): readonly Now[] {
  const nows: { at: number; text: string; marks: number[] }[] = [];
  for (const { mark, present } of frame.lines) {
    if (!present || !isOnRule(frame, present.x)) continue;
    const at = frame.x.at(present.x);
    const same = nows.find((one) => Math.abs(one.at - at) < 1);
    if (same) same.marks.push(mark);
    else nows.push({ at, text: `now ${present.text}`, marks: [mark] });
  }
  return nows.sort((a, b) => a.at - b.at);
}

// Marks without words share one word, at the left.
const wordRoom = ({ size }: SweepFrame): number => 4 + textWidth("now", size) + 10;

const marksWidth = (marks: readonly number[]): number => (marks.length > 0 ? marks.length * 12 + 3 : 0);

interface PlacedNow {
  readonly start: number;
  readonly middle: number;
  readonly text: string;
  readonly marks: readonly number[];
}

/** Names side by side above the plot; their marks alone where words do not fit; nothing where even those do not. */
function placeNames(frame: SweepFrame, nows: readonly Now[]): readonly PlacedNow[] {
  const marked = nows.length > 1;
  for (const worded of [true, false]) {
    const shown = nows.map((now) => ({ text: worded ? now.text : "", marks: marked ? now.marks : [] }));
    const sizes = shown.map(({ text, marks }) => marksWidth(marks) + textWidth(text, frame.size));
    const wanted = nows.map((now) => now.at);
    const centres = spreadOut(wanted, sizes, {
      gap: worded ? 12 : 4,
      low: worded ? 2 : wordRoom(frame),
      high: frame.width - 2,
    });
    // Words that were pushed far from their line would need leaders through each other.
    const near = centres?.every((centre, index) => Math.abs(centre - (wanted[index] ?? 0)) < 90);
    if (centres && (near || !worded))
      return shown.map((one, index) => ({
        ...one,
        start: (centres[index] ?? 0) - (sizes[index] ?? 0) / 2,
        middle: centres[index] ?? 0,
      }));
  }
  return [];
}
