import { expect, test } from "vitest";
import { brineCurve } from "../../../lib/bath/brineCurve.ts";
import { pourEffect } from "../../../lib/bath/pourEffect.ts";

const atmosphere = 101_325;
const effect = (ratio: number): number =>
  pourEffect({ sodiumHydroxide: ratio }, 1, brineCurve({ sodiumHydroxide: 1 }, atmosphere), atmosphere).value;

// Steam tables (from memory), kJ/kg: steam of 100 °C 2675.6, water of 15 °C 63.0, evaporation 2256.5. A cold pour takes
// the steam of its own warming off, (2675.6 - 63.0) / 2256.5. What a pinch of salt adds is under 1 %.
test("into all but plain water a kilogram poured in cold makes 1.158 kg more water", () => {
  expect(Math.abs(effect(0.02) / 1.158 - 1)).toBeLessThan(0.015);
});

// Half lye, half water at one atmosphere, all from memory: it boils at 145 °C, and at 89.5 °C under 11.7 kPa (Geankoplis),
// where water boils at 100 and 49 °C: Clausius and Clapeyron give 2257 (418/373)² 51/55.5 = 2605 kJ/kg. Gerlach's rises of
// 40 and 60 K at 93.5 and 150.8 g of lye per 100 g of water give 42 K per e-fold. Heat capacity 3.2 kJ/(kg K), the tank's
// steel 5 % besides: 1.05 · 2 · 3.2 · 42 = 282 kJ/kg. Steam of 145 °C 2766 kJ/kg: (2766 - 63) / (2605 + 282) = 0.936.
test("into half lye, half water a kilogram poured in makes 0.936 kg more, within 3 percent", () => {
  expect(Math.abs(effect(1) / 0.936 - 1)).toBeLessThan(0.03);
});
