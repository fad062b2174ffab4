import { expect, test } from "vitest";
import {
  add,
  applyFunction,
  correlated,
  correlation,
  type Dimension,
  divide,
  exact,
  measuredValue,
  multiply,
  scale,
  squareRoot,
  standardUncertainty,
  subtract,
  sum,
} from "../../lib/measure/index.ts";

// JCGM 100:2008 (GUM with minor corrections), annex H.

const volt: Dimension = { mass: 1, length: 2, time: -3 };
const plain: Dimension = {};

/** Means of sets read together, and the covariance of these means (JCGM 100:2008, 5.2.3, equation 17). */
function meansOf(sets: readonly (readonly number[])[]) {
  const means = sets.map((set) => set.reduce((total, each) => total + each, 0) / set.length);
  const covariance = sets.map((a, i) =>
    sets.map((b, j) => {
      const products = a.map((each, k) => (each - (means[i] ?? 0)) * ((b[k] ?? 0) - (means[j] ?? 0)));
      return products.reduce((total, each) => total + each, 0) / (a.length * (a.length - 1));
    }),
  );
  return { means, covariance };
}

/** JCGM 100:2008, H.2, table H.2: five sets of simultaneous observations of V, I and φ. */
function impedance() {
  const { means, covariance } = meansOf([
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ]);
  const dimensions = [volt, plain, plain];
  const [V = exact(0), I = exact(0), phi = exact(0)] = correlated(
    means.map((value, i) => ({ value, dimension: dimensions[i] ?? plain })),
    covariance,
    "H.2",
  );
  const of = (f: (v: number, i: number, angle: number) => number) =>
    applyFunction((v, i, angle) => f(v ?? 0, i ?? 0, angle ?? 0), [V, I, phi], { dimension: volt });
  return {
    V,
    I,
    phi,
    R: of((v, i, angle) => (v / i) * Math.cos(angle)),
    X: of((v, i, angle) => (v / i) * Math.sin(angle)),
    Z: of((v, i) => v / i),
  };
}

test("GUM H.2, table H.2: means, their uncertainties and correlations of V, I and phi", () => {
  const { V, I, phi } = impedance();
  expect(V.value).toBeCloseTo(4.999, 4);
  expect(I.value * 1e3).toBeCloseTo(19.661, 4);
  expect(phi.value).toBeCloseTo(1.04446, 6);
  expect(standardUncertainty(V)).toBeCloseTo(0.0032, 4);
  expect(standardUncertainty(I) * 1e3).toBeCloseTo(0.0095, 4);
  expect(standardUncertainty(phi)).toBeCloseTo(0.00075, 5);
  expect(correlation(V, I)).toBeCloseTo(-0.36, 2);
  expect(correlation(V, phi)).toBeCloseTo(0.86, 2);
  expect(correlation(I, phi)).toBeCloseTo(-0.65, 2);
});

test("GUM H.2, table H.3: R, X and Z with uncertainties and correlations, within a unit of the last printed digit", () => {
  const { R, X, Z } = impedance();
  expect(R.value).toBeCloseTo(127.732, 3);
  expect(X.value).toBeCloseTo(219.847, 3);
  expect(Z.value).toBeCloseTo(254.26, 2);
  expect(standardUncertainty(R)).toBeCloseTo(0.071, 3);
  // The data of table H.2 give 0.29558 without rounding on the way; the table prints 0.295.
  expect(Math.abs(standardUncertainty(X) - 0.295)).toBeLessThan(0.001);
  expect(standardUncertainty(Z)).toBeCloseTo(0.236, 3);
  expect(correlation(R, X)).toBeCloseTo(-0.588, 3);
  expect(correlation(R, Z)).toBeCloseTo(-0.485, 3);
  expect(correlation(X, Z)).toBeCloseTo(0.993, 3);
});

test("GUM H.2: Z² = R² + X² holds value by value, and its difference is zero wide", () => {
  const { R, X, Z } = impedance();
  const again = squareRoot(add(multiply(R, R), multiply(X, X)));
  expect(standardUncertainty(subtract(again, Z))).toBeLessThan(1e-7 * standardUncertainty(Z));
});

test("GUM H.3: the calibration line of a thermometer from its eleven readings", () => {
  const read = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const from = read.map((each) => each - 20);
  const count = read.length;
  const total = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
  // Equation H.13: the slope and the value at t0 are sums of corrections, each with its weight.
  const spread = count * total(from.map((x) => x * x)) - total(from) ** 2;
  const slopeWeights = from.map((x) => (count * x - total(from)) / spread);
  const startWeights = from.map((x) => (total(from.map((each) => each * each)) - x * total(from)) / spread);
  const start = total(corrections.map((b, k) => b * (startWeights[k] ?? 0)));
  const slope = total(corrections.map((b, k) => b * (slopeWeights[k] ?? 0)));
  const scatter = Math.sqrt(total(corrections.map((b, k) => (b - start - slope * (from[k] ?? 0)) ** 2)) / (count - 2));
  const observed = corrections.map((b, k) => measuredValue(b, scatter, plain, `reading ${k + 1}`));
  const y1 = sum(observed.map((b, k) => scale(b, startWeights[k] ?? 0)));
  const y2 = sum(observed.map((b, k) => scale(b, slopeWeights[k] ?? 0)));
  expect(scatter).toBeCloseTo(0.0035, 4);
  expect(y1.value).toBeCloseTo(-0.1712, 4);
  expect(y2.value).toBeCloseTo(0.00218, 5);
  expect(standardUncertainty(y1)).toBeCloseTo(0.0029, 4);
  expect(standardUncertainty(y2)).toBeCloseTo(0.00067, 5);
  expect(correlation(y1, y2)).toBeCloseTo(-0.93, 3);
  // H.3.4: the correction at 30 °C is -0.1494 °C with 0.0041 °C (from memory: the equation is H.14 and H.15).
  const at30 = add(y1, scale(y2, 10));
  expect(at30.value).toBeCloseTo(-0.1494, 4);
  expect(standardUncertainty(at30)).toBeCloseTo(0.0041, 4);
});

test("GUM 5.1.6: relative variances add in a product and a quotient", () => {
  const a = measuredValue(3, 0.03, plain, "a");
  const b = measuredValue(7, 0.14, plain, "b");
  const relative = Math.hypot(0.01, 0.02);
  expect(standardUncertainty(multiply(a, b)) / 21).toBeCloseTo(relative, 12);
  expect(standardUncertainty(divide(a, b)) / (3 / 7)).toBeCloseTo(relative, 12);
});

test("GUM 5.2.2, example: ten resistors calibrated with one standard are off together, u = 1 ohm", () => {
  const standard = measuredValue(1000, 0.1, plain, "standard resistor");
  const ten = Array.from({ length: 10 }, () => multiply(exact(1), standard));
  expect(sum(ten).value).toBe(10000);
  expect(standardUncertainty(sum(ten))).toBeCloseTo(1, 12);
});
