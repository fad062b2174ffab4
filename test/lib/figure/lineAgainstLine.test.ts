import fc from "fast-check";
import { expect, test } from "vitest";
import type { CasePair, LineAgainstLineData } from "../../../lib/figure/caseTypes.ts";
import { lineAgainstLine } from "../../../lib/figure/lineAgainstLine.ts";
import { lineAgainstLineFinding } from "../../../lib/figure/lineAgainstLineFinding.ts";
import { exact } from "../../../lib/measure/measuredValue.ts";
import {
  all,
  anyName,
  anyValue,
  boilOff,
  endless,
  longName,
  numbersOf,
  plain,
  ruleAt,
  withoutWords,
} from "./caseSupport.ts";
import { badAttributes, clipped, overlaps, page, words } from "./figureSupport.ts";

const invented: LineAgainstLineData = {
  line: "Gas for the run",
  unit: "",
  against: "Boil-off",
  againstUnit: "fl oz/min",
  cases: [
    { name: "Small tank", x: boilOff(4.6, 0.15, "a"), y: plain(9.4, 0.35) },
    { name: "Bigger fire", x: boilOff(6.5, 0.3, "b"), y: plain(13.1, 0.65) },
    { name: "Longer tank", x: boilOff(9.1, 0.6, "c"), y: plain(18.3, 1.2) },
  ],
};
const bare = (cases: readonly CasePair[]): LineAgainstLineData => ({
  line: "y",
  unit: "",
  against: "x",
  againstUnit: "",
  cases,
});
const draw = (data: LineAgainstLineData, width = 720, system: "US" | "metric" = "US") =>
  lineAgainstLine(data, { document: page(), width, system });

test("lineAgainstLine crosses both 95 % bars of a case where its numbers lie on the two rules", () => {
  const root = draw(invented);
  const [x, y] = [ruleAt(root, "below"), ruleAt(root, "left")];
  const [along, up] = all(root, '[data-case="2"] path').map(numbersOf);
  expect(along?.[0]).toBeCloseTo(x(6.5 - 1.96 * 0.3), 0);
  expect(along?.[2]).toBeCloseTo(x(6.5 + 1.96 * 0.3), 0);
  expect(along?.[1]).toBeCloseTo(y(13.1), 0);
  expect(up?.[0]).toBeCloseTo(x(6.5), 0);
  expect(up?.[1]).toBeCloseTo(y(13.1 - 1.96 * 0.65), 0);
  expect(up?.[3]).toBeCloseTo(y(13.1 + 1.96 * 0.65), 0);
});

test.each([350, 720, 1088])("lineAgainstLine names every case beside its mark at %i px", (width) => {
  const root = draw(invented, width);
  for (const word of ["dot", "square", "triangle"]) expect(all(root, `[data-mark="${word}"]`), word).toHaveLength(1);
  for (const name of ["Small tank", "Bigger fire", "Longer tank"]) expect(words(root)).toContain(name);
  expect(words(root)).toContain("Boil-off, fl oz/min");
  expect(all(root, "[data-listed]")).toHaveLength(0);
});

test("lineAgainstLine names below what found no room, so that every case is named once", () => {
  const cases = Array.from({ length: 12 }, (_, index) => ({
    name: `Tank number ${index}, fired hard`,
    x: plain(index % 4, 0.6),
    y: plain(index % 3, 0.6),
  }));
  const root = draw(bare(cases), 350);
  const said = words(root).join(" ");
  for (const { name } of cases) expect(said.split(name.split(",")[0] ?? "").length, name).toBeGreaterThan(1);
  expect(all(root, "[data-listed]").length + all(root, "[data-label]").length).toBe(12);
});

test("lineAgainstLine says which case has not both numbers, and why", () => {
  const root = draw({
    ...invented,
    cases: [...invented.cases, { name: "New", x: boilOff(1, 0.1, "d"), says: "waits for blades" }],
  });
  expect(words(root)).toContain("waits for blades");
  expect(all(root, '[data-mark="triangle on its point"]')).toHaveLength(1);
  expect(lineAgainstLineFinding(bare([{ name: "New", x: exact(1), says: "waits" }]), { system: "US" })).toMatch(
    /New \(dot\): y waits, x 1 exactly\./,
  );
});

test("lineAgainstLine ends a bar without an end in an arrow", () => {
  const root = draw(bare([{ name: "a", x: endless(1), y: exact(2) }]));
  expect(all(root, '[data-mark="interval"]')).toHaveLength(1);
  expect(all(root, '[data-mark="interval"]')[0]?.getAttribute("d")?.match(/L/g)).toHaveLength(5);
});

const ring = (count: number): readonly CasePair[] =>
  Array.from({ length: count }, (_, index) => ({
    name: index % 2 ? longName : `Case ${index}`,
    x: plain((index * 7) % 12, 0.4 + (index % 3)),
    y: plain((index * 5) % 9, 0.3 * (index % 4)),
  }));

test.each([
  ["what was invented", invented],
  ["no case", bare([])],
  ["no number", bare([{ name: "a" }])],
  ["one", bare(ring(1))],
  ["twelve", bare(ring(12))],
  ["equal ones", bare(["a", "b", "c"].map((name) => ({ name, x: exact(3), y: exact(2) })))],
  ["zeros", bare([{ name: "a", x: exact(0), y: exact(0) }])],
  ["negative ones", bare([{ name: "a", x: plain(-5, 1), y: plain(-50, 1) }])],
  ["endless ones", bare([{ name: "a", x: endless(1), y: endless(1) }])],
  [
    "very different sizes",
    bare([1e-4, 1, 1e9].map((value) => ({ name: `of ${value}`, x: plain(value, value / 9), y: plain(-value, value) }))),
  ],
  ["a name that cannot break", bare([{ name: "W".repeat(40), x: exact(1), y: plain(2, 1) }])],
] as [string, LineAgainstLineData][])("lineAgainstLine keeps texts apart and inside: %s", (_, data) => {
  for (const width of [200, 350, 720, 1088]) {
    for (const system of ["US", "metric"] as const) {
      const root = draw(data, width, system);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
      expect(lineAgainstLineFinding(data, { system })).not.toMatch(/NaN|undefined|Infinity/);
    }
  }
});

test("lineAgainstLineFinding says both numbers of each case", () => {
  expect(lineAgainstLineFinding(invented, { system: "US" })).toMatch(
    /^Gas for the run against Boil-off in three cases\. Small tank \(dot\): Gas for the run 9\.4 ±0\.7, Boil-off 4\.6 ±0\.3 fl oz\/min\./,
  );
  expect(lineAgainstLineFinding(bare([]), { system: "US" })).toMatch(/no case yet/);
});

test("lineAgainstLine refuses what is not a number", () => {
  const bad = { value: Number.NaN, dimension: {}, components: new Map() };
  expect(() => draw(bare([{ name: "a", x: bad, y: exact(1) }]))).toThrow("invalid value: NaN");
  const turned = { value: 1, dimension: {}, components: new Map(), interval95: [2, 1] as const };
  expect(() => draw(bare([{ name: "a", x: exact(1), y: turned }]))).toThrow("invalid interval: 2 to 1");
  expect(() => draw(invented, 20)).toThrow("invalid figure width: 20");
});

test("lineAgainstLine keeps texts apart whatever the cases", () => {
  const one = fc.record({ name: anyName, x: anyValue, y: anyValue });
  fc.assert(
    fc.property(fc.array(one, { maxLength: 12 }), fc.constantFrom(350, 720), (cases, width) => {
      const root = withoutWords(draw(bare(cases), width));
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
