import { boilingPointSlope } from "../../physics/boilingPointSlope.ts";
import { saltCurvePrior } from "../../physics/saltCurvePrior.ts";
import type { Brine } from "../../physics/types.ts";
import { scaledSalts } from "../saltMasses.ts";
import type { DoubtfulDeparture, ExpectedBoil } from "./types.ts";

/**
 * How sure a bath's boiling point is: by its own departure where it has one, else by what is known of the salts' curve.
 *
 * @param target K, where the curve in use puts it
 * @param water kg
 * @param salts kg of each
 * @param pressure Pa
 * @param departure of this bath; a bath without readings of its own lies `saltCurvePrior` off the published curve
 * @example expectedBoil(417.6, 4.5, { sodiumHydroxide: 4, sodiumNitrate: 2 }, 101_325).standardUncertainty // 1.7 K
 */
export function expectedBoil(
  target: number,
  water: number,
  salts: Brine,
  pressure: number,
  departure?: DoubtfulDeparture,
): ExpectedBoil {
  const prior = saltCurvePrior;
  const away = target - (departure?.pivot ?? prior.pivot);
  const offset = departure?.offsetUncertainty ?? (departure ? 0 : prior.offset.standardUncertainty);
  const scale = departure?.scaleUncertainty ?? (departure ? 0 : prior.scale.standardUncertainty);
  const u = Math.hypot(offset, scale * away);
  const boilingPoint = departure ? target : target + prior.offset.value;
  const slope = boilingPointSlope(scaledSalts(salts, 1 / water), pressure) * (departure?.scale ?? 1);
  return {
    boilingPoint,
    standardUncertainty: u,
    interval95: [boilingPoint - 1.96 * u, boilingPoint + 1.96 * u],
    waterUncertainty: slope > 0 ? (water * u) / slope : 0,
    says: departure
      ? "By this bath's own boil readings."
      : "By published curves of each salt alone and a rule for mixing them; one published mixture and older charts differ from it by this much. The bath's own first boil readings decide: boil it, read it, and only then let water leave or trickle it in.",
  };
}
