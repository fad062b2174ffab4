import { afterEach, expect, test } from "vitest";
import { given, type Lines, notebook, openLines, worked } from "../../lib/lines/index.ts";
import { correlated, correlation, exact, type Value } from "../../lib/measure/index.ts";

// JCGM 100:2008 (GUM with minor corrections), annex H, as a maker would work it: givens that were read together, and
// formulas over them.

let open: Lines | undefined;
afterEach(() => open?.close());

async function amount(lines: Lines, name: string): Promise<Value> {
  await lines.settled();
  const result = lines.result(name);
  if (result.state !== "settled") throw new Error(`${name}: ${JSON.stringify(result)}`);
  return result.value as Value;
}

async function width(lines: Lines, name: string): Promise<number> {
  const answer = await lines.value(name);
  if (!("standardUncertainty" in answer)) throw new Error(`${name}: ${JSON.stringify(answer)}`);
  return answer.standardUncertainty;
}

const covarianceOf = (u: readonly number[], r: (i: number, j: number) => number) =>
  u.map((a, i) => u.map((b, j) => a * b * (i === j ? 1 : r(i, j))));

function impedance(values: readonly (Value | undefined)[]): Lines {
  const [volts = exact(0), amps = exact(0), angle = exact(0)] = values;
  open = openLines(
    notebook({
      asks: "What are resistance, reactance and impedance?",
      lines: {
        voltage: given(volts),
        current: given(amps),
        "phase angle": given(angle),
        resistance: worked("voltage / current * cos(phase angle)"),
        reactance: worked("voltage / current * sin(phase angle)"),
        impedance: worked("voltage / current"),
        "impedance again": worked("sqrt(resistance^2 + reactance^2)"),
        "left over": worked("impedance again - impedance"),
      },
    }),
  );
  return open;
}

async function asPrinted(lines: Lines): Promise<void> {
  const [R, X, Z] = [
    await amount(lines, "resistance"),
    await amount(lines, "reactance"),
    await amount(lines, "impedance"),
  ];
  expect(R.value).toBeCloseTo(127.732, 3);
  expect(X.value).toBeCloseTo(219.847, 3);
  expect(Z.value).toBeCloseTo(254.26, 2);
  // A unit of the last printed digit: the table was worked from rounded figures (0.295 where the data give 0.2956).
  expect(Math.abs((await width(lines, "resistance")) - 0.071)).toBeLessThan(0.001);
  expect(Math.abs((await width(lines, "reactance")) - 0.295)).toBeLessThan(0.001);
  expect(Math.abs((await width(lines, "impedance")) - 0.236)).toBeLessThan(0.001);
  expect(Math.abs(correlation(R, X) - -0.588)).toBeLessThan(0.001);
  expect(Math.abs(correlation(R, Z) - -0.485)).toBeLessThan(0.001);
  expect(Math.abs(correlation(X, Z) - 0.993)).toBeLessThan(0.001);
  const answer = await lines.value("reactance");
  const shares = "widthFrom" in answer ? answer.widthFrom.map(({ share }) => share) : [];
  expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  expect(await width(lines, "left over")).toBeLessThan(1e-9);
}

test("GUM H.2, table H.3: R, X and Z of lines over V, I and phi read together, from the readings of table H.2", async () => {
  const sets = [
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ];
  const mean = (all: readonly number[]) => all.reduce((sum, each) => sum + each, 0) / all.length;
  const means = sets.map(mean);
  // Of the means: JCGM 100:2008, 5.2.3, equation 17.
  const matrix = sets.map((a, i) =>
    sets.map((b, j) => mean(a.map((each, k) => (each - (means[i] ?? 0)) * ((b[k] ?? 0) - (means[j] ?? 0)))) / 4),
  );
  await asPrinted(impedance(correlated(means, matrix)));
});

/** H.3.2: the corrections read at eleven temperatures, and the straight line through them, with its covariance. */
function calibration() {
  const read = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const from = read.map((t) => t - 20);
  const n = read.length;
  const sum = (f: (k: number) => number) => read.reduce((all, _, k) => all + f(k), 0);
  const x = (k: number) => from[k] ?? 0;
  const b = (k: number) => corrections[k] ?? 0;
  const [Sx, Sxx, Sb, Sxb] = [sum(x), sum((k) => x(k) ** 2), sum(b), sum((k) => x(k) * b(k))];
  const D = n * Sxx - Sx ** 2;
  const start = (Sb * Sxx - Sxb * Sx) / D;
  const slope = (n * Sxb - Sx * Sb) / D;
  const s2 = sum((k) => (b(k) - start - slope * x(k)) ** 2) / (n - 2);
  // Equations H.13: variances, and the covariance that their correlation of -0.930 says.
  const matrix = [
    [(s2 * Sxx) / D, (-s2 * Sx) / D],
    [(-s2 * Sx) / D, (s2 * n) / D],
  ];
  return { values: [start, slope], matrix };
}

async function correctionAt30(start: number, slope: number, matrix: readonly (readonly number[])[]): Promise<void> {
  const kelvin = { temperature: 1 };
  const [atTwenty = exact(0), perDegree = exact(0)] = correlated(
    [{ value: start, dimension: kelvin }, { value: slope }],
    matrix,
  );
  open = openLines(
    notebook({
      asks: "What is the thermometer's correction?",
      lines: {
        "correction at 20": given(atTwenty),
        "change by degree": given(perDegree),
        reads: given("30 °C", undefined, { takes: "temperature", unit: "°C", exact: true }),
        "middle of the scale": given("20 °C", undefined, { takes: "temperature", unit: "°C", exact: true }),
        correction: worked("correction at 20 + change by degree * (reads - middle of the scale)", "°C"),
      },
    }),
  );
  const intercept = await amount(open, "correction at 20");
  const found = await amount(open, "correction");
  expect(intercept.value).toBeCloseTo(-0.1712, 4);
  expect((await amount(open, "change by degree")).value).toBeCloseTo(0.00218, 5);
  expect(await width(open, "correction at 20")).toBeCloseTo(0.0029, 4);
  expect(await width(open, "change by degree")).toBeCloseTo(0.00067, 5);
  expect(correlation(intercept, await amount(open, "change by degree"))).toBeCloseTo(-0.93, 3);
  // H.3.4, equation H.14 and H.15.
  expect(found.value).toBeCloseTo(-0.1494, 4);
  expect(await width(open, "correction")).toBeCloseTo(0.0041, 4);
  // The two correlated readings are one instrument's: without their correlation it would be 0.0073.
  open.set("reads", { given: "20 °C" });
  expect(await width(open, "correction")).toBeCloseTo(0.0029, 4);
}

test("GUM H.3: the correction at 30 °C of lines over the intercept and slope of the eleven readings", async () => {
  const { values, matrix } = calibration();
  await correctionAt30(values[0] ?? 0, values[1] ?? 0, matrix);
});

test("GUM H.3: the same from the printed intercept, slope and correlation", async () => {
  await correctionAt30(
    -0.1712,
    0.00218,
    covarianceOf([0.0029, 0.00067], () => -0.93),
  );
});
