import { expect, test } from "vitest";
import { brineDensity } from "../../lib/physics/brineDensity.ts";

const ratio = (percent: number): number => percent / (100 - percent);

// Density of sodium hydroxide solutions, kg/L, at 20, 30, 40, 60, 80 and 100 °C: trade table at soapworld.biz (read),
// the figures of International Critical Tables III, p. 79.
const celsius = [20, 30, 40, 60, 80, 100];
test.each([
  [24, [1.2629, 1.257, 1.2512, 1.2388, 1.2259, 1.2124]],
  [28, [1.3064, 1.3003, 1.2942, 1.2814, 1.2682, 1.2546]],
  [32, [1.349, 1.3426, 1.3362, 1.3232, 1.3097, 1.296]],
  [36, [1.39, 1.3834, 1.3768, 1.3634, 1.3498, 1.336]],
  [40, [1.43, 1.4232, 1.4164, 1.4027, 1.3889, 1.375]],
  [44, [1.4685, 1.4615, 1.4545, 1.4405, 1.4266, 1.4127]],
  [48, [1.5065, 1.4993, 1.4922, 1.4781, 1.4641, 1.4503]],
  [50, [1.5253, 1.5181, 1.5109, 1.4967, 1.4827, 1.469]],
])("brineDensity of %f percent hydroxide from 20 to 100 °C is the table's within 0.003 kg/L", (percent, densities) => {
  for (const [i, published] of densities.entries()) {
    const T = (celsius[i] ?? Number.NaN) + 273.15;
    expect(Math.abs(brineDensity({ sodiumHydroxide: ratio(percent) }, T) / 1000 - published)).toBeLessThan(0.003);
  }
});

// CRC Handbook of Chemistry and Physics, concentrative properties at 20 °C, g/cm³ (read in a public copy).
test.each([
  ["sodiumHydroxide", 10, 1.1089],
  ["sodiumHydroxide", 20, 1.2192],
  ["sodiumHydroxide", 30, 1.3277],
  ["sodiumHydroxide", 36, 1.3901],
  ["sodiumHydroxide", 40, 1.4299],
  ["sodiumNitrate", 10, 1.0674],
  ["sodiumNitrate", 20, 1.1429],
  ["sodiumNitrate", 30, 1.2256],
  ["sodiumNitrate", 40, 1.3175],
] as const)(
  "brineDensity: %s, %f percent at 20 °C, is the CRC Handbook's %f within 0.0025",
  (salt, percent, published) => {
    expect(Math.abs(brineDensity({ [salt]: ratio(percent) }, 293.15) / 1000 - published)).toBeLessThan(0.0025);
  },
);
