import { doubtful } from "../../bath/doubtful.ts";
import { burnerEfficiencyPrior } from "../../physics/index.ts";
import type { FitBurner } from "./types.ts";

interface Known {
  readonly value: number;
  readonly u: number;
}

/** Share by which a known efficiency or heat is still doubted where no doubt is given (a judgement). */
const still = 0.15;

/**
 * What a burner is known to give at full fire: its gas, W gross, and the heat that reaches the bath.
 *
 * @param burner its gas in W, with or without how the flame is led or what share reaches the tank; or that heat itself
 * @returns `power` is absent where only the heat is known
 * @throws RangeError for gas or heat that is not above 0 W, and for a share beyond 0..1
 * @example burnerOf({ power: 10_000 }).heat.value // 3500
 */
export function burnerOf(burner: FitBurner): { readonly power?: Known; readonly heat: Known } {
  if (typeof burner === "object" && "heat" in burner) {
    const heat = doubtful("heat of the burner", burner.heat, still);
    if (!(heat.value > 0)) throw new RangeError(`invalid heat of the burner: ${heat.value} W; more than 0 W`);
    return { heat };
  }
  const known = typeof burner === "object" && "power" in burner ? burner : { power: burner };
  const power = doubtful("burner", known.power, 0.1);
  if (!(power.value > 0)) throw new RangeError(`invalid burner: ${power.value} W; more than 0 W`);
  const prior = burnerEfficiencyPrior({ skirted: known.skirted ?? false, basis: "gross" });
  const share =
    known.efficiency === undefined
      ? { value: prior.value, u: prior.standardUncertainty }
      : doubtful("efficiency", known.efficiency, still);
  if (!(share.value > 0 && share.value <= 1))
    throw new RangeError(`invalid efficiency: ${share.value}; more than 0, at most 1`);
  const value = power.value * share.value;
  return { power, heat: { value, u: value * Math.hypot(power.u / power.value, share.u / share.value) } };
}
