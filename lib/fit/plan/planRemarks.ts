import type { Planning } from "./planning.ts";
import { waterPerKelvin } from "./searchTable.ts";
import type { FeedPlan } from "./types.ts";

/**
 * What a maker should hear beside a promise: what holds it back, and what would help.
 *
 * @param found the plan without its remarks
 * @param plan what was planned
 * @param why the bath never comes to its start, if so
 * @example remarksOn(found, plan).length // 3
 */
export function remarksOn(found: Omit<FeedPlan, "remarks">, plan: Planning, why?: string): readonly string[] {
  const { bath, errors, dip, slug, measureLimited, hold } = plan;
  const says: string[] = [];
  if (why) says.push(`It does not come to its start by itself: ${why}.`);
  if (bath.heat < 1.2 * bath.quiet * bath.evaporation) {
    says.push(
      "The fire is hardly above what a bath just below its boil evaporates: a gust stops the boil. Turn it up before trusting this plan.",
    );
  }
  if (measureLimited) {
    says.push("The measure is larger than one pour may be: the plan pours the limit, more often.");
  }
  if (bath.heatDoubt > 0.1) {
    says.push(
      "The fire's heat into the bath is known so little that the feed is half a guess: a log of one run, fitted, helps most.",
    );
  }
  const seen = Math.hypot(errors.thermometerFixed, errors.eachReading, errors.wandering);
  if (bath.band < 1.3 * seen) {
    says.push(
      "The band is hardly wider than the thermometer's own error: a better or a checked thermometer helps most.",
    );
  } else if (found.inBandCorrected < 0.9) {
    says.push("Turning the fire down as far as it still boils steadily helps more than any feeding.");
  }
  if (slug > 0) {
    const drop = slug / waterPerKelvin(plan) / bath.band;
    if (drop > 0.6)
      says.push("One pour moves the bath by more than half of its band's half-width: smaller pours hold better.");
  }
  if (dip.dip > bath.band) {
    says.push("The parts cool the bath out of its band whatever is done; count the hold from when it is back.");
  } else if (dip.recovery > 0.05 * hold && dip.dip > 0.5 * bath.band) {
    says.push("The parts take a good part of the band for a while: warm parts or fewer at a time hold better.");
  }
  if (found.waterFirst > 0) {
    says.push(
      "The bath boils above the reading to start at: water goes in first, cold before lighting or as a thin feed.",
    );
  }
  return says;
}
