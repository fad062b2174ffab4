import { needNumber } from "../../physics/needNumber.ts";
import { leaningBar } from "./leaningBar.ts";
import { type BarAcross, longestBar } from "./longestBar.ts";
import { type Axis, laid, poseOf, type Turned } from "./pose.ts";
import type { LiquidBox, LongestPart, Pose, Way } from "./types.ts";

/** The three planes of a tank. */
export const planes: readonly (readonly [Axis, Axis])[] = [
  [0, 1],
  [0, 2],
  [1, 2],
];

interface Found {
  readonly length: number;
  readonly turned: Turned;
}

/**
 * The longest bar of a given width and thickness that lies under the surface of a tank: along it, turned on the level
 * along the diagonal of the floor, tilted in the plane of length and depth, and along the diagonal of the space. Width
 * and thickness stand whichever way up gives most.
 *
 * The first three are exact. The last is a safe bound: its pose lies inside, but a longer one is not ruled out. The bar
 * is turned in one plane and then tilted out of it, the best of all planes and ways up. For thin bars that is the best
 * there is (what rolling a bar about its own length costs is concave between such poses). Plates wider than the shallowest
 * side are searched for at every lean besides. A real part with a guard, a bend or a sight needs room besides.
 *
 * @param tank inside length and width and the working depth (of the liquid, not of the wall), m; each 0 to 100
 * @param bar width and thickness, m; each 0 to 100
 * @param clearance m, to every wall, the bottom and the surface; 0 to 10; 0 where absent
 * @returns m, 0 where none fits; and the pose of each
 * @throws RangeError for a measure that is no number, negative, or out of range
 * Source: geometry, derived in `longestBar`.
 * @example
 * const most = longestPart({ length: 0.61, width: 0.15, depth: 0.13 }, { width: 0.03, thickness: 0.006 }, 0.0127);
 * most.straight; // 0.5846
 * most.floorDiagonal; // 0.5954
 * most.spaceDiagonal; // 0.5971
 */
export function longestPart(
  tank: LiquidBox,
  bar: { readonly width: number; readonly thickness: number },
  clearance = 0,
): LongestPart {
  const outer = [
    needNumber("tank length", tank.length, 0, 100, "m"),
    needNumber("tank width", tank.width, 0, 100, "m"),
    needNumber("working depth", tank.depth, 0, 100, "m"),
  ];
  needNumber("width of the part", bar.width, 0, 100, "m");
  needNumber("thickness of the part", bar.thickness, 0, 100, "m");
  needNumber("clearance", clearance, 0, 10, "m");
  const [a = 0, b = 0, c = 0] = outer.map((size) => size - 2 * clearance);
  const room = [a, b, c] as const;
  const none: LongestPart = { straight: 0, floorDiagonal: 0, tilted: 0, spaceDiagonal: 0, poses: {} };
  if (Math.min(...room) < 0) return none;
  const straight = best(waysUp(bar).map((up) => straightBar(room, up)));
  const floorDiagonal = best([straight, ...waysUp(bar).map((up) => turnedBar(room, [0, 1], up))]);
  const tilted = best([straight, ...waysUp(bar).map((up) => turnedBar(room, [0, 2], up))]);
  const nested = planes.flatMap((plane) => waysUp(bar).map((up) => nestedBar(room, plane, up)));
  const found = { straight, floorDiagonal, tilted, spaceDiagonal: best([floorDiagonal, tilted, ...nested]) };
  const poses: Partial<Record<Way, Pose>> = {};
  for (const way of ["straight", "floorDiagonal", "tilted", "spaceDiagonal"] as const) {
    const one = found[way];
    if (one) poses[way] = poseOf(tank, { ...bar, length: one.length }, clearance, one.turned);
  }
  // A plate wider than a side of the room may do better leaning, which no closed form here covers.
  const leaning =
    Math.max(bar.width, bar.thickness) > Math.min(...room) ? leaningBar(room, bar.width, bar.thickness) : undefined;
  if (leaning && leaning.length > (found.spaceDiagonal?.length ?? 0) * (1 + 1e-6)) {
    poses.spaceDiagonal = laid(tank, { ...bar, ...leaning }, clearance);
  }
  const lengthOf = (way: Way) => poses[way]?.length ?? 0;
  return {
    straight: lengthOf("straight"),
    floorDiagonal: lengthOf("floorDiagonal"),
    tilted: lengthOf("tilted"),
    spaceDiagonal: lengthOf("spaceDiagonal"),
    poses,
  };
}

interface Up {
  /** m, what lies in the plane, and what stands square to it. */
  readonly inPlane: number;
  readonly out: number;
  readonly flat: boolean;
}

const waysUp = ({ width, thickness }: { readonly width: number; readonly thickness: number }): readonly Up[] => [
  { inPlane: width, out: thickness, flat: true },
  { inPlane: thickness, out: width, flat: false },
];

type Room = readonly [number, number, number];

function straightBar(room: Room, { inPlane, out, flat }: Up): Found | undefined {
  if (inPlane > room[1] || out > room[2]) return undefined;
  return { length: room[0], turned: { i: 0, j: 1, turn: 0, tilt: 0, flat } };
}

function turnedBar(room: Room, [i, j]: readonly [Axis, Axis], { inPlane, out, flat }: Up): Found | undefined {
  if (out > room[(3 - i - j) as Axis]) return undefined;
  const { length, angle } = longestBar(room[i], room[j], inPlane);
  return { length, turned: { i, j, turn: angle, tilt: 0, flat } };
}

function nestedBar(room: Room, [i, j]: readonly [Axis, Axis], { inPlane, out, flat }: Up): Found | undefined {
  const level: BarAcross = longestBar(room[i], room[j], inPlane);
  if (level.length === 0) return undefined;
  const { length, angle } = longestBar(level.length, room[(3 - i - j) as Axis], out);
  return { length, turned: { i, j, turn: level.angle, tilt: angle, flat } };
}

/** The longest; of equals the first. */
function best(all: readonly (Found | undefined)[]): Found | undefined {
  let most: Found | undefined;
  for (const one of all) {
    if (one && one.length > 0 && one.length > (most?.length ?? 0) * (1 + 1e-12)) most = one;
  }
  return most;
}
