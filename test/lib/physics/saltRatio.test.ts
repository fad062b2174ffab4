import fc from "fast-check";
import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { saltRatio } from "../../../lib/physics/saltRatio.ts";
import { saturationTemperature } from "../../../lib/physics/saturationTemperature.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });

test("saltRatio undoes boilingPoint to 1e-9, whatever the scale of the proportions", () => {
  fc.assert(
    fc.property(
      fc.record({
        sodiumHydroxide: fc.double({ min: 0.2, max: 1, noNaN: true }),
        sodiumNitrate: share,
        sodiumNitrite: share,
        potassiumNitrate: share,
      }),
      fc.double({ min: 0.05, max: 1.2, noNaN: true }),
      fc.double({ min: 65e3, max: 105e3, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
      (parts, ratio, p, scale) => {
        const total = parts.sodiumHydroxide + parts.sodiumNitrate + parts.sodiumNitrite + parts.potassiumNitrate;
        const times = (factor: number) => ({
          sodiumHydroxide: parts.sodiumHydroxide * factor,
          sodiumNitrate: parts.sodiumNitrate * factor,
          sodiumNitrite: parts.sodiumNitrite * factor,
          potassiumNitrate: parts.potassiumNitrate * factor,
        });
        const T = boilingPoint(times(ratio / total), p);
        expect(Math.abs(saltRatio(T, p, times(scale)) / ratio - 1)).toBeLessThan(1e-9);
      },
    ),
  );
});

test("saltRatio is 0 where plain water boils", () => {
  expect(saltRatio(saturationTemperature(1e5), 1e5, { sodiumHydroxide: 1 })).toBe(0);
});

test.each([
  [
    372,
    101325,
    { sodiumHydroxide: 1 },
    "invalid temperature: 372 K; at least 373.1243 K, where water boils at 101,325 Pa",
  ],
  [Number.NaN, 101325, { sodiumHydroxide: 1 }, "invalid temperature: NaN K"],
  [439, 101325, { sodiumHydroxide: 2, sodiumNitrate: 1 }, "brines that boil at no more than 438.15 K"],
  [474, 101325, { sodiumHydroxide: 1 }, "brines that boil at no more than 473.15 K"],
  [400, 101325, {}, "missing salts"],
  [400, 101325, { sodiumHydroxide: -1 }, "invalid share of sodiumHydroxide: -1; 0 or more"],
  [400, 60000, { sodiumNitrate: 1 }, "invalid pressure: 60,000 Pa; 65,000 to 105,000 Pa with nitrate or nitrite"],
])("saltRatio(%f, %f, %j) says what is wrong", (T, p, proportions, message) => {
  expect(() => saltRatio(T, p, proportions)).toThrow(message);
});
