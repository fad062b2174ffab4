import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, test } from "vitest";
import { type LeastSquaresFit, leastSquares } from "../../../lib/fit/index.ts";

const near = (found: readonly number[], wanted: readonly number[], digits = 7) => {
  expect(found.length).toBe(wanted.length);
  found.forEach((each, j) => {
    expect(each).toBeCloseTo(wanted[j] as number, digits);
  });
};

const times = (a: readonly (readonly number[])[], p: readonly number[]) =>
  a.map((row) => row.reduce((sum, each, j) => sum + each * (p[j] as number), 0));

/** A tall matrix whose columns are not alike, and as many numbers as it has rows. */
const linearProblem = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 2, max: 6 }))
  .chain(([columns, more]) => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    const list = (length: number) => fc.array(number, { minLength: length, maxLength: length });
    const rows = columns + more;
    return fc.record({
      // Each column leads in one row, so that no two are nearly the same.
      a: fc
        .array(list(columns), { minLength: rows, maxLength: rows })
        .map((a) => a.map((row, i) => row.map((each, j) => each + (i === j ? 4 : 0)))),
      b: list(rows).map((b) => b.map((each) => 3 * each + 0.1)),
      // Whole numbers: a start a hair off a bound may stay there, which is right and tells nothing.
      start: list(columns).map((start) => start.map((each) => Math.round(each * 10))),
      more: list(columns),
    });
  });

const normal = (a: readonly (readonly number[])[]) => {
  const matrix = new Matrix(a.map((row) => [...row]));
  return { matrix, square: matrix.transpose().mmul(matrix) };
};

describe("a linear problem", () => {
  test("has the solution, covariance and residual sum of the normal equations", () => {
    fc.assert(
      fc.property(linearProblem, ({ a, b, start }) => {
        const { matrix, square } = normal(a);
        const wanted = solve(square, matrix.transpose().mmul(Matrix.columnVector(b))).to1DArray();
        const left = times(a, wanted).map((each, i) => each - (b[i] as number));
        const sum = left.reduce((total, each) => total + each * each, 0);
        const variance = sum / (b.length - start.length);
        const fit = leastSquares({ residuals: (p) => times(a, p).map((each, i) => each - (b[i] as number)), start });
        expect(fit.converged).toBe(true);
        near(fit.parameters, wanted, 8);
        expect(fit.residualSumOfSquares).toBeCloseTo(sum, 8);
        const covariance = solve(square, Matrix.eye(start.length)).mul(variance).to2DArray();
        covariance.forEach((row, j) => {
          near(fit.covariance[j] ?? [], row, 7);
        });
        near(
          fit.standardErrors,
          covariance.map((row, j) => Math.sqrt(row[j] as number)),
          7,
        );
      }),
    );
  });

  test("is the same fit when its parameters are written in units a million times as large", () => {
    fc.assert(
      fc.property(linearProblem, ({ a, b, start }) => {
        const factor = 1e6;
        const residuals = (p: readonly number[]) => times(a, p).map((each, i) => each - (b[i] as number));
        const plain = leastSquares({ residuals, start });
        const scaled = leastSquares({
          residuals: (p) => residuals(p.map((each) => each * factor)),
          start: start.map((each) => each / factor),
        });
        near(
          scaled.parameters.map((each) => each * factor),
          plain.parameters,
        );
        near(
          scaled.standardErrors.map((each) => each * factor),
          plain.standardErrors,
        );
      }),
    );
  });

  test("goes to the bounds that hold its solution, wherever it starts inside them", () => {
    fc.assert(
      fc.property(linearProblem, fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }), (problem, held) => {
        const { a, b, start, more } = problem;
        const { matrix, square } = normal(a);
        const count = start.length;
        // Karush-Kuhn-Tucker: p is the answer if Aᵀ(A p - b) pushes every held parameter against its bound, here 0.
        const answer = more.map((each, j) => (held[j] ? 0 : 0.1 + Math.abs(each)));
        const push = more.map((_, j) => (held[j] ? 0.5 + j : 0));
        const project = (list: readonly number[]) => {
          const by = solve(square, matrix.transpose().mmul(Matrix.columnVector([...list]))).to1DArray();
          return times(a, by).map((each, i) => (list[i] as number) - each);
        };
        const square1 = solve(square, Matrix.columnVector(push)).to1DArray();
        const across = project(b);
        const seen = times(a, answer).map((each, i) => each - (times(a, square1)[i] as number) + (across[i] as number));
        const fit = leastSquares({
          residuals: (p) => {
            expect(Math.min(...p)).toBeGreaterThanOrEqual(0);
            expect(Math.max(...p)).toBeLessThanOrEqual(10);
            return times(a, p).map((each, i) => each - (seen[i] as number));
          },
          start: start.map(Math.abs),
          bounds: start.map(() => [0, 10] as const),
        });
        expect(fit.converged).toBe(true);
        near(fit.parameters, answer);
        expect(fit.atBound).toEqual(Array.from({ length: count }, (_, j) => (held[j] ? "lower" : undefined)));
      }),
    );
  });

  test("with priors is ridge regression: (AᵀA + P)⁻¹ (Aᵀb + P m)", () => {
    fc.assert(
      fc.property(linearProblem, ({ a, b, start, more }) => {
        const { matrix, square } = normal(a);
        const uncertainty = 0.7;
        const precision = Matrix.eye(start.length).mul(uncertainty ** -2);
        const inverse = solve(Matrix.add(square, precision), Matrix.eye(start.length));
        const right = Matrix.add(
          matrix.transpose().mmul(Matrix.columnVector(b)),
          precision.mmul(Matrix.columnVector(more)),
        );
        const fit = leastSquares({
          residuals: (p) => times(a, p).map((each, i) => each - (b[i] as number)),
          start,
          priors: more.map((mean) => ({ mean, uncertainty })),
          sigma: 1,
        });
        expect(fit.converged).toBe(true);
        near(fit.parameters, inverse.mmul(right).to1DArray());
        near(fit.standardErrors, inverse.diagonal().map(Math.sqrt));
        expect(fit.degreesOfFreedom).toBe(b.length);
      }),
    );
  });
});

describe("priors", () => {
  test("weigh against residuals of a known size: the mean of two normal distributions", () => {
    // 10 ± 2 and 16 ± 1 make (10/4 + 16)/(1/4 + 1) = 14.8, √(1/1.25) uncertain.
    const fit = leastSquares({
      residuals: ([p = 0]) => [p - 16],
      start: [1],
      priors: [{ mean: 10, uncertainty: 2 }],
      sigma: 1,
    });
    near(fit.parameters, [14.8]);
    near(fit.standardErrors, [Math.sqrt(0.8)]);
    expect(fit.residualSumOfSquares).toBeCloseTo(1.44, 9);
  });

  test("tell what residuals cannot", () => {
    const fit = leastSquares({
      residuals: ([a = 0, b = 0]) => [a + b - 5],
      start: [1, 1],
      priors: [{ mean: 2, uncertainty: 0.1 }, undefined],
      sigma: 0.2,
    });
    expect(fit.converged).toBe(true);
    near(fit.parameters, [2, 3]);
    near(fit.standardErrors, [0.1, Math.hypot(0.1, 0.2)]);
  });
});

/** The residual sum of a fit's parameters, worked out anew. */
const valleyFloor = ([x = 0, y = 0]: readonly number[]) => [10 * (y - x * x), 1 - x];

describe("bounds", () => {
  test("a curved valley is followed to where a bound cuts it", () => {
    // Rosenbrock's valley, x at most 1/2: its floor y = x² and the bound make x = 1/2, y = 1/4.
    const fit = leastSquares({
      residuals: valleyFloor,
      start: [-1.2, 1],
      bounds: [
        [-2, 0.5],
        [-5, 5],
      ],
    });
    expect(fit.converged).toBe(true);
    near(fit.parameters, [0.5, 0.25]);
    expect(fit.parameters[0]).toBe(0.5);
    expect(fit.atBound).toEqual(["upper", undefined]);
  });

  test("a start on a bound leaves it when the minimum lies inside", () => {
    const fit = leastSquares({
      residuals: valleyFloor,
      start: [-1.2, 0],
      bounds: [
        [-1.2, 2],
        [0, 5],
      ],
    });
    expect(fit.converged).toBe(true);
    near(fit.parameters, [1, 1]);
    expect(fit.atBound).toEqual([undefined, undefined]);
  });

  test("residuals are asked nowhere else, not even for slopes", () => {
    const fit = leastSquares({
      residuals: ([p = 0]) => (p < 2 ? [Number.NaN, Number.NaN] : [Math.sqrt(p - 2) + 1, p]),
      start: [5],
      bounds: [[2, 9]],
    });
    expect(fit.parameters).toEqual([2]);
    expect(fit.atBound).toEqual(["lower"]);
  });
});

describe("robust loss", () => {
  const seen = [0, 0.1, -0.1, 10];
  const residuals = ([p = 0]: readonly number[]) => seen.map((each) => p - each);

  test("the square is pulled to the mean by one outlier", () => {
    near(leastSquares({ residuals, start: [1] }).parameters, [2.5]);
  });

  test("Huber's takes the outlier for no more than its scale", () => {
    // The pulls balance: 3 p - scale = 0.
    const fit = leastSquares({ residuals, start: [4], loss: { kind: "Huber", scale: 0.3 } });
    expect(fit.converged).toBe(true);
    near(fit.parameters, [0.1]);
    // Huber 1981: √(Σψ²/(n - 1) · n)/Σψ', of residuals 0.1, 0, 0.2 and the outlier's pull of 0.3.
    near(fit.standardErrors, [Math.sqrt(((0.01 + 0.04 + 0.09) / 3) * 4) / 3]);
    expect(fit.residualSumOfSquares).toBeCloseTo(0.01 + 0.04 + 9.9 ** 2, 6);
  });

  test("soft L1 balances the pulls r/√(1 + (r/scale)²)", () => {
    const scale = 0.3;
    const fit = leastSquares({ residuals, start: [4], loss: { kind: "soft L1", scale } });
    expect(fit.converged).toBe(true);
    const pull = residuals(fit.parameters).reduce((sum, r) => sum + r / Math.sqrt(1 + (r / scale) ** 2), 0);
    expect(pull).toBeCloseTo(0, 8);
    expect(fit.parameters[0]).toBeGreaterThan(0.08);
    expect(fit.parameters[0]).toBeLessThan(0.2);
  });

  test("both leave residuals alone that are small beside their scale", () => {
    for (const kind of ["Huber", "soft L1"] as const) {
      const fit = leastSquares({ residuals, start: [4], loss: { kind, scale: 1e6 } });
      near(fit.parameters, [2.5]);
      near(fit.standardErrors, leastSquares({ residuals, start: [4] }).standardErrors, 6);
    }
  });

  test("a mis-read row does not move a decay", () => {
    const rows = Array.from({ length: 20 }, (_, i) => i);
    const truth = (i: number) => 300 + 120 * Math.exp(-i / 6) + 0.1 * Math.sin(7 * i);
    const written = rows.map((i) => (i === 7 ? truth(i) + 50 : truth(i)));
    const decay = ([end = 0, drop = 0, time = 1]: readonly number[]) =>
      rows.map((i) => end + drop * Math.exp(-i / time) - (written[i] as number));
    const fit = leastSquares({ residuals: decay, start: [350, 60, 3], loss: { kind: "soft L1", scale: 0.1 } });
    expect(fit.converged).toBe(true);
    expect(Math.abs((fit.parameters[0] as number) - 300)).toBeLessThan(0.3);
    expect(Math.abs((fit.parameters[2] as number) - 6)).toBeLessThan(0.05);
  });
});

const honest = (fit: LeastSquaresFit, reason: RegExp) => {
  expect(fit.converged).toBe(false);
  expect(fit.reason).toMatch(reason);
};

describe("where it cannot be done, the fit says so", () => {
  test("a step to where residuals are not finite is not taken", () => {
    const fit = leastSquares({ residuals: ([p = 0]) => [10 * Math.log(p) + 50, 1 / p - 150], start: [1] });
    expect(fit.converged).toBe(true);
    const [p = 0] = fit.parameters;
    // Half the slope of the sum: zero at a minimum.
    const half = (10 * Math.log(p) + 50) * (10 / p) - (1 / p - 150) / p ** 2;
    expect(Math.abs(half)).toBeLessThan(1e-4);
  });

  test("a sum that falls right up to where residuals end is no minimum", () => {
    honest(leastSquares({ residuals: ([p = 0]) => (p < 2 ? [Number.NaN] : [p - 1]), start: [5] }), /^stuck/);
  });

  test("no finite residual close by at all", () => {
    const fit = leastSquares({ residuals: ([p = 0]) => [p === 5 ? 1 : Number.POSITIVE_INFINITY], start: [5] });
    honest(fit, /^stuck: the residuals are not finite close by/);
    expect(fit.standardErrors).toEqual([Infinity]);
  });

  test("a bend with no flat bottom is no minimum", () => {
    honest(leastSquares({ residuals: ([p = 0]) => [1 + (p > 1 ? 2 * (p - 1) : 1 - p)], start: [5] }), /^stuck/);
  });

  test("parameters that only count together are undetermined, the others are not", () => {
    const seen = [1, 2, 4, 4];
    const fit = leastSquares({
      residuals: ([a = 0, b = 0, c = 0]) => seen.map((each, i) => a + b + c * i - each),
      start: [1, 2, 3],
    });
    honest(fit, /^undetermined/);
    // Of 1, 2, 4, 4 over 0, 1, 2, 3: slope 1.1 and 1.1 at 0; s² = 0.7/2, or 0.7/1 with a third parameter; Sxx = 5.
    expect((fit.parameters[0] as number) + (fit.parameters[1] as number)).toBeCloseTo(1.1, 7);
    expect(fit.parameters[2]).toBeCloseTo(1.1, 7);
    expect(fit.standardErrors.slice(0, 2)).toEqual([Infinity, Infinity]);
    expect(fit.standardErrors[2]).toBeCloseTo(Math.sqrt(0.7 / 5), 5);
    expect(fit.covariance[0]?.[1]).toBe(-Infinity);
  });

  test("a parameter without effect is undetermined", () => {
    const fit = leastSquares({ residuals: ([a = 0]) => [a - 1, a - 2, a - 3], start: [5, 7] });
    honest(fit, /^undetermined/);
    near(fit.parameters, [2, 7]);
    expect(fit.standardErrors[1]).toBe(Infinity);
    expect(fit.standardErrors[0]).toBeCloseTo(Math.sqrt(2 / 1 / 3), 6);
  });

  test("a fit that is out of steps is not done", () => {
    honest(leastSquares({ residuals: valleyFloor, start: [-1.2, 1], maxSteps: 2 }), /^unfinished: out of steps/);
  });

  test("no degrees of freedom: the parameters, but no telling how good", () => {
    const fit = leastSquares({ residuals: ([a = 0, b = 0]) => [a + b - 3, a - b - 1], start: [1, 0] });
    expect(fit.converged).toBe(true);
    near(fit.parameters, [2, 1]);
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit.standardErrors).toEqual([Infinity, Infinity]);
  });
});

describe("what may be handed in", () => {
  const seen = [2.1, 3.9, 9.2, 15.8];
  const residuals = ([a = 0, b = 0]: readonly number[]) => seen.map((each, i) => a * Math.exp(b * i) - each);

  test("exact slopes give the same fit with fewer calls", () => {
    const differenced = leastSquares({ residuals, start: [1, 1] });
    const exact = leastSquares({
      residuals,
      start: [1, 1],
      jacobian: ([a = 0, b = 0]) => seen.map((_, i) => [Math.exp(b * i), a * i * Math.exp(b * i)]),
    });
    near(exact.parameters, differenced.parameters);
    near(exact.standardErrors, differenced.standardErrors);
    expect(exact.evaluations).toBeLessThan(differenced.evaluations / 2);
  });

  test("a list that the residuals use again and again", () => {
    const list = new Float64Array(4);
    const reusing = (p: readonly number[]) => {
      list.set(residuals(p));
      return list;
    };
    expect(leastSquares({ residuals: reusing, start: [1, 1] })).toEqual(leastSquares({ residuals, start: [1, 1] }));
  });

  test("a start at zero, with a usual size", () => {
    const fit = leastSquares({
      residuals: ([a = 0, b = 0]) => seen.map((each, i) => a + 1e9 * b * i - each),
      start: [0, 0],
      typical: [1, 1e-9],
    });
    expect(fit.converged).toBe(true);
    // The straight line through 2.1, 3.9, 9.2, 15.8.
    near([fit.parameters[0] as number, (fit.parameters[1] as number) * 1e9], [0.79, 4.64]);
  });
});

describe("what cannot be fitted is refused", () => {
  const residuals = ([a = 0, b = 0]: readonly number[]) => [a - 1, b - 2, a + b];
  test.each([
    [
      "too few residuals",
      { residuals: () => [1], start: [1, 2] },
      "missing residuals: 1; 2 parameters need at least as many",
    ],
    ["no parameters", { residuals: () => [1], start: [] }, "missing start: no parameters"],
    [
      "a start that is no number",
      { residuals, start: [1, Number.NaN] },
      "invalid start of parameter 2: NaN; a finite number",
    ],
    [
      "a start outside its bounds",
      {
        residuals,
        start: [1, 7],
        bounds: [
          [0, 5],
          [0, 5],
        ] as [number, number][],
      },
      "invalid start of parameter 2: 7; its bounds are 0 to 5",
    ],
    [
      "bounds the wrong way round",
      {
        residuals,
        start: [1, 1],
        bounds: [
          [0, 5],
          [5, 0],
        ] as [number, number][],
      },
      "invalid bounds of parameter 2: 5 to 0; the lower is below the upper",
    ],
    [
      "too few bounds",
      { residuals, start: [1, 1], bounds: [[0, 5]] as [number, number][] },
      "invalid bounds: 1 of them",
    ],
    [
      "residuals not finite at the start",
      { residuals: () => [1, 1 / 0], start: [1] },
      "invalid start: residual 2 is Infinity",
    ],
    [
      "a prior that is certain",
      { residuals, start: [1, 1], priors: [{ mean: 1, uncertainty: 0 }, undefined] },
      "invalid prior uncertainty of parameter 1: 0",
    ],
    ["a usual size of zero", { residuals, start: [1, 1], typical: [1, 0] }, "invalid typical size of parameter 2: 0"],
    [
      "a loss without scale",
      { residuals, start: [1, 1], loss: { kind: "Huber" as const, scale: -1 } },
      "invalid scale of the loss: -1",
    ],
    ["no steps", { residuals, start: [1, 1], maxSteps: 0 }, "invalid maxSteps: 0"],
    ["a jacobian of another size", { residuals, start: [1, 1], jacobian: () => [[1, 2]] }, "invalid jacobian: 1 rows"],
  ])("%s", (_, problem, message) => {
    expect(() => leastSquares(problem)).toThrow(message);
  });

  test("residuals of another number than at the start", () => {
    const list: number[] = [];
    const growing = ([p = 0]: readonly number[]) => [...list, list.push(p)];
    expect(() => leastSquares({ residuals: growing, start: [1] })).toThrow(
      "invalid residuals: 2 of them; 1, as at the start",
    );
  });
});
