import { textWidth } from "./textWidth.ts";
import type { Box } from "./types.ts";

/** A label that looks for room: lines of text, and the spots it may take, best first. */
export interface Label {
  readonly lines: readonly LabelLine[];
  readonly size: number;
  /** px that lines lie apart. Default: 1.25 times the size. */
  readonly leading?: number;
  readonly spots: readonly Spot[];
}

export interface LabelLine {
  readonly text: string;
  readonly weight?: number;
  readonly colour?: string;
}

/** Where the label's box would go: the point it hangs from, and which way it lies from there. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly anchor: "start" | "middle" | "end";
  /** The box lies above the point, below it, or centred on it. */
  readonly side: "above" | "below" | "level";
  /** Shorter words that fit this spot. */
  readonly lines?: readonly LabelLine[];
  /** Line from the thing to the label, drawn if this spot is taken. */
  readonly leader?: readonly (readonly [x: number, y: number])[];
}

export interface PlacedLabel {
  readonly label: Label;
  readonly spot: Spot;
  readonly box: Box;
}

/** A straight line that no label may cross, px. */
export type Segment = readonly [x1: number, y1: number, x2: number, y2: number];

/** Box that a label takes at a spot, px. */
export function labelBox(label: Label, spot: Spot): Box {
  const leading = label.leading ?? label.size * 1.25;
  const lines = spot.lines ?? label.lines;
  const width = Math.max(0, ...lines.map((line) => textWidth(line.text, label.size, line.weight)));
  const height = label.size + leading * Math.max(0, lines.length - 1);
  const x = spot.anchor === "start" ? spot.x : spot.anchor === "end" ? spot.x - width : spot.x - width / 2;
  const y = spot.side === "below" ? spot.y : spot.side === "above" ? spot.y - height : spot.y - height / 2;
  return { x, y, width, height };
}

/** Whether two boxes come nearer than `margin` px. */
export function boxesMeet(a: Box, b: Box, margin = 0): boolean {
  return (
    a.x < b.x + b.width + margin &&
    b.x < a.x + a.width + margin &&
    a.y < b.y + b.height + margin &&
    b.y < a.y + a.height + margin
  );
}

/** Whether a straight line passes through a box grown by `margin` px (Liang and Barsky's clipping). */
export function segmentMeetsBox([x1, y1, x2, y2]: Segment, box: Box, margin = 0): boolean {
  let enter = 0;
  let leave = 1;
  const sides: readonly (readonly [number, number])[] = [
    [x1 - x2, x1 - (box.x - margin)],
    [x2 - x1, box.x + box.width + margin - x1],
    [y1 - y2, y1 - (box.y - margin)],
    [y2 - y1, box.y + box.height + margin - y1],
  ];
  for (const [step, room] of sides) {
    if (step === 0) {
      if (room < 0) return false;
    } else if (step < 0) enter = Math.max(enter, room / step);
    else leave = Math.min(leave, room / step);
  }
  return enter <= leave;
}

/**
 * Gives each label, first come first served, the first of its spots where it meets no other label, no taken box
 * and no line and stays inside `bounds`; a label that finds none is left out. Leaders keep clear of labels too.
 * All in px.
 * @example placeLabels([{ lines: [{ text: "parts in" }], size: 14, spots }], { bounds, boxes: [], segments: [] })
 */
export function placeLabels(
  labels: readonly Label[],
  room: { readonly bounds: Box; readonly boxes: readonly Box[]; readonly segments: readonly Segment[] },
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  const leaders: Segment[] = [];
  for (const label of labels) {
    for (const spot of label.spots) {
      const box = labelBox(label, spot);
      const ownLeader = leaderSegments(spot);
      const free =
        isInside(box, room.bounds) &&
        !placed.some((other) => boxesMeet(box, other.box, 4)) &&
        !room.boxes.some((other) => boxesMeet(box, other, 2)) &&
        !room.segments.some((segment) => segmentMeetsBox(segment, box, 2)) &&
        !leaders.some((segment) => segmentMeetsBox(segment, box, 2)) &&
        !ownLeader.some((segment) => placed.some((other) => segmentMeetsBox(segment, other.box, 2)));
      if (!free) continue;
      placed.push({ label, spot, box });
      leaders.push(...ownLeader);
      break;
    }
  }
  return placed;
}

const isInside = (box: Box, bounds: Box): boolean =>
  box.x >= bounds.x &&
  box.y >= bounds.y &&
  box.x + box.width <= bounds.x + bounds.width &&
  box.y + box.height <= bounds.y + bounds.height;

function leaderSegments(spot: Spot): readonly Segment[] {
  const points = spot.leader ?? [];
  return points.slice(1).map((point, index): Segment => {
    const from = points[index] ?? point;
    return [from[0], from[1], point[0], point[1]];
  });
}
