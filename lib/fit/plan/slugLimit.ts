import { plainWater } from "../../bath/bathEnthalpy.ts";
import { waterGasConstant } from "../../physics/constants.ts";
import type { PlanBath } from "./planBath.ts";
import type { SlugLimit } from "./types.ts";

/** s of the fire's heat that a pour may take before it is warm. A judgement: no mixing of cold pockets is simulated. */
const mostHeat = 20;

/**
 * The most water for one pour: what the fire's heat warms to the bath's temperature in 20 s, so that the pour, let in
 * over that time, cannot stop the boil even where it does not mix; and the steam that so much could flash.
 *
 * @param bath at its target
 * @returns kg, why, steam, s over which to let it in, the caution that stands beside it
 * Source: 20 s is a judgement; enthalpies as `waterEnthalpy` and `brineEnthalpy`.
 * @example slugLimit(bath).mass // 0.21 kg
 */
export function slugLimit(bath: PlanBath): SlugLimit {
  const { target, pressure, feedTemperature, heat, water, k, capacity, evaporation, warming } = bath;
  const mass = (mostHeat * heat) / (plainWater(target) - plainWater(feedTemperature));
  const slope = (capacity * k) / water;
  return {
    mass,
    reason:
      "More than the fire warms to the bath's heat in 20 s could stop the boil: cold water would then lie unmixed in a bath far above water's boil, and flash when it mixes.",
    couldFlash: { mass, volume: (mass * waterGasConstant * target) / pressure },
    flashes: Math.max(0, (mass * (slope - warming)) / (evaporation + slope)),
    over: mostHeat,
    caution:
      "A thin steady stream at the far end, face shield down, never a dump: a cold pocket can flash to steam and throw caustic.",
  };
}
