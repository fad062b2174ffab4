import { expect, test } from "vitest";
import type { Answer } from "../../lib/bath/types.ts";
import type { PatternName } from "../../lib/fit/index.ts";
import { waysApart, whichToTrust } from "../../notebooks/twoWays.ts";

const answer = (value: number, half: number): Answer => ({
  value,
  standardUncertainty: half / 1.96,
  interval95: [value - half, value + half],
  measured: { value, dimension: { mass: 1, time: -1 }, components: new Map([["x", half / 1.96]]) },
});

const fitted = (value: number, half: number, pattern: PatternName) => ({
  boilOff: answer(value, half),
  residuals: { points: [], pattern, finding: "", noise: 0.3 },
});

test("two boil-offs disagree when they lie further apart than the root of the sum of squares of their half-widths", () => {
  // 3 and 4 go together to 5, the oldest right triangle there is.
  expect(waysApart(answer(10, 3), answer(4.9, 4))).toEqual({ difference: 5.1, together: 5, disagree: true });
  expect(waysApart(answer(10, 3), answer(5.1, 4)).disagree).toBe(false);
  expect(waysApart(answer(4.9, 4), answer(10, 3)).disagree).toBe(true);
});

test("nothing is said of trust where the two ways agree", () => {
  expect(whichToTrust(fitted(10, 3, "a drift"), { boilOff: answer(9, 4) })).toBeUndefined();
});

test("the fitted bath is trusted where it leaves nothing unexplained, else the water balance", () => {
  const balance = { boilOff: answer(2, 1) };
  expect(whichToTrust(fitted(10, 1, "none"), balance)).toMatch(/^Trust the fitted bath/);
  expect(whichToTrust(fitted(10, 1, "too few to tell"), balance)).toMatch(/^Trust the fitted bath/);
  expect(whichToTrust(fitted(10, 1, "a bend"), balance)).toMatch(/^Trust the water balance: .* bends\.$/);
});
