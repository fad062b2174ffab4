import { expect, test } from "vitest";
import { leastSquares } from "../../lib/fit/index.ts";
import { type NistSet, nistResiduals, nistSets } from "./nistModels.ts";

// NIST Statistical Reference Datasets (StRD), nonlinear regression, from
// https://www.itl.nist.gov/div898/strd/nls/nls_main.shtml: 27 sets, two starts each, results certified to 11 digits (public domain).
// Only the residuals and the start are given to the fit.

/** How many digits of what is certified a figure has: the log relative error. */
const digits = (found: number, certified: number) => -Math.log10(Math.abs(found - certified) / Math.abs(certified));

const fewestDigits = (found: readonly number[], certified: readonly number[]) =>
  Math.min(...certified.map((each, j) => digits(found[j] ?? Number.NaN, each)));

const fits = nistSets.flatMap((set) => [
  { name: set.name, from: "the far start", start: set.start1, set },
  { name: set.name, from: "the near start", start: set.start2, set },
]);

test("there are 27 sets, each with as many figures as its data need", () => {
  expect(nistSets.length).toBe(27);
  for (const { x, y, certified, standardDeviations, start1, start2 } of nistSets) {
    expect(new Set([...x.map((list) => list.length), y.length]).size).toBe(1);
    expect(new Set([certified, standardDeviations, start1, start2].map((list) => list.length)).size).toBe(1);
  }
});

const fitted = fits.map((one) => ({
  ...one,
  fit: leastSquares({ residuals: nistResiduals(one.set), start: one.start }),
}));

test.each(fitted)("$name from $from: every parameter has 6 certified digits, and the fit is done", ({ fit, set }) => {
  expect(fewestDigits(fit.parameters, set.certified)).toBeGreaterThanOrEqual(6);
  expect(fit.converged).toBe(true);
  expect(fit.reason).toMatch(/^at a minimum/);
});

// Lanczos1 has no errors but the rounding of its data: a residual sum of 1.4e-25 is beyond double precision.
const withErrors = fitted.filter(({ name }) => name !== "Lanczos1");

test.each(withErrors)("$name from $from: standard errors and residual sum have 5 certified digits", ({ fit, set }) => {
  expect(fewestDigits(fit.standardErrors, set.standardDeviations)).toBeGreaterThanOrEqual(5);
  expect(digits(fit.residualSumOfSquares, set.residualSumOfSquares)).toBeGreaterThanOrEqual(5);
  expect(digits(fit.residualStandardDeviation, set.residualStandardDeviation)).toBeGreaterThanOrEqual(5);
  // The file of Rat43 says 9 degrees of freedom, but its standard deviation is of 15 values less 4 parameters.
  expect(fit.degreesOfFreedom).toBe(set.y.length - set.certified.length);
});

/** A box that the two starts and the answer span: each start lies on its sides, and steps want to leave it. */
const boxOf = ({ certified, start1, start2 }: NistSet) =>
  certified.map((each, j) => {
    const all = [each * 1.05, each * 0.95, start1[j] ?? each, start2[j] ?? each];
    return [Math.min(...all), Math.max(...all)] as const;
  });

const isCorner = ({ name, start, set }: (typeof fits)[number]) => name === "Eckerle4" && start === set.start1;

test.each(fits.filter((one) => !isCorner(one)))("$name from $from: bounds on the way do not spoil it", (one) => {
  const { start, set } = one;
  const fit = leastSquares({ residuals: nistResiduals(set), start, bounds: boxOf(set) });
  expect(fewestDigits(fit.parameters, set.certified)).toBeGreaterThanOrEqual(6);
  expect(fit.converged).toBe(true);
  expect(fit.atBound.every((each) => each === undefined)).toBe(true);
});

test.each(fits.filter(isCorner))(
  "$name from $from: that corner of its box is a minimum itself, and is left at that",
  (one) => {
    const residuals = nistResiduals(one.set);
    const fit = leastSquares({ residuals, start: one.start, bounds: boxOf(one.set) });
    expect(fit.parameters).toEqual(one.start);
    expect(fit.atBound).toEqual(["lower", "upper", "upper"]);
    const sum = (p: readonly number[]) => residuals(p).reduce((total, each) => total + each * each, 0);
    // A little way into the box, along each side, the sum is larger.
    for (const [j, by] of [1.001, 0.999, 0.999].entries())
      expect(sum(one.start.with(j, (one.start[j] ?? 0) * by))).toBeGreaterThan(sum(one.start));
  },
);
