import fc from "fast-check";
import { expect, test } from "vitest";
import { holdReplayed } from "../../../lib/figure/holdReplayed.ts";
import { throughBreaks } from "../../../lib/figure/throughBreaks.ts";
import type { CoursePoint, HoldReplayedData } from "../../../lib/figure/types.ts";
import {
  badAttributes,
  clipped,
  fahrenheit,
  fluidOunce,
  inventedHold,
  overlaps,
  page,
  textBoxes,
  words,
} from "./figureSupport.ts";

const draw = (data: HoldReplayedData, width = 1280, system: "US" | "metric" = "US") =>
  holdReplayed(data, { document: page(), width, system });
const { inBand: _band, hold: _hold, partsIn: _in, partsOut: _out, ...loose } = inventedHold();

/** What a fitted bath does: 600 moments, heating up by 100 °F first, a dip of 6 °F at a slug and at the parts. */
function fittedHold(half: (time: number) => number = () => 1): HoldReplayedData {
  const base = inventedHold();
  const warm = 1500;
  const at = (time: number): number => {
    if (time < 0) return 285 - 100 * Math.min(1, -time / 1400);
    const dips = [660, 1400, 2500].map((when) => (time >= when ? 6 * Math.exp((when - time) / 60) : 0));
    return 287 + 3 * Math.sin(time / 300) - dips.reduce((sum, one) => sum + one, 0);
  };
  const course = Array.from({ length: 600 }, (_, index): CoursePoint => {
    const time = -warm + index * 7.8;
    return {
      time,
      value: fahrenheit(at(time)),
      low: fahrenheit(at(time) - half(time)),
      high: fahrenheit(at(time) + half(time)),
    };
  });
  const cold = [0, 1, 2, 3, 4].map((index) => ({
    id: `c${index}`,
    time: -warm + 280 * index,
    temperature: fahrenheit(at(-warm + 280 * index)),
    struck: false,
  }));
  return { ...base, readings: [...cold, ...base.readings], course, sums: { course: "model" } };
}

const stripHeight = (root: Element): number =>
  Number(root.querySelector('[data-part="strip"]')?.getAttribute("height"));

test("a course that heats up by 100 °F does not press the band flat", () => {
  const held = stripHeight(draw(fittedHold()));
  const { course: _course, ...bare } = fittedHold();
  expect(held).toBeGreaterThan(0.7 * stripHeight(draw(bare)));
  // On one scale from the cold start 6 °F of more than 100 °F would be 20 px at most.
  expect(held).toBeGreaterThan(60);
});

test("a course without a row that says when the hold began does not press the band flat either", () => {
  const { hold: _h, partsIn: _i, partsOut: _o, inBand: _b, ...rest } = fittedHold();
  expect(stripHeight(draw(rest))).toBeGreaterThan(60);
});

test("a spread of 5 °F and one of 70 °F leave the band legible, and nothing is cut off", () => {
  // Legible: three lines of a phone's text are as high, or one and a half where next to nothing is known.
  for (const [half, least] of [
    [5, 39],
    [70, 20],
  ] as const) {
    for (const width of [390, 1280]) {
      const root = draw(
        fittedHold(() => half),
        width,
      );
      expect(stripHeight(root)).toBeGreaterThan(least);
      const plate = root.querySelector('[data-part="plate"] rect');
      const [top, height] = ["y", "height"].map((name) => Number(plate?.getAttribute(name)));
      const path = root.querySelector('[data-mark="area"] path')?.getAttribute("d") ?? "";
      const heights = [...path.matchAll(/,([-\d.]+)/g)].map((found) => Number(found[1]));
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(top ?? 0);
      expect(Math.max(...heights)).toBeLessThanOrEqual((top ?? 0) + (height ?? 0));
    }
  }
});

test("a dip of 6 °F after a slug is drawn to its depth", () => {
  const hold = fittedHold();
  const root = draw(hold);
  const path = root.querySelector('[data-mark="line"] path')?.getAttribute("d") ?? "";
  const points = [...path.matchAll(/([-\d.]+),([-\d.]+)/g)].map((found) => [Number(found[1]), Number(found[2])]);
  const steepest = Math.max(...points.slice(1).map(([, y = 0], index) => y - (points[index]?.[1] ?? 0)));
  // The band is 6 °F high too, and a moment of the course later 12 % of the dip is gone.
  expect(steepest / stripHeight(root)).toBeGreaterThan(0.8);
});

test.each([390, 768, 1280])("the fitted course is named with its 95 % spread, clear of it, at %i px", (width) => {
  const root = draw(fittedHold(), width);
  expect(words(root).join("\n")).toMatch(/model(\nand its|,) 95 % spread/);
  expect(overlaps(root)).toEqual([]);
  expect(clipped(root)).toEqual([]);
});

test("a course bends where the rule changes its scale, and nowhere is a point left out", () => {
  const scale = {
    stretches: [
      { low: 300, high: 400, lowAt: 400, highAt: 340 },
      { low: 400, high: 420, lowAt: 340, highAt: 20 },
    ],
    breaks: [340],
  };
  const course = [
    { time: 0, value: 390, low: 380, high: 395 },
    { time: 100, value: 410, low: 405, high: 415 },
  ];
  const bent = throughBreaks(course, scale);
  expect(bent.map((one) => one.time)).toEqual([0, 25, 50, 80, 100]);
  expect([bent[1]?.high, bent[2]?.value, bent[3]?.low]).toEqual([400, 400, 400]);
  expect(throughBreaks(course, { stretches: scale.stretches.slice(1), breaks: [] })).toBe(course);
});

const unwritten = { time: 2100, mass: 4 * fluidOunce, low: 2 * fluidOunce, high: 6 * fluidOunce, probability: 0.853 };

test("a pour that was probably not written hangs hollow from the water line with its words", () => {
  const root = draw({ ...inventedHold(), unwritten: [unwritten] });
  const bar = root.querySelector('[data-mark="unwritten"]');
  expect(bar?.getAttribute("fill")).toBe("none");
  expect(bar?.getAttribute("stroke-dasharray")).toBeTruthy();
  expect(root.querySelectorAll('rect[data-mark="water"]')).toHaveLength(6);
  expect(words(root)).toContain("4 ±2 fl oz? not written, 85 % likely");
  expect(words(root)).toContain("130 fl oz in six pours");
  expect(root.getAttribute("aria-label")).toMatch(
    /4 ±2 fl oz at 24:00 were perhaps poured and not written, 85 % likely\./,
  );
});

test("a phone keeps the words of a pour not written", () => {
  const said = words(draw({ ...inventedHold(), unwritten: [unwritten] }, 390)).join(" ");
  expect(said).toContain("4 fl oz? not written");
});

test("a log without any written pour still shows what was probably poured", () => {
  const root = draw({ ...inventedHold(), additions: [], unwritten: [unwritten] });
  expect(words(root)).toContain("none written");
  expect(root.querySelectorAll('[data-mark="unwritten"]')).toHaveLength(1);
});

test("a reading that was probably misread says how likely, and at the least that it may be", () => {
  const misread = { id: "m", time: 2000, temperature: fahrenheit(280), struck: false, apart: true, probability: 0.62 };
  const base = inventedHold();
  const root = draw({ ...base, readings: [...base.readings, misread] });
  expect(words(root)).toContain("280 °F at 22:20, misread? 62 % likely");
  expect(root.getAttribute("aria-label")).toContain("280 °F at 22:20, misread? 62 % likely");
  const fitted = fittedHold();
  expect(words(draw({ ...fitted, readings: [...fitted.readings, misread] }, 390)).join(" ")).toMatch(
    /280 °F.*misread\?/,
  );
});

test("a sure pour is not said to be certain, and a probability beyond 1 is refused", () => {
  expect(words(draw({ ...inventedHold(), unwritten: [{ ...unwritten, probability: 1 }] })).join("\n")).toContain(
    "over 99 % likely",
  );
  expect(() => draw({ ...inventedHold(), unwritten: [{ ...unwritten, probability: 1.2 }] })).toThrow(
    "invalid probability: 1.2; 0 to 1",
  );
});

test("texts of pours not written meet nothing, whatever the pours", () => {
  const pour = fc.record({
    time: fc.integer({ min: -2000, max: 6000 }),
    mass: fc.double({ min: 0, max: 3, noNaN: true }),
    probability: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(pour, { maxLength: 5 }), fc.constantFrom(390, 768, 1280), (pours, width) => {
      const root = draw({ ...loose, unwritten: pours }, width);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
      const bars = [...root.querySelectorAll('[data-mark="water"]')].map((bar) => {
        const [x = 0, y = 0, wide = 0, high = 0] = ["x", "y", "width", "height"].map((name) =>
          Number(bar.getAttribute(name)),
        );
        return { x, y, wide, high };
      });
      for (const { text, box } of textBoxes(root).filter((one) => one.text.includes("not written")))
        for (const bar of bars)
          expect(
            box.x < bar.x + bar.wide &&
              bar.x < box.x + box.width &&
              box.y < bar.y + bar.high &&
              bar.y < box.y + box.height,
            text,
          ).toBe(false);
    }),
    { numRuns: 60 },
  );
});

test.each([768, 1280])("the water strip keeps its name and unit at %i px", (width) => {
  expect(words(draw(fittedHold(), width))).toEqual(expect.arrayContaining(["water", "fl oz"]));
});
