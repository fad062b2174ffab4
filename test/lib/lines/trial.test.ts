import { afterEach, expect, test } from "vitest";
import {
  type Func,
  given,
  type Line,
  type Lines,
  notebook,
  openLines,
  type Trial,
  type TrialOptions,
  worked,
} from "../../../lib/lines/index.ts";
import { correlated, correlation, exact, measuredValue, standardUncertainty } from "../../../lib/measure/index.ts";

let open: Lines | undefined;
afterEach(() => open?.close());

const normal = (value: number, u: number, source: string) => given(measuredValue(value, u, {}, source));

function opened(lines: Record<string, Line>, functions: readonly Func[] = []): Lines {
  open?.close();
  open = openLines(notebook({ asks: "?", lines }), { vocabulary: { functions } });
  return open;
}

async function tried(lines: Lines, name = "y", options: TrialOptions = {}): Promise<Trial> {
  const found = await lines.trial(name, undefined, { seconds: 100, ...options });
  if ("stopped" in found) throw new Error(found.stopped);
  return found;
}

const near = (found: number, right: number, within: number) =>
  expect(Math.abs(found - right), `${found} for ${right}`).toBeLessThan(within);

test("a product of lognormal amounts has its closed form", async () => {
  const found = await tried(opened({ a: normal(0, 0.3, "a"), b: normal(0.2, 0.4, "b"), y: worked("exp(a) * exp(b)") }));
  // ln y is normal, 0.2 ± 0.5: quantiles exp(0.2 ± 1.95996 · 0.5), mean exp(0.2 + 0.125), median exp(0.2).
  near(found.trial95[0], Math.exp(0.2 - 1.95996 * 0.5), 0.02);
  near(found.trial95[1], Math.exp(0.2 + 1.95996 * 0.5), 0.06);
  near(found.mean, Math.exp(0.325), 0.02);
  near(found.median, Math.exp(0.2), 0.03);
  near(found.standardUncertainty, Math.exp(0.325) * Math.sqrt(Math.exp(0.25) - 1), 0.03);
  expect(found.goodEnough).toBe(false);
  expect(found.settled).toBe(true);
  expect(found.value.interval95).toEqual(found.trial95);
  near(standardUncertainty(found.value), found.standardUncertainty, 1e-9);
  expect(found.value.value).toBe(found.mean);
});

test("a straight line agrees with its slopes exactly, in the fewest draws, and keeps its amount", async () => {
  const lines = opened({ a: normal(3, 0.1, "a"), b: normal(5, 0.2, "b"), y: worked("3 * a - 2 * b + 1") });
  const found = await tried(lines);
  const result = lines.result("y");
  expect(found.goodEnough).toBe(true);
  expect(found.draws).toBe(10_000);
  expect("value" in result && found.value).toBe("value" in result && result.value);
  for (const end of [0, 1] as const) near(found.trial95[end], found.linear95[end], 1e-9);
  // Of two normal sources, by what the draws themselves say: 2.5 % tails of 10,000.
  near(found.shortest95[1] - found.shortest95[0], 2 * 1.96 * 0.5, 0.1);
  expect(await lines.isStraight("y")).toBe(true);
});

test.for<[formula: string, value: number, u: number, says: RegExp]>([
  ["x^2", 0, 0.5, /not good enough/u],
  ["1 / x", 1, 0.5, /not good enough.*have not settled/u],
  ["abs(x)", 0.01, 1, /not good enough/u],
  ["sqrt(x)", 1, 0.8, /not good enough.*left out/u],
  ["exp(x)", 0, 1, /not good enough/u],
])("%s fails at %s, and that is said", async ([formula, value, u, says]) => {
  const lines = opened({ x: normal(value, u, "x"), y: worked(formula) });
  const found = await tried(lines, "y", { draws: 30_000 });
  expect(found.goodEnough).toBe(false);
  expect(found.says).toMatch(says);
  expect(await lines.isStraight("y")).toBe(false);
  const [low, high] = found.value.interval95 ?? [Number.NaN, Number.NaN];
  expect(low <= found.value.value && found.value.value <= high).toBe(true);
  expect(Number.isFinite(standardUncertainty(found.value))).toBe(true);
});

test("x^2 at 0 has the quantiles of a chi-square of one degree of freedom", async () => {
  const found = await tried(opened({ x: normal(0, 1, "x"), y: worked("x^2") }));
  // 0.000982 and 5.024 (tables of the distribution: 2.5 % and 97.5 %, one degree of freedom); mean 1, deviation √2.
  near(found.trial95[0], 0.000982, 0.0003);
  near(found.trial95[1], 5.024, 0.15);
  near(found.mean, 1, 0.03);
  near(found.standardUncertainty, Math.SQRT2, 0.06);
});

test.for<[r: number, low: number, high: number, within: number]>([
  // Both sources one: x². The other way round: -x². Apart: symmetric, and within ±1.96² .
  [1, 0.000982, 5.024, 0.2],
  [-1, -5.024, -0.000982, 0.2],
  [0, -2.182, 2.182, 0.2],
])("givens that are correlated by %s are drawn together", async ([r, low, high, within]) => {
  const [a, b] = correlated(
    [exact(0), exact(0)],
    [
      [1, r],
      [r, 1],
    ],
    "pair",
  );
  const found = await tried(opened({ a: given(a ?? exact(0)), b: given(b ?? exact(0)), y: worked("a * b") }));
  // Of the product of two independent normal numbers P(|y| < 2.182) is 0.95: the mean over a of erf(2.182 / |a| / √2), integrated numerically apart from this project.
  near(found.trial95[0], low, within);
  near(found.trial95[1], high, within);
});

test("what two lines share cancels in every draw", async () => {
  const lines = opened({
    x: normal(0, 1, "x"),
    there: worked("exp(x)"),
    back: worked("ln(there)"),
    y: worked("back - x + 0 * x^2"),
    squared: worked("there * there / exp(2 * x)"),
  });
  for (const name of ["y", "squared"]) {
    const found = await tried(lines, name);
    expect(found.goodEnough).toBe(true);
    near(found.trial95[1] - found.trial95[0], 0, 1e-9);
  }
});

test("the same seed gives the same trial, another another", async () => {
  const lines = opened({ x: normal(0, 1, "x"), z: normal(0, 1, "z"), y: worked("exp(x) + z^2") });
  const options = { draws: 10_000, seed: 7 };
  const first = await tried(lines, "y", options);
  expect(await tried(lines, "y", options)).toEqual(first);
  const again = opened({
    z: normal(0, 1, "z"),
    other: worked("z + 1"),
    x: normal(0, 1, "x"),
    y: worked("exp(x) + z^2"),
  });
  expect(await tried(again, "y", options)).toEqual(first);
  expect((await tried(lines, "y", { ...options, seed: 8 })).mean).not.toBe(first.mean);
});

test("what a function is not sure of itself is drawn, wherever it is called", async () => {
  const calls: Func = {
    name: "curve",
    takes: [{ name: "x" }],
    says: "",
    besides: [measuredValue(0, 1, {}, "coefficient")],
    numbers: (x, c = 0) => Math.exp(x + c),
  };
  const work: Func = {
    name: "reading",
    takes: [{ name: "x" }],
    says: "",
    work: (x) => measuredValue((x as { value: number }).value, 1, {}, "coefficient"),
  };
  const lines = opened(
    { one: given("1"), y: worked("curve(one) / exp(one)"), z: worked("exp(reading(0)) + 0"), same: worked("y / z") },
    [calls, work],
  );
  for (const name of ["y", "z"]) {
    const found = await tried(lines, name);
    // Lognormal of deviation 1.
    near(found.trial95[0], Math.exp(-1.96), 0.02);
    near(found.trial95[1], Math.exp(1.96), 0.4);
  }
  const found = await tried(lines, "same");
  near(found.trial95[0], 1, 1e-9);
  near(found.trial95[1], 1, 1e-9);
});

test("an interval that is not symmetric is drawn so", async () => {
  const skew = given(measuredValue(10, 1, {}, "skew", [9, 13]));
  const lines = opened({ x: skew, y: worked("2 * x + 1"), z: worked("(x - 10)^3") });
  const found = await tried(lines);
  expect(found.goodEnough).toBe(true);
  near(found.trial95[0], 19, 0.05);
  near(found.trial95[1], 27, 0.05);
  const cubed = await tried(lines, "z");
  near(cubed.trial95[0], -1, 0.15);
  near(cubed.trial95[1], 27, 3);
});

const fitting = (calls: { count: number }): Func => ({
  name: "fit",
  takes: [{ name: "x" }],
  says: "",
  work: () => {
    throw new Error("not to be called");
  },
  slow: (_job, x) => {
    calls.count += 1;
    const shared = x as ReturnType<typeof exact>;
    return Promise.resolve({ boilOff: shared, name: "a fit", list: [shared] });
  },
});

test("a slow function is not worked again: what it found is drawn, with the sources that it shares", async () => {
  const calls = { count: 0 };
  const lines = opened(
    {
      x: normal(1, 0.5, "x"),
      "the fit": worked("fit(x)"),
      found: worked("boil-off of the fit"),
      y: worked("exp(found) / exp(x)"),
      z: worked("exp(boil-off of the fit)"),
    },
    [fitting(calls)],
  );
  await lines.settled();
  const same = await tried(lines);
  near(same.trial95[1] - same.trial95[0], 0, 1e-9);
  const found = await tried(lines, "z");
  near(found.trial95[0], Math.exp(1 - 0.98), 0.03);
  near(found.trial95[1], Math.exp(1 + 0.98), 0.2);
  expect(calls.count).toBe(1);
});

test("a slow number is an input of its own sources", async () => {
  let count = 0;
  const slow: Func = {
    name: "simulated",
    takes: [{ name: "x" }],
    says: "",
    slowNumbers: (_job, x) => {
      count += 1;
      return Promise.resolve(2 * x);
    },
  };
  const lines = opened({ x: normal(0, 0.5, "x"), slow: worked("simulated(x)"), y: worked("exp(slow - x)") }, [slow]);
  await lines.settled();
  const before = count;
  const found = await tried(lines);
  // slow - x is x, normal of deviation 0.5.
  near(found.trial95[1], Math.exp(0.98), 0.08);
  near(found.trial95[0], Math.exp(-0.98), 0.02);
  expect(count).toBe(before);
});

test("a choice is made anew in each draw", async () => {
  const found = await tried(
    opened({
      x: normal(0.5, 1, "x"),
      y: worked("x when x > 0, otherwise 0"),
      words: worked('"up" when x > 0, otherwise "down"'),
    }),
  );
  // Cut at 0: the lower end is 0, the upper that of x.
  near(found.trial95[0], 0, 1e-9);
  near(found.trial95[1], 0.5 + 1.96, 0.08);
  expect(found.goodEnough).toBe(false);
  expect(await open?.trial("words")).toEqual({ stopped: "there is no amount to try: the line has none" });
});

test("the trial's amount stays correlated with what it rests on", async () => {
  const lines = opened({ x: normal(0, 0.5, "x"), w: normal(0, 0.5, "w"), y: worked("exp(x) * exp(w)") });
  const { value } = await tried(lines);
  // Stein: cov(exp(x + w), x) = 0.25 · E exp(x + w); Var = e^0.5 (e^0.5 - 1).
  const right = (0.25 * Math.exp(0.25)) / (0.5 * Math.sqrt(Math.exp(0.5) * (Math.exp(0.5) - 1)));
  near(correlation(value, measuredValue(0, 0.5, {}, "x")), right, 0.02);
  expect([...value.components.keys()].sort()).toEqual(["bend of y", "w", "x"]);
});

test("a trial stops when told, when time is short, and when something changes", async () => {
  const slowly: Func = {
    name: "slowly",
    takes: [{ name: "x" }],
    says: "",
    numbers: (x) => {
      const until = performance.now() + 1;
      while (performance.now() < until);
      return x;
    },
  };
  const lines = opened({ x: normal(0, 1, "x"), y: worked("x^2"), slow: worked("slowly(x)"), other: given("1") }, [
    slowly,
  ]);
  const stop = { aborted: false };
  const told: number[] = [];
  const progress = (share: number) => {
    told.push(share);
    stop.aborted = true;
  };
  expect(await lines.trial("slow", undefined, { stop, progress, seconds: 1e6 })).toEqual({ stopped: "stopped by you" });
  expect(told.length).toBe(1);
  expect(await lines.trial("slow", undefined, { seconds: 0.5 })).toEqual({
    stopped: "it takes too long to be worked as often as a trial needs",
  });
  const changing = lines.trial("slow", undefined, {
    seconds: 1e6,
    progress: () => lines.set("x", { given: "2 ± 1" }),
  });
  expect(await changing).toEqual({ stopped: "something that it rests on was changed meanwhile" });
  const calm = lines.trial("y", undefined, { draws: 10_000, progress: () => lines.set("other", { given: "2" }) });
  expect(await calm).toHaveProperty("goodEnough", false);
});

test("a trial gives the thread back", async () => {
  const lines = opened({ x: normal(0, 1, "x"), y: worked("x^2") });
  await lines.settled();
  let turns = 0;
  const timer = setInterval(() => turns++, 1);
  await tried(lines, "y", { draws: 200_000, digits: 2 });
  clearInterval(timer);
  expect(turns).toBeGreaterThan(3);
});

test("each case is tried with its own", async () => {
  const lines = openLines(
    notebook({
      asks: "?",
      lines: { x: given("1 ± 0.98"), y: worked("exp(x)") },
      cases: { "as it is": {}, sure: { x: "1 ± 0.0098" } },
    }),
  );
  expect(await lines.trial("y")).toHaveProperty("goodEnough", false);
  expect(await lines.trial("y", "sure")).toHaveProperty("goodEnough", true);
  expect(await lines.isStraight("y", "sure")).toBe(true);
  expect(await lines.isStraight("y")).toBe(false);
  lines.close();
});

test("draws are asked for in numbers that make sense", async () => {
  const lines = opened({ x: normal(0, 1, "x"), y: worked("x^2") });
  await expect(lines.trial("y", undefined, { draws: 5 })).rejects.toThrow("invalid draws: 5");
  expect((await tried(lines, "y", { draws: 100 })).draws).toBe(100);
});

// One shape each that slopes, a bend along one source, or two sources together may hide.
test.for(
  [
    "x * w",
    "x^3",
    "(1 + x) * (1 + w)",
    "1 / (3 + x)",
    "exp(x / 10) * w",
    "sin(x) + w",
    "x + 0.01 * w^2",
    "abs(x) + w",
    "(x + w)^2 / 50 + x",
    "x * w / 10 + x",
    "sqrt(4 + x) * w",
    "10 * x + w^3 / 20",
  ].flatMap((formula) => [1, 0.3, 0.1, 0.03].map((u) => [formula, u] as const)),
)("the cheap look never lets %s through at %s where the trial fails", async ([formula, u]) => {
  const lines = opened({ x: normal(0, u, "x"), w: normal(0, u / 2, "w"), y: worked(formula) });
  if (!(await lines.isStraight("y"))) return;
  expect((await tried(lines, "y", { draws: 100_000 })).goodEnough).toBe(true);
});

test("a part that is read straight out of a thing is not tried: it has the interval that it came with", async () => {
  const fit: Func = {
    name: "fit of",
    takes: [{ name: "x" }],
    says: "",
    work: (x) => ({ rate: { ...measuredValue((x as { value: number }).value, 1, {}, "fit"), interval95: [9, 14] } }),
  };
  const lines = opened(
    {
      x: normal(10, 1, "x"),
      found: worked("fit of(x)"),
      rate: worked("rate of found"),
      bent: worked("1 / rate of found"),
    },
    [fit],
  );
  expect(await lines.isStraight("rate")).toBe(true);
  expect((await tried(lines, "rate")).goodEnough).toBe(true);
  expect(await lines.isStraight("bent")).toBe(false);
});

test("a function that sees to doubt itself and left out that of its inputs is not asked again", async () => {
  const check: Func = {
    name: "check of",
    takes: [{ name: "x" }],
    says: "",
    work: (x) => measuredValue((x as { value: number }).value, 0.1, {}, "check"),
  };
  const lines = opened({ x: normal(10, 1, "x"), y: worked("check of(x)"), z: worked("y + x") }, [check]);
  expect(await lines.isStraight("y")).toBe(true);
  const found = await tried(lines, "y");
  expect(found.goodEnough).toBe(true);
  near(found.standardUncertainty, 0.1, 0.005);
  // What is added to it moves with x.
  near((await tried(lines, "z")).standardUncertainty, Math.hypot(1, 0.1), 0.03);
});
