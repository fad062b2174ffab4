import fc from "fast-check";
import { expect, test } from "vitest";
import type { WaterGoneData } from "../../../lib/figure/types.ts";
import { waterGone, waterLine } from "../../../lib/figure/waterGone.ts";
import { waterGoneFinding } from "../../../lib/figure/waterGoneFinding.ts";
import { badAttributes, clipped, fluidOunce, overlaps, page, words } from "./figureSupport.ts";

const rate = (fluidOuncesAMinute: number): number => (fluidOuncesAMinute * fluidOunce) / 60;
const invented: WaterGoneData = {
  points: Array.from({ length: 20 }, (_, index) => ({
    time: 200 + 150 * index,
    gone: rate(4.6) * (20 + 150 * index) + (index % 3) * 0.05 - (index === 9 ? 1.4 : 0),
    standardUncertainty: 0.1,
    weight: index === 9 ? 0.1 : 1,
    ...(index === 9 ? { because: "14 °F under the line" } : {}),
  })),
  slope: { value: rate(4.6), low: rate(4.3), high: rate(4.9) },
  firstBoil: 180,
  end: 3180,
  partsIn: 660,
};
const draw = (data: WaterGoneData, width = 720, system: "US" | "metric" = "US") =>
  waterGone(data, { document: page(), width, system });

test("waterGone writes the slope with its spread and unit beside the triangle", () => {
  const root = draw(invented);
  expect(words(root)).toContain("4.6 ±0.3 fl oz/min");
  expect(root.querySelectorAll('[data-part="slope"] > path')).toHaveLength(1);
});

test("waterGone draws a triangle that is as steep as the line", () => {
  const root = draw(invented);
  const corners =
    (root.querySelector('[data-part="slope"] > path')?.getAttribute("d") ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
  const [x1 = 0, y1 = 0, x2 = 0, , , y3 = 0] = corners;
  const line =
    (root.querySelector('[data-mark="line"] path')?.getAttribute("d") ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
  const [lx1 = 0, ly1 = 0, lx2 = 0, ly2 = 0] = line;
  expect((y1 - y3) / (x2 - x1)).toBeCloseTo((ly1 - ly2) / (lx2 - lx1), 2);
});

test("waterGone bars what is trusted and rings what is not, with the reason", () => {
  const root = draw(invented);
  expect(root.querySelectorAll('[data-mark="point"]')).toHaveLength(19);
  expect(root.querySelectorAll('[data-mark="apart"]')).toHaveLength(1);
  expect(words(root)).toContain("14:50: 14 °F under the line");
});

test("waterGone shows unequal sides as two", () => {
  const root = draw({ ...invented, slope: { value: rate(4.6), low: rate(4.4), high: rate(5.6) } });
  expect(words(root)).toContain("4.6 +1.0/−0.2 fl oz/min");
});

test("waterGone squeezes the rule for a reading far off and marks the break", () => {
  const far = { time: 900, gone: 60, standardUncertainty: 0.3, weight: 0, because: "mis-read" };
  const root = draw({ ...invented, points: [...invented.points, far] });
  expect(root.querySelectorAll('[data-mark="break"]')).toHaveLength(1);
  expect(words(root)).toContain("4:00: mis-read");
  expect(overlaps(root)).toEqual([]);
});

test.each([390, 600, 768, 1280])("waterGone keeps texts apart and inside at %i px", (width) => {
  for (const system of ["US", "metric"] as const) {
    const root = draw(invented, width, system);
    expect(overlaps(root)).toEqual([]);
    expect(clipped(root)).toEqual([]);
  }
});

test.each([
  ["no points", { ...invented, points: [] }],
  ["one point", { ...invented, points: invented.points.slice(0, 1) }],
  ["no length of time", { ...invented, end: invented.firstBoil }],
  ["no slope", { ...invented, slope: { value: 0, low: -0.001, high: 0.001 } }],
  ["water gained", { ...invented, slope: { value: -0.002, low: -0.003, high: -0.001 } }],
] as [string, WaterGoneData][])("waterGone draws %s and still says the slope", (_, data) => {
  for (const width of [390, 720]) {
    const root = draw(data, width);
    expect(badAttributes(root)).toEqual([]);
    expect(overlaps(root)).toEqual([]);
    expect(clipped(root)).toEqual([]);
    expect(words(root).some((text) => /fl oz\/min$/.test(text))).toBe(true);
  }
});

test("waterLine takes the caller's knots, else opens from the first boil with the slope's spread", () => {
  expect(waterLine({ ...invented, slope: { value: 0.002, low: 0.0018, high: 0.0024 } })).toEqual([
    { time: 180, value: 0, low: 0, high: 0 },
    { time: 3180, value: 6, low: 5.3999999999999995, high: 7.199999999999999 },
  ]);
  const knots = [0, 60, 120].map((time) => ({ time, value: time, low: time, high: time }));
  expect(waterLine({ ...invented, line: knots })).toEqual(knots);
});

test("waterGoneFinding says rate, span, sum and what stands apart", () => {
  const said = waterGoneFinding(invented, { system: "US" });
  expect(said).toMatch(/4\.6 ±0\.3 fl oz\/min from the first boil at −8:00 to 42:00, 230 fl oz in all\./);
  expect(said).toMatch(/The one at 14:50 stands apart: 14 °F under the line\./);
});

test("waterGone keeps texts apart whatever the points", () => {
  const point = fc.record({
    time: fc.integer({ min: 0, max: 20000 }),
    gone: fc.double({ min: -20, max: 60, noNaN: true }),
    standardUncertainty: fc.double({ min: 0, max: 3, noNaN: true }),
    weight: fc.double({ min: 0, max: 1, noNaN: true }),
    because: fc.string(),
  });
  const slope = fc.tuple(
    fc.double({ min: -0.01, max: 0.02, noNaN: true }),
    fc.double({ min: 1e-6, max: 0.01, noNaN: true }),
  );
  fc.assert(
    fc.property(
      fc.array(point, { maxLength: 30 }),
      slope,
      fc.constantFrom(390, 720),
      (points, [value, half], width) => {
        const root = draw(
          { points, slope: { value, low: value - half, high: value + half }, firstBoil: 100, end: 4000 },
          width,
        );
        root.removeAttribute("aria-label");
        for (const one of root.querySelectorAll("[data-label]")) one.removeAttribute("data-label");
        expect(badAttributes(root)).toEqual([]);
        expect(overlaps(root)).toEqual([]);
        expect(clipped(root)).toEqual([]);
      },
    ),
    { numRuns: 80 },
  );
});
