import { expect, test } from "vitest";
import { steelHeat } from "../../lib/physics/steelHeat.ts";

const specificHeat = (kelvin: number): number => steelHeat(1, kelvin - 0.5, kelvin + 0.5);

// Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table A.1 (from memory): plain carbon steel at 300, 400
// and 600 K, J/(kg K); AISI 1010 has the same figures from 300 to 600 K.
test.each([
  [300, 434],
  [400, 487],
  [600, 559],
])("steel takes up heat at %f K as a heat transfer handbook says, %f J/(kg K), within 3 percent", (kelvin, heat) => {
  expect(Math.abs(specificHeat(kelvin) / heat - 1)).toBeLessThan(0.03);
});

// British Iron and Steel Research Association, mean specific heat of 0.23 % carbon steel, as the ASM Handbook, vol. 1,
// gives it for AISI 1020 to 1025 (from memory).
test.each([
  [50, 100, 486],
  [150, 200, 519],
  [200, 250, 532],
  [250, 300, 557],
  [300, 350, 574],
])("steel takes up heat from %f to %f °C as the ASM Handbook says, %f J/(kg K), within 3 percent", (from, to, heat) => {
  const mean = steelHeat(1, from + 273.15, to + 273.15) / (to - from);
  expect(Math.abs(mean / heat - 1)).toBeLessThan(0.03);
});

// EN 1993-1-2:2005, 3.4.1.2 (formula read in three public programs that follow it): the curve itself at 20 and 400 °C,
// worked by hand. A check of the integral only.
test.each([
  [20, 439.8],
  [400, 605.88],
])("steel at %f °C has the standard's %f J/(kg K)", (celsius, heat) => {
  expect(Math.abs(specificHeat(celsius + 273.15) - heat)).toBeLessThan(0.05);
});
