import { bisector } from "d3";
import { limitText } from "./drawPlate.ts";
import { setApart, shownReadings } from "./drawReadings.ts";
import type { HoldFrame } from "./holdFrame.ts";
import { type Label, type PlacedLabel, placeLabels, type Segment, type Spot } from "./placeLabels.ts";
import { thin } from "./thin.ts";
import type { Box, CoursePoint, HoldReplayedData, ReadingDrawn } from "./types.ts";
import { likelihood } from "./unwritten.ts";
import { minutesSeconds, shortened } from "./words.ts";

/** What a ring says: value, time and why it does not count. */
export function apartWords(one: ReadingDrawn, frame: Pick<HoldFrame, "units" | "zero">): string {
  const [value, state] = apartParts(one, frame);
  return `${value}, ${state}${one.reason ? `: ${shortened(one.reason, 44)}` : ""}`;
}

const apartParts = (
  one: ReadingDrawn,
  { units, zero }: Pick<HoldFrame, "units" | "zero">,
): readonly [string, string] => [
  `${limitText(one.temperature, units.temperature)} ${units.temperature.name} at ${minutesSeconds(one.time - zero)}`,
  one.struck
    ? "struck out"
    : one.probability === undefined
      ? "does not belong"
      : `misread? ${likelihood(one.probability)}`,
];

/** The target's two limits as the maker says them. */
export function targetWords(data: HoldReplayedData, frame: Pick<HoldFrame, "units">): string {
  const { temperature } = frame.units;
  if (!data.target) return "";
  return `${limitText(data.target.low, temperature)}–${limitText(data.target.high, temperature)} ${temperature.name}`;
}

/** px right of the rule's end where the labels of the right margin start. */
export const marginLabels = 58;

/**
 * Labels inside the plate and in its right margin, each where it meets nothing: the rings first, then the line,
 * the band, the readings. What finds no room is left out.
 */
export function holdLabels(data: HoldReplayedData, frame: HoldFrame): readonly PlacedLabel[] {
  const labels = [
    ...ringLabels(data, frame),
    ...courseLabel(data, frame),
    ...bandLabel(data, frame),
    ...dotLabel(data, frame),
  ];
  return placeLabels(labels, {
    bounds: {
      x: frame.left + 4,
      y: frame.plateTop + 3,
      width: frame.width - frame.left - 8,
      height: frame.plateBottom - frame.plateTop - (data.events.length > 0 ? frame.size + 16 : 6),
    },
    boxes: dotBoxes(data, frame),
    segments: lines(data, frame),
  });
}

function dotBoxes(data: HoldReplayedData, frame: HoldFrame): readonly Box[] {
  const around = (one: ReadingDrawn, r: number): Box => ({
    x: frame.x(one.time) - r,
    y: frame.y(one.temperature) - r,
    width: 2 * r,
    height: 2 * r,
  });
  const { shown, radius } = shownReadings(data.readings, frame);
  return [...shown.map((one) => around(one, radius)), ...setApart(data.readings, frame).map((one) => around(one, 6))];
}

function lines(data: HoldReplayedData, frame: HoldFrame): readonly Segment[] {
  const across = [data.target?.low, data.target?.high]
    .filter((limit) => limit !== undefined)
    .map((limit): Segment => [0, frame.y(limit), frame.width, frame.y(limit)]);
  const upright = [data.partsIn, data.partsOut]
    .filter((time) => time !== undefined)
    .map((time): Segment => [frame.x(time), frame.plateTop, frame.x(time), frame.plateBottom]);
  const breaks = frame.scale.breaks.map((at): Segment => [frame.left, at, frame.right, at]);
  const course = thin(
    data.course ?? [],
    (one) => frame.x(one.time),
    (one) => frame.y(one.value),
    4,
  );
  const strokes = (pick: (one: (typeof course)[number]) => number): Segment[] =>
    course.slice(1).map((one, index) => {
      const from = course[index] ?? one;
      return [frame.x(from.time), frame.y(pick(from)), frame.x(one.time), frame.y(pick(one))];
    });
  return [
    ...across,
    ...upright,
    ...breaks,
    ...strokes((one) => one.value),
    ...strokes((one) => one.low),
    ...strokes((one) => one.high),
    ...course.map((one): Segment => [frame.x(one.time), frame.y(one.low), frame.x(one.time), frame.y(one.high)]),
  ];
}

function ringLabels(data: HoldReplayedData, frame: HoldFrame): readonly Label[] {
  return setApart(data.readings, frame)
    .slice(0, frame.narrow ? 3 : 6)
    .map((one) => {
      const x = frame.x(one.time);
      const y = frame.y(one.temperature);
      const [value, state] = apartParts(one, frame);
      const words = [
        ...(frame.narrow ? [] : [[{ text: apartWords(one, frame) }]]),
        ...(one.reason && !frame.narrow
          ? [[{ text: `${value}, ${state}:` }, { text: shortened(one.reason, 44) }]]
          : []),
        [{ text: `${value}, ${state}` }],
        [{ text: value }, { text: state }],
        // Where room is scarcest the time stands on the rule below, the word stays.
        [{ text: value.replace(/ at .*/, "") }, { text: state.replace(/\?.*/, "?") }],
      ];
      const steps = [0, -12, 12, -24, 24, -36, 36, -48, 48, -80, 80, -120, 120];
      const far = frame.narrow ? [16, -16, 40, -40] : [28, -28, 60, -60];
      return {
        lines: words[0] ?? [],
        size: frame.size,
        spots: words.flatMap((lines) =>
          steps.flatMap((dy) => far.map((dx) => ({ ...besideRing(x, y, dx, dy), lines }))),
        ),
      };
    });
}

const besideRing = (x: number, y: number, dx: number, dy: number): Spot => ({
  x: x + dx,
  y: y + dy,
  side: "level",
  anchor: dx > 0 ? "start" : "end",
  leader: [
    [x + Math.sign(dx) * 6, y + Math.sign(dy) * 5],
    [x + dx - Math.sign(dx) * 5, y + dy],
  ],
});

function courseLabel(data: HoldReplayedData, frame: HoldFrame): readonly Label[] {
  const course = data.course ?? [];
  const end = course[course.length - 1];
  if (!end) return [];
  const name = data.sums?.course ?? "boiling point";
  const colour = "var(--fitted)";
  if (!frame.narrow) {
    const x = frame.x(end.time);
    const y = frame.y(end.value);
    const textX = frame.right + marginLabels;
    const heights = [-30, -50, 34, 54, -80, 84, -120, 120, -160].map((dy) => y + dy);
    const outside = data.target ? [frame.y(data.target.high) - 24, frame.y(data.target.low) + 24] : [];
    return [
      {
        lines: [
          { text: name, colour },
          { text: "and its 95 % spread", colour },
        ],
        size: frame.size,
        spots: [...heights, ...outside].map((at) => ({
          x: textX,
          y: at,
          side: "level",
          anchor: "start",
          leader: [
            [x + 2, y],
            [Math.min(x + 22, textX - 10), at],
            [textX - 5, at],
          ],
        })),
      },
    ];
  }
  // A leader that ended on a dot would name the reading.
  const { shown } = shownReadings(data.readings, frame);
  const clear = course.filter((one) =>
    shown.every(
      (dot) => Math.hypot(frame.x(dot.time) - frame.x(one.time), frame.y(dot.temperature) - frame.y(one.value)) > 8,
    ),
  );
  const open = clear.length > 0 ? clear : course;
  const spots = open
    .filter((_, index) => index % Math.max(1, Math.floor(open.length / 24)) === 0)
    .flatMap((one) => around(frame.x(one.time), frame.y(one.value)));
  return [{ lines: [{ text: `${name}, 95 % spread`, colour }], size: frame.size, spots }];
}

const around = (x: number, y: number): readonly Spot[] =>
  [-34, 34, -56, 56, -84, 84].flatMap((dy) =>
    [-18, 18].map(
      (dx): Spot => ({
        x: x + dx,
        y: y + dy,
        side: dy < 0 ? "above" : "below",
        anchor: dx < 0 ? "end" : "start",
        leader: [
          [x, y + Math.sign(dy) * 3],
          [x + dx, y + dy - Math.sign(dy) * 4],
        ],
      }),
    ),
  );

function bandLabel(data: HoldReplayedData, frame: HoldFrame): readonly Label[] {
  if (!data.target) return [];
  const high = frame.y(data.target.high);
  const low = frame.y(data.target.low);
  const text = targetWords(data, frame);
  if (!frame.narrow) {
    const x = frame.right + marginLabels;
    const spot = (y: number, side: Spot["side"]): Spot => ({ x, y, side, anchor: "start" });
    const level = [spot((high + low) / 2, "level"), spot(low + 8, "below"), spot(high - 8, "above")];
    return [
      { lines: [{ text, weight: 600 }, { text: "target band" }], size: frame.size, spots: level },
      { lines: [{ text, weight: 600 }], size: frame.size, spots: level },
    ].slice(0, low - high > frame.size * 2.6 ? 1 : 2);
  }
  const columns = [0.98, 0.9, 0.82, 0.74, 0.66, 0.58, 0.5, 0.42, 0.34];
  const across = columns.map((share) => frame.left + (frame.right - frame.left) * share);
  const pointing = (x: number, edge: number, away: number): Spot => ({
    x,
    y: edge + away,
    side: away > 0 ? "below" : "above",
    anchor: "end",
    leader: [
      [x - 30, edge + away - Math.sign(away) * 3],
      [x - 30, edge + Math.sign(away)],
    ],
  });
  const spots = [22, 40, 64, 90].flatMap((away) =>
    across.flatMap((x) => [pointing(x, low, away), pointing(x, high, -away)]),
  );
  return [{ lines: [{ text, weight: 600 }, { text: "target band" }], size: frame.size, spots }];
}

function dotLabel(data: HoldReplayedData, frame: HoldFrame): readonly Label[] {
  const { shown } = shownReadings(data.readings, frame);
  if (frame.narrow || shown.length === 0) return [];
  const middle = shown.slice(Math.floor(shown.length * 0.35), Math.ceil(shown.length * 0.8));
  const step = Math.max(1, Math.floor(middle.length / 12));
  const spots = middle.filter((_, index) => index % step === 0).flatMap((one) => awayFromCourse(one, data, frame));
  return [{ lines: [{ text: "readings" }], size: frame.size, spots }];
}

// A leader from a dot must not run along or through the line: up from a dot above it, down from one below.
function awayFromCourse(one: ReadingDrawn, data: HoldReplayedData, frame: HoldFrame): readonly Spot[] {
  const x = frame.x(one.time);
  const y = frame.y(one.temperature);
  const course = data.course ?? [];
  const near =
    course[
      Math.min(course.length - 1, Math.max(0, bisector((point: CoursePoint) => point.time).center(course, one.time)))
    ];
  const below = near ? one.temperature < near.value : true;
  return [36, 56, 80, 110, 140].map((distance): Spot => {
    const dy = below ? distance : -distance;
    return {
      x,
      y: y + dy,
      side: below ? "below" : "above",
      anchor: "middle",
      leader: [
        [x, y + Math.sign(dy) * 5],
        [x, y + dy - Math.sign(dy) * 3],
      ],
    };
  });
}
