import fc from "fast-check";
import { expect, test } from "vitest";
import type { Way } from "../../../../lib/bath/sizing/types.ts";
import { longestPart, smallestTank } from "../../../../lib/index.ts";
import { outside, skew } from "./poses.ts";

const ways: readonly Way[] = ["straight", "floorDiagonal", "tilted", "spaceDiagonal"];
const size = (max: number, min = 0.001) => fc.double({ min, max, noNaN: true });
const part = fc.record({ length: size(2, 0.2), width: size(0.15), thickness: size(0.1) });

test("with nothing held the straight tank is the part and its clearance", () => {
  const { smallest, straight } = smallestTank({ length: 0.9, width: 0.03, thickness: 0.006 }, { clearance: 0.01 });
  expect(smallest).toEqual(straight);
  expect([smallest?.length, smallest?.width, smallest?.depth].map((x) => x?.toFixed(6))).toEqual([
    "0.920000",
    "0.026000",
    "0.050000",
  ]);
});

// l + x = a√2 for a square: a bar of no width and length √2 lies across a square metre.
test("by length a wire lies across a square, and along the diagonal of a cube", () => {
  const tanks = smallestTank({ length: Math.sqrt(3), width: 0, thickness: 0 }, { by: "length" });
  expect(tanks.floorDiagonal?.length).toBeCloseTo(Math.sqrt(1.5), 9);
  expect(tanks.spaceDiagonal?.length).toBeCloseTo(1, 6);
  expect(tanks.spaceDiagonal?.depth).toBeCloseTo(1, 6);
});

// Pythagoras, 3-4-5 and 2-3-6-7.
test("held width and depth leave the length of the diagonals", () => {
  const wire = (length: number) => ({ length, width: 0, thickness: 0 });
  expect(smallestTank(wire(5), { width: 3, depth: 2 }).floorDiagonal?.length).toBeCloseTo(4, 9);
  expect(smallestTank(wire(5), { width: 2, depth: 3 }).tilted?.length).toBeCloseTo(4, 9);
  expect(smallestTank(wire(7), { width: 3, depth: 2 }).spaceDiagonal?.length).toBeCloseTo(6, 9);
});

test("what the held measures leave no room for is absent", () => {
  const tanks = smallestTank({ length: 1, width: 0.05, thickness: 0.05 }, { length: 0.5, width: 0.2 });
  expect(tanks.straight).toBeUndefined();
  expect(tanks.floorDiagonal).toBeUndefined();
  expect(tanks.tilted?.depth).toBeGreaterThan(0.5);
  expect(smallestTank({ length: 1, width: 0.05, thickness: 0.05 }, { depth: 0.04, clearance: 0 })).toEqual({});
});

test.each([
  [{ length: Number.NaN, width: 0, thickness: 0 }, {}, "invalid length of the part: NaN"],
  [{ length: 1, width: -1, thickness: 0 }, {}, "invalid width of the part: -1 m"],
  [{ length: 1, width: 0, thickness: 0 }, { width: -1 }, "invalid tank width: -1 m"],
  [{ length: 1, width: 0, thickness: 0 }, { clearance: Number.NaN }, "invalid clearance: NaN"],
])("%j %j throws", (one, options, message) => {
  expect(() => smallestTank(one, options)).toThrow(message);
});

test("the part lies inside each tank, which keeps what is held", () => {
  const options = fc.record(
    {
      clearance: size(0.03),
      width: size(0.5, 0.1),
      depth: size(0.4, 0.1),
      length: size(2, 0.5),
      by: fc.constantFrom("volume" as const, "surface" as const, "length" as const),
    },
    { requiredKeys: ["clearance"] },
  );
  fc.assert(
    fc.property(part, options, (one, given) => {
      const tanks = smallestTank(one, given);
      for (const way of ways) {
        const tank = tanks[way];
        if (!tank) continue;
        expect(tank.way).toBe(way);
        expect(tank.pose.length).toBe(one.length);
        expect(skew(tank.pose)).toBeLessThan(1e-12);
        expect(outside(tank, given.clearance, tank.pose)).toBeLessThan(1e-8);
        for (const name of ["length", "width", "depth"] as const) expect(tank[name]).toBe(given[name] ?? tank[name]);
        const cost = given.by ?? "volume";
        expect(tanks.smallest?.[cost]).toBeLessThanOrEqual(tank[cost] * (1 + 1e-9));
      }
    }),
    { numRuns: 100 },
  );
});

test("with width and depth held it is the inverse of longestPart: the tank takes the part, and one a hair shorter does not", () => {
  fc.assert(
    fc.property(part, size(0.4, 0.05), size(0.3, 0.05), size(0.02), (one, width, depth, clearance) => {
      const tanks = smallestTank(one, { width, depth, clearance });
      for (const way of ways) {
        const tank = tanks[way];
        const most = (length: number) => longestPart({ length, width, depth }, one, clearance)[way];
        if (tank) {
          expect(most(tank.length + 1e-7)).toBeGreaterThanOrEqual(one.length - 1e-9);
          // A plate too wide to stand may lean, which smallestTank does not try.
          const leans = Math.max(one.width, one.thickness) > Math.min(tank.length, width, depth) - 2 * clearance - 1e-4;
          if (way !== "spaceDiagonal" || !leans) expect(most(tank.length - 1e-4)).toBeLessThan(one.length);
        } else if (
          way !== "spaceDiagonal" ||
          Math.max(one.width, one.thickness) <= Math.min(width, depth) - 2 * clearance
        )
          expect(most(5)).toBeLessThan(one.length);
      }
    }),
    { numRuns: 100 },
  );
});

test("by volume no tank of random measures that takes the part is smaller", () => {
  const measures = fc.array(fc.tuple(size(1.2, 0.05), size(0.5, 0.05)), { minLength: 50, maxLength: 50 });
  fc.assert(
    fc.property(part, size(0.3, 0.12), measures, (one, depth, tried) => {
      const tanks = smallestTank(one, { depth });
      for (const [length, width] of tried) {
        if (width > length) continue;
        const most = longestPart({ length, width, depth }, one, 0);
        for (const way of ways) {
          if (most[way] >= one.length)
            expect(tanks[way]?.volume).toBeLessThanOrEqual(length * width * depth * (1 + 1e-6));
        }
      }
    }),
    { numRuns: 60 },
  );
});
