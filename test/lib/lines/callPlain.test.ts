import fc from "fast-check";
import { expect, test } from "vitest";
import { callPlain } from "../../../lib/lines/callPlain.ts";
import { evaluate } from "../../../lib/lines/evaluate.ts";
import {
  type FastFunc,
  type Func,
  functions,
  given,
  type Job,
  namesOf,
  notebook,
  openLines,
  parseFormula,
  type Result,
  type SlowFunc,
  worked,
} from "../../../lib/lines/index.ts";
import {
  add,
  applyFunction,
  correlated,
  divide,
  exact,
  interval95,
  measuredValue,
  multiply,
  scale,
  standardUncertainty,
  subtract,
  type Value,
} from "../../../lib/measure/index.ts";

const point = { temperature: 1, point: true } as const;
const pressure = { mass: 1, length: -1, time: -2 };
const takes = (count: number) => Array.from({ length: count }, (_, i) => ({ name: `number ${i + 1}` }));

/** A function that counts its calls. */
function counted(count: number, f: (...x: number[]) => number, more: Partial<FastFunc> = {}) {
  const calls: (readonly number[])[] = [];
  const func: FastFunc = {
    name: "own function",
    takes: takes(count),
    says: "",
    numbers: (...x) => {
      calls.push(x);
      return f(...x);
    },
    ...more,
  };
  return { func, calls, call: (...args: readonly unknown[]) => callPlain(func, args) as Value };
}

const a = measuredValue(3, 0.03, {}, "a");
const b = measuredValue(7, 0.14, {}, "b");

// JCGM 100:2008, 5.1.6: relative variances add in a product and a quotient.
test("the width of a product is the root of the squares (GUM 5.1.6), by one difference for each argument", () => {
  const { call, calls } = counted(2, (x = 0, y = 0) => x / y);
  const result = call(a, b);
  expect(result.value).toBe(3 / 7);
  expect(standardUncertainty(result) / (3 / 7)).toBeCloseTo(Math.hypot(0.01, 0.02), 6);
  expect(calls.length).toBe(5);
});

test("exact slopes are used where they are known, and then it is called once", () => {
  const { call, calls } = counted(2, (x = 0, y = 0) => x * y, { partials: (x = 0, y = 0) => [y, x] });
  const result = call(a, b);
  expect(result).toEqual(multiply(a, b));
  expect(calls.length).toBe(1);
});

test("what arguments share stays shared: a difference of one thing with itself is zero wide", () => {
  const { call } = counted(2, (x = 0, y = 0) => Math.exp(x) - Math.exp(y));
  expect(call(a, a).components.size).toBe(0);
  const squared = counted(1, (x = 0) => x ** 2).call(a);
  expect(standardUncertainty(subtract(squared, multiply(a, a)))).toBeLessThan(1e-9 * standardUncertainty(squared));
});

test("one source moves all arguments together, by one difference", () => {
  const all = [a, scale(a, 2), scale(a, -1)];
  const { call, calls } = counted(3, (x = 0, y = 0, z = 0) => x * y * z);
  const result = call(...all);
  expect(calls.length).toBe(3);
  const wanted = multiply(multiply(a, scale(a, 2)), scale(a, -1));
  expect(result.components.get("a")).toBeCloseTo(wanted.components.get("a") ?? 0, 3);
});

test("arguments without doubt cost nothing", () => {
  const { call, calls } = counted(2, (x = 0, y = 0) => x ** y);
  expect(call(exact(2), exact(3))).toEqual(exact(8));
  expect(calls.length).toBe(1);
});

test("any correlated arguments get the components that arithmetic gives them", () => {
  const number = fc.double({ min: 1, max: 9, noNaN: true });
  const part = fc.double({ min: -0.2, max: 0.2, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(number, part, part, part), { minLength: 2, maxLength: 2 }), (rows) => {
      const [x = exact(1), y = exact(1)] = rows.map(([value, p, q, r]) => {
        const parts = [p, q, r].map((each, i) => [`s${i}`, each] as const).filter(([, each]) => Math.abs(each) > 1e-3);
        return { value, dimension: {}, components: new Map(parts) };
      });
      const result = counted(2, (u = 0, v = 0) => (u * v) / (u + v)).call(x, y);
      const wanted = divide(multiply(x, y), add(x, y));
      expect(result.value).toBeCloseTo(wanted.value, 12);
      for (const source of ["s0", "s1", "s2"])
        expect(result.components.get(source) ?? 0).toBeCloseTo(wanted.components.get(source) ?? 0, 4);
    }),
    { numRuns: 200 },
  );
});

// JCGM 100:2008, H.2, table H.3: R of V, I and φ read together (table H.2), to the printed digits.
test("GUM H.2 through a function of plain numbers: R 127.732, u 0.071", () => {
  const sets = [
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ];
  const mean = (all: readonly number[]) => all.reduce((sum, each) => sum + each, 0) / all.length;
  const off = sets.map((set) => set.map((each) => each - mean(set)));
  const matrix = off.map((p) => off.map((q) => mean(p.map((each, k) => each * (q[k] ?? 0))) / 4));
  const R = counted(3, (v = 0, i = 0, angle = 0) => (v / i) * Math.cos(angle)).call(
    ...correlated(sets.map(mean), matrix),
  );
  expect(R.value).toBeCloseTo(127.732, 3);
  expect(standardUncertainty(R)).toBeCloseTo(0.071, 3);
});

test("a width far below the number is still told from rounding", () => {
  const result = counted(1, (x = 0) => x ** 3).call(measuredValue(400, 1e-10, {}, "fine"));
  expect(result.components.get("fine")).toBeCloseTo(3 * 400 ** 2 * 1e-10, 12);
  const atZero = counted(1, (x = 0) => Math.sin(x)).call(measuredValue(0, 1e-10, {}, "fine"));
  expect((atZero.components.get("fine") ?? 0) / 1e-10).toBeCloseTo(1, 6);
});

test("at the end of the range the other side tells, and a point beyond it is the function's own error", () => {
  const inRange = (x = 0) => {
    if (!(x >= 2 && x <= 4)) throw new RangeError(`invalid strength: ${x}; 2 to 4`);
    return x ** 2;
  };
  const { call } = counted(1, inRange);
  expect(call(measuredValue(4, 0.01, {}, "x")).components.get("x")).toBeCloseTo(0.08, 4);
  expect(call(measuredValue(2, 0.01, {}, "x")).components.get("x")).toBeCloseTo(0.04, 4);
  expect(() => call(exact(4.001))).toThrow("invalid strength: 4.001; 2 to 4");
  expect(() => counted(1, () => Number.NaN).call(a)).toThrow("own function comes to no number here");
  const nowhereElse = counted(1, (x = 0) => {
    if (x !== 3) throw new RangeError("invalid strength: 3 only");
    return 1;
  });
  expect(() => nowhereElse.call(a)).toThrow("3 only");
});

test("a 95 % interval of its own is carried through the function; an end out of range widens in proportion", () => {
  const skewed = measuredValue(1, 0.1, {}, "s", [0.9, 1.5]);
  const cube = (x = 0) => x ** 3;
  const wanted = applyFunction(cube, [skewed], { dimension: {} });
  const [low, high] = interval95(counted(1, cube).call(skewed));
  expect(low).toBeCloseTo(interval95(wanted)[0], 9);
  expect(high).toBeCloseTo(interval95(wanted)[1], 9);
  const short = counted(1, (x = 0) => {
    if (x > 1.2) throw new RangeError("too much");
    return 2 * x;
  }).call(skewed);
  expect(interval95(short)[0]).toBeCloseTo(1.8, 6);
  expect(interval95(short)[1]).toBeCloseTo(3, 6);
});

test("what a function is itself not sure of counts, and is one thing in all its calls", () => {
  const besides = [measuredValue(10, 1, {}, "heating value")];
  const { call } = counted(2, (x = 0, y = 0, heat = 0) => (x + (y ?? 0)) * heat, { besides });
  const once = call(exact(2), exact(1));
  expect(once.value).toBe(30);
  expect(once.components.get("heating value")).toBeCloseTo(3, 9);
  const ratio = divide(call(exact(6), exact(0)), once);
  expect(standardUncertainty(ratio)).toBeLessThan(1e-12);
});

/** In formulas. */
const boil: FastFunc = {
  name: "boil at",
  takes: [
    { name: "air pressure", kind: "pressure" },
    { name: "ratio", kind: "salt to water", optional: true },
    { name: "offset", kind: "temperature difference", optional: true },
  ],
  gives: "temperature",
  says: "",
  numbers: (p, ratio?: number, offset?: number) => 300 + p / 1000 + (ratio ?? 0.5) * 10 + (offset ?? 0),
};
const word: Func = { name: "word for", takes: [{ name: "weight", kind: "mass" }], says: "", work: () => "heavy" };
const bare: FastFunc = { name: "bare one", takes: [{ name: "x" }], says: "", numbers: (x) => x };

const lines = new Map<string, Result>([
  ["air", { state: "settled", value: measuredValue(1e5, 500, pressure, "barometer") }],
  ["salt", { state: "settled", value: exact(2, { mass: 1 }) }],
  ["thick", { state: "settled", value: exact(1200, { mass: 1, length: -3 }) }],
  ["target", { state: "settled", value: exact(417, point) }],
  ["kind", { state: "settled", value: "dial" }],
  ["log", { state: "settled", value: [1] }],
  ["blank", { state: "not given" }],
]);

function result(formula: string) {
  const parsed = parseFormula(formula, namesOf(lines.keys(), [...functions, boil, word, bare]));
  if (!("tree" in parsed)) throw new Error(parsed.says);
  const found = evaluate(parsed.tree, { formula, result: (name) => lines.get(name) ?? { state: "not given" } });
  if (found instanceof Promise) throw new Error("it was to be quick");
  return found;
}

test("a formula's call has the dimension it gives, and its width; what is left out is undefined", () => {
  const found = result("boil at(air)");
  if (found.state !== "settled") throw new Error(JSON.stringify(found));
  const value = found.value as Value;
  expect(value.value).toBe(405);
  expect(value.dimension).toEqual(point);
  expect(value.components.get("barometer")).toBeCloseTo(0.5, 9);
  expect(result("boil at(air, blank)")).toEqual(found);
  expect(result("boil at(blank)")).toEqual({ state: "waits", for: "blank" });
});

test("a written number means what the function takes there", () => {
  const value = (formula: string) => (result(formula) as { value: Value }).value.value;
  expect(value("boil at(100 kPa, 0.5, 9 °F)")).toBeCloseTo(410, 9);
  expect(value("boil at(100 kPa, 0.5, -9 °F)")).toBeCloseTo(400, 9);
  // 10 lb to the US gallon, 3.785411784 l, of water of 0.9982 kg/l (NIST SP 811; CRC Handbook).
  expect(value("boil at(100 kPa, 10 lb/gal)")).toBeCloseTo(400 + 10 * (4.5359237 / (3.785411784 * 0.9982)), 9);
});

test.each([
  ["boil at(salt)", 8, 'boil at takes a pressure as its air pressure: "salt" is a weight'],
  ["1 + boil at(kind)", 12, 'boil at takes a pressure as its air pressure: "kind" is words'],
  ["boil at(air, thick)", 13, 'boil at takes a ratio of salt to water as its ratio: "thick" is a density'],
  ["boil at(air, 1, target)", 16, 'takes a difference of temperatures as its offset: "target" is a temperature'],
  ["boil at(air, 2 lb)", 13, '"2 lb" is a weight'],
  ["boil at(air > 1 kPa)", 8, '"air > 1 kPa" is yes or no'],
  ["word for(air)", 9, 'word for takes a weight as its weight: "air" is a pressure'],
  ["bare one(log)", 9, 'bare one takes an amount as its x: "log" is a thing that has parts'],
])("%s is refused at character %d: %s", (formula, at, says) => {
  expect(result(formula)).toMatchObject({ state: "stopped", at, says: expect.stringContaining(says) });
});

interface Asked {
  readonly job: Job;
  readonly x: readonly number[];
  readonly end: (value: number) => void;
  readonly fail: (error: Error) => void;
  stopped: number;
}

function slowly(count: number, more: Partial<SlowFunc> = {}) {
  const asked: Asked[] = [];
  const func: SlowFunc = {
    name: "slow one",
    takes: takes(count),
    says: "",
    slowNumbers: (job, ...x) =>
      new Promise<number>((end, fail) => {
        const one: Asked = { job, x, end, fail, stopped: 0 };
        job.onStop(() => {
          one.stopped++;
        });
        asked.push(one);
      }),
    ...more,
  };
  return { func, asked };
}

test("a slow function is asked at once for its number and for one more by source; the shares told are their mean", async () => {
  const { func, asked } = slowly(2);
  const told: (readonly [string, number | undefined])[] = [];
  const found = callPlain(func, [a, b], () => ({
    says: (words, share) => void told.push([words, share]),
    onStop: () => {},
  }));
  expect(asked.map(({ x }) => x)).toEqual([
    [3, 7],
    [3 + 0.03 / 8, 7],
    [3, 7 + 0.14 / 8],
  ]);
  asked[1]?.job.says("half of it", 0.6);
  expect(told.at(-1)).toEqual(["half of it", expect.closeTo(0.2, 12)]);
  for (const { x, end } of asked) end((x[0] ?? 0) * (x[1] ?? 0));
  const value = (await found) as Value;
  expect(value.value).toBe(21);
  expect(value.components.get("a")).toBeCloseTo(7 * 0.03, 9);
  expect(value.components.get("b")).toBeCloseTo(3 * 0.14, 9);
  expect(told.at(-1)?.[1]).toBe(1);
});

test("a slow function goes the other way where one side is out of range, and with exact slopes it is asked once", async () => {
  const { func, asked } = slowly(1);
  const found = callPlain(func, [a]);
  asked[0]?.end(9);
  asked[1]?.fail(new RangeError("too much"));
  await new Promise((resolve) => setTimeout(resolve, 1));
  const x = asked[2]?.x[0] ?? 0;
  expect(x).toBeCloseTo(3 - 0.03 / 8, 12);
  asked[2]?.end(x ** 2);
  expect(((await found) as Value).components.get("a")).toBeCloseTo(0.18, 2);
  const sure = slowly(1, { partials: (y = 0) => [2 * y] });
  const exactly = callPlain(sure.func, [a]);
  sure.asked[0]?.end(9);
  expect(((await exactly) as Value).components.get("a")).toBeCloseTo(0.18, 12);
  expect(sure.asked.length).toBe(1);
});

test("where the number itself fails, its error stands and the other runs are ended", async () => {
  const { func, asked } = slowly(2);
  const found = callPlain(func, [a, b]) as Promise<Value>;
  asked[0]?.fail(new RangeError("invalid fire: out"));
  await expect(found).rejects.toThrow("invalid fire: out");
  expect(asked.map(({ stopped }) => stopped)).toEqual([1, 1, 1]);
});

test("stopping a slow line ends all of its runs, and it can be worked again", async () => {
  const { func, asked } = slowly(2);
  const open = openLines(
    notebook({
      asks: "?",
      lines: { one: given("3 ± 0.1"), two: given("7 ± 0.2"), found: worked("slow one(one, two)") },
    }),
    { vocabulary: { functions: [func] } },
  );
  await new Promise((resolve) => setTimeout(resolve, 2));
  expect(asked.length).toBe(3);
  asked[0]?.job.says("boiling", 0.3);
  expect(open.result("found")).toMatchObject({ state: "working", says: "boiling", share: expect.closeTo(0.1, 9) });
  open.stop("found");
  expect(asked.map(({ stopped }) => stopped)).toEqual([1, 1, 1]);
  expect(await open.value("found")).toMatchObject({ stopped: "stopped by you" });
  open.again("found");
  await new Promise((resolve) => setTimeout(resolve, 2));
  expect(asked.length).toBe(6);
  for (const { x, end } of asked.slice(3)) end((x[0] ?? 0) + (x[1] ?? 0));
  const answer = await open.value("found");
  expect(answer).toMatchObject({
    value: 10,
    standardUncertainty: expect.closeTo(Math.hypot(0.1, 0.2) / 1.96, 9),
    widthFrom: [{ source: "two" }, { source: "one" }],
  });
  open.close();
});
