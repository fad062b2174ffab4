import { expect, test } from "vitest";
import { given, type Line, notebook, openLines, worked } from "../../../lib/lines/index.ts";
import { exact } from "../../../lib/measure/measuredValue.ts";
import type { Value } from "../../../lib/measure/types.ts";

const open = (lines: Record<string, Line>, options = {}) => openLines(notebook({ asks: "?", lines }), options);
const si = async (lines: ReturnType<typeof open>, name: string) => {
  const answer = await lines.value(name);
  return "value" in answer ? answer.value : answer;
};

test("openLines works a formula out with units", async () => {
  const lines = open({
    salt: given("24 lb", "weighed", { takes: "mass" }),
    water: given("2 gal", "measured", { takes: "water" }),
    ratio: worked("salt / water", "lb/gal"),
  });
  const answer = await lines.value("ratio");
  if (!("value" in answer)) throw new Error(JSON.stringify(answer));
  // 24 lb = 10.88621688 kg exactly (international pound, 1959); 2 US gal = 7.570823568 L (Handbook 44) at 998.2 kg/m³.
  expect(answer.value).toBeCloseTo(10.88621688 / (7.570823568 * 0.9982), 9);
  expect(answer.text).toMatch(/^12\.0/u);
  expect(answer.widthFrom.map(({ source }) => source)).toEqual(["water", "salt"]);
});

test("set works exactly the dependents out again", async () => {
  const lines = open({
    a: given("1"),
    b: given("2"),
    "twice a": worked("2 * a"),
    "twice b": worked("2 * b"),
    both: worked("twice a + twice b"),
    more: worked("both + 1"),
  });
  await lines.settled();
  expect(lines.worked()).toBe(4);
  lines.set("b", { given: "5" });
  expect(lines.result("more").state).toBe("working");
  expect(await si(lines, "more")).toBe(13);
  expect(lines.worked()).toBe(4 + 3);
});

test("several edits in one go give one evaluation", async () => {
  const lines = open({ a: given("1"), b: worked("a + 1") });
  await lines.settled();
  for (let i = 0; i < 20; i++) lines.set("a", { given: String(i) });
  expect(await si(lines, "b")).toBe(20);
  expect(lines.worked()).toBe(2);
});

test("an edit that gives an equal value stops there", async () => {
  const lines = open({
    a: given("1 lb", undefined, { exact: true }),
    b: worked("a * 2"),
    c: worked("max(a, 5 lb)"),
    d: worked("c + 1 lb"),
  });
  await lines.settled();
  lines.set("a", { given: "16 oz" });
  await lines.settled();
  lines.set("a", { given: "2 lb" });
  await lines.settled();
  // b and c are worked again for 2 lb; d is not, since c is 5 lb as before.
  expect(lines.worked()).toBe(3 + 2 + 2);
});

test("openLines hands things without text to functions and takes their parts", async () => {
  const balance = {
    name: "balance of run",
    takes: [{ name: "log" }, { name: "water", optional: true }],
    says: "",
    work: (log: unknown, water: unknown) => ({
      boilOff: exact((log as number[]).length, { mass: 1, time: -1 }),
      "water known": water === undefined ? 0 : 1,
    }),
  };
  const lines = open(
    {
      log: given("", undefined, { takes: "anything" }),
      water: given("", "measured", { takes: "water" }),
      "water balance": worked("balance of run(log, water)"),
      "boil-off": worked("boil-off of water balance", "kg/s"),
      known: worked("water known of water balance"),
      plus: worked("water + 1 lb"),
    },
    { vocabulary: { functions: [balance] } },
  );
  expect(await lines.value("boil-off")).toEqual({ waitsFor: "log" });
  lines.set("log", { value: [1, 2, 3] });
  expect(await si(lines, "boil-off")).toBe(3);
  expect(await si(lines, "known")).toBe(0);
  expect(await lines.value("plus")).toEqual({ waitsFor: "water" });
  expect(lines.result("water")).toEqual({ state: "not given" });
  expect((lines.result("boil-off") as { value: Value }).value.dimension).toEqual({ mass: 1, time: -1 });
});

test("a circular definition names the whole loop, and goes on when it is broken", async () => {
  const lines = open({ a: worked("b + 1"), b: worked("c + 1"), c: worked("a + 1"), d: worked("a * 2") });
  expect(await lines.value("a")).toEqual({
    stopped: 'this needs itself to be worked out: "a" needs "b" needs "c" needs "a"',
  });
  expect(await lines.value("c")).toEqual({
    stopped: 'this needs itself to be worked out: "c" needs "a" needs "b" needs "c"',
  });
  expect(await lines.value("d")).toEqual({ waitsFor: "a" });
  lines.set("c", { worked: "1" });
  expect(await si(lines, "d")).toBe(6);
  lines.undo();
  expect(await lines.value("d")).toEqual({ waitsFor: "a" });
});

test("rename rewrites formulas and works nothing out again", async () => {
  const lines = open({ salt: worked("24"), water: worked("2"), ratio: worked("salt /  water + salt") });
  await lines.settled();
  lines.rename("salt", "boil-off salt");
  expect(lines.text("ratio")).toBe("boil-off salt /  water + boil-off salt");
  expect(await si(lines, "ratio")).toBe(36);
  expect(lines.worked()).toBe(3);
  expect(lines.undoName()).toBe("Undo: boil-off salt was called salt");
  lines.undo();
  expect(lines.text("ratio")).toBe("salt /  water + salt");
});
