import { normalShare } from "../../bath/mixtureQuantile.ts";
import { needNumber } from "../../physics/needNumber.ts";
import { propane } from "../../physics/propane.ts";
import { humanErrors } from "./humanErrors.ts";
import { planBath } from "./planBath.ts";
import { planFeed } from "./planFeed.ts";
import type { PlanGivens, PlanOptions } from "./types.ts";

/** One fire of a range. */
export interface TurnedDown {
  /** Of full fire. */
  readonly share: number;
  /** W into the bath beyond what walls and top lose; 0 where nothing is left. */
  readonly heat: number;
  /** kg/s to feed, and K/s by which the boiling point climbs unfed. */
  readonly feed: number;
  readonly drift: number;
  /** Shares of holds in the band; null where it does not boil. */
  readonly inBand: number | null;
  readonly inBandCorrected: number | null;
  /** Probability, at any moment, that the fire is above what a bath just below its boil evaporates: it boils. */
  readonly boils: number;
  /** Whether it boils steadily: at 95 % of moments. */
  readonly steady: boolean;
  /** kg/s of propane; absent where the burner is known by its heat alone. */
  readonly gas?: number;
}

export interface TurnDown {
  readonly fires: readonly TurnedDown[];
  /** The one that needs the least feeding and still boils steadily; absent where none does. */
  readonly best?: TurnedDown;
  readonly cautions: readonly string[];
}

const steadyFrom = 0.95;
/** Of the fitted fire: what a bath that boiled on it may need at the most to boil at all. A judgement. */
const boiledOn = 0.8;
/** A fire turned down is less sure by this much, as a share (a judgement: the fit of a run takes 15 % for losses). */
const turnedDoubt = 0.15;

/**
 * What turning the fire down would do: feeding, drift, promises, and whether the bath still boils steadily. Heat falls
 * faster than the fire, since walls and top lose as before.
 *
 * @param givens as for `planFeed`; its burner is full fire
 * @param shares of full fire, 0.05 to 1; ten from 1 down to 0.1 where absent
 * @param options as for `planFeed`; 100 draws where absent
 * @returns one row for each fire, and the best
 * @throws RangeError as `planFeed`, and for a share out of range
 * Source: as `planFeed`; what evaporates just below the boil as `surfaceLoss`.
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } };
 * const bath = { water: 6.2, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 }, temperature: "boiling" };
 * const { fires } = turnDown({ setup, bath, target: 417.6, band: 1.1, hold: 1800, pressure: 101_325, pours: "steady" }, [1, 0.8]);
 * fires[1].feed < fires[0].feed; // true
 */
export function turnDown(
  givens: PlanGivens,
  shares: readonly number[] = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1],
  options: PlanOptions = {},
): TurnDown {
  const full = planBath(givens);
  const errors = { ...humanErrors, ...options.errors };
  const fires = shares.map((share): TurnedDown => {
    needNumber("share of full fire", share, 0.05, 1, "");
    const heat = Math.max(0, share * (full.heat + full.losses) - full.losses);
    const doubt = Math.hypot(full.heatDoubt, ((1 - share) * turnedDoubt * full.losses) / Math.max(1, heat));
    // A fitted bath boiled on its full fire: it cannot need more than most of that.
    const needs = Math.min(full.quietPublished * full.evaporation, givens.fit ? boiledOn * full.heat : Infinity);
    const spread = heat * Math.hypot(doubt, errors.gusts);
    const boils = heat > 0 ? normalShare((heat - needs) / Math.max(1e-9, spread)) : 0;
    const { burner } = givens.setup;
    const gas = "heat" in burner ? {} : { gas: (share * burner.power) / propane.grossHeatingValue.value };
    const feed = heat / (full.evaporation + full.warming);
    const slope = full.k / full.water;
    const drift = (slope * heat) / (full.evaporation + full.capacity * slope);
    const row = { share, heat, feed, drift, boils, steady: boils >= steadyFrom, ...gas };
    if (boils < 0.5) return { ...row, inBand: null, inBandCorrected: null };
    const { inBand, inBandCorrected } = planFeed(turned(givens, share, heat, full.losses, doubt), {
      draws: 100,
      ...options,
    });
    return { ...row, inBand, inBandCorrected };
  });
  const steady = fires.filter((one) => one.steady);
  const best = steady.length > 0 ? steady.reduce((a, b) => (b.feed < a.feed ? b : a)) : undefined;
  return {
    fires,
    ...(best ? { best } : {}),
    cautions: [
      "A fire turned low can go out or lift off its jet: watch it, and shut the gas before lighting it again.",
      "A bath that only simmers mixes badly: water poured into it lies cold on top. Where it no longer rolls, turn up.",
    ],
  };
}

/** The same with a smaller fire; the heat-up is left as the full fire makes it. */
function turned(givens: PlanGivens, share: number, heat: number, losses: number, doubt: number): PlanGivens {
  const { setup, fit } = givens;
  const heatUncertainty = doubt;
  if (fit) {
    const parameters = fit.parameters.map((one) =>
      one.name === "heat into the bath" ? { ...one, value: heat, standardUncertainty: doubt * heat } : one,
    );
    return { ...givens, setup: { ...setup, heatUncertainty }, fit: { ...fit, parameters } };
  }
  const { burner } = setup;
  const smaller = "heat" in burner ? { heat: heat + losses } : { ...burner, power: share * burner.power };
  return { ...givens, setup: { ...setup, burner: smaller, heatUncertainty } };
}
