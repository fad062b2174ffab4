import { shownWaterPoints } from "./drawWaterMarks.ts";
import type { FigureUnits } from "./figureUnits.ts";
import { type Label, type PlacedLabel, placeLabels, type Segment, type Spot } from "./placeLabels.ts";
import { spreadText } from "./spread.ts";
import type { Box, CoursePoint, WaterGoneData } from "./types.ts";
import { minutesSeconds, shortened } from "./words.ts";

/** Where "water gone" lies, px. */
export interface Placing {
  readonly document: Document;
  readonly units: FigureUnits;
  readonly narrow: boolean;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly zero: number;
  readonly x: (seconds: number) => number;
  readonly y: (kilograms: number) => number;
  /** px where the rule changes its scale. */
  readonly breaks: readonly number[];
}

type Corner = readonly [x: number, y: number];

/** The slope as the page writes it, with its 95 % spread. */
export const slopeText = (data: WaterGoneData, units: FigureUnits): string =>
  spreadText(data.slope, { mass: 1, time: -1 }, units.waterRate.name, units.system);

/**
 * The slope's triangle, clear below the line or above it, and the labels of triangle, line and untrusted readings.
 * No triangle where the line is too short or too flat for one.
 */
export function placeSlope(
  data: WaterGoneData,
  line: readonly CoursePoint[],
  placing: Placing,
): { readonly triangle?: readonly Corner[]; readonly labels: readonly PlacedLabel[] } {
  const { x, y, size, left, right, top, bottom } = placing;
  const shown = shownWaterPoints(data.points, placing);
  const boxes = shown.map((one): Box => ({ x: x(one.time) - 4, y: y(one.gone) - 4, width: 8, height: 8 }));
  const triangle = slopeTriangle(line, placing);
  const text = slopeText(data, placing.units);
  const labels: Label[] = [];
  if (triangle) {
    const [, [ex, ey], [, hy]] = triangle;
    const down = hy < ey;
    labels.push({
      lines: [{ text, weight: 600 }],
      size,
      spots: [
        { x: ex + 8, y: (ey + hy) / 2, side: "level", anchor: "start" },
        { x: ex, y: ey + (down ? 6 : -6), side: down ? "below" : "above", anchor: "end" },
        { x: ex, y: ey + (down ? 22 : -22), side: down ? "below" : "above", anchor: "middle" },
        ...corners(placing),
      ],
    });
  } else labels.push({ lines: [{ text, weight: 600 }], size, spots: corners(placing) });
  for (const one of shown.filter((point) => point.weight < 0.5).slice(0, placing.narrow ? 2 : 5)) {
    const time = minutesSeconds(one.time - placing.zero);
    const reason = one.because ? `: ${shortened(one.because, placing.narrow ? 24 : 40)}` : ", set apart";
    labels.push({ lines: [{ text: `${time}${reason}` }], size, spots: beside(x(one.time), y(one.gone)) });
  }
  labels.push(lineLabel(line, placing));
  const strokes = (pick: (one: CoursePoint) => number): Segment[] =>
    line.slice(1).map((one, index) => {
      const from = line[index] ?? one;
      return [x(from.time), y(pick(from)), x(one.time), y(pick(one))];
    });
  const sides = triangle
    ? triangle.slice(1).map((corner, index): Segment => {
        const from = triangle[index] ?? corner;
        return [...from, ...corner] as const;
      })
    : [];
  const broken = placing.breaks.map((at): Segment => [left, at, right, at]);
  const placed = placeLabels(labels, {
    bounds: { x: left + 4, y: top + 2, width: right + 12 - left, height: bottom - top - 4 },
    boxes,
    segments: [
      ...strokes((one) => one.value),
      ...strokes((one) => one.low),
      ...strokes((one) => one.high),
      ...sides,
      ...broken,
    ],
  });
  return { ...(triangle ? { triangle } : {}), labels: placed };
}

type Triangle = readonly [Corner, Corner, Corner, Corner];

// A copy of the line's longest straight piece, moved down clear of the readings' bars: run, rise, and back.
function slopeTriangle(line: readonly CoursePoint[], { x, y, bottom }: Placing): Triangle | undefined {
  const pieces = line.slice(1).map((one, index) => ({ from: line[index] ?? one, to: one }));
  const longest = pieces.sort((a, b) => b.to.time - b.from.time - (a.to.time - a.from.time))[0];
  if (!longest) return undefined;
  const { from, to } = longest;
  const at = (share: number): CoursePoint["value"] => from.value + (to.value - from.value) * share;
  const time = (share: number) => from.time + (to.time - from.time) * share;
  const [begin, finish] = [0.52, 0.8];
  const [x1, x2] = [x(time(begin)), x(time(finish))];
  const rise = Math.abs(y(at(begin)) - y(at(finish)));
  if (x2 - x1 < 24 || rise < 8) return undefined;
  const drop = 34;
  const [y1, y2] = [y(at(begin)) + drop, y(at(finish)) + drop];
  if (Math.max(y1, y2) > bottom - 6) return undefined;
  return [
    [x1, y1],
    [x2, y1],
    [x2, y2],
    [x1, y1],
  ];
}

const corners = ({ left, right, top, bottom, size }: Placing): readonly Spot[] =>
  [8, 32, 60, 90].flatMap((away): Spot[] => [
    { x: right - 8, y: bottom - size - away, side: "above", anchor: "end" },
    { x: left + 16, y: top + away, side: "below", anchor: "start" },
    { x: right - 8, y: top + away, side: "below", anchor: "end" },
    { x: left + 16, y: bottom - away, side: "above", anchor: "start" },
  ]);

const beside = (x: number, y: number): readonly Spot[] =>
  [0, -24, 24, -48, 48, -76, 76].flatMap((dy) =>
    [28, -28, 60, -60].map(
      (dx): Spot => ({
        x: x + dx,
        y: y + dy,
        side: "level",
        anchor: dx > 0 ? "start" : "end",
        leader: [
          [x + Math.sign(dx) * 6, y + Math.sign(dy) * 5],
          [x + dx - Math.sign(dx) * 5, y + dy],
        ],
      }),
    ),
  );

function lineLabel(line: readonly CoursePoint[], { x, y, size }: Placing): Label {
  const colour = "var(--fitted)";
  const spots = [0.3, 0.2, 0.4, 0.5, 0.6].flatMap((share): Spot[] => {
    const last = line[line.length - 1];
    const first = line[0];
    if (!first || !last) return [];
    const time = first.time + (last.time - first.time) * share;
    const after = line.findIndex((one) => one.time >= time);
    const to = line[Math.max(1, after)] ?? last;
    const from = line[Math.max(1, after) - 1] ?? first;
    const part = to.time > from.time ? (time - from.time) / (to.time - from.time) : 0;
    const [px, py] = [x(time), y(from.value + (to.value - from.value) * part)];
    return [40, 60, 84, 110].map((dy) => ({
      x: px - 20,
      y: py - dy,
      side: "level",
      anchor: "end",
      leader: [
        [px, py - 3],
        [px - 10, py - dy],
        [px - 16, py - dy],
      ],
    }));
  });
  return {
    lines: [
      { text: "fitted line", colour },
      { text: "and its 95 % spread", colour },
    ],
    size,
    spots,
  };
}
