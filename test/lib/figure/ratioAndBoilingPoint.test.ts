import fc from "fast-check";
import { expect, test } from "vitest";
import { ratioAndBoilingPoint } from "../../../lib/figure/ratioAndBoilingPoint.ts";
import { ratioAndBoilingPointFinding } from "../../../lib/figure/ratioAndBoilingPointFinding.ts";
import type { RatioAndBoilingPointData } from "../../../lib/figure/types.ts";
import { badAttributes, clipped, fahrenheit, inventedHold, overlaps, page, words } from "./figureSupport.ts";

// An invented curve, bent so that even ticks of one rule are uneven on the other.
const ratioAt = (kelvin: number): number => {
  if (kelvin > 440) throw new RangeError(`invalid temperature: ${kelvin} K; at most 440 K`);
  return ((kelvin - 373.15) / 44) ** 1.5;
};

const hold = inventedHold();
const invented: RatioAndBoilingPointData = {
  course: (hold.course ?? []).map((one) => ({
    time: one.time,
    ratio: ratioAt(one.value),
    boilingPoint: one.value,
    low: one.low,
    high: one.high,
  })),
  ratioAt,
  target: { low: fahrenheit(286), high: fahrenheit(292) },
  hold: { start: 660, end: 3060 },
  partsIn: 660,
  pressure: "27.7 inHg",
};
const draw = (data: RatioAndBoilingPointData, width = 720, system: "US" | "metric" = "US") =>
  ratioAndBoilingPoint(data, { document: page(), width, system });

test("ratioAndBoilingPoint puts each tick of the boiling point at its own ratio's height", () => {
  const root = draw(invented);
  const rule = [...root.querySelectorAll('[data-rule="right"] line')].slice(1);
  const heights = rule.map((tick) => Number(tick.getAttribute("y1")));
  const steps = heights.slice(1).map((at, index) => (heights[index] ?? 0) - at);
  expect(Math.max(...steps) / Math.min(...steps)).toBeGreaterThan(1.05);
  const strip = root.querySelector('[data-part="strip"]');
  const limit = words(root).indexOf("292");
  expect(limit).toBeGreaterThanOrEqual(0);
  const left = [...root.querySelectorAll('[data-rule="left"] text')].map((one) => ({
    ratio: Number(one.textContent),
    y: Number(one.getAttribute("y")),
  }));
  const [first, last] = [left[0], left[left.length - 1]];
  if (!first || !last) throw new Error("no figures on the left rule");
  const pounds = ratioAt(fahrenheit(292)) * 0.9982 * 3.785411784 * (1 / 0.45359237);
  const y = first.y + ((pounds - first.ratio) / (last.ratio - first.ratio)) * (last.y - first.y) - 14 * 0.35;
  expect(Number(strip?.getAttribute("y"))).toBeCloseTo(y, 0);
});

test("ratioAndBoilingPoint names both rules once and rings the hold's ends", () => {
  const root = draw(invented);
  const said = words(root);
  expect(said.filter((text) => text === "lb/gal")).toHaveLength(1);
  expect(said.filter((text) => text === "°F")).toHaveLength(1);
  expect(root.querySelectorAll('[data-part="hold"] circle')).toHaveLength(2);
  expect(said.some((text) => /^hold begins at [\d.]+ lb\/gal$/.test(text))).toBe(true);
  expect(said.some((text) => /^ends at [\d.]+ lb\/gal$/.test(text))).toBe(true);
});

test("ratioAndBoilingPoint ends its rule where the curve is not known", () => {
  const high = { time: 0, ratio: ratioAt(439), boilingPoint: 439, low: 438.5, high: 439.5 };
  const root = draw({ course: [high, { ...high, time: 600 }], ratioAt });
  expect(badAttributes(root)).toEqual([]);
  expect(Math.max(...words(root).map(Number).filter(Number.isFinite))).toBeLessThanOrEqual(332);
});

test.each([390, 600, 768, 1280])("ratioAndBoilingPoint keeps texts apart and inside at %i px", (width) => {
  for (const system of ["US", "metric"] as const) {
    const root = draw(invented, width, system);
    expect(overlaps(root)).toEqual([]);
    expect(clipped(root)).toEqual([]);
  }
});

test("ratioAndBoilingPoint says so when the bath has not boiled", () => {
  expect(words(draw({ course: [], ratioAt }))).toContain("no boil read yet");
});

test("ratioAndBoilingPoint draws one moment as a dot", () => {
  const root = draw({ course: invented.course.slice(0, 1), ratioAt });
  expect(root.querySelectorAll('[data-mark="dot"] circle')).toHaveLength(1);
  expect(badAttributes(root)).toEqual([]);
});

test("ratioAndBoilingPointFinding gives both ends of the hold, the target and the pressure", () => {
  const said = ratioAndBoilingPointFinding(invented, { system: "US" });
  expect(said).toMatch(/The hold began at [\d.]+ lb\/gal, boiling at 290\.\d °F \(0:\d\d\)/);
  expect(said).toMatch(/ended at [\d.]+ lb\/gal/);
  expect(said).toMatch(/Target band 286–292 °F\. Boiling points at 27\.7 inHg\./);
});

test("ratioAndBoilingPoint refuses a ratio that is not finite", () => {
  const bad = { time: 0, ratio: Number.NaN, boilingPoint: 416, low: 415, high: 417 };
  expect(() => draw({ course: [bad], ratioAt })).toThrow("invalid figure data course 1 ratio: NaN");
});

test("ratioAndBoilingPoint keeps texts apart whatever the course", () => {
  const point = fc
    .tuple(
      fc.integer({ min: 0, max: 20000 }),
      fc.double({ min: 380, max: 435, noNaN: true }),
      fc.double({ min: 0.1, max: 4, noNaN: true }),
    )
    .map(([time, boilingPoint, half]) => ({
      time,
      ratio: ratioAt(boilingPoint),
      boilingPoint,
      low: boilingPoint - half,
      high: boilingPoint + half,
    }));
  fc.assert(
    fc.property(
      fc.array(point, { maxLength: 30 }),
      fc.constantFrom(390, 720),
      fc.boolean(),
      (points, width, target) => {
        const course = [...points].sort((a, b) => a.time - b.time);
        const base = { course, ratioAt, hold: { start: 100, end: 5000 } };
        const root = draw(target ? { ...base, target: { low: 410, high: 415 } } : base, width);
        expect(overlaps(root)).toEqual([]);
        expect(clipped(root)).toEqual([]);
        expect(badAttributes(root)).toEqual([]);
      },
    ),
    { numRuns: 80 },
  );
});
