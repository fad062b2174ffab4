import type { Vector } from "./types.ts";

/** A bar in a box by the directions of its edges. */
export interface Leaning {
  readonly length: number;
  readonly along: Vector;
  readonly widthwise: Vector;
  readonly thickwise: Vector;
}

/**
 * A long pose of a bar in a box at any attitude, found by search: for plates too wide to stand, which lean as well as
 * turn and tilt. A grid of attitudes first, then small steps from the best few, always the same for the same box.
 *
 * @param room m, the three sides
 * @param width m
 * @param thickness m
 * @returns the longest found, undefined where none fits; a bound from below
 * @example leaningBar([1, 0.5, 0.1], 0.2, 0).length // 1.0049
 */
export function leaningBar(room: Vector, width: number, thickness: number): Leaning | undefined {
  const at = (angles: Vector) => barAt(room, width, thickness, angles);
  const count = 14;
  const starts: { readonly angles: Vector; readonly length: number }[] = [];
  for (let a = 0; a <= count; a++) {
    for (let b = 0; b <= count; b++) {
      for (let c = 0; c < 2 * count; c++) {
        const angles: Vector = [(a * Math.PI) / 2 / count, (b * Math.PI) / 2 / count, (c * Math.PI) / 2 / count];
        starts.push({ angles, length: at(angles).length });
      }
    }
  }
  starts.sort((one, two) => two.length - one.length);
  let best: Leaning | undefined;
  for (const { angles } of starts.slice(0, 12)) {
    const found = at(climbed((one) => at(one).length, angles));
    if (found.length > (best?.length ?? 0)) best = found;
  }
  return best;
}

/** Steps in directions spread over the sphere, longer where they gain, shorter where not. */
function climbed(f: (angles: Vector) => number, from: Vector): Vector {
  let here = from;
  let now = f(here);
  let step = 0.1;
  for (let i = 1; i <= 500; i++) {
    // Places of a golden spiral: the same every time, and no direction left out for long.
    const z = 2 * ((i * 0.7548776662) % 1) - 1;
    const turn = 2 * Math.PI * ((i * 0.5698402909) % 1);
    const round = Math.sqrt(1 - z * z);
    const next: Vector = [
      here[0] + step * round * Math.cos(turn),
      here[1] + step * round * Math.sin(turn),
      here[2] + step * z,
    ];
    const there = f(next);
    if (there > now) {
      here = next;
      now = there;
      step *= 1.4;
    } else step = Math.max(1e-8, step * 0.96);
  }
  return here;
}

/** The longest bar at one attitude: turned about the upright, tilted, then rolled about its own length. */
function barAt(room: Vector, width: number, thickness: number, [turn, tilt, roll]: Vector): Leaning {
  const [c, s, ct, st] = [Math.cos(turn), Math.sin(turn), Math.cos(tilt), Math.sin(tilt)];
  const [cr, sr] = [Math.cos(roll), Math.sin(roll)];
  const along: Vector = [ct * c, ct * s, st];
  const widthwise: Vector = [-cr * s - sr * st * c, cr * c - sr * st * s, sr * ct];
  const thickwise: Vector = [sr * s - cr * st * c, -sr * c - cr * st * s, cr * ct];
  let length = Number.POSITIVE_INFINITY;
  for (const axis of [0, 1, 2] as const) {
    const left = room[axis] - width * Math.abs(widthwise[axis]) - thickness * Math.abs(thickwise[axis]);
    if (left < 0) return { length: 0, along, widthwise, thickwise };
    const share = Math.abs(along[axis]);
    if (share > 1e-12) length = Math.min(length, left / share);
  }
  return { length, along, widthwise, thickwise };
}
