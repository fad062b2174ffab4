import { readFileSync } from "node:fs";

/**
 * One of the nonlinear regression sets of NIST's Statistical Reference Datasets (StRD), with its certified results:
 * https://www.itl.nist.gov/div898/strd/nls/nls_main.shtml (public domain).
 */
export interface NistSet {
  readonly name: string;
  /** As the set's file writes it. */
  readonly model: string;
  readonly start1: readonly number[];
  readonly start2: readonly number[];
  readonly certified: readonly number[];
  readonly standardDeviations: readonly number[];
  readonly residualSumOfSquares: number;
  readonly residualStandardDeviation: number;
  /** One list a predictor. */
  readonly x: readonly (readonly number[])[];
  readonly y: readonly number[];
}

export const nistSets: readonly NistSet[] = JSON.parse(
  readFileSync(new URL("./nistNonlinear.json", import.meta.url), "utf8"),
).sets;

type Model = (b: readonly number[], x: number, x2: number) => number;
const { exp, cos, sin, atan, PI } = Math;

const misra: Model = ([b1 = 0, b2 = 0], x) => b1 * (1 - exp(-b2 * x));
const chwirut: Model = ([b1 = 0, b2 = 0, b3 = 0], x) => exp(-b1 * x) / (b2 + b3 * x);
const gauss: Model = ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0, b7 = 0, b8 = 0], x) =>
  b1 * exp(-b2 * x) + b3 * exp(-((x - b4) ** 2) / b5 ** 2) + b6 * exp(-((x - b7) ** 2) / b8 ** 2);
const cubics: Model = ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0, b7 = 0], x) =>
  (b1 + b2 * x + b3 * x ** 2 + b4 * x ** 3) / (1 + b5 * x + b6 * x ** 2 + b7 * x ** 3);
const lanczos: Model = ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0], x) =>
  b1 * exp(-b2 * x) + b3 * exp(-b4 * x) + b5 * exp(-b6 * x);

/** The models, as each set's file states them. */
const models: Readonly<Record<string, Model>> = {
  Bennett5: ([b1 = 0, b2 = 0, b3 = 0], x) => b1 * (b2 + x) ** (-1 / b3),
  BoxBOD: misra,
  Chwirut1: chwirut,
  Chwirut2: chwirut,
  DanWood: ([b1 = 0, b2 = 0], x) => b1 * x ** b2,
  ENSO: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0, b7 = 0, b8 = 0, b9 = 0], x) => {
    const turn = 2 * PI * x;
    const year = b2 * cos(turn / 12) + b3 * sin(turn / 12);
    return b1 + year + b5 * cos(turn / b4) + b6 * sin(turn / b4) + b8 * cos(turn / b7) + b9 * sin(turn / b7);
  },
  Eckerle4: ([b1 = 0, b2 = 0, b3 = 0], x) => (b1 / b2) * exp(-0.5 * ((x - b3) / b2) ** 2),
  Gauss1: gauss,
  Gauss2: gauss,
  Gauss3: gauss,
  Hahn1: cubics,
  Kirby2: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0], x) => (b1 + b2 * x + b3 * x ** 2) / (1 + b4 * x + b5 * x ** 2),
  Lanczos1: lanczos,
  Lanczos2: lanczos,
  Lanczos3: lanczos,
  MGH09: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => (b1 * (x ** 2 + x * b2)) / (x ** 2 + x * b3 + b4),
  MGH10: ([b1 = 0, b2 = 0, b3 = 0], x) => b1 * exp(b2 / (x + b3)),
  MGH17: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0], x) => b1 + b2 * exp(-x * b4) + b3 * exp(-x * b5),
  Misra1a: misra,
  Misra1b: ([b1 = 0, b2 = 0], x) => b1 * (1 - (1 + (b2 * x) / 2) ** -2),
  Misra1c: ([b1 = 0, b2 = 0], x) => b1 * (1 - (1 + 2 * b2 * x) ** -0.5),
  Misra1d: ([b1 = 0, b2 = 0], x) => (b1 * b2 * x) / (1 + b2 * x),
  Nelson: ([b1 = 0, b2 = 0, b3 = 0], x, x2) => b1 - b2 * x * exp(-b3 * x2),
  Rat42: ([b1 = 0, b2 = 0, b3 = 0], x) => b1 / (1 + exp(b2 - b3 * x)),
  Rat43: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => b1 / (1 + exp(b2 - b3 * x)) ** (1 / b4),
  Roszman1: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => b1 - b2 * x - atan(b3 / (x - b4)) / PI,
  Thurber: cubics,
};

/** Residuals of a set: model less observed. Nelson's model is of ln y. */
export function nistResiduals(set: NistSet): (b: readonly number[]) => Float64Array {
  const model = models[set.name];
  if (!model) throw new RangeError(`unknown set: ${set.name}`);
  const seen = Float64Array.from(set.y, (y) => (set.name === "Nelson" ? Math.log(y) : y));
  const x = Float64Array.from(set.x[0] ?? []);
  const x2 = Float64Array.from(set.x[1] ?? x);
  return (b) => {
    const residuals = new Float64Array(seen.length);
    for (let i = 0; i < seen.length; i += 1)
      residuals[i] = model(b, x[i] as number, x2[i] as number) - (seen[i] as number);
    return residuals;
  };
}
