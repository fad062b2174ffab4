import { expect, test } from "vitest";
import { fourth } from "../../../lib/bath/index.ts";
import { standardUncertainty } from "../../../lib/measure/index.ts";
import type { Dimension } from "../../../lib/measure/types.ts";

const known = (value: number, dimension: Dimension, source: string, u: number) => ({
  value,
  dimension,
  components: new Map([[source, u]]),
});
const start = known(9, { mass: 1 }, "start", 0.3);
const end = known(6, { mass: 1 }, "end", 0.4);
const time = known(3000, { time: 1 }, "clock", 0);
const rate = known(0.001, { mass: 1, time: -1 }, "rate", 0.0001);

test("fourth({ start, end, time }) gives the rate, its doubt by the root of the squares", () => {
  const { missing, value } = fourth({ start, end, time });
  expect(missing).toBe("rate");
  expect(value.value).toBeCloseTo(0.001, 12);
  expect(standardUncertainty(value)).toBeCloseTo(0.5 / 3000, 12);
});

test.each([
  ["end", { start, time, rate }, 6],
  ["start", { end, time, rate }, 9],
  ["time", { start, end, rate }, 3000],
])("fourth(three of the four) gives the %s", (missing, story, expected) => {
  const result = fourth(story);
  expect(result.missing).toBe(missing);
  expect(result.value.value).toBeCloseTo(expected, 9);
});

test("fourth({ ..., poured }) counts what was poured", () => {
  expect(fourth({ start, end, time, poured: known(3, { mass: 1 }, "cup", 0) }).value.value).toBeCloseTo(0.002, 12);
});

test("fourth(two of the four) is refused", () => {
  expect(() => fourth({ start, end })).toThrow("ambiguous water story");
});

test("fourth({ start, end, rate: 0 }) is refused", () => {
  expect(() => fourth({ start, end, rate: known(0, rate.dimension, "rate", 0) })).toThrow("invalid rate");
});
