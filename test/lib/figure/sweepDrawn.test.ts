import fc from "fast-check";
import { expect, test } from "vitest";
import type { SweepCase, SweepDrawnData, SweepPoint } from "../../../lib/figure/caseTypes.ts";
import { sweepDrawn } from "../../../lib/figure/sweepDrawn.ts";
import { sweepDrawnFinding } from "../../../lib/figure/sweepDrawnFinding.ts";
import { exact } from "../../../lib/measure/measuredValue.ts";
import type { Value } from "../../../lib/measure/types.ts";
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

const inch = 0.0254;
const points = (
  work: (x: number) => Value | string | undefined,
  from = 20,
  to = 42,
  count = 12,
): readonly SweepPoint[] =>
  Array.from({ length: count }, (_, index) => {
    const x = from + ((to - from) * index) / Math.max(1, count - 1);
    const y = work(x);
    return { x: x * inch, ...(typeof y === "string" ? { says: y } : y ? { y } : {}) };
  });
const small: SweepCase = {
  name: "Small tank",
  points: points((x) => boilOff(x / 5, x / 200, "a")),
  present: { x: 24 * inch, y: boilOff(4.8, 0.12, "a") },
};
const invented: SweepDrawnData = {
  line: "Boil-off",
  unit: "fl oz/min",
  by: "tank length",
  byUnit: "in",
  cases: [
    small,
    {
      name: "Bigger fire",
      points: points((x) => (x > 36 ? "the bath boils over" : boilOff(x / 4 + 1, 0.3, "b"))),
      present: { x: 24 * inch, y: boilOff(7, 0.3, "b") },
    },
    {
      name: "Longer tank",
      points: points((x) => (x > 27 && x < 31 ? undefined : boilOff(8 - x / 12, 0.5, "c"))),
      present: { x: 40 * inch, y: boilOff(4.7, 0.5, "c") },
    },
  ],
};
const one = (points: readonly SweepPoint[], other: Partial<SweepDrawnData> = {}): SweepDrawnData => ({
  line: "x",
  unit: "",
  by: "blades",
  byUnit: "",
  cases: [{ name: "Small tank", points }],
  ...other,
});
const draw = (data: SweepDrawnData, width = 720, system: "US" | "metric" = "US") =>
  sweepDrawn(data, { document: page(), width, system });

test("sweepDrawn draws line and spread where their numbers lie on the two rules", () => {
  const root = draw({ ...invented, cases: [small] });
  const [x, y] = [ruleAt(root, "below"), ruleAt(root, "left")];
  const line = numbersOf(all(root, '[data-mark="line"]')[0]);
  expect(line[0]).toBeCloseTo(x(20), 0);
  expect(line[1]).toBeCloseTo(y(4), 0);
  expect(line.at(-2)).toBeCloseTo(x(42), 0);
  expect(line.at(-1)).toBeCloseTo(y(8.4), 0);
  const [, high, low] = all(root, '[data-mark="spread"] path').map(numbersOf);
  expect(high?.at(-1)).toBeCloseTo(y(8.4 + 1.96 * 0.21), 0);
  expect(low?.at(-1)).toBeCloseTo(y(8.4 - 1.96 * 0.21), 0);
});

test("sweepDrawn tells cases apart by dash and by mark, and names each", () => {
  const root = draw(invented);
  const dashes = ["none", "9 4", "2.5 3.5"];
  for (const dash of dashes)
    expect(all(root, `[data-mark="line"][stroke-dasharray="${dash}"]`).length, dash).toBeGreaterThan(0);
  for (const word of ["dot", "square", "triangle"])
    expect(all(root, `[data-end] [data-mark="${word}"]`).length, word).toBeGreaterThan(0);
  for (const name of ["Small tank", "Bigger fire", "Longer tank"]) expect(words(root)).toContain(name);
});

test("sweepDrawn ties a name to its line by a leader, unless the line stops short: then by its mark alone", () => {
  const root = draw(invented);
  expect(all(root, '[data-end="1"] [data-mark="leader"]')).toHaveLength(1);
  expect(all(root, '[data-end="2"] [data-mark="leader"]')).toHaveLength(0);
  expect(all(root, '[data-end="2"] [data-mark="square"]')).toHaveLength(2);
});

test("sweepDrawn drops a line where the given stands now, once for cases that share it", () => {
  const root = draw(invented);
  expect(all(root, "[data-now]")).toHaveLength(2);
  expect(words(root)).toContain("now 24 in");
  expect(words(root)).toContain("now 40 in");
  const x = ruleAt(root, "below");
  expect(numbersOf(all(root, "[data-now] > path")[0])[0]).toBeCloseTo(x(24), 0);
  expect(all(root, '[data-mark="now"]')).toHaveLength(3);
});

test("sweepDrawn leaves out a present amount that is off the rule", () => {
  const root = draw(
    one(small.points, { unit: "fl oz/min", byUnit: "in", cases: [{ ...small, present: { x: 50 * inch } }] }),
  );
  expect(all(root, "[data-now]")).toHaveLength(0);
});

test("sweepDrawn breaks the line where there is no number, and says so in words", () => {
  const root = draw(invented);
  expect(all(root, '[data-mark="line"]')).toHaveLength(4);
  expect(all(root, '[data-mark="gap"]')).toHaveLength(2);
  expect(words(root)).toContain("the bath boils over");
  expect(words(root)).toContain("no number");
  const gap = numbersOf(all(root, '[data-gaps="2"] [data-mark="gap"]')[0]);
  expect(gap[0]).toBeCloseTo(ruleAt(root, "below")(36), 0);
  expect(gap[2]).toBeCloseTo(ruleAt(root, "below")(42), 0);
});

test("sweepDrawn lists the names below the rule on a phone, with the numbers of now", () => {
  const root = draw(invented, 350);
  expect(all(root, "[data-listed]")).toHaveLength(3);
  expect(words(root)).toContain("4.8 ±0.3 fl oz/min now");
  expect(all(draw(invented), "[data-listed]")).toHaveLength(0);
});

test("sweepDrawn takes points in any order", () => {
  const turned = { ...invented, cases: invented.cases.map((each) => ({ ...each, points: each.points.toReversed() })) };
  expect(draw(turned).outerHTML).toBe(draw(invented).outerHTML);
  expect(sweepDrawnFinding(turned, { system: "US" })).toBe(sweepDrawnFinding(invented, { system: "US" }));
});

test("sweepDrawn draws a number that stands alone as its mark with its bar", () => {
  const root = draw(one([{ x: 1 }, { x: 2, y: plain(3, 0.4) }, { x: 3 }]));
  expect(all(root, '[data-mark="alone"]')).toHaveLength(1);
  expect(all(root, '[data-mark="line"]')).toHaveLength(0);
  expect(all(root, '[data-mark="gap"]')).toHaveLength(2);
});

test("sweepDrawn lets a spread that runs away run off the plot, and never the line", () => {
  const root = draw(one(points((x) => plain(x, x > 41 ? 1e6 : 0.5))));
  const heights = (selector: string) =>
    all(root, selector).flatMap((each) => numbersOf(each).filter((_, i) => i % 2 === 1));
  const line = heights('[data-mark="line"]');
  expect(Math.max(...line) - Math.min(...line)).toBeGreaterThan(80);
  const height = Number(root.getAttribute("height"));
  for (const y of heights('[data-mark="spread"] path')) expect(y > 0 && y < height).toBe(true);
});

test("sweepDrawn counts water in a liquid measure, where it is told that x is a mass", () => {
  const data = one(
    [1, 2].map((x) => ({ x, y: exact(x) })),
    { byUnit: "gal", byDimension: { mass: 1 } },
  );
  // A gallon is 3.785411784 l (NIST SP 811, appendix B), and water 0.9982 kg/l at 20 °C (CRC): 1 kg is 0.2646 gal.
  expect(sweepDrawnFinding(data, { system: "US" })).toMatch(/x over blades, 0\.2646 gal to 0\.5293 gal/);
});

const twelve: SweepDrawnData = {
  ...invented,
  unit: "",
  cases: Array.from({ length: 12 }, (_, index) => ({
    name: index % 2 ? longName : `Case ${index}`,
    points: points((x) => (index === 3 && x > 35 ? "why not" : plain(index * 3 + x * (index - 5), 2))),
    present: { x: (20 + index) * inch, y: plain(index, 1) },
  })),
};

test.each([
  ["what was invented", invented],
  ["twelve cases", twelve],
  ["no case", { ...invented, cases: [] }],
  ["no point", one([])],
  ["no number", one(points(() => "waits for the gas"))],
  ["one point", one([{ x: 1, y: plain(3, 1) }])],
  ["one point without a number", one([{ x: 1 }])],
  ["the same point twice", one([1, 1].map((x) => ({ x, y: plain(3, 1) })))],
  ["a flat line without width", one(points(() => exact(3)))],
  ["zeros", one(points(() => exact(0)))],
  ["negative numbers", one(points((x) => plain(-x, 1)))],
  ["endless spreads", one(points((x) => endless(x)))],
  ["a hole at every other point", one(points((x) => (Math.round(x / 2) % 2 ? undefined : plain(x, 1))))],
  ["very large numbers", one(points((x) => plain(x * 1e9, 1e8)))],
  ["very small numbers", one(points((x) => plain(x * 1e-9, 1e-10)))],
  ["a name that cannot break", one([], { cases: [{ name: "W".repeat(40), points: points((x) => plain(x, 1)) }] })],
] as [string, SweepDrawnData][])("sweepDrawn keeps texts apart and inside: %s", (_, data) => {
  for (const width of [200, 350, 720, 1088]) {
    for (const system of ["US", "metric"] as const) {
      const root = draw(data, width, system);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
      expect(sweepDrawnFinding(data, { system })).not.toMatch(/NaN|undefined|Infinity/);
    }
  }
});

test("sweepDrawnFinding says range, ends, way, now and what has no number", () => {
  const said = sweepDrawnFinding(invented, { system: "US" });
  expect(said).toMatch(/^Boil-off over tank length, 20 in to 42 in, in three cases\./);
  expect(said).toMatch(
    /Small tank \(dot\): 4\.0 ±0\.2 fl oz\/min at 20 in, rises to 8\.4 ±0\.4 fl oz\/min at 42 in; now 4\.8 ±0\.3 fl oz\/min at 24 in\./,
  );
  expect(said).toMatch(/Bigger fire \(square\): .* No number in one stretch: the bath boils over\./);
});

test("sweepDrawnFinding can't tell a way that the spread of the difference hides", () => {
  const say = (last: Value) =>
    sweepDrawnFinding(
      one([
        { x: 1, y: plain(10, 2, "a") },
        { x: 2, y: plain(12, 2, "b") },
        { x: 3, y: last },
      ]),
      { system: "US" },
    );
  expect(say(plain(11, 2, "c"))).toMatch(/can't tell it from 11 ±4 at 3, highest 12 ±4 at 2\./);
  expect(say(plain(9, 2, "a"))).toMatch(/falls to 9 ±4 at 3/);
  expect(say(plain(10, 2, "a"))).toMatch(/is the same: 10 ±4 at 3/);
});

test.each([
  [{ x: Number.NaN, y: exact(1) }, "invalid blades: NaN; a finite number in SI units"],
  [{ x: 1, y: { value: Number.POSITIVE_INFINITY, dimension: {}, components: new Map() } }, "invalid value: Infinity"],
  [
    { x: 1, y: { value: 1, dimension: {}, components: new Map(), interval95: [2, 1] as const } },
    "invalid interval: 2 to 1; two numbers, the lower first",
  ],
])("sweepDrawn refuses %o", (point, message) => {
  expect(() => draw(one([point]))).toThrow(message);
  expect(() => draw(one([point]))).toThrow(RangeError);
});

test("sweepDrawn keeps texts apart whatever the points", () => {
  const point = fc.record({
    x: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    y: fc.option(anyValue, { nil: undefined }),
    says: fc.option(fc.string(), { nil: undefined }),
  });
  const swept = fc.record({
    name: anyName,
    points: fc.array(point, { maxLength: 8 }),
    present: fc.option(point, { nil: undefined }),
  });
  const known = <T>(record: T): T =>
    Object.fromEntries(Object.entries(record as object).filter(([, value]) => value !== undefined)) as T;
  fc.assert(
    fc.property(fc.array(swept, { maxLength: 12 }), fc.constantFrom(350, 720), (found, width) => {
      const cases = found.map(({ name, points, present }) => ({
        name,
        points: points.map(known),
        ...(present ? { present: known(present) } : {}),
      })) as SweepCase[];
      const root = withoutWords(draw({ ...one([]), cases }, width));
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test("limits that are wanted lie as a strip behind the lines, and stretch the rule to hold them", () => {
  const strip = { low: boilOff(1, 0, "wanted"), high: boilOff(12, 0, "wanted") };
  const root = draw({ ...invented, cases: [small], strip });
  const y = ruleAt(root, "left");
  const bright = all(root, '[data-mark="strip"]')[0];
  const top = Number(bright?.getAttribute("y"));
  expect(top).toBeCloseTo(y(12), 0);
  expect(top + Number(bright?.getAttribute("height"))).toBeCloseTo(y(1), 0);
  expect(root.getAttribute("aria-label")).toContain("Wanted: ");
  expect(all(draw(invented), '[data-mark="strip"]')).toHaveLength(0);
});
