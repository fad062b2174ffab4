import fc from "fast-check";
import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { boilingPointSlope } from "../../../lib/physics/boilingPointSlope.ts";

test("boilingPointSlope is what boilingPoint loses as water is added", () => {
  const part = fc.double({ min: 0.05, max: 0.6, noNaN: true });
  fc.assert(
    fc.property(part, part, part, (sodiumHydroxide, sodiumNitrate, potassiumNitrate) => {
      const at = (lnW: number) => {
        const less = Math.exp(-lnW);
        return boilingPoint(
          {
            sodiumHydroxide: sodiumHydroxide * less,
            sodiumNitrate: sodiumNitrate * less,
            potassiumNitrate: potassiumNitrate * less,
          },
          9e4,
        );
      };
      const slope = (at(-5e-4) - at(5e-4)) / 1e-3;
      const k = boilingPointSlope({ sodiumHydroxide, sodiumNitrate, potassiumNitrate }, 9e4);
      expect(Math.abs(k / slope - 1)).toBeLessThan(1e-4);
    }),
  );
});

test("boilingPointSlope of plain water is 0", () => {
  expect(boilingPointSlope({}, 101325)).toBe(0);
});

test("boilingPointSlope refuses what boilingPoint refuses", () => {
  expect(() => boilingPointSlope({ sodiumHydroxide: 6 }, 1e5)).toThrow("invalid brine");
});
