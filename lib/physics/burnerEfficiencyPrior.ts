import type { Estimate, HeatingBasis } from "./estimate.ts";
import { netOverGross } from "./propane.ts";

/**
 * What part of a fire's heat reaches a long open tank over it, before a log has shown it. The greatest doubt of all:
 * to be fitted, not believed.
 *
 * @param fire `skirted`: whether a skirt or flue keeps the hot gas along the tank; `basis` of the heating value
 * @returns part of the heat, 0 to 1, with its standard uncertainty: 0.35 ± 0.10 of the gross value for a bare flame,
 * 0.55 ± 0.10 skirted; of the net value 1.086 times as much
 *
 * Source: a judgement from published figures: gas rings under pans 0.25 to 0.50, stoves under pots 0.30 to 0.58,
 * wood-fired open pans 0.40 to 0.60, long coal-fired brine pans 0.36 as built and 0.64 to 0.66 improved. None was found
 * for a long open tank over gas.
 * @example
 * burnerEfficiencyPrior({ skirted: false, basis: "gross" }).value; // 0.35
 * burnerEfficiencyPrior({ skirted: false, basis: "net" }).value; // 0.3802
 */
export function burnerEfficiencyPrior(fire: { readonly skirted: boolean; readonly basis: HeatingBasis }): Estimate {
  const part = fire.basis === "net" ? 1 / netOverGross : 1;
  return { value: (fire.skirted ? 0.55 : 0.35) * part, standardUncertainty: 0.1 * part };
}
