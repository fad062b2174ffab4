import { needNumber, plain } from "../../physics/needNumber.ts";
import { propane } from "../../physics/propane.ts";
import { saturationPressure } from "../../physics/saturationPressure.ts";
import { saturationTemperature } from "../../physics/saturationTemperature.ts";
import { steamEnthalpy } from "../../physics/steamEnthalpy.ts";
import { steelHeat } from "../../physics/steelHeat.ts";
import { waterDensity } from "../../physics/waterDensity.ts";
import { waterEnthalpy } from "../../physics/waterEnthalpy.ts";
import { bathLosses, ordinaryAir } from "../bathLosses.ts";
import type { WaterHeatUp, WaterHeatUpGivens } from "./types.ts";

/**
 * How long an open tank of plain water takes to its heat over gas, and what it burns: the boiling rinse, or a first
 * trial of a new tank. Bare walls to the liquid's depth and the open surface lose heat to still air, evaporation most of
 * all; a lid spares it. Gas from the bath's own cylinder adds to that cylinder's draw.
 *
 * @param givens tank, m (0.1 to 5 by 0.1 to 5, depth 0.05 to 3); steel, 0 to 1e6 kg; power, 1 to 1e6 W; efficiency, 0.01
 * to 1 (`burnerEfficiencyPrior` says what to think of it: the greatest doubt here); temperatures, K, from 273.15 to
 * the boil; air, 233.15 to 333.15 K; pressure, 50,000 to 110,000 Pa
 * @returns s, kg of propane, J of gas, kg of water gone; or the temperature, K, where the losses take all the heat
 * @throws RangeError outside these ranges
 * Source: `waterEnthalpy`, `steelHeat`, `surfaceLoss`, `wallLoss`, `propane`, put together as one balance of heat. The
 * table behind the evaporation calls itself a rough estimate: 20 % (a judgement).
 * @example
 * const tank = { length: 0.965, width: 0.203, depth: 0.12 };
 * const up = waterHeatUp({ tank, steel: 15, power: 12000, efficiency: 0.35, from: 290 });
 * up.time; // 2769 s
 * up.gas; // 0.662 kg
 */
export function waterHeatUp(givens: WaterHeatUpGivens): WaterHeatUp {
  const { tank, air = ordinaryAir.temperature, pressure = ordinaryAir.pressure } = givens;
  needNumber("tank length", tank.length, 0.1, 5, "m");
  needNumber("tank width", tank.width, 0.1, 5, "m");
  needNumber("working depth", tank.depth, 0.05, 3, "m");
  const steel = needNumber("weight of steel", givens.steel ?? 0, 0, 1e6, "kg");
  const power = needNumber("power", givens.power, 1, 1e6, "W");
  const efficiency = needNumber("efficiency", givens.efficiency, 0.01, 1, "");
  needNumber("air temperature", air, 233.15, 333.15, "K");
  needNumber("pressure", pressure, 50_000, 110_000, "Pa");
  const boil = saturationTemperature(pressure);
  const to = needNumber("temperature to reach", givens.to ?? boil, 273.15, boil, "K", "where water boils here");
  const from = needNumber("temperature at the start", givens.from, 273.15, boil, "K", "where water boils here");
  if (from > to) throw new RangeError(`invalid temperature at the start: ${plain(from)} K; at most ${plain(to)} K`);
  const losses = bathLosses({ tank, burner: { heat: power }, air: { temperature: air, pressure } });
  const heat = power * efficiency;
  let water = tank.length * tank.width * tank.depth * waterDensity(from);
  const first = water;
  let time = 0;
  const steps = 200;
  for (let i = 0; i < steps; i++) {
    const low = from + ((to - from) * i) / steps;
    const high = from + ((to - from) * (i + 1)) / steps;
    const T = (low + high) / 2;
    const vapour = Math.min(pressure, saturationPressure(T));
    const gone = Math.max(0, losses.evaporates(T) * (vapour - losses.airVapour));
    const left = heat - losses.walls(T) - losses.top(T) - gone * (steamEnthalpy(T, vapour) - waterEnthalpy(T));
    if (!(left > 0)) return { state: "never gets there", stallsAt: low };
    const takes = water * (waterEnthalpy(high) - waterEnthalpy(low)) + steelHeat(steel, low, high);
    const seconds = takes / left;
    time += seconds;
    water -= gone * seconds;
    if (!(water > 0)) return { state: "never gets there", stallsAt: low };
  }
  const burnt = power * time;
  return {
    state: "gets there",
    time,
    gas: burnt / propane.grossHeatingValue.value,
    heat: burnt,
    evaporated: first - water,
  };
}
