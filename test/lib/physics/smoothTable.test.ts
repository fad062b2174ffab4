import { expect, test } from "vitest";
import { findZero } from "../../../lib/physics/findZero.ts";
import { nitrateMolality } from "../../../lib/physics/nitrateMolality.ts";
import { nitriteMolality, potassiumNitrateMolality } from "../../../lib/physics/saltMolality.ts";
import { smoothTable } from "../../../lib/physics/smoothTable.ts";

test("smoothTable goes through its points, stays between neighbours and is level outside", () => {
  const f = smoothTable([0, 1, 3], [2, 5, 4]);
  expect([-1, 0, 1, 3, 9].map(f)).toEqual([2, 2, 5, 4, 4]);
  for (let x = 0; x <= 1; x += 0.05) {
    expect(f(x)).toBeGreaterThanOrEqual(2);
    expect(f(x)).toBeLessThanOrEqual(5);
  }
});

test.each([
  ["nitrateMolality", nitrateMolality],
  ["nitriteMolality", nitriteMolality],
  ["potassiumNitrateMolality", potassiumNitrateMolality],
])("%s falls without a step as the activity rises from 0.1 to 1", (_name, molality) => {
  for (let i = 0; i < 9000; i++) {
    const aw = 0.1 + i * 1e-4;
    expect(molality(aw + 1e-4)).toBeLessThan(molality(aw));
    expect(molality(aw) - molality(aw + 1e-4)).toBeLessThan(0.01 * molality(aw) + 0.01);
  }
});

test("findZero finds the zero of a bent falling function from either side", () => {
  const f = (x: number) => Math.exp(-x) - 0.25;
  for (const guess of [-3, 0, 1.3, 5]) expect(findZero(f, -4, 6, guess)).toBeCloseTo(Math.log(4), 11);
});
