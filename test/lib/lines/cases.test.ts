import { expect, test } from "vitest";
import { given, type Notebook, notebook, openLines, worked } from "../../../lib/lines/index.ts";
import { difference, standardUncertainty } from "../../../lib/measure/index.ts";

const tanks: Notebook = {
  asks: "Which tank?",
  lines: {
    "tank length": given("24 in", "measured"),
    "tank width": given("6 in", "measured"),
    depth: given("5 in", "measured"),
    plate: worked("tank length * tank width", "in²"),
    "liquid volume": worked("plate * depth", "gal"),
    "twice the depth": worked("2 * depth", "in"),
  },
  cases: {
    "small tank": {},
    "longer tank": { "tank length": "42 in" },
    "wider tank": { "tank width": { text: "8 in", known: "guessed" } },
  },
};
const open = () => openLines(notebook(tanks));
const text = async (lines: ReturnType<typeof open>, line: string, inCase?: string) => {
  const answer = await lines.value(line, inCase);
  return "text" in answer ? answer.text : answer;
};
const si = async (lines: ReturnType<typeof open>, line: string, inCase?: string) => {
  const answer = await lines.value(line, inCase);
  return "value" in answer ? answer.value : Number.NaN;
};
const inch = 0.0254;

test("each formula holds in every case, with the case's own givens", async () => {
  const lines = open();
  expect(await si(lines, "plate", "small tank")).toBeCloseTo(24 * 6 * inch ** 2, 12);
  expect(await si(lines, "plate", "longer tank")).toBeCloseTo(42 * 6 * inch ** 2, 12);
  expect(await si(lines, "plate", "Wider Tank")).toBeCloseTo(24 * 8 * inch ** 2, 12);
  expect(await si(lines, "plate")).toBe(await si(lines, "plate", "small tank"));
  expect(lines.worked()).toBe(3 * 3);
});

test("an edit for one case works its dependents out there and nowhere else", async () => {
  const lines = open();
  await lines.settled();
  const before = lines.worked();
  lines.set("tank length", { given: "48 in" }, "longer tank");
  await lines.settled();
  expect(lines.worked() - before).toBe(2);
  expect(await si(lines, "plate", "longer tank")).toBeCloseTo(48 * 6 * inch ** 2, 12);
});

test("an edit for all reaches the cases that have nothing of their own", async () => {
  const lines = open();
  await lines.settled();
  const before = lines.worked();
  lines.set("tank length", { given: "20 in" });
  await lines.settled();
  expect(lines.worked() - before).toBe(2 * 2);
  expect(lines.text("tank length", "longer tank")).toBe("42 in");
  expect(lines.text("tank length", "wider tank")).toBe("20 in");
});

test("less is exactly 0 wide where nothing differs, and keeps what cases do not share", async () => {
  const lines = open();
  await lines.settled();
  const none = lines.less("twice the depth", "longer tank");
  expect(none?.value).toBe(0);
  expect(none && standardUncertainty(none)).toBe(0);
  const more = lines.less("plate", "longer tank");
  expect(more?.value).toBeCloseTo(18 * 6 * inch ** 2, 12);
  // The width is common to both: its part in the difference is 18 in of length, not 42.
  const width = Math.abs(more?.components.get("tank width") ?? 0);
  const base = lines.result("plate", "small tank");
  const one = base.state === "settled" ? (base.value as { components: Map<string, number> }).components : new Map();
  expect(width / Math.abs(one.get("tank width") ?? 1)).toBeCloseTo(18 / 24, 9);
  expect([...(more?.components.keys() ?? [])].sort()).toEqual(
    ["tank length", "tank length of longer tank", "tank width"].sort(),
  );
});

test("less leaves nothing of what only rounding makes", async () => {
  const lines = openLines(
    notebook({
      asks: "?",
      lines: { a: given("0.3 lb"), by: given("3"), there: worked("a / by * 7 / 7 * by - a + a") },
      cases: { three: {}, seven: { by: "7" } },
    }),
  );
  await lines.settled();
  const less = lines.less("there", "seven");
  expect(less?.value).toBe(0);
  expect(less?.components.size).toBe(0);
});

test("difference takes what slopes by differences leave of a part that cancels for nothing, and nothing larger", () => {
  const of = (value: number, part: number) => ({ value, dimension: {}, components: new Map([["a", part]]) });
  expect(difference(of(3.84, 0.08), of(3.84 + 1e-9, 0.08 + 1e-8))).toMatchObject({ value: 0, components: new Map() });
  expect(difference(of(3.84, 0.08), of(3.84, 0.0801)).components.get("a")).toBeCloseTo(-0.0001, 12);
  expect(difference(of(3.84, 0.08), of(3.83, 0.08))).toMatchObject({ value: expect.closeTo(0.01, 12) });
});

test("a copy of a case has the very same readings until one is changed", async () => {
  const lines = open();
  lines.addCase("two burners", { copyOf: "longer tank" });
  await lines.settled();
  lines.setBase("longer tank");
  expect(lines.less("plate", "two burners")).toMatchObject({ value: 0 });
  expect(lines.less("plate", "two burners")?.components.size).toBe(0);
  expect(lines.own("tank length", "two burners")).toEqual({ text: "42 in", sameAs: "longer tank" });
  // The first reading is written anew: the copy keeps the old one as its own.
  lines.set("tank length", { given: "43 in" }, "longer tank");
  await lines.settled();
  expect(lines.own("tank length", "two burners")).toEqual({ text: "42 in" });
  expect([...(lines.less("plate", "two burners")?.components.keys() ?? [])]).toContain("tank length of two burners");
});

test("cases are added, named, moved, hidden, removed and undone by name", async () => {
  const lines = open();
  await lines.settled();
  const names = () => lines.cases().map(({ name, base, hidden }) => name + (base ? "*" : "") + (hidden ? "-" : ""));
  lines.addCase("deeper", { own: { depth: "6 in" }, from: { kind: "setup", id: "s1", says: "the deep one" } });
  expect(lines.undoName()).toBe("Undo: adding case deeper");
  expect(await si(lines, "liquid volume", "deeper")).toBeCloseTo(24 * 6 * 6 * inch ** 3, 12);
  lines.renameCase("deeper", "deep tank");
  lines.moveCase("deep tank", "longer tank");
  lines.hideCase("wider tank", true);
  lines.setBase("longer tank");
  expect(names()).toEqual(["small tank", "deep tank", "longer tank*", "wider tank-"]);
  expect(lines.undoName()).toBe("Undo: the base was small tank");
  lines.removeCase("longer tank");
  expect(names()).toEqual(["small tank*", "deep tank", "wider tank-"]);
  expect(() => lines.result("plate", "longer tank")).toThrow(/unknown case: longer tank/u);
  lines.undo();
  expect(names()).toEqual(["small tank", "deep tank", "longer tank*", "wider tank-"]);
  expect(await si(lines, "plate", "longer tank")).toBeCloseTo(42 * 6 * inch ** 2, 12);
  while (lines.undo());
  expect(names()).toEqual(["small tank*", "longer tank", "wider tank"]);
  while (lines.redo());
  expect(names()).toEqual(["small tank*", "deep tank", "wider tank-"]);
  expect(await si(lines, "liquid volume", "deep tank")).toBeCloseTo(24 * 6 * 6 * inch ** 3, 12);
});

test("the notebook as data opens as the same notebook", async () => {
  const lines = open();
  lines.addCase("copy", { copyOf: "longer tank" });
  lines.set("depth", { given: "7 in" }, "copy");
  lines.hideCase("wider tank", true);
  lines.setBase("longer tank");
  const data = structuredClone(lines.notebook());
  const again = openLines(data);
  expect(again.cases()).toEqual(lines.cases());
  expect(JSON.stringify(again.notebook())).toBe(JSON.stringify(data));
  await lines.settled();
  await again.settled();
  for (const { name } of lines.cases())
    expect(await text(again, "liquid volume", name)).toBe(await text(lines, "liquid volume", name));
  expect(again.less("plate", "copy")?.components.size).toBe(0);
});

test.for<[string, (lines: ReturnType<typeof open>) => unknown, RegExp]>([
  ["a name that is taken", (lines) => lines.addCase("Small  Tank"), /ambiguous case name/u],
  ["an empty name", (lines) => lines.addCase("  "), /invalid case name/u],
  ["an unknown case", (lines) => lines.set("depth", { given: "1 in" }, "no such"), /unknown case: no such/u],
  ["an unknown case to read", (lines) => lines.result("depth", "__proto__"), /unknown case/u],
  ["hiding the base", (lines) => lines.hideCase("small tank", true), /is the base/u],
  [
    "an amount for a worked line in one case",
    (lines) => lines.set("plate", { given: "3 in²" }, "longer tank"),
    /worked/u,
  ],
  ["a line that does not exist", (lines) => lines.addCase("x", { own: { tank: "1 in" } }), /unknown line: tank/u],
])("cases refuse %s", ([, edit, says]) => {
  const lines = open();
  const before = JSON.stringify(lines.notebook());
  expect(() => edit(lines)).toThrow(says);
  expect(JSON.stringify(lines.notebook())).toBe(before);
  expect(lines.undoName()).toBeUndefined();
});

test("a formula that is written for one case holds in every case", async () => {
  const lines = open();
  lines.set("plate", { worked: "tank length * tank width / 2" }, "longer tank");
  expect(await si(lines, "plate", "small tank")).toBeCloseTo(12 * 6 * inch ** 2, 12);
});

test("a notebook without cases has one, and a second gives it a name", async () => {
  const lines = openLines(notebook({ asks: "?", lines: { a: given("1 lb"), b: worked("2 * a") } }));
  expect(lines.cases()).toEqual([{ name: "", base: true, hidden: false }]);
  expect("cases" in lines.notebook()).toBe(false);
  lines.addCase("heavier", { own: { a: "3 lb" } });
  expect(lines.cases().map(({ name }) => name)).toEqual(["as it is", "heavier"]);
  expect(await si(lines, "b", "heavier")).toBeCloseTo(6 * 0.45359237, 12);
  lines.undo();
  expect(lines.cases()).toEqual([{ name: "", base: true, hidden: false }]);
});

test("copyGivens gives a case what another has, and undoing takes it back", async () => {
  const lines = open();
  lines.copyGivens("longer tank", "wider tank");
  expect(await si(lines, "plate", "wider tank")).toBeCloseTo(42 * 6 * inch ** 2, 12);
  lines.undo();
  expect(await si(lines, "plate", "wider tank")).toBeCloseTo(24 * 8 * inch ** 2, 12);
});

test("together makes one step of edits of lines and cases", async () => {
  const lines = open();
  lines.together("a new tank", () => {
    lines.addCase("new tank");
    lines.set("depth", { given: "9 in" }, "new tank");
    lines.add("hangers", given("2"));
  });
  expect(lines.undoName()).toBe("Undo: a new tank");
  expect(await si(lines, "liquid volume", "new tank")).toBeCloseTo(24 * 6 * 9 * inch ** 3, 12);
  lines.undo();
  expect(lines.names()).not.toContain("hangers");
  expect(lines.cases()).toHaveLength(3);
  lines.redo();
  expect(await si(lines, "liquid volume", "new tank")).toBeCloseTo(24 * 6 * 9 * inch ** 3, 12);
});
