import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { longestBar } from "../../../../lib/bath/sizing/longestBar.ts";
import type { Way } from "../../../../lib/bath/sizing/types.ts";
import { longestPart } from "../../../../lib/index.ts";
import { attitude, longestAt, outside, searchedBar, skew } from "./poses.ts";

const inch = 0.0254;
const ways: readonly Way[] = ["straight", "floorDiagonal", "tilted", "spaceDiagonal"];
const size = fc.double({ min: 0.02, max: 2, noNaN: true });
const thin = fc.double({ min: 0, max: 0.4, noNaN: true });
const tank = fc.record({ length: size, width: size, depth: size });

describe("exact cases", () => {
  // Pythagoras: a wire lies along the diagonals; 3-4-5 and 2-3-6-7 are whole numbers.
  test("a wire lies along the diagonals", () => {
    const wire = { width: 0, thickness: 0 };
    const { straight, floorDiagonal, tilted } = longestPart({ length: 4, width: 3, depth: 3 }, wire, 0);
    expect([straight, floorDiagonal, tilted]).toEqual([4, 5, 5]);
    expect(longestPart({ length: 6, width: 3, depth: 2 }, wire, 0).spaceDiagonal).toBeCloseTo(7, 12);
  });

  // Both sides touched at 45°: l + w = a√2 in a square of side a.
  test("across a square a bar loses its own width off the diagonal", () => {
    expect(longestBar(1, 1, 0.1).length).toBeCloseTo(Math.SQRT2 - 0.1, 12);
    expect(longestBar(1, 1, 0.1).angle).toBeCloseTo(Math.PI / 4, 12);
  });

  // At sin θ = 3/5: l = 10 and w = 1 measure 10·4/5 + 1·3/5 = 8.6 by 10·3/5 + 1·4/5 = 6.8.
  test("a bar of 10 by 1 just lies across 8.6 by 6.8", () => {
    expect(longestBar(8.6, 6.8, 1).length).toBeCloseTo(10, 10);
    expect(longestBar(6.8, 8.6, 1).length).toBeCloseTo(10, 10);
    expect(longestBar(8.6, 6.8, 1).angle).toBeCloseTo(Math.asin(0.6), 10);
  });

  // 1.2 is wider than a square of side 1: at 45° there is room for √2 - 1.2.
  test("a bar wider than both sides lies across, shorter than wide", () => {
    expect(longestBar(1, 1, 1.2).length).toBeCloseTo(Math.SQRT2 - 1.2, 10);
    expect(longestBar(1, 1, 1.5).length).toBe(0);
  });

  test("a bar of finite width obeys its closed form", () => {
    const [a, b, w] = [24 * inch, 6 * inch, 1 * inch];
    const { length: l } = longestBar(a, b, w);
    expect(((a + b) / (l + w)) ** 2 + ((a - b) / (l - w)) ** 2).toBeCloseTo(2, 10);
    expect(l).toBeGreaterThan(a);
  });

  test("clearance is taken off both ends, and off bottom and surface", () => {
    const box = { length: 1, width: 0.2, depth: 0.15 };
    expect(longestPart(box, { width: 0.01, thickness: 0.01 }, 0.02).straight).toBeCloseTo(0.96, 12);
    expect(longestPart(box, { width: 0.11, thickness: 0.01 }, 0.02).straight).toBeCloseTo(0.96, 12);
    expect(longestPart(box, { width: 0.17, thickness: 0.01 }, 0.02).straight).toBe(0);
  });

  test("a plate stands on edge where that gives more", () => {
    const { floorDiagonal, poses } = longestPart(
      { length: 1, width: 0.3, depth: 0.3 },
      { width: 0.2, thickness: 0 },
      0,
    );
    expect(floorDiagonal).toBeCloseTo(Math.hypot(1, 0.3), 12);
    expect(Math.abs(poses.floorDiagonal?.widthwise[2] ?? 0)).toBe(1);
  });
});

describe("what does not fit", () => {
  test("gives 0 and no pose", () => {
    const most = longestPart({ length: 0.6, width: 0.15, depth: 0.02 }, { width: 0.01, thickness: 0.01 }, 0.0127);
    expect(ways.map((way) => most[way])).toEqual([0, 0, 0, 0]);
    expect(most.poses).toEqual({});
  });

  test.each([
    [{ length: -1, width: 1, depth: 1 }, { width: 0, thickness: 0 }, 0, "invalid tank length: -1 m; 0 to 100 m"],
    [{ length: 1, width: Number.NaN, depth: 1 }, { width: 0, thickness: 0 }, 0, "invalid tank width: NaN m"],
    [{ length: 1, width: 1, depth: Number.POSITIVE_INFINITY }, { width: 0, thickness: 0 }, 0, "invalid working depth"],
    [{ length: 1, width: 1, depth: 1 }, { width: -0.1, thickness: 0 }, 0, "invalid width of the part: -0.1 m"],
    [{ length: 1, width: 1, depth: 1 }, { width: 0, thickness: Number.NaN }, 0, "invalid thickness of the part: NaN"],
    [{ length: 1, width: 1, depth: 1 }, { width: 0, thickness: 0 }, -0.01, "invalid clearance: -0.01 m; 0 to 10 m"],
  ])("%j, %j, %d throws", (box, bar, clearance, message) => {
    expect(() => longestPart(box, bar, clearance)).toThrow(message);
  });
});

test("every pose is a box that lies inside, of the length said", () => {
  fc.assert(
    fc.property(tank, thin, thin, fc.double({ min: 0, max: 0.05, noNaN: true }), (box, width, thickness, clearance) => {
      const most = longestPart(box, { width, thickness }, clearance);
      for (const way of ways) {
        const pose = most.poses[way];
        expect(pose === undefined).toBe(most[way] === 0);
        if (!pose) continue;
        expect(pose.length).toBe(most[way]);
        expect([pose.width, pose.thickness]).toEqual([width, thickness]);
        expect(skew(pose)).toBeLessThan(1e-12);
        expect(outside(box, clearance, pose)).toBeLessThan(1e-12);
      }
      expect(most.floorDiagonal).toBeGreaterThanOrEqual(most.straight);
      expect(most.tilted).toBeGreaterThanOrEqual(most.straight);
      expect(most.spaceDiagonal).toBeGreaterThanOrEqual(Math.max(most.floorDiagonal, most.tilted));
    }),
    { numRuns: 400 },
  );
});

test("no angle of a coarse search beats the floor diagonal nor the tilted bar, and it comes near", () => {
  fc.assert(
    fc.property(tank, thin, thin, (box, width, thickness) => {
      const most = longestPart(box, { width, thickness }, 0);
      const { length, width: across, depth } = box;
      const both = [
        [width, thickness],
        [thickness, width],
      ] as const;
      const of = (side: number, third: number) =>
        Math.max(...both.map(([x, y]) => (y <= third ? searchedBar(length, side, x) : 0)));
      for (const [found, searched] of [
        [most.floorDiagonal, of(across, depth)],
        [most.tilted, of(depth, across)],
      ] as const) {
        expect(searched).toBeLessThanOrEqual(found * (1 + 1e-9));
        expect(searched).toBeGreaterThan(found * 0.98 - 0.003);
      }
    }),
    { numRuns: 150 },
  );
});

test("no attitude of a random search beats the space diagonal", () => {
  const angle = fc.double({ min: 0, max: Math.PI, noNaN: true });
  const attitudes = fc.array(fc.tuple(angle, angle, angle), { minLength: 200, maxLength: 200 });
  fc.assert(
    fc.property(tank, thin, thin, attitudes, (box, w, t, tried) => {
      const { spaceDiagonal } = longestPart(box, { width: w, thickness: t }, 0);
      const room = [box.length, box.width, box.depth] as const;
      const most = Math.max(...tried.map(([a, b, c]) => longestAt(room, attitude(a, b, c), w, t)));
      expect(most).toBeLessThanOrEqual(spaceDiagonal * (1 + 1e-9));
    }),
    { numRuns: 60 },
  );
});

// Found by a search with another generator of attitudes; a bar that is only turned and tilted gets to 1.401 m.
test("a plate too wide to stand leans, turned and tilted at once", () => {
  const box = { length: 1.2911, width: 0.2253, depth: 0.9382 };
  const most = longestPart(box, { width: 0.2275, thickness: 0.0132 }, 0);
  expect(most.spaceDiagonal).toBeGreaterThan(1.505);
  const pose = most.poses.spaceDiagonal;
  if (!pose) throw new Error("no pose");
  expect(skew(pose)).toBeLessThan(1e-12);
  expect(outside(box, 0, pose)).toBeLessThan(1e-12);
});
