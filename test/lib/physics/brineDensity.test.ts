import fc from "fast-check";
import { expect, test } from "vitest";
import { brineDensity } from "../../../lib/physics/brineDensity.ts";
import { waterDensity } from "../../../lib/physics/waterDensity.ts";

test("brineDensity without salt is that of water, with a trace nearly so", () => {
  expect(brineDensity({}, 400)).toBe(waterDensity(400));
  for (const salt of ["sodiumHydroxide", "sodiumNitrate", "sodiumNitrite", "potassiumNitrate"]) {
    expect(Math.abs(brineDensity({ [salt]: 1e-7 }, 350) - waterDensity(350))).toBeLessThan(1e-3);
  }
});

test("brineDensity rises with salt and falls with heat", () => {
  const part = fc.double({ min: 0, max: 0.4, noNaN: true });
  fc.assert(
    fc.property(part, part, part, part, (a, b, c, d) => {
      const brine = { sodiumHydroxide: a, sodiumNitrate: b, sodiumNitrite: c, potassiumNitrate: d };
      expect(brineDensity({ ...brine, sodiumHydroxide: a + 0.05 }, 400)).toBeGreaterThan(brineDensity(brine, 400));
      expect(brineDensity({ ...brine, sodiumNitrate: b + 0.05 }, 400)).toBeGreaterThan(brineDensity(brine, 400));
      expect(brineDensity(brine, 410)).toBeLessThan(brineDensity(brine, 400));
    }),
  );
});

test.each([
  [{}, 474, "invalid temperature: 474 K; 273.15 to 473.15 K"],
  [{}, Number.NaN, "invalid temperature: NaN K"],
  [{ sodiumHydroxide: 1.2 }, 300, "invalid brine: 54.5455 wt% sodium hydroxide; 0 to 50 wt% at 300 K"],
  [{ sodiumNitrite: -1 }, 300, "invalid sodium nitrite: -1"],
])("brineDensity(%j, %f) says what is wrong", (brine, T, message) => {
  expect(() => brineDensity(brine, T)).toThrow(message);
});
