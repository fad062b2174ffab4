import type { LiquidBox, Pose, Vector } from "../../../../lib/bath/sizing/types.ts";
import { cornersOf } from "../../../../lib/index.ts";

/** m by which the worst corner of a pose leaves the room that a tank has within the clearance; below 0 inside. */
export function outside(tank: LiquidBox, clearance: number, pose: Pose): number {
  const sizes = [tank.length, tank.width, tank.depth];
  const over = cornersOf(pose).flatMap((corner) =>
    corner.map((x, axis) => Math.max(clearance - x, x - ((sizes[axis] ?? 0) - clearance))),
  );
  return Math.max(...over);
}

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** How far the edges of a pose are from unit vectors that are square to each other. */
export function skew({ along, widthwise, thickwise }: Pose): number {
  const wrong = [
    dot(along, along) - 1,
    dot(widthwise, widthwise) - 1,
    dot(thickwise, thickwise) - 1,
    dot(along, widthwise),
    dot(along, thickwise),
    dot(widthwise, thickwise),
  ];
  return Math.max(...wrong.map(Math.abs));
}

/** The longest bar in a rectangle by trying angles, m. */
export function searchedBar(a: number, b: number, width: number, steps = 4000): number {
  let most = 0;
  for (let i = 0; i <= steps; i++) {
    const angle = (i / steps) * (Math.PI / 2);
    const [c, s] = [i === steps ? 0 : Math.cos(angle), Math.sin(angle)];
    if (width * s > a || width * c > b) continue;
    const alongA = c === 0 ? Number.POSITIVE_INFINITY : (a - width * s) / c;
    const alongB = s === 0 ? Number.POSITIVE_INFINITY : (b - width * c) / s;
    most = Math.max(most, Math.min(alongA, alongB));
  }
  return most;
}

/** The longest bar that lies in a box in one attitude: its edges' directions. */
export function longestAt(
  room: Vector,
  [along, widthwise, thickwise]: readonly Vector[],
  w: number,
  t: number,
): number {
  let most = Number.POSITIVE_INFINITY;
  for (const axis of [0, 1, 2] as const) {
    const left = room[axis] - w * Math.abs(widthwise?.[axis] ?? 0) - t * Math.abs(thickwise?.[axis] ?? 0);
    if (left < 0) return 0;
    const share = Math.abs(along?.[axis] ?? 0);
    if (share > 1e-15) most = Math.min(most, left / share);
  }
  return most;
}

/** Edges of a bar turned by three angles: about up, then down its length, then rolled about it. */
export function attitude(turn: number, tilt: number, roll: number): readonly Vector[] {
  const [c, s, ct, st] = [Math.cos(turn), Math.sin(turn), Math.cos(tilt), Math.sin(tilt)];
  const along: Vector = [ct * c, ct * s, st];
  const beside: Vector = [-s, c, 0];
  const above: Vector = [-st * c, -st * s, ct];
  const [cr, sr] = [Math.cos(roll), Math.sin(roll)];
  const mix = (p: number, q: number): Vector => [
    p * beside[0] + q * above[0],
    p * beside[1] + q * above[1],
    p * beside[2] + q * above[2],
  ];
  return [along, mix(cr, sr), mix(-sr, cr)];
}
