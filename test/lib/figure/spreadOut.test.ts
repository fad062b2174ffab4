import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadOut } from "../../../lib/figure/spreadOut.ts";

test("spreadOut leaves alone what does not meet", () => {
  expect(spreadOut([20, 60], [20, 20], { gap: 10, low: 0, high: 100 })).toEqual([20, 60]);
});

test("spreadOut parts what meets evenly, and stays inside", () => {
  expect(spreadOut([50, 50], [20, 20], { gap: 10, low: 0, high: 100 })).toEqual([35, 65]);
  expect(spreadOut([95, 96], [20, 20], { gap: 10, low: 0, high: 100 })).toEqual([60, 90]);
});

test("spreadOut gives nothing where there is no room", () => {
  expect(spreadOut([10, 20], [60, 60], { gap: 0, low: 0, high: 100 })).toBeUndefined();
});

test("spreadOut never lets two meet, leave the room or change places", () => {
  const thing = fc.record({ at: fc.integer({ min: -50, max: 450 }), size: fc.integer({ min: 0, max: 90 }) });
  fc.assert(
    fc.property(fc.array(thing, { maxLength: 9 }), (things) => {
      const sorted = [...things].sort((a, b) => a.at - b.at);
      const centres = spreadOut(
        sorted.map((one) => one.at),
        sorted.map((one) => one.size),
        { gap: 5, low: 0, high: 400 },
      );
      if (!centres) return;
      const boxes = sorted.map((one, index) => {
        const centre = centres[index] ?? Number.NaN;
        return [centre - one.size / 2, centre + one.size / 2] as const;
      });
      boxes.forEach(([start, end], index) => {
        expect(start).toBeGreaterThanOrEqual(-1e-6);
        expect(end).toBeLessThanOrEqual(400 + 1e-6);
        const before = boxes[index - 1];
        if (before) expect(start - before[1]).toBeGreaterThanOrEqual(5 - 1e-6);
      });
    }),
  );
});
