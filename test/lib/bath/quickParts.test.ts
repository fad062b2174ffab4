import fc from "fast-check";
import { expect, test } from "vitest";
import { cholesky, dot, half, inverseDiagonal, products, solve } from "../../../lib/bath/cholesky.ts";
import { decays } from "../../../lib/bath/decays.ts";
import { middleOf } from "../../../lib/bath/middleOf.ts";
import { mixtureQuantile, normalShare } from "../../../lib/bath/mixtureQuantile.ts";
import { remembered } from "../../../lib/bath/remembered.ts";

// What makes a fit quick, against the plain way of saying the same.
const number = fc.double({ min: -3, max: 3, noNaN: true });
const lists = fc
  .tuple(fc.integer({ min: 1, max: 13 }), fc.integer({ min: 1, max: 9 }))
  .chain(([n, length]) =>
    fc.array(fc.array(number, { minLength: length, maxLength: length }), { minLength: n, maxLength: n }),
  )
  .map((rows) => rows.map((row) => Float64Array.from(row)));

test("products, cholesky, solve, half and inverseDiagonal agree with one another and with plain sums", () => {
  fc.assert(
    fc.property(lists, (rows) => {
      const n = rows.length;
      const all = products(rows);
      const plain = (i: number, j: number) =>
        Array.from(rows[i] as Float64Array).reduce((sum, x, k) => sum + x * (rows[j]?.[k] ?? 0), 0);
      const v = new Float64Array(n * n);
      for (let i = 0; i < n; i++)
        for (let j = 0; j <= i; j++) {
          expect(all[i * n + j]).toBeCloseTo(plain(i, j), 10);
          v[i * n + j] = plain(i, j) + (i === j ? 1 : 0);
          v[j * n + i] = v[i * n + j] as number;
        }
      const factor = cholesky(v, n);
      const own = inverseDiagonal(factor);
      for (let i = 0; i < n; i++) {
        const unit = Float64Array.from({ length: n }, (_, k) => (k === i ? 1 : 0));
        const x = solve(factor, unit);
        // V x is the unit again, by plain sums.
        for (let row = 0; row < n; row++)
          expect(dot(v.subarray(row * n, (row + 1) * n), x)).toBeCloseTo(row === i ? 1 : 0, 9);
        expect(own[i]).toBeCloseTo(x[i] as number, 10);
        const h = half(factor, unit);
        expect(dot(h, h)).toBeCloseTo(x[i] as number, 10);
      }
    }),
    { numRuns: 40 },
  );
});

test("middleOf(numbers) is the middle of the sorted numbers", () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(number, fc.integer({ min: 0, max: 3 })), { minLength: 1, maxLength: 60 }), (list) => {
      const sorted = [...list].sort((a, b) => a - b);
      const above = sorted[list.length >> 1] as number;
      const middle = list.length % 2 === 1 ? above : ((sorted[(list.length >> 1) - 1] as number) + above) / 2;
      expect(middleOf(Float64Array.from(list))).toBe(middle);
    }),
  );
  expect(middleOf(new Float64Array(0))).toBeNaN();
});

test("mixtureQuantile(parts, share) is where the mixture passes the share", () => {
  const part = fc.record({
    weight: fc.double({ min: 1e-6, max: 1, noNaN: true }),
    mean: number,
    sd: fc.double({ min: 1e-3, max: 20, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 12 }), fc.constantFrom(0.025, 0.5, 0.975), (parts, share) => {
      const whole = parts.reduce((sum, { weight }) => sum + weight, 0);
      const below = (x: number) =>
        parts.reduce((sum, { weight, mean, sd }) => sum + weight * normalShare((x - mean) / sd), 0) / whole;
      const found = mixtureQuantile(parts, share);
      const hair = 1e-11 * Math.max(...parts.map(({ sd }) => sd));
      expect(below(found - hair)).toBeLessThanOrEqual(share + 2e-9);
      expect(below(found + hair)).toBeGreaterThanOrEqual(share - 2e-9);
    }),
  );
});

test("decays(times, tau) gives the exponentials, near and far beyond what a quotient can hold", () => {
  for (const times of [
    [0, 60, 4000],
    [-300, 0, 9e5],
  ]) {
    const { left, between } = decays(Float64Array.from(times), 200);
    times.forEach((s, i) => {
      expect(left[i]).toBeCloseTo(Math.exp(-Math.abs(s) / 200), 13);
      times.forEach((t, j) => {
        expect(between(i, j)).toBeCloseTo(Math.exp(-Math.abs(s - t) / 200), 13);
      });
    });
  }
});

test("remembered(most) works a key out again only once it is forgotten", () => {
  let times = 0;
  const ask = remembered<number>(2);
  const count = (key: string) => ask(key, () => ++times);
  expect([count("a"), count("b"), count("a"), count("c"), count("a"), count("b")]).toEqual([1, 2, 1, 3, 1, 4]);
});
