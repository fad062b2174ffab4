import fc from "fast-check";
import { expect, test } from "vitest";
import type { LineAcrossCasesData } from "../../../lib/figure/caseTypes.ts";
import { lineAcrossCases } from "../../../lib/figure/lineAcrossCases.ts";
import { lineAcrossCasesFinding } from "../../../lib/figure/lineAcrossCasesFinding.ts";
import { standAlone } from "../../../lib/figure/standAlone.ts";
import { exact, measuredValue } from "../../../lib/measure/measuredValue.ts";
import { anyName, anyValue, boilOff, endless, longName, plain, withoutWords } from "./caseSupport.ts";
import { badAttributes, clipped, overlaps, page, words } from "./figureSupport.ts";

const invented: LineAcrossCasesData = {
  line: "Boil-off",
  unit: "fl oz/min",
  cases: [
    { name: "Small tank", value: boilOff(4.6, 0.15, "a") },
    { name: "Bigger fire", value: boilOff(6.5, 0.3, "b") },
    { name: "Longer tank", value: boilOff(9.1, 0.6, "c") },
  ],
  base: "Small tank",
};
const draw = (data: LineAcrossCasesData, width = 720, system: "US" | "metric" = "US") =>
  lineAcrossCases(data, { document: page(), width, system });
const shape = (root: Element, mark: string, index = 0) =>
  root.querySelectorAll(`[data-mark="${mark}"]`)[index]?.getAttribute("d") ?? "";
const numbersOf = (path: string): readonly number[] => (path.match(/-?[\d.]+/g) ?? []).map(Number);

test("lineAcrossCases draws each case's bar and mark where its numbers lie on the rule", () => {
  const root = draw(invented);
  // The rule itself says where 5 and 10 are.
  const figures = [...root.querySelectorAll('[data-rule="below"] text')].map(
    (text) => [Number(text.textContent), Number(text.getAttribute("x"))] as const,
  );
  const [first, last] = [figures[0], figures[figures.length - 1]];
  if (!first || !last) throw new Error("no figures on the rule");
  const at = (value: number) => first[1] + ((value - first[0]) / (last[0] - first[0])) * (last[1] - first[1]);
  const bars = [...root.querySelectorAll('[data-mark="interval"]')].map((bar) =>
    numbersOf(bar.getAttribute("d") ?? ""),
  );
  const limits = [
    [4.6, 0.15],
    [6.5, 0.3],
    [9.1, 0.6],
  ] as const;
  expect(bars).toHaveLength(3);
  limits.forEach(([value, uncertainty], index) => {
    expect(bars[index]?.[0]).toBeCloseTo(at(value - 1.96 * uncertainty), 0);
    expect(bars[index]?.[2]).toBeCloseTo(at(value + 1.96 * uncertainty), 0);
  });
  expect(numbersOf(shape(root, "base"))[0]).toBeCloseTo(at(4.6), 0);
});

test.each([350, 720, 1088])("lineAcrossCases writes names, numbers with ± and the unit at %i px", (width) => {
  const root = draw(invented, width);
  const all = words(root).join(" ");
  for (const text of ["Small tank, base", "Bigger fire", "4.6", "±0.3 fl oz/min", "6.5", "9.1", "Boil-off, fl oz/min"])
    expect(all).toContain(text);
});

test("lineAcrossCases tells cases apart by shape, each twice: beside its name and on its bar", () => {
  const root = draw(invented);
  for (const word of ["dot", "square", "triangle"])
    expect(root.querySelectorAll(`[data-mark="${word}"]`), word).toHaveLength(2);
});

test("lineAcrossCases drops no line without a base, and none for a base without a number", () => {
  const { base: _, ...without } = invented;
  expect(draw(without).querySelector('[data-mark="base"]')).toBeNull();
  const silent = { ...invented, cases: [{ name: "Small tank" }, ...invented.cases.slice(1)] };
  expect(draw(silent).querySelector('[data-mark="base"]')).toBeNull();
});

test("lineAcrossCases says why a case has no number", () => {
  const root = draw({
    ...invented,
    cases: [...invented.cases, { name: "New", says: "waits for blades" }, { name: "B" }],
  });
  expect(words(root)).toContain("waits for blades");
  expect(words(root)).toContain("no number");
  expect(root.querySelectorAll('[data-mark="interval"]')).toHaveLength(3);
});

test("lineAcrossCases ends a bar without an end in an arrow, not in a tick", () => {
  const root = draw({
    line: "x",
    unit: "",
    cases: [
      { name: "a", value: endless(3) },
      { name: "b", value: exact(5) },
    ],
  });
  expect(shape(root, "interval").match(/L/g)).toHaveLength(5);
});

test("lineAcrossCases draws no rule where there is no number to measure", () => {
  for (const cases of [[], [{ name: "a" }]]) {
    const root = draw({ line: "x", unit: "lb", cases });
    expect(root.querySelector("[data-rule]")).toBeNull();
    expect(words(root).join(" ")).toMatch(/no (case yet|number)/);
  }
});

const many = (count: number): LineAcrossCasesData => ({
  line: "A line with a rather long name of its own, for trying out",
  unit: "",
  cases: Array.from({ length: count }, (_, index) => ({
    name: index % 2 ? `${longName}` : `Case ${index}`,
    value: plain((index - 3) * 1.7, index % 3 ? 0.3 * index : 0, `s${index}`),
  })),
  base: "Case 4",
});

test.each([
  ["none", { ...invented, cases: [] }],
  ["one", many(1)],
  ["twelve", many(12)],
  ["thirty", many(30)],
  ["equal ones", { ...invented, unit: "", cases: ["a", "b"].map((name) => ({ name, value: exact(3) })) }],
  ["zeros", { ...invented, unit: "", cases: ["a", "b"].map((name) => ({ name, value: exact(0) })) }],
  ["negative ones", { ...invented, unit: "", cases: [{ name: "a", value: plain(-5, 1) }] }],
  ["endless ones", { ...invented, unit: "", cases: [{ name: "a", value: endless(1) }] }],
  [
    "ones of very different size",
    {
      ...invented,
      unit: "",
      cases: [1e-4, 1, 1e9].map((value) => ({ name: `of ${value}`, value: plain(value, value / 9) })),
    },
  ],
  ["names that cannot break", { ...invented, unit: "", cases: [{ name: "W".repeat(40), value: plain(2, 1) }] }],
] as [string, LineAcrossCasesData][])("lineAcrossCases keeps texts apart and inside: %s", (_, data) => {
  for (const width of [200, 350, 720, 1088]) {
    for (const system of ["US", "metric"] as const) {
      const root = draw(data, width, system);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }
  }
});

test.each(["light", "dark", "print"] as const)("lineAcrossCases stands alone in the %s palette", (palette) => {
  const picture = standAlone(draw(invented, 1200), { title: "The longer tank boils off most", palette });
  expect(picture).toContain("4.6");
  expect(picture).not.toMatch(/var\(|NaN/);
});

test("lineAcrossCases takes a time in m:ss on a rule of minutes, and temperatures on their scale", () => {
  const clock = draw({
    line: "Late pour",
    unit: "m:ss",
    cases: [{ name: "a", value: measuredValue(750, 8, { time: 1 }, "c") }],
  });
  expect(words(clock).join(" ")).toMatch(/12:30 ±16 s/);
  expect(words(clock)).toContain("Late pour, min");
  const kelvin = measuredValue(416.4833, 0.5, { temperature: 1, point: true }, "t");
  expect(words(draw({ line: "Boils at", unit: "°F", cases: [{ name: "a", value: kelvin }] })).join(" ")).toMatch(
    /290\.0 ±1\.8 °F/,
  );
});

test("lineAcrossCasesFinding says each number and how it stands to the base", () => {
  const said = lineAcrossCasesFinding(invented, { system: "US" });
  expect(said).toMatch(/^Boil-off across three cases\. Small tank \(dot, base\): 4\.6 ±0\.3 fl oz\/min\./);
  // 6.5 − 4.6, and the root of 0.3² + 0.15² times 1.96: 1.9 ±0.66, rounded up to 0.7.
  expect(said).toMatch(/Bigger fire \(square\): 6\.5 ±0\.6 fl oz\/min, 1\.9 ±0\.7 fl oz\/min more than the base\./);
});

test("lineAcrossCasesFinding cancels what two cases share, and can't tell where the spread reaches zero", () => {
  const data = (value: LineAcrossCasesData["cases"][number]["value"]): LineAcrossCasesData => ({
    line: "x",
    unit: "",
    base: "a",
    cases: [
      { name: "a", value: plain(10, 3, "shared") },
      { name: "b", ...(value ? { value } : {}) },
    ],
  });
  const say = (value: LineAcrossCasesData["cases"][number]["value"]) =>
    lineAcrossCasesFinding(data(value), { system: "US" });
  expect(say(plain(8, 3, "shared"))).toMatch(/8 ±6, 2 exactly less than the base/);
  expect(say(plain(10, 3, "shared"))).toMatch(/the same as the base/);
  expect(say(plain(11, 3, "other"))).toMatch(/can't tell it from the base/);
  expect(say(undefined)).toMatch(/b \(square\): no number\./);
  expect(lineAcrossCasesFinding({ line: "x", unit: "", cases: [] }, { system: "US" })).toMatch(/no case yet/);
});

test.each([
  [{ value: Number.NaN, dimension: {}, components: new Map() }, "", RangeError, "invalid value: NaN"],
  [
    { value: 1, dimension: {}, components: new Map(), interval95: [2, 1] as const },
    "",
    RangeError,
    "invalid interval: 2 to 1; two numbers, the lower first",
  ],
  [exact(1, { mass: 1 }), "in", TypeError, "invalid unit: in"],
])("lineAcrossCases refuses %o in %j", (value, unit, kind, message) => {
  const data = { line: "x", unit, cases: [{ name: "a", value }] };
  expect(() => draw(data)).toThrow(kind);
  expect(() => draw(data)).toThrow(message);
});

test("lineAcrossCases keeps texts apart whatever the cases", () => {
  const one = fc.record({ name: anyName, value: fc.option(anyValue, { nil: undefined }), says: fc.string() });
  fc.assert(
    fc.property(fc.array(one, { maxLength: 14 }), fc.constantFrom(350, 720), (found, width) => {
      const cases = found.map(({ name, value, says }) => ({ name, says, ...(value ? { value } : {}) }));
      const root = withoutWords(draw({ line: "x", unit: "", cases, base: found[0]?.name ?? "" }, width));
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
    { numRuns: 80 },
  );
});
