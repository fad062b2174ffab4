import { expect, test } from "vitest";
import { doubts } from "../../lib/fit/scale/factors.ts";
import { gasOf, noGasDoubt } from "../../lib/fit/scale/gasOf.ts";

// Choked flow of an ideal gas, C = 520 √(k (2/(k+1))^((k+1)/(k-1))): 330 for k = 1.13 (API 520 part I, table of C against
// k; from memory). The orifice tables of the National Fuel Gas Code, for low pressure, are reckoned with 0.9 of the ideal,
// plain drilled holes pass some 0.8 (both from memory): a fire's jets are to lie between, at 2 bar that its regulator holds.
test("the jets of a fire pass 0.8 to 0.9 of an ideal choked flow", () => {
  const [pressure, airPressure, diameter] = [200_000, 101_325, 0.0017];
  const held = { ...noGasDoubt, droop: -doubts.droop.value / doubts.droop.u };
  const area = (Math.PI / 4) * diameter ** 2;
  const ideal = ((330 / 520) * area * (pressure + airPressure)) / Math.sqrt((8.314462618 * 288.706) / 0.044097);
  for (const count of [1, 2, 4]) {
    const passed = gasOf({ count, jetDiameter: diameter, pressure }, airPressure, held) / (count * ideal);
    expect(passed).toBeGreaterThan(0.8);
    expect(passed).toBeLessThan(0.9);
  }
});
