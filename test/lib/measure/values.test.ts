import fc from "fast-check";
import { expect, test } from "vitest";
import {
  add,
  applyFunction,
  correlated,
  correlation,
  covariance,
  type Dimension,
  divide,
  exact,
  exponential,
  interval95,
  logarithm,
  mean,
  measuredValue,
  multiply,
  negate,
  power,
  scale,
  squareRoot,
  standardUncertainty,
  subtract,
  sum,
  type Value,
  widthFrom,
} from "../../../lib/measure/index.ts";

const mass: Dimension = { mass: 1 };
const point: Dimension = { temperature: 1, point: true };
const difference: Dimension = { temperature: 1 };
const a = measuredValue(10, 0.3, mass, "a");
const b = measuredValue(4, 0.4, mass, "b");

test("add and subtract of independent values add their variances", () => {
  expect(add(a, b).value).toBe(14);
  expect(standardUncertainty(add(a, b))).toBeCloseTo(0.5, 14);
  expect(standardUncertainty(subtract(a, b))).toBeCloseTo(0.5, 14);
  expect(correlation(add(a, b), subtract(a, b))).toBeCloseTo((0.09 - 0.16) / 0.25, 12);
});

test("subtract(a, a) is exactly zero wide, and divide(a, a) is exactly 1", () => {
  expect(subtract(a, a).components.size).toBe(0);
  expect(interval95(subtract(a, a))).toEqual([0, 0]);
  expect(standardUncertainty(divide(a, a))).toBeLessThan(1e-15);
});

test("subtract takes back what add put in, for any numbers", () => {
  const value = (source: string) =>
    fc
      .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.double({ min: 0, max: 1e3, noNaN: true }))
      .map(([number, u]) => measuredValue(number, u, mass, source));
  fc.assert(
    fc.property(value("x"), value("y"), (x, y) => {
      const again = subtract(add(x, y), y);
      expect(Math.abs(again.value - x.value)).toBeLessThan(1e-9);
      expect(Math.abs(standardUncertainty(again) - standardUncertainty(x))).toBeLessThan(1e-12);
      expect(covariance(x, y)).toBe(0);
    }),
  );
});

const temperatures: readonly (readonly [
  name: string,
  work: (x: Value, y: Value) => Value,
  x: Dimension,
  y: Dimension,
  result: Dimension,
])[] = [
  ["point − point", subtract, point, point, difference],
  ["point − difference", subtract, point, difference, point],
  ["point + difference", add, point, difference, point],
  ["difference + point", add, difference, point, point],
  ["difference − difference", subtract, difference, difference, difference],
];

test.each(temperatures)("%s has the right kind", (_name, work, x, y, result) => {
  expect(work(exact(400, x), exact(5, y)).dimension).toEqual(result);
});

const refused: readonly (readonly [name: string, work: () => unknown, message: string])[] = [
  ["point + point", () => add(exact(400, point), exact(400, point)), "a temperature and a temperature"],
  ["difference − point", () => subtract(exact(4, difference), exact(400, point)), "only be taken from a temperature"],
  ["2 × point", () => multiply(exact(2), exact(400, point)), "invalid product: a temperature"],
  ["−point", () => negate(exact(400, point)), "invalid sign: a temperature"],
  ["mass + length", () => add(exact(1, mass), exact(1, { length: 1 })), "invalid sum: a weight and a length"],
  ["mass / 0", () => divide(exact(1), exact(0, mass)), "invalid divisor: 0"],
  ["e to a mass", () => exponential(exact(1, mass)), "a weight; a plain number expected"],
  ["logarithm of 0", () => logarithm(exact(0)), "above 0 expected"],
  ["root of −1", () => squareRoot(exact(-1)), "0 or more expected"],
  ["sum of none", () => sum([]), "missing values"],
  ["exact(NaN)", () => exact(Number.NaN), "invalid value: NaN"],
  ["negative uncertainty", () => measuredValue(1, -1, mass, "a"), "invalid standard uncertainty: -1"],
  ["interval beside the value", () => measuredValue(1, 0.1, mass, "a", [2, 3]), "invalid interval: 2 to 3"],
];

test.each(refused)("%s is refused", (_name, work, message) => {
  expect(work).toThrow(message);
});

test("applyFunction finds by differences the slopes that are given exactly", () => {
  const exactly = multiply(power(a, 3), b);
  const numerically = applyFunction((x, y) => (x ?? 0) ** 3 * (y ?? 0), [a, b], { dimension: exactly.dimension });
  for (const [source, component] of exactly.components) {
    expect((numerically.components.get(source) ?? 0) / component).toBeCloseTo(1, 8);
  }
});

test("applyFunction refuses a result or a slope that is not finite", () => {
  expect(() => applyFunction(() => Number.NaN, [a], { dimension: {} })).toThrow("invalid result: NaN");
  expect(() => applyFunction(() => 1, [a], { dimension: {}, partials: () => [] })).toThrow("invalid slope");
});

test("an interval of its own follows a value through linear steps, and flips with the sign", () => {
  const skewed = measuredValue(10, 1, mass, "s", [9, 14]);
  expect(interval95(scale(skewed, 2))).toEqual([18, 28]);
  expect(interval95(negate(skewed))).toEqual([-14, -9]);
  const twiceLess = subtract(scale(skewed, 2), skewed);
  expect(interval95(twiceLess)[0]).toBeCloseTo(9, 9);
  expect(interval95(twiceLess)[1]).toBeCloseTo(14, 9);
});

test("an interval wider than normal adds to an independent one by squares", () => {
  const few = measuredValue(10, 1, mass, "few readings", [6, 14]);
  const normal = measuredValue(5, 1, mass, "scale");
  expect(interval95(add(few, normal))[1]).toBeCloseTo(15 + Math.hypot(4, 1.96), 9);
  expect(subtract(few, few).interval95).toBeUndefined();
});

test("mean of temperatures is a temperature", () => {
  const both = mean([measuredValue(400, 1, point, "x"), measuredValue(410, 1, point, "y")]);
  expect(both.value).toBe(405);
  expect(both.dimension).toEqual(point);
  expect(standardUncertainty(both)).toBeCloseTo(Math.SQRT1_2, 12);
});

test("widthFrom sums to 1, largest first", () => {
  const parts = widthFrom(add(a, b));
  expect(parts.map(({ source }) => source)).toEqual(["b", "a"]);
  expect(parts[0]?.share).toBeCloseTo(0.64, 12);
  expect(parts[1]?.share).toBeCloseTo(0.36, 12);
  expect(widthFrom(exact(1))).toEqual([]);
});

test("correlated gives back the covariance it was given, singular ones too", () => {
  const entry = fc.integer({ min: -300, max: 300 }).map((hundredths) => hundredths / 100);
  fc.assert(
    fc.property(fc.array(fc.tuple(entry, entry), { minLength: 1, maxLength: 5 }), (factors) => {
      // Two factors for up to five values: of rank two at most.
      const given = factors.map(([p, q]) => factors.map(([r, s]) => p * r + q * s));
      const values = correlated(
        factors.map(() => ({ value: 1, dimension: mass })),
        given,
        "fit",
      );
      values.forEach((x, i) => {
        values.forEach((y, j) => {
          const size = Math.sqrt((given[i]?.[i] ?? 0) * (given[j]?.[j] ?? 0));
          expect(Math.abs(covariance(x, y) - (given[i]?.[j] ?? 0))).toBeLessThanOrEqual(1e-4 * size);
        });
      });
    }),
    { numRuns: 300 },
  );
});

test("correlated names each set anew where no name is given, so that two sets are independent", () => {
  const matrix = [
    [4, -3],
    [-3, 9],
  ];
  // What the values were unsure of before is said anew by the matrix, and not added to it.
  const before = [measuredValue(1, 5, mass, "before", [-20, 30]), measuredValue(2, 7, {}, "before")];
  const [a1 = exact(0), b1 = exact(0)] = correlated(before, matrix);
  const [a2 = exact(0), b2 = exact(0)] = correlated([1, { value: 2 }], matrix);
  expect(covariance(a1, b1)).toBeCloseTo(-3, 12);
  expect(covariance(a2, b2)).toBeCloseTo(-3, 12);
  expect([covariance(a1, a2), covariance(a1, b2), covariance(b1, b2)]).toEqual([0, 0, 0]);
  expect(standardUncertainty(a1)).toBeCloseTo(2, 12);
  expect([a1.dimension, b1.dimension, a2.dimension]).toEqual([mass, {}, {}]);
  expect(a1.interval95).toBeUndefined();
  expect(() => correlated([1, Number.NaN], matrix)).toThrow("invalid value: NaN");
});

test("correlated refuses a matrix that is no covariance", () => {
  const two = [exact(1), exact(2)];
  expect(() => correlated(two, [[1, 0.5]], "fit")).toThrow("2 rows of 2 expected");
  expect(() =>
    correlated(
      two,
      [
        [1, 0.5],
        [0.4, 1],
      ],
      "fit",
    ),
  ).toThrow("the same on both sides");
  expect(() =>
    correlated(
      two,
      [
        [1, 1.2],
        [1.2, 1],
      ],
      "fit",
    ),
  ).toThrow("negative eigenvalues");
  expect(() =>
    correlated(
      two,
      [
        [-1, 0],
        [0, 1],
      ],
      "fit",
    ),
  ).toThrow("invalid variance: -1");
  const three = [...two, exact(3)];
  expect(() =>
    correlated(
      three,
      [
        [1, 0.9, -0.9],
        [0.9, 1, 0.9],
        [-0.9, 0.9, 1],
      ],
      "fit",
    ),
  ).toThrow("negative eigenvalues");
});
