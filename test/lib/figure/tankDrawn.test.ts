import fc from "fast-check";
import { expect, test } from "vitest";
import { lengthText, tankDrawn, tankDrawnFinding } from "../../../lib/figure/tankDrawn.ts";
import type { TankDrawnData } from "../../../lib/figure/types.ts";
import { badAttributes, clipped, overlaps, page, words } from "./figureSupport.ts";

const tank: TankDrawnData = { length: 0.6096, width: 0.1524, depth: 0.2032, level: 0.1397 };
const draw = (data: TankDrawnData, width = 400, system: "US" | "metric" = "US") =>
  tankDrawn(data, { document: page(), width, system });

test("tankDrawn draws the liquid to scale", () => {
  const liquid = draw(tank).querySelector('[data-part="liquid"]');
  const [width, height] = [liquid?.getAttribute("width"), liquid?.getAttribute("height")].map(Number);
  expect((width ?? 0) / (height ?? 1)).toBeCloseTo(24 / 5.5, 2);
});

test("tankDrawn gives two tanks of one scale lengths in proportion", () => {
  const lengthOf = (data: TankDrawnData) =>
    Number(
      draw({ ...data, scaleLength: 1.0668 })
        .querySelector('[data-part="liquid"]')
        ?.getAttribute("width"),
    );
  expect(lengthOf({ ...tank, length: 1.0668 }) / lengthOf(tank)).toBeCloseTo(42 / 24, 2);
});

test("tankDrawn says its measures with units", () => {
  expect(words(draw(tank))).toEqual(expect.arrayContaining(["24 in", "5½ in", "6 in wide"]));
  expect(words(draw(tank, 400, "metric"))).toEqual(expect.arrayContaining(["61 cm", "14 cm", "15.2 cm wide"]));
});

test("tankDrawn without a level gives the tank's own depth and no liquid", () => {
  const root = draw({ length: 0.6096, width: 0.1524, depth: 0.2032 });
  expect(words(root)).toContain("8 in");
  expect(root.querySelectorAll('[data-part="liquid"]')).toHaveLength(0);
});

test.each([
  [0.1397, "5½ in"],
  [0.0254, "1 in"],
  [0.009525, "⅜ in"],
  [0.35, "13.8 in"],
])("lengthText(%f) is %s", (metres, text) => {
  expect(lengthText(metres, "US")).toBe(text);
});

test("tankDrawnFinding says length, width, depth and level", () => {
  expect(tankDrawnFinding(tank, { system: "US" })).toBe(
    "Tank 24 in long, 6 in wide, 8 in deep inside; filled 5½ in deep",
  );
});

test("tankDrawn refuses a tank without depth", () => {
  expect(() => draw({ ...tank, depth: 0 })).toThrow("invalid tank: 0 m; length, width and depth above 0");
});

test("tankDrawn keeps its words apart and inside for any tank", () => {
  const size = fc.double({ min: 0.02, max: 6, noNaN: true });
  const data = fc.record(
    { length: size, width: size, depth: size, level: size, scaleLength: size },
    { requiredKeys: ["length", "width", "depth"] },
  );
  fc.assert(
    fc.property(data, fc.constantFrom(260, 400, 700), (one, width) => {
      const root = draw(one as TankDrawnData, width);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
  );
});
