import { expect, test } from "vitest";
import { halton, normalQuantile, seeded } from "../../../../lib/fit/plan/seeded.ts";

// Table of the standard normal distribution, any statistics handbook (from memory).
test.each([
  [0.5, 0],
  [0.8413447, 1],
  [0.975, 1.959964],
  [0.99865, 2.99998],
  [0.001, -3.090232],
])("the normal quantile of %d is the table's", (p, z) => {
  expect(normalQuantile(p)).toBeCloseTo(z, 4);
});

test("normal numbers have mean 0, deviation 1, and a normal's tails; the same seed gives the same", () => {
  const r = seeded(7);
  const list = Array.from({ length: 40_000 }, () => r.normal());
  const moment = (power: number) => list.reduce((sum, z) => sum + z ** power, 0) / list.length;
  expect(moment(1)).toBeCloseTo(0, 1);
  expect(moment(2)).toBeCloseTo(1, 1);
  expect(moment(4)).toBeGreaterThan(2.85);
  expect(moment(4)).toBeLessThan(3.15);
  const beyond = list.filter((z) => Math.abs(z) > 1.96).length / list.length;
  expect(beyond).toBeCloseTo(0.05, 2);
  const neighbours = list.slice(1).reduce((sum, z, i) => sum + z * (list[i] ?? 0), 0) / list.length;
  expect(Math.abs(neighbours)).toBeLessThan(0.02);
  expect(seeded(9).even()).toBe(seeded(9).even());
  expect(seeded(9).normal()).not.toBe(seeded(10).normal());
});

test("Halton's sequence fills the unit interval evenly", () => {
  const list = Array.from({ length: 81 }, (_, i) => halton(i + 1, 3)).sort((a, b) => a - b);
  for (const [i, x] of list.entries()) expect(Math.abs(x - (i + 0.5) / 81)).toBeLessThan(0.02);
});
