import { limitText } from "./drawPlate.ts";
import type { HoldFrame } from "./holdFrame.ts";
import { marginLabels } from "./holdLabels.ts";
import { type Label, type PlacedLabel, placeLabels, type Segment, type Spot } from "./placeLabels.ts";
import type { PlannedHoldData } from "./planTypes.ts";
import type { CoursePoint } from "./types.ts";
import { holdsWords } from "./words.ts";

/**
 * What is named inside the plate and in its margin, each where it meets nothing: both spreads, the band, the start. What
 * finds no room is left out.
 * @example plannedHoldLabels(data, frame).map((one) => one.label.lines[0].text) // ["with the table", …]
 */
export function plannedHoldLabels(data: PlannedHoldData, frame: HoldFrame): readonly PlacedLabel[] {
  const { narrow, size } = frame;
  const { temperature } = frame.units;
  const { corrected, nobody, target, holds, start } = data;
  const colour = "var(--fitted)";
  const at = (course: readonly CoursePoint[], share: number) => course[Math.floor(share * (course.length - 1))];
  const count = (share: number) => `${holdsWords(share)} in 100 hold`;
  const words = {
    corrected: [
      { text: narrow ? "with the table" : "with the table followed", colour },
      { text: count(holds.corrected), colour, weight: 600 },
    ],
    nobody: [{ text: "nobody correcting" }, { text: count(holds.nobody), weight: 600 }],
  };
  const inside = (course: readonly CoursePoint[], edge: "low" | "high" | "value"): readonly Spot[] =>
    [0.55, 0.45, 0.65, 0.35, 0.75, 0.85].flatMap((share) => {
      const one = at(course, share);
      if (!one) return [];
      const [x, y] = [frame.x(one.time), frame.y(one[edge])];
      const way = edge === "low" ? 1 : -1;
      return [30, 50, 76, 110].map(
        (away): Spot => ({
          x: x + 12,
          y: y + way * away,
          side: way > 0 ? "below" : "above",
          anchor: "start",
          leader: [
            [x, y],
            [x + 9, y + way * (away - 2)],
          ],
        }),
      );
    });
  const margin = (y: number): Spot => ({ x: frame.right + marginLabels, y, side: "level", anchor: "start" });
  const last = corrected.at(-1);
  const outside = (y: number, from: number): Spot => ({
    ...margin(y),
    leader: [
      [frame.right + 2, from],
      [frame.right + 22, y],
      [frame.right + marginLabels - 5, y],
    ],
  });
  const lastNobody = nobody.at(-1);
  const beside: Label[] = narrow
    ? []
    : [
        {
          lines: [
            {
              text: `${limitText(target.low, temperature)}–${limitText(target.high, temperature)} ${temperature.name}`,
              weight: 600,
            },
            { text: "target band" },
          ],
          size,
          spots: [margin((frame.y(target.high) + frame.y(target.low)) / 2)],
        },
      ];
  const bandNarrow: Label[] = narrow
    ? [
        {
          lines: [{ text: "target band", weight: 600 }],
          size,
          spots: [0.05, 0.3, 0.6].flatMap((share): Spot[] => {
            const x = frame.left + share * (frame.right - frame.left) + 4;
            return [
              { x, y: frame.y(target.high) + 4, side: "below", anchor: "start" },
              { x, y: frame.y(target.low) - 4, side: "above", anchor: "start" },
            ];
          }),
        },
      ]
    : [];
  const labels: Label[] = [
    {
      lines: words.corrected,
      size,
      spots: [
        ...(narrow || !last ? [] : [outside(frame.y(target.low) + 40, frame.y(last.value))]),
        ...inside(corrected, "low"),
        ...inside(corrected, "high"),
      ],
    },
    {
      lines: words.nobody,
      size,
      spots: [
        ...(narrow || !lastNobody ? [] : [outside(frame.y(target.high) - 40, frame.y(lastNobody.high))]),
        ...inside(nobody, "high"),
        ...inside(nobody, "low"),
      ],
    },
    ...beside,
    ...bandNarrow,
    {
      lines: [{ text: `start: it reads ${limitText(data.startReads, temperature)} ${temperature.name}` }],
      size,
      spots: [-70, 70, -110, 110].map(
        (dy): Spot => ({
          x: frame.x(0) + 24,
          y: frame.y(start) + dy,
          side: "level",
          anchor: "start",
          leader: [
            [frame.x(0), frame.y(start)],
            [frame.x(0) + 20, frame.y(start) + dy],
          ],
        }),
      ),
    },
  ];
  return placeLabels(labels, {
    bounds: {
      x: frame.left + 4,
      y: frame.plateTop + 3,
      width: frame.width - frame.left - 8,
      height: frame.plateBottom - frame.plateTop - 6,
    },
    boxes: [],
    segments: [...edges(data, frame), ...across(data, frame)],
  });
}

const across = ({ target, hold }: PlannedHoldData, frame: HoldFrame): readonly Segment[] => [
  ...[target.low, target.high].map((limit): Segment => [0, frame.y(limit), frame.width, frame.y(limit)]),
  ...[0, hold].map((time): Segment => [frame.x(time), frame.plateTop, frame.x(time), frame.plateBottom]),
];

function edges({ corrected, nobody }: PlannedHoldData, frame: HoldFrame): readonly Segment[] {
  const strokes = (course: readonly CoursePoint[], pick: (one: CoursePoint) => number): Segment[] =>
    course.slice(1).map((one, index) => {
      const from = course[index] ?? one;
      return [frame.x(from.time), frame.y(pick(from)), frame.x(one.time), frame.y(pick(one))];
    });
  return [corrected, nobody].flatMap((course) => [
    ...strokes(course, ({ low }) => low),
    ...strokes(course, ({ high }) => high),
    ...(course === corrected ? strokes(course, ({ value }) => value) : []),
  ]);
}
