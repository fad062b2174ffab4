import { afterEach, expect, test } from "vitest";
import { given, type Lines, notebook, openLines, type Trial, type Vocabulary, worked } from "../../lib/lines/index.ts";
import { correlated, measuredValue, type Value } from "../../lib/measure/index.ts";

// JCGM 101:2008, clause 9: its worked examples as formulas of a notebook. The printed figures are from memory, save
// where a closed form stands beside them. The supplement prints shortest intervals where it prints one of its trials.

let open: Lines | undefined;
afterEach(() => open?.close());

/** The share of a normal distribution below z (Abramowitz and Stegun 7.1.26 would do; here by its series, 26.2.10). */
function normalShare(z: number): number {
  if (Math.abs(z) > 7) return z > 0 ? 1 : 0;
  let [term, sum] = [z, z];
  for (let n = 1; n < 200 && Math.abs(term) > 1e-17; n++) {
    term *= (-z * z * (2 * n - 1)) / (2 * n * (2 * n + 1));
    sum += term;
  }
  return 0.5 + sum / Math.sqrt(2 * Math.PI);
}

/** The supplement's rectangular quantities: a standard normal one sent through its own distribution is even (C.2). */
const vocabulary: Vocabulary = {
  functions: [
    {
      name: "evenly",
      takes: [{ name: "standard normal" }, { name: "from" }, { name: "to" }],
      says: "Evenly spread between two numbers.",
      numbers: (z, from, to) => from + (to - from) * normalShare(z),
    },
    {
      name: "swinging",
      takes: [{ name: "standard normal" }, { name: "half-width" }],
      says: "Spread as a sine swings (arc sine distribution).",
      numbers: (z, half) => half * Math.sin(Math.PI * (normalShare(z) - 0.5)),
    },
  ],
};

const normal = (value: number, u: number, source: string) => given(measuredValue(value, u, {}, source));

async function tried(
  lines: Record<string, ReturnType<typeof given> | ReturnType<typeof worked>>,
  draws = 60_000,
): Promise<Trial> {
  open?.close();
  open = openLines(notebook({ asks: "How far off?", lines, answer: "{Y}" }), { vocabulary });
  const found = await open.trial("Y", undefined, { draws, digits: 2, seconds: 100 });
  if ("stopped" in found) throw new Error(found.stopped);
  return found;
}

const near = (found: number, printed: number, within: number) =>
  expect(Math.abs(found - printed), `${found} for ${printed}`).toBeLessThan(within);

const ends = (found: readonly [number, number], printed: readonly [number, number], within: number) => {
  near(found[0], printed[0], within);
  near(found[1], printed[1], within);
};

const four = { Y: worked("X1 + X2 + X3 + X4") };

test("9.2.2: four normal quantities: the linear interval is the trial's", async () => {
  const found = await tried({
    ...four,
    X1: normal(0, 1, "a"),
    X2: normal(0, 1, "b"),
    X3: normal(0, 1, "c"),
    X4: normal(0, 1, "d"),
  });
  near(found.standardUncertainty, 2, 0.01);
  ends(found.trial95, [-3.92, 3.92], 0.01);
  ends(found.shortest95, [-3.92, 3.92], 0.3);
  expect(found.goodEnough).toBe(true);
  expect(found.settled).toBe(true);
});

const even = (name: string, half: number) => ({
  [`z ${name}`]: normal(0, 1, name),
  [name]: worked(`evenly(z ${name}, -${half}, ${half})`),
});
const root3 = Math.sqrt(3).toFixed(9);

test("9.2.3: four even quantities of one width", async () => {
  const found = await tried({ ...four, ...["X1", "X2", "X3", "X4"].map((n) => even(n, Number(root3))).reduce(merged) });
  near(found.mean, 0, 0.03);
  near(found.standardUncertainty, 2, 0.01);
  // Printed for the trial, and by the closed form of its distribution: ±3.88.
  ends(found.trial95, [-3.88, 3.88], 0.03);
});

test("9.2.4: one even quantity ten times as wide: far from normal", async () => {
  const three = ["X1", "X2", "X3"].map((n) => even(n, Number(root3))).reduce(merged);
  const found = await tried({ ...four, ...three, ...even("X4", 10 * Number(root3)) });
  // √(3 + 100) in closed form, printed as 10.1.
  near(found.standardUncertainty, Math.sqrt(103), 0.15);
  ends(found.trial95, [-17, 17], 0.3);
  expect(found.goodEnough).toBe(false);
});

function merged<T extends object>(a: T, b: T): T {
  return { ...a, ...b };
}

// 9.3, in mg and kg/m³: two standards of density 8,000 and the weight, air of 1.2; nominal mass 100 g.
const mass = "(reference + difference) * (1 + (air - 1.2) * (1 / weight - 1 / standard)) - 100000";

test("9.3: mass calibration: what slopes miss is said, and the trial's figures are the printed ones", async () => {
  const found = await tried({
    Y: worked(mass),
    reference: normal(100_000, 0.05, "m"),
    difference: normal(1.234, 0.02, "d"),
    "z air": normal(0, 1, "air"),
    "z weight": normal(0, 1, "weight"),
    "z standard": normal(0, 1, "standard"),
    air: worked("evenly(z air, 1.1, 1.3)"),
    weight: worked("evenly(z weight, 7000, 9000)"),
    standard: worked("evenly(z standard, 7950, 8050)"),
  });
  near(found.mean, 1.2341, 0.0008);
  near(found.standardUncertainty, 0.0754, 0.0008);
  ends(found.shortest95, [1.0834, 1.3825], 0.006);
  ends(found.linear95, [1.1285, 1.3395], 0.0003);
  expect(found.goodEnough).toBe(false);
});

test("9.3 with normal quantities of the same widths: the slopes' figures are the printed ones", async () => {
  const found = await tried({
    Y: worked(mass),
    reference: normal(100_000, 0.05, "m"),
    difference: normal(1.234, 0.02, "d"),
    air: normal(1.2, 0.1 / Math.sqrt(3), "air"),
    weight: normal(8000, 1000 / Math.sqrt(3), "weight"),
    standard: normal(8000, 50 / Math.sqrt(3), "standard"),
  });
  // Printed for the law of propagation of first order: 0.0539; with the terms above it 0.0750.
  near((found.linear95[1] - found.linear95[0]) / 2 / 1.96, 0.0539, 0.00005);
  near(found.standardUncertainty, 0.075, 0.002);
  expect(await open?.isStraight("Y")).toBe(false);
});

const loss = (x: number, r: number) => {
  const u = 0.005;
  const pair = correlated(
    [x, 0],
    [
      [u * u, r * u * u],
      [r * u * u, u * u],
    ],
    "reflection",
  );
  const [first, second] = pair as readonly [Value, Value];
  return { Y: worked("X1^2 + X2^2"), X1: given(first), X2: given(second) };
};

/** Mean and deviation of the sum of squares: E = x² + 2u², V = 4u⁴(1 + r²) + 4x²u², closed forms. In 1e-6. */
const moments = (x: number, r: number): readonly [number, number] => [
  1e6 * (x ** 2 + 2 * 0.005 ** 2),
  1e6 * Math.sqrt(4 * 0.005 ** 4 * (1 + r * r) + 4 * x ** 2 * 0.005 ** 2),
];

// Printed: u and the shortest interval, in 1e-6 (tables 7 and 8).
test.for<[x: number, r: number, u: number, low: number, high: number]>([
  [0, 0, 50, 0, 150],
  [0.01, 0, 112, 0, 367],
  [0.05, 0, 502, 1590, 3543],
  [0, 0.9, 67, 0, 185],
  [0.01, 0.9, 121, 13, 398],
  [0.05, 0.9, 505, 1628, 3555],
])("9.4: comparison loss at x = %s, correlation %s", async ([x, r, u, low, high]) => {
  const found = await tried(loss(x, r));
  const [mean, deviation] = moments(x, r);
  near(deviation, u, 0.6);
  near(1e6 * found.mean, mean, 0.01 * u);
  near(1e6 * found.standardUncertainty, u, 0.015 * u + 0.5);
  ends([1e6 * found.shortest95[0], 1e6 * found.shortest95[1]], [low, high], 0.1 * u);
  expect(found.goodEnough).toBe(false);
  expect(await open?.isStraight("Y")).toBe(false);
});

/** Student's t from a standard normal number (Abramowitz and Stegun 26.7.5; from memory). */
const student = "{z} + ({z}^3 + {z}) / 4 / {n} + (5 * {z}^5 + 16 * {z}^3 + 3 * {z}) / 96 / {n}^2";
const scaled = (name: string, mean: number, scale: number, freedom: number) => ({
  [`z ${name}`]: normal(0, 1, name),
  [name]: worked(`${mean} + ${scale} * (${student.replaceAll("{z}", `z ${name}`).replaceAll("{n}", String(freedom))})`),
});

/** Even between limits that are themselves uncertain by d (curvilinear trapezoid, C.2 and 6.4.3). */
const blurred = (name: string, half: string, d: string) => ({
  [`z ${name}`]: normal(0, 1, name),
  [`${name} limit`]: normal(0, 1, `${name} limit`),
  [`${name} half`]: worked(`${half} + evenly(${name} limit, -${d}, ${d})`),
  [name]: worked(`${name} half * evenly(z ${name}, -1, 1)`),
});

test("9.5: gauge block", async () => {
  const found = await tried({
    Y: worked("long + comparator - (500000 * 100 + long) * (spread gap * (room + swing) + spread * heat gap)"),
    ...scaled("long", 623, 25, 18),
    ...scaled("mean reading", 215, 6, 24),
    ...scaled("chance error", 0, 4, 5),
    ...scaled("leaning error", 0, 7, 8),
    comparator: worked("mean reading + chance error + leaning error"),
    "z spread": normal(0, 1, "spread"),
    spread: worked("evenly(z spread, 0.0000095, 0.0000135)"),
    room: normal(-0.1, 0.2, "room"),
    "z swing": normal(0, 1, "swing"),
    swing: worked("swinging(z swing, 0.5)"),
    ...blurred("spread gap", "0.000001", "0.0000001"),
    ...blurred("heat gap", "0.05", "0.025"),
  });
  // Printed for the trial: 838 nm, standard uncertainty 36 nm. Its interval is one of 99 %.
  near(found.mean, 838, 1);
  near(found.standardUncertainty, 36, 0.8);
});

test("9.4: at 0 the distribution is exponential, and slopes say nothing is in doubt", async () => {
  const found = await tried(loss(0, 0));
  expect(found.linear95).toEqual([0, 0]);
  // Quantiles of an exponential distribution of mean 2u² = 50e-6.
  ends([1e6 * found.trial95[0], 1e6 * found.trial95[1]], [-50 * Math.log(0.975), -50 * Math.log(0.025)], 2);
  expect(found.says).toMatch(/not good enough/u);
});
