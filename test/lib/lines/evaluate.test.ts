import { expect, test } from "vitest";
import { evaluate } from "../../../lib/lines/evaluate.ts";
import { type Func, functions, namesOf, parseFormula, type Result } from "../../../lib/lines/index.ts";
import { exact, measuredValue } from "../../../lib/measure/index.ts";

const degree = 5 / 9;
const lines = new Map<string, Result>([
  ["salt", { state: "settled", value: measuredValue(10, 0.1, { mass: 1 }, "salt") }],
  ["water", { state: "settled", value: measuredValue(8, 0.2, { mass: 1 }, "water") }],
  ["target", { state: "settled", value: exact((292 + 459.67) * degree, { temperature: 1, point: true }) }],
  ["reading", { state: "settled", value: exact((290 + 459.67) * degree, { temperature: 1, point: true }) }],
  ["offset", { state: "settled", value: exact(3 * degree, { temperature: 1 }) }],
  ["zero", { state: "settled", value: exact(0, {}) }],
  ["log", { state: "settled", value: [1, 2] }],
  ["kind", { state: "settled", value: "dial" }],
  ["balance", { state: "settled", value: { boilOff: 2, waterAtEnd: 3, unknown: undefined, poured: Number.NaN } }],
  ["table", { state: "settled", value: new Map<string, unknown>([["__proto__", 4]]) }],
  ["blank", { state: "not given" }],
  ["bad", { state: "stopped", says: "no" }],
  ["late", { state: "waits", for: "bad" }],
]);

const own: readonly Func[] = [
  { name: "second", takes: [{ name: "one", optional: true }, { name: "two" }], says: "", work: (_, two) => two },
  { name: "known", takes: [{ name: "one", optional: true }], says: "", work: (one) => (one === undefined ? 0 : 1) },
  {
    name: "broken",
    takes: [],
    says: "",
    work: () => {
      throw new Error("the log is empty: write a reading");
    },
  },
  { name: "nothing", takes: [], says: "", work: () => undefined },
  { name: "slow", takes: [{ name: "one" }], says: "", work: async (one) => one },
  {
    name: "fails",
    takes: [],
    says: "",
    work: async () => {
      throw new Error("it did not end");
    },
  },
];

async function worked(formula: string): Promise<Result> {
  const parsed = parseFormula(formula, namesOf(lines.keys(), [...functions, ...own]));
  if (!("tree" in parsed)) throw new Error(parsed.says);
  return evaluate(parsed.tree, { formula, result: (name) => lines.get(name) ?? { state: "not given" } });
}

async function number(formula: string): Promise<unknown> {
  const result = await worked(formula);
  if (result.state !== "settled") return result;
  const value = result.value as { value?: number };
  return typeof value === "object" && "value" in value ? value.value : value;
}

test.each([
  ["-2^2", -4],
  ["(-2)^2", 4],
  ["2^3^2", 512],
  ["2 * 3 + 4", 10],
  ["1 lb + 8 oz", 0.45359237 * 1.5],
  ["salt / water", 1.25],
  ["salt - salt", 0],
  ["2 in^2", 2 * 0.0254 ** 2],
  ["(2 in)^2", 4 * 0.0254 ** 2],
  ["sqrt(16 in^2)", 4 * 0.0254],
  ["abs(-3)", 3],
  ["min(3, 1, 2)", 1],
  ["max(salt, water)", 10],
  ["exp(0) + ln(1) + log10(100)", 3],
  ["sin(0) + cos(0) + tan(0)", 1],
  ["boil-off of balance * 2", 4],
  ["water at end of balance", 3],
  ["__proto__ of table", 4],
  ["1 when salt > water, otherwise 1 / zero", 1],
  ["1 / zero when salt < water, otherwise 2", 2],
  ["1 when salt < water, 2 when salt < 5 kg, otherwise 3", 3],
  ["1 when blank is given, otherwise 2", 2],
  ['1 when kind is not "dial", otherwise 2', 2],
  ["1 when salt is not water, otherwise 2", 1],
  ["1 when salt is given, otherwise 2", 1],
  ['1 when kind is "dial" and not (salt < water), otherwise 2', 1],
  ["second(blank, 7)", 7],
  ["known(blank) + known(salt)", 1],
  ["slow(2) * slow(3)", 6],
])("%s comes to %d", async (formula, wanted) => {
  expect(await number(formula)).toBeCloseTo(wanted, 12);
});

// A temperature on the scale is an instant of a thermometer; a difference is a step. 292 °F = 417.594 K (NIST SP 811, B.9).
test.each([
  ["target - 5 °F", (287 + 459.67) * degree, true],
  ["target + 5 °F", (297 + 459.67) * degree, true],
  ["5 °F + target", (297 + 459.67) * degree, true],
  ["target + -5 °F", (287 + 459.67) * degree, true],
  ["292 °F", (292 + 459.67) * degree, true],
  ["-5 °F", (-5 + 459.67) * degree, true],
  ["292 °F - 291 °F", degree, undefined],
  ["target - reading", 2 * degree, undefined],
  ["reading + offset", (293 + 459.67) * degree, true],
  ["2 * 5 °F", 10 * degree, undefined],
  ["offset + 2 °F", 5 * degree, undefined],
])("%s is a temperature or a difference of temperatures", async (formula, kelvin, point) => {
  const result = await worked(formula);
  if (result.state !== "settled") throw new Error(JSON.stringify(result));
  const value = result.value as { value: number; dimension: object };
  expect(value.value).toBeCloseTo(kelvin, 9);
  expect(value.dimension).toEqual(point ? { temperature: 1, point } : { temperature: 1 });
});

test.each([
  ["target > 290 °F", true],
  ["target <= 291 °F", false],
  ["offset < 5 °F", true],
  ["target - reading >= 1.9 °F", true],
  ["salt = water", false],
  ["16 oz = 1 lb", true],
])("%s is %s", async (formula, wanted) => {
  expect(await number(formula)).toBe(wanted);
});

test.each([
  ["salt + target", 'stopped 5: "salt" is a weight and "target" is a temperature: both must be of one kind'],
  ["salt - 3", 'stopped 5: "salt" is a weight and "3" is a plain number: both must be of one kind'],
  ["salt > target", 'stopped 5: "salt" is a weight and "target" is a temperature: both must be of one kind'],
  [
    "target + reading",
    'stopped 7: "target" and "reading" are two temperatures: their difference has a meaning, their sum none',
  ],
  ["2 * target", 'stopped 4: "target" is a temperature on the scale: take another temperature from it first'],
  ["salt / (water - water)", 'stopped 7: "(water - water)" is zero: nothing can be divided by it'],
  ["2 ^ salt", 'stopped 4: "salt" has a unit: a power is a plain number'],
  ["2 ^ (salt / water)", 'stopped 4: "(salt / water)" is not exact: a power is'],
  ["log + 1", 'stopped 0: "log" is a thing, no amount'],
  ["balance * 2", 'stopped 0: "balance" is a thing, no amount: use a part of it, say "boil off of balance"'],
  ["kind * 2", 'stopped 0: "kind" is words, no amount'],
  ["boil of balance", 'stopped 0: "balance" has no part "boil"; its parts are boil off, water at end, unknown, poured'],
  ["boil-of of balance", 'stopped 0: "balance" has no part "boil-of": did you mean "boil off"?'],
  [
    "constructor of balance",
    'stopped 0: "balance" has no part "constructor"; its parts are boil off, water at end, unknown, poured',
  ],
  ["length of log", 'stopped 0: "log" has no parts'],
  ["value of salt", 'stopped 0: "salt" has no parts'],
  ["unknown of balance", 'stopped 0: "unknown" is not known from "balance"'],
  ["poured of balance", "stopped 0: this comes to no number"],
  ["1 when salt, otherwise 2", 'stopped 7: "salt" is no condition: write one, say a > b'],
  ["1 + broken()", "stopped 4: the log is empty: write a reading"],
  ["1 + nothing()", "stopped 4: nothing gave nothing"],
  ["1 + fails()", "stopped 4: it did not end"],
  ["10 ^ 400", "stopped 3: this comes to no number"],
  ["blank + 1", "waits for blank"],
  ["second(1, blank)", "waits for blank"],
  ["blank", "waits for blank"],
  ["salt * late", "waits for bad"],
  ["bad + late", "waits for bad"],
  ["known(bad)", "waits for bad"],
])("%s says what is wrong", async (formula, wanted) => {
  const result = await worked(formula);
  if (result.state === "stopped") expect(`stopped ${result.at}: ${result.says}`).toBe(wanted);
  else expect(result.state === "waits" ? `waits for ${result.for}` : JSON.stringify(result)).toBe(wanted);
});

test("a - a is exactly zero wide, a + a twice as wide", async () => {
  const [none, twice] = [await worked("salt - salt"), await worked("salt + salt")];
  expect((none as { value: { components: Map<string, number> } }).value.components).toEqual(new Map());
  expect((twice as { value: { components: Map<string, number> } }).value.components).toEqual(new Map([["salt", 0.2]]));
});
