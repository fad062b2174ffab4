import fc from "fast-check";
import { expect, test } from "vitest";
import { bandStretches } from "../../../lib/bath/bandStretches.ts";
import { timeBetween } from "../../../lib/bath/bandTime.ts";

const saw = [
  { time: 0, T: 0 },
  { time: 10, T: 10 },
  { time: 20, T: -10 },
];

test("bandStretches(path, limits, hold) cuts where the lines cross the limits", () => {
  expect(bandStretches(saw, [-5, 5], [0, 20])).toEqual([
    { start: 0, end: 5, side: "inside" },
    { start: 5, end: 12.5, side: "over" },
    { start: 12.5, end: 17.5, side: "inside" },
    { start: 17.5, end: 20, side: "under" },
  ]);
});

test("bandStretches(path, limits, hold) has none for an empty course or hold", () => {
  expect(bandStretches([], [-5, 5], [0, 20])).toEqual([]);
  expect(bandStretches(saw, [-5, 5], [3, 3])).toEqual([]);
});

test("bandStretches(path, limits, hold) inside add up to timeBetween, and all fill the hold", () => {
  const steps = fc.array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: -9, max: 9 })), {
    minLength: 2,
    maxLength: 20,
  });
  fc.assert(
    fc.property(steps, (all) => {
      const path = all.map(([, T], i) => ({
        time: all.slice(0, i + 1).reduce((time, [step]) => time + step, 0),
        T: T + 0.25,
      }));
      const [from, to] = [0, (path.at(-1)?.time ?? 0) + 5];
      const cut = bandStretches(path, [-3, 4], [from, to]);
      const sum = (side?: string) =>
        cut.filter((one) => !side || one.side === side).reduce((s, { start, end }) => s + end - start, 0);
      expect(sum()).toBeCloseTo(to - from, 9);
      expect(sum("inside")).toBeCloseTo(timeBetween(path, -3, 4, from, to), 9);
    }),
  );
});
