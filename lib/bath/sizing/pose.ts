import type { LiquidBox, PartSize, Pose, Vector } from "./types.ts";

export type Axis = 0 | 1 | 2;

/** A bar turned by `turn` from axis i towards axis j and then by `tilt` towards the third. */
export interface Turned {
  readonly i: Axis;
  readonly j: Axis;
  readonly turn: number;
  readonly tilt: number;
  /** Whether the width lies in the plane of i and j; otherwise the thickness does. */
  readonly flat: boolean;
}

const unit = (axis: Axis): Vector => [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];

const mix = (p: number, a: Vector, q: number, b: Vector): Vector => [
  p * a[0] + q * b[0],
  p * a[1] + q * b[1],
  p * a[2] + q * b[2],
];

// Of a right angle the cosine is 0, not 6e-17.
const cos = (angle: number) => (angle === Math.PI / 2 ? 0 : Math.cos(angle));

/**
 * A turned bar as it lies in a tank: in the middle of length and width, its lowest corner `clearance` above the bottom.
 *
 * @example poseOf({ length: 1, width: 1, depth: 1 }, { length: 1, width: 0, thickness: 0 }, 0, way).middle // [0.5, 0.5, 0]
 */
export function poseOf(tank: LiquidBox, part: PartSize, clearance: number, turned: Turned): Pose {
  const { i, j, turn, tilt, flat } = turned;
  const k = (3 - i - j) as Axis;
  const level = mix(cos(turn), unit(i), Math.sin(turn), unit(j));
  const beside = mix(-Math.sin(turn), unit(i), cos(turn), unit(j));
  const along = mix(cos(tilt), level, Math.sin(tilt), unit(k));
  const third = mix(-Math.sin(tilt), level, cos(tilt), unit(k));
  return laid(tank, { ...part, along, widthwise: flat ? beside : third, thickwise: flat ? third : beside }, clearance);
}

/** A bar of these directions, in the middle of length and width, its lowest corner `clearance` above the bottom. */
export function laid(tank: LiquidBox, bar: Omit<Pose, "middle">, clearance: number): Pose {
  const half = extentOf(bar)[2] / 2;
  return { ...bar, middle: [tank.length / 2, tank.width / 2, clearance + half] };
}

/** Sizes of the upright box round a bar, m. */
export function extentOf(bar: Omit<Pose, "middle">): Vector {
  const of = (axis: Axis) =>
    bar.length * Math.abs(bar.along[axis]) +
    bar.width * Math.abs(bar.widthwise[axis]) +
    bar.thickness * Math.abs(bar.thickwise[axis]);
  return [of(0), of(1), of(2)];
}

/**
 * The eight corners of a bar as it lies, for drawing and for checking that it is inside.
 *
 * @param pose as `longestPart` and `smallestTank` give it
 * @returns m from a corner of the tank's bottom, along its length, across its width, up. Bit 1 of the place in the list
 * says which end, bit 2 which edge of the width, bit 4 which face of the thickness.
 * @example
 * const { poses } = longestPart({ length: 4, width: 3, depth: 1 }, { width: 0, thickness: 0 }, 0);
 * cornersOf(poses.floorDiagonal)[1]; // [4, 3, 0]
 */
export function cornersOf(pose: Pose): readonly Vector[] {
  return [0, 1, 2, 3, 4, 5, 6, 7].map((place) => {
    const [l, w, t] = [
      (place & 1 ? 0.5 : -0.5) * pose.length,
      (place & 2 ? 0.5 : -0.5) * pose.width,
      (place & 4 ? 0.5 : -0.5) * pose.thickness,
    ];
    const at = (axis: Axis) =>
      pose.middle[axis] + l * pose.along[axis] + w * pose.widthwise[axis] + t * pose.thickwise[axis];
    return [at(0), at(1), at(2)];
  });
}
