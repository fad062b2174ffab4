import fc from "fast-check";
import { expect, test } from "vitest";
import type { RowValue } from "../../../lib/figure/caseTypes.ts";
import { intervalsRow } from "../../../lib/figure/intervalsRow.ts";
import { exact } from "../../../lib/measure/measuredValue.ts";
import { anyValue, endless, plain } from "./caseSupport.ts";
import { badAttributes, page } from "./figureSupport.ts";

const three: readonly RowValue[] = [
  { mark: 0, value: plain(4.6, 0.15), base: true },
  { mark: 1, value: plain(6.5, 0.3) },
  { mark: 2, value: plain(9.1, 0.6) },
];
const draw = (values: readonly RowValue[], width = 160, height = 36) =>
  intervalsRow(values, { document: page(), width, height });
const path = (root: Element, kind: string) => root.querySelector(`[data-mark="${kind}"]`)?.getAttribute("d") ?? "";
const bars = (root: Element) =>
  [...path(root, "interval").matchAll(/M(-?[\d.]+),(-?[\d.]+)L(-?[\d.]+),\2(?!\d)/g)].map(([, from, , to]) => [
    Number(from),
    Number(to),
  ]);

test("intervalsRow puts the intervals on one scale and drops the base through them", () => {
  const root = draw(three);
  const [first, , last] = bars(root) as [number[], number[], number[]];
  const scale = ((last[1] ?? 0) - (first[0] ?? 0)) / (9.1 + 1.96 * 0.6 - (4.6 - 1.96 * 0.15));
  expect((first[1] ?? 0) - (first[0] ?? 0)).toBeCloseTo(2 * 1.96 * 0.15 * scale, 1);
  expect((last[1] ?? 0) - (last[0] ?? 0)).toBeCloseTo(2 * 1.96 * 0.6 * scale, 1);
  const [x, top, , bottom] = (path(root, "base").match(/-?[\d.]+/g) ?? []).map(Number);
  expect(x).toBeCloseTo(((first[0] ?? 0) + (first[1] ?? 0)) / 2, 1);
  expect([top, bottom]).toEqual([0, 36]);
});

test("intervalsRow is hidden from screen readers and holds no text: the numbers stand beside it", () => {
  const root = draw(three);
  expect(root.getAttribute("aria-hidden")).toBe("true");
  expect(root.hasAttribute("role")).toBe(false);
  expect(root.textContent).toBe("");
});

test("intervalsRow takes no more elements for twelve cases than for three", () => {
  const twelve = Array.from({ length: 12 }, (_, mark) => ({ mark, value: plain(mark, 1), base: mark === 0 }));
  expect(draw(twelve).childNodes.length).toBe(draw(three).childNodes.length);
  expect(draw(three).childNodes.length).toBeLessThanOrEqual(4);
});

test("intervalsRow gives each case the lane of its place, also where one has no number", () => {
  const root = draw([{ mark: 0, value: exact(1) }, { mark: 1 }, { mark: 2, value: exact(1) }], 160, 30);
  // A dot begins at its left edge, on its lane's middle.
  expect(path(root, "solid")).toMatch(/^M[\d.]+,5a/);
  expect(root.querySelectorAll('[data-mark="open"]')).toHaveLength(1);
  expect(root.querySelectorAll('[data-mark="interval"]')).toHaveLength(0);
});

test.each([
  ["nothing", []],
  ["no number at all", [{ mark: 0 }]],
  ["one", three.slice(0, 1)],
  ["equal ones of no width", [0, 1, 2].map((mark) => ({ mark, value: exact(7), base: mark === 0 }))],
  ["zero", [{ mark: 3, value: exact(0) }]],
  ["negative ones", [-5, -3].map((value, mark) => ({ mark, value: plain(value, 1) }))],
  ["an endless one", [{ mark: 0, value: endless(2) }]],
] as [string, RowValue[]][])("intervalsRow draws %s inside its box", (_, values) => {
  for (const width of [60, 160, 350]) {
    const root = draw(values, width);
    expect(badAttributes(root)).toEqual([]);
    for (const [from, to] of bars(root)) {
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(width);
    }
  }
});

test.each([
  [[{ mark: 0, value: { value: Number.NaN, dimension: {}, components: new Map() } }], 160, 20, "invalid value: NaN"],
  [
    [{ mark: 0, value: { value: 1, dimension: {}, components: new Map(), interval95: [2, 1] as const } }],
    160,
    20,
    "invalid interval: 2 to 1; two numbers, the lower first",
  ],
  [[{ mark: -1, value: exact(1) }], 160, 20, "invalid case: -1"],
  [[], 20, 20, "invalid figure width: 20; 60 to 10,000 px"],
  [[], Number.NaN, 20, "invalid figure width: NaN"],
  [[], 160, 5, "invalid figure height: 5; 12 to 1,000 px"],
] as [RowValue[], number, number, string][])(
  "intervalsRow refuses %o at %f by %f px",
  (values, width, height, message) => {
    expect(() => draw(values, width, height)).toThrow(message);
  },
);

test("intervalsRow keeps its marks inside whatever the values", () => {
  fc.assert(
    fc.property(fc.array(fc.record({ mark: fc.nat(30), value: anyValue }), { maxLength: 12 }), (values) => {
      const root = intervalsRow(values, { document: page() });
      expect(badAttributes(root)).toEqual([]);
      const starts = [...`${path(root, "solid")}${path(root, "open")}`.matchAll(/M(-?[\d.]+),/g)].map(([, x]) =>
        Number(x),
      );
      for (const x of starts) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(160);
      }
    }),
    { numRuns: 200 },
  );
});
