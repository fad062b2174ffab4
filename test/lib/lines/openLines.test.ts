import { expect, test, vi } from "vitest";
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

test("an error stays in its line: dependents say which they wait for, the rest go on", async () => {
  const lines = open({
    salt: given("lots", "weighed", { takes: "mass" }),
    water: given("2 lb", "weighed", { takes: "mass" }),
    ratio: worked("salt / water"),
    twice: worked("2 * ratio"),
    sum: worked("water + 3"),
    after: worked("sum * 2"),
    half: worked("water / 2"),
    odd: worked("water * watr"),
  });
  expect(await lines.value("twice")).toEqual({ waitsFor: "salt" });
  expect(await lines.value("sum")).toEqual({
    stopped: '"water" is a weight and "3" is a plain number: both must be of one kind',
    at: 6,
  });
  expect(await lines.value("after")).toEqual({ waitsFor: "sum" });
  expect(await si(lines, "half")).toBeCloseTo(0.45359237, 12);
  expect(await lines.value("odd")).toEqual({ stopped: 'no line is called "watr": did you mean "water"?', at: 8 });
  lines.set("salt", { given: "4 lb" });
  expect(await si(lines, "twice")).toBeCloseTo(4, 12);
});

test("a result that its unit does not measure stops the line", async () => {
  const lines = open({
    salt: given("2 lb"),
    a: worked("salt", "in"),
    b: worked("salt", "lbx"),
    e: worked("salt / 3 lb", ""),
  });
  expect(await lines.value("a")).toEqual({ stopped: 'this comes to a weight, and "in" was expected' });
  expect(await lines.value("b")).toEqual({ stopped: '"lbx" is no unit' });
  expect(await si(lines, "e")).toBeCloseTo(2 / 3, 12);
});

test("add makes a formula come right that missed the name, remove makes it stop", async () => {
  const lines = open({ twice: worked("2 * salt"), more: worked("twice + 1") });
  expect(await lines.value("more")).toEqual({ waitsFor: "twice" });
  lines.add("salt", given("3"), "twice");
  expect(lines.names()).toEqual(["twice", "salt", "more"]);
  expect(lines.uses("twice")).toEqual(["salt"]);
  expect(lines.usedBy("salt")).toEqual(["twice"]);
  expect(await si(lines, "more")).toBe(7);
  lines.remove("salt");
  expect(await lines.value("twice")).toEqual({ stopped: 'no line is called "salt"', at: 4 });
  expect(() => lines.result("salt")).toThrow("unknown line: salt; one of twice, more");
  lines.undo();
  expect(lines.names()).toEqual(["twice", "salt", "more"]);
  expect(await si(lines, "more")).toBe(7);
});

test("add and rename refuse a name that would be read two ways, with the reason", async () => {
  const lines = open({
    boil: given("1"),
    "boil-off": given("2"),
    rate: worked("boil - boil-off"),
    bare: worked("boil-rate"),
  });
  expect(() => lines.add("off", given("1"))).toThrow(
    'invalid line name: off; with it, "boil-off" could be read as a formula',
  );
  expect(() => lines.add("min", given("1"))).toThrow("invalid line name: min; it is a unit");
  expect(() => lines.add("Rate", given("1"))).toThrow("ambiguous line name: Rate; each line needs a name of its own");
  expect(() => lines.rename("rate", "off")).toThrow("invalid line name: off;");
  expect(() => lines.add("boil-rate", given("1"))).toThrow(
    "invalid line name: boil-rate; it could be read as a formula",
  );
  expect(() => lines.rename("boil", "5 lb")).toThrow("invalid line name: 5 lb; it begins with a figure");
  expect(lines.names()).toEqual(["boil", "boil-off", "rate", "bare"]);
  expect(lines.undoName()).toBeUndefined();
  expect(await si(lines, "rate")).toBe(-1);
});

test("renaming a given renames its source of doubt and who waits for it", async () => {
  const lines = open({
    salt: given("2 lb", "weighed"),
    half: worked("salt / 2"),
    water: given(""),
    more: worked("water + 1"),
  });
  await lines.settled();
  lines.rename("salt", "lye");
  lines.rename("water", "water in the bath");
  expect(await lines.value("half")).toMatchObject({ widthFrom: [{ source: "lye", share: 1 }] });
  expect(await lines.value("more")).toEqual({ waitsFor: "water in the bath" });
});

test("undo and redo go through everything by name", async () => {
  const lines = open({ altitude: given("2,100 ft", "published"), twice: worked("2 * altitude", "ft") });
  expect(lines.undo()).toBe(false);
  lines.set("altitude", { given: "2,300 ft" });
  expect(lines.undoName()).toBe("Undo: altitude was 2,100 ft");
  lines.set("altitude", { given: "2,300 ft" });
  lines.set("twice", { worked: "3 * altitude" });
  lines.add("salt", given("1"));
  lines.rename("altitude", "height");
  lines.remove("salt");
  expect([lines.names(), lines.text("twice")]).toEqual([["height", "twice"], "3 * height"]);
  const undone: (string | undefined)[] = [];
  do undone.push(lines.undoName());
  while (lines.undo());
  expect(undone).toEqual([
    "Undo: removing salt",
    "Undo: height was called altitude",
    "Undo: adding salt",
    "Undo: twice was 2 * altitude",
    "Undo: altitude was 2,100 ft",
    undefined,
  ]);
  expect([lines.names(), lines.text("altitude"), lines.text("twice")]).toEqual([
    ["altitude", "twice"],
    "2,100 ft",
    "2 * altitude",
  ]);
  // 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959).
  expect(await si(lines, "twice")).toBeCloseTo(4200 * 0.3048, 9);
  expect(lines.redoName()).toBe("Redo: altitude is 2,300 ft");
  while (lines.redo());
  expect([lines.names(), lines.text("twice")]).toEqual([["height", "twice"], "3 * height"]);
  expect(await si(lines, "twice")).toBeCloseTo(6900 * 0.3048, 9);
});

test("together makes one edit of many", async () => {
  const lines = open({ a: given("1"), b: given("2"), sum: worked("a + b") });
  await lines.settled();
  lines.together("another run was open", () => {
    lines.set("a", { given: "10" });
    lines.set("b", { given: "20" });
  });
  expect(await si(lines, "sum")).toBe(30);
  expect(lines.worked()).toBe(2);
  expect(lines.undoName()).toBe("Undo: another run was open");
  lines.undo();
  expect(await si(lines, "sum")).toBe(3);
  expect(lines.undoName()).toBeUndefined();
});

test("set turns a given into a worked line and back", async () => {
  const lines = open({ a: given("1 lb", "weighed", { unit: "lb", group: "salts" }), b: worked("2 * a", "lb") });
  lines.set("a", { worked: "3 lb" });
  expect(lines.line("a")).toEqual({ kind: "worked", formula: "3 lb", unit: "lb", group: "salts" });
  expect(await si(lines, "b")).toBeCloseTo(6 * 0.45359237, 12);
  lines.set("a", { given: "2", known: "guessed" });
  expect(lines.line("a")).toEqual({ kind: "given", text: "2", known: "guessed", unit: "lb", group: "salts" });
  expect(await si(lines, "b")).toBeCloseTo(4 * 0.45359237, 12);
});

test("observe tells of every line whose result changed, and of no other", async () => {
  const lines = open({ a: given("1"), b: given("2"), twice: worked("2 * a"), other: worked("2 * b") });
  await lines.settled();
  const told: string[] = [];
  const stop = lines.observe((line, result) => told.push(`${line} ${result.state}`));
  lines.set("a", { given: "5" });
  await lines.settled();
  expect(told).toEqual(["a settled", "twice settled"]);
  stop();
  lines.set("a", { given: "6" });
  await lines.settled();
  expect(told).toHaveLength(2);
});

test("a slow function says working, its dependents wait, and a newer edit drops the old answer", async () => {
  const ends: ((value: number) => void)[] = [];
  const slow = {
    name: "fit",
    takes: [{ name: "log" }],
    says: "",
    work: () => new Promise<number>((end) => ends.push(end)),
  };
  const lines = open(
    { log: given("a", undefined, { takes: "words" }), found: worked("fit(log)"), twice: worked("2 * found") },
    {
      vocabulary: { functions: [slow] },
    },
  );
  const told: string[] = [];
  lines.observe((line, result) => told.push(`${line} ${result.state}`));
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(told).toEqual(["log settled", "found working", "twice working"]);
  expect([lines.result("found").state, lines.result("twice").state]).toEqual(["working", "working"]);
  lines.set("log", { given: "b" });
  await new Promise((resolve) => setTimeout(resolve, 5));
  ends[0]?.(1);
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(lines.result("twice").state).toBe("working");
  ends[1]?.(2);
  expect(await si(lines, "twice")).toBe(4);
});

test("openLines needs no animation frame", async () => {
  // The runtime looks for frames when it is loaded: it is loaded anew, into a tab that is hidden and never draws.
  let asked = 0;
  vi.stubGlobal("requestAnimationFrame", () => ++asked);
  vi.resetModules();
  try {
    const hidden = await import("../../../lib/lines/index.ts");
    const book = { asks: "?", lines: { a: hidden.given("1"), b: hidden.worked("a + 1") } };
    const lines = hidden.openLines(book);
    expect(await lines.value("b")).toMatchObject({ value: 2 });
    lines.set("a", { given: "2" });
    await lines.settled();
    expect(lines.result("b")).toMatchObject({ state: "settled", value: { value: 3 } });
    expect(asked).toBe(0);
  } finally {
    vi.unstubAllGlobals();
    vi.resetModules();
  }
});

test("a chain of 300 lines is worked once for each line behind the edit", async () => {
  const chain: Record<string, Line> = { "line 0": given("1", undefined, { exact: true }) };
  for (let i = 1; i < 300; i++) chain[`line ${i}`] = i === 150 ? given("0") : worked(`line ${i - 1} + 1`);
  const lines = open(chain);
  await lines.settled();
  expect(lines.worked()).toBe(298);
  lines.set("line 0", { given: "5" });
  expect(await si(lines, "line 149")).toBe(154);
  expect(lines.worked()).toBe(298 + 149);
  lines.set("line 150", { given: "1000" });
  expect(await si(lines, "line 299")).toBe(1149);
  expect(lines.worked()).toBe(298 + 149 + 149);
});

test("lines may bear any word, and reach nothing outside the notebook", async () => {
  const lines = JSON.parse(
    '{"__proto__":{"kind":"given","text":"2"},"constructor":{"kind":"worked","formula":"__proto__ * 3"},"status":{"kind":"worked","formula":"constructor + window"}}',
  );
  const opened = openLines({ asks: "?", lines });
  expect(await si(opened, "constructor")).toBe(6);
  expect(await opened.value("status")).toEqual({ stopped: 'no line is called "window"', at: 14 });
  expect(Object.keys(opened.notebook().lines)).toEqual(["__proto__", "constructor", "status"]);
});

test("notebook gives the plain data with all edits, and opens to the same again", async () => {
  const lines = openLines(
    notebook({
      asks: "?",
      answer: ["It took {time}.", { says: "{time} of {hold}", otherwise: "no {hold}" }],
      lines: { time: given("1"), hold: worked("time") },
    }),
  );
  lines.rename("time", "time lit");
  lines.set("time lit", { given: "3" });
  const data = lines.notebook();
  expect(data.answer).toEqual(["It took {time lit}.", { says: "{time lit} of {hold}", otherwise: "no {hold}" }]);
  expect(await si(openLines(structuredClone(data)), "hold")).toBe(3);
});

test("close ends it", async () => {
  const lines = open({ a: given("1"), b: worked("a + 1") });
  lines.close();
  await lines.settled();
  expect(() => lines.set("a", { given: "2" })).toThrow("invalid edit: the notebook is closed; open it again");
});
