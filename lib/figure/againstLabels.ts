import { cutTo, linesOf } from "./cutTo.ts";
import { type PlacedLabel, placeLabels, type Segment, type Spot } from "./placeLabels.ts";
import type { Box } from "./types.ts";

/** A case where it lies, px: its mark's centre and the ends of its two bars. */
export interface PlacedCase {
  readonly mark: number;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The names of cases beside their marks, with leaders, clear of every bar and mark; a name without room is left out.
 * @example againstLabels([one], { x: 60, y: 20, width: 500, height: 300 }, 14)[0]?.named
 */
export function againstLabels(
  cases: readonly PlacedCase[],
  bounds: Box,
  size: number,
): readonly { readonly mark: number; readonly label: PlacedLabel }[] {
  const boxes = cases.map(({ x, y }): Box => ({ x: x - 6, y: y - 6, width: 12, height: 12 }));
  const segments = cases.flatMap((one): readonly Segment[] => [
    [one.left, one.y, one.right, one.y],
    [one.x, one.top, one.x, one.bottom],
  ]);
  const labels = cases.map((one) => ({
    lines: linesOf(one.name, size, bounds.width * 0.45, 2).map((text) => ({ text: cutTo(text, size, bounds.width) })),
    size,
    spots: spotsOf(one),
  }));
  return placeLabels(labels, { bounds, boxes, segments }).map((label) => ({
    mark: cases[labels.indexOf(label.label as (typeof labels)[number])]?.mark ?? 0,
    label,
  }));
}

// In the quarters between its own bars first, where no leader is needed; then farther out, with one.
function spotsOf({ x, y }: PlacedCase): readonly Spot[] {
  const quarters = [
    [1, -1],
    [1, 1],
    [-1, -1],
    [-1, 1],
  ] as const;
  const anchor = (way: number) => (way > 0 ? "start" : "end");
  const near = quarters.map(
    ([right, down]): Spot => ({
      x: x + right * 8,
      y: y + down * 7,
      side: down > 0 ? "below" : "above",
      anchor: anchor(right),
    }),
  );
  const far = [26, 44, 66, 92].flatMap((away) =>
    quarters.map(
      ([right, down]): Spot => ({
        x: x + right * (away + 8),
        y: y + down * away,
        side: "level",
        anchor: anchor(right),
        leader: [
          [x + right * 5, y + down * 5],
          [x + right * (away - 2), y + down * away],
          [x + right * (away + 4), y + down * away],
        ],
      }),
    ),
  );
  return [...near, ...far];
}
