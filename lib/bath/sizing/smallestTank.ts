import { needNumber } from "../../physics/needNumber.ts";
import { planes } from "./longestPart.ts";
import { type Axis, poseOf, type Turned } from "./pose.ts";
import { anglesToTry, leastOver } from "./turnSearch.ts";
import type { PartSize, SmallestTankOptions, SmallestTanks, SmallTank, Vector, Way } from "./types.ts";

interface Tried {
  readonly cost: number;
  readonly size: Vector;
  readonly turned: Turned;
}

/**
 * The smallest tank that takes a part straight, along the diagonal of the floor, tilted, and along the diagonal of the
 * space; each measure that is held stays as it is, the others are the least that do. No tank is wider or deeper than
 * long by choice. With nothing held the straight tank has the least volume of all (a part's bounding box is never
 * smaller than the part), and the other ways come to the same; the diagonals pay where width and depth are held, or
 * where the length is what matters. Length counts for the fire: each burner heats a stretch of it.
 *
 * The first three are exact, the last is the best of the poses that are turned in one plane and tilted
 * out of it (a plate that leans besides might do with a little less). Of equal tanks the one with
 * the smaller surface.
 *
 * @param part m, each 0 to 100
 * @param options clearance, measures held, m (as for `longestPart`), and what is to be small
 * @returns inside measures to the working depth, volume, surface and pose of each; a way is absent where the measures
 * held leave no room for the part, and so is `smallest` where no way is left
 * @throws RangeError for a measure that is no number, negative, or out of range
 * Source: geometry, derived in the comments of `turnSearch`.
 * @example
 * const held = { clearance: 0.0127, width: 0.15, depth: 0.13 };
 * const tanks = smallestTank({ length: 0.9, width: 0.03, thickness: 0.006 }, held);
 * tanks.straight.length; // 0.9254
 * tanks.spaceDiagonal.length; // 0.9172
 */
export function smallestTank(part: PartSize, options: SmallestTankOptions = {}): SmallestTanks {
  needNumber("length of the part", part.length, 0, 100, "m");
  needNumber("width of the part", part.width, 0, 100, "m");
  needNumber("thickness of the part", part.thickness, 0, 100, "m");
  const { clearance = 0, by = "volume" } = options;
  needNumber("clearance", clearance, 0, 10, "m");
  const held = [options.length, options.width, options.depth] as const;
  const names = ["tank length", "tank width", "working depth"] as const;
  for (const axis of [0, 1, 2] as const) {
    if (held[axis] !== undefined) needNumber(names[axis], held[axis], 0, 100, "m");
  }
  if (!["volume", "surface", "length"].includes(by))
    throw new RangeError(`unknown measure: ${by}; volume, surface or length`);
  const size = { length: part.length, width: part.width, thickness: part.thickness };
  const limits = held.map((one) => (one === undefined ? Number.POSITIVE_INFINITY : one - 2 * clearance));
  const room = [limits[0] ?? 0, limits[1] ?? 0, limits[2] ?? 0] as const;

  const slack = 1e-12 * part.length;
  const tried = (turned: Turned): Tried | undefined => {
    const extent = roundIt(size, turned);
    for (const axis of [0, 1, 2] as const) if (extent[axis] > room[axis] + slack) return undefined;
    const freeAndLonger = (axis: 1 | 2) => held[axis] === undefined && extent[axis] > extent[0] + slack;
    if (held[0] === undefined && (freeAndLonger(1) || freeAndLonger(2))) return undefined;
    const inside = (axis: Axis) => held[axis] ?? extent[axis] + 2 * clearance;
    const [length, width, depth] = [inside(0), inside(1), inside(2)];
    const cost = by === "length" ? length : by === "surface" ? length * width : length * width * depth;
    return { cost, size: [length, width, depth], turned };
  };
  const straight = least([true, false].map((flat) => tried({ i: 0, j: 1, turn: 0, tilt: 0, flat })));
  const inPlane = ([i, j]: readonly [Axis, Axis], tilt: number): Tried | undefined =>
    least(
      [true, false].flatMap((flat) => {
        const [beside, out] = flat ? [size.width, size.thickness] : [size.thickness, size.width];
        const level = part.length * Math.cos(tilt) + out * Math.sin(tilt);
        const high = part.length * Math.sin(tilt) + out * Math.cos(tilt);
        const angles = anglesToTry(level, beside, [room[i], room[j], high]);
        return angles.map((turn) => tried({ i, j, turn, tilt, flat }));
      }),
    );
  const floorDiagonal = inPlane([0, 1], 0);
  const tilted = inPlane([0, 2], 0);
  const nested = planes.flatMap((plane) => {
    const limit = room[(3 - plane[0] - plane[1]) as Axis];
    const exact = [size.thickness, size.width].flatMap((out) => anglesToTry(part.length, out, [limit]));
    const cost = (one: Tried | undefined) => one?.cost ?? Number.POSITIVE_INFINITY;
    return leastOver((tilt) => inPlane(plane, tilt), exact, cost);
  });
  const found = { straight, floorDiagonal, tilted, spaceDiagonal: least([straight, floorDiagonal, tilted, ...nested]) };
  const tanks: Partial<Record<Way, SmallTank>> = {};
  for (const way of ["straight", "floorDiagonal", "tilted", "spaceDiagonal"] as const) {
    const one = found[way];
    if (!one) continue;
    const [length, width, depth] = one.size;
    const pose = poseOf({ length, width, depth }, size, clearance, one.turned);
    tanks[way] = { way, length, width, depth, volume: length * width * depth, surface: length * width, pose };
  }
  const smallest = least([straight, floorDiagonal, tilted, found.spaceDiagonal]);
  const name = (["straight", "floorDiagonal", "tilted", "spaceDiagonal"] as const).find(
    (way) => found[way] === smallest,
  );
  const chosen = name && tanks[name];
  return chosen ? { ...tanks, smallest: chosen } : tanks;
}

/** Sizes of the upright box round a turned part, m. */
function roundIt(part: PartSize, { i, j, turn, tilt, flat }: Turned): Vector {
  const [beside, out] = flat ? [part.width, part.thickness] : [part.thickness, part.width];
  const [c, s] = [turn === Math.PI / 2 ? 0 : Math.cos(turn), Math.sin(turn)];
  const [ct, st] = [tilt === Math.PI / 2 ? 0 : Math.cos(tilt), Math.sin(tilt)];
  const level = part.length * ct + out * st;
  const extent: [number, number, number] = [0, 0, 0];
  extent[i] = level * c + beside * s;
  extent[j] = level * s + beside * c;
  extent[3 - i - j] = part.length * st + out * ct;
  return extent;
}

/** The least; of equals that with the smaller surface, then the first. */
function least(all: readonly (Tried | undefined)[]): Tried | undefined {
  const surface = ({ size }: Tried) => size[0] * size[1];
  let best: Tried | undefined;
  for (const one of all) {
    if (!one) continue;
    if (!best || one.cost < best.cost * (1 - 1e-12)) best = one;
    else if (one.cost <= best.cost * (1 + 1e-12) && surface(one) < surface(best) * (1 - 1e-12)) best = one;
  }
  return best;
}
