import { waterGasConstant } from "../physics/constants.ts";
import { saturationTemperature } from "../physics/saturationTemperature.ts";
import { plainWater } from "./bathEnthalpy.ts";
import type { BathModel } from "./bathModel.ts";
import { type BathStand, energyOf, nothingDone, settle } from "./bathStep.ts";

/**
 * Steam that a slug makes: what flashes where it mixes in at once, and the most that a cold pocket of it could flash by
 * the heat that the bath holds above the boiling point of plain water (all of it, as a rule).
 *
 * @param model of the bath
 * @param stand of the bath before it
 * @param water kg of the slug
 * @param temperature K of the slug
 * @returns kg, and kg and m³ (as an ideal gas of the bath's temperature: 1 % too large)
 * @example slugSteam(model, stand, 0.2366, 288.7).couldFlash.volume // 0.45 m³: 15.9 ft³ from one US cup
 */
export function slugSteam(
  model: BathModel,
  stand: Readonly<BathStand>,
  water: number,
  temperature: number,
): { readonly flashes: number; readonly couldFlash: { readonly mass: number; readonly volume: number } } {
  const done = nothingDone();
  const brings = water * plainWater(temperature);
  settle(model, { ...stand, water: stand.water + water, energy: stand.energy + brings }, 0, done);
  const boils = saturationTemperature(model.pressure);
  const held = stand.T > boils ? stand.energy - energyOf(model, stand.water, boils, stand.steel) : 0;
  const mass = Math.max(0, Math.min(water, held / (model.steam(stand.T) - plainWater(temperature))));
  return {
    flashes: done.flashed,
    couldFlash: { mass, volume: (mass * waterGasConstant * stand.T) / model.pressure },
  };
}
