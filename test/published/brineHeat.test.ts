import { expect, test } from "vitest";
import { brineEnthalpy } from "../../lib/physics/brineEnthalpy.ts";
import { brineHeatCapacity } from "../../lib/physics/brineHeatCapacity.ts";

const ratio = (percent: number): number => percent / (100 - percent);

// Enthalpy of sodium hydroxide solutions above liquid water at 0 °C, kJ/kg: Geankoplis, evaporator examples after
// McCabe's chart (from memory). Read off a chart: 4 kJ/kg.
test.each([
  [20, 37.8, 127.9],
  [50, 89.5, 505],
])("brineEnthalpy of %f percent hydroxide at %f °C is the chart's %f kJ/kg", (percent, t, published) => {
  const h = brineEnthalpy({ sodiumHydroxide: ratio(percent) }, t + 273.15) / 1000;
  expect(Math.abs(h - published)).toBeLessThan(4);
});

/** Laliberte, J. Chem. Eng. Data 54 (2009) 1725: apparent heat capacity of a salt, kJ/(kg K) (parameters read). */
function apparent(a: readonly [number, number, number, number, number, number], w: number, t: number): number {
  return a[0] * Math.exp(a[1] * t + a[2] * Math.exp(0.01 * t) + a[3] * w) + a[4] * w ** a[5];
}
const hydroxide = [
  -0.922780764834469, -0.0412353462450485, 1.8722524604359, -5.94223565147303, 3.13007617842649, 0.141040805508813,
] as const;
const nitrate = [
  -0.0420888209361667, -0.0862083520705012, 4.04836454348122, -8.1584512900783, 1.57362106214301, 0.23955967308698,
] as const;
// Heat capacity of water, kJ/(kg K), from memory of the steam tables.
const water: Readonly<Record<number, number>> = { 60: 4.185, 80: 4.197, 100: 4.216, 120: 4.245 };

// A second published correlation. For hydroxide its data end at 30 wt%, for nitrate at 46.
test.each([
  ["sodiumHydroxide", 20, 60, 0.05, hydroxide],
  ["sodiumHydroxide", 20, 80, 0.05, hydroxide],
  ["sodiumHydroxide", 20, 100, 0.05, hydroxide],
  ["sodiumHydroxide", 20, 120, 0.05, hydroxide],
  ["sodiumHydroxide", 30, 60, 0.05, hydroxide],
  ["sodiumHydroxide", 30, 80, 0.05, hydroxide],
  ["sodiumHydroxide", 30, 100, 0.05, hydroxide],
  ["sodiumHydroxide", 30, 120, 0.05, hydroxide],
  ["sodiumNitrate", 30, 80, 0.1, nitrate],
  ["sodiumNitrate", 30, 100, 0.1, nitrate],
  ["sodiumNitrate", 40, 100, 0.1, nitrate],
  ["sodiumNitrate", 45, 100, 0.1, nitrate],
  ["sodiumNitrate", 45, 120, 0.1, nitrate],
] as const)(
  "brineHeatCapacity: %s, %f percent at %f °C, is near Laliberte 2009, within %f kJ/(kg K)",
  (salt, percent, t, within, parameters) => {
    const w = percent / 100;
    const published = (1 - w) * (water[t] ?? Number.NaN) + w * apparent(parameters, w, t);
    expect(Math.abs(brineHeatCapacity({ [salt]: ratio(percent) }, t + 273.15) / 1000 - published)).toBeLessThan(within);
  },
);
