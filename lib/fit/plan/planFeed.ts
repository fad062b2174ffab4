import { burnerEfficiencyPrior } from "../../physics/burnerEfficiencyPrior.ts";
import { propane } from "../../physics/propane.ts";
import { additionsOf } from "./additionsOf.ts";
import { bothOf, drawsOf, type Planning, planning, promisesOf, scheduleOf, sharesOf, tried } from "./planning.ts";
import { remarksOn } from "./planRemarks.ts";
import type { Promised } from "./promiseOf.ts";
import { driftOf, earlyStart, searchFeed } from "./searchFeed.ts";
import { evenTable, type FoundTable, fullTable, searchTable, steadiestGain } from "./searchTable.ts";
import type { HoldSchedule } from "./simulateHold.ts";
import { tableOf } from "./tableOf.ts";
import { type TimesToStart, timesToStart } from "./timeToStart.ts";
import type { CorrectionTable, FeedPlan, PlanGivens, PlanOptions } from "./types.ts";

/** Simulated holds before the first result: half of them with nobody correcting. */
const first = 150;
/** Share of the full correction that the first result takes. */
const firstGain = 0.3;

/**
 * How to feed a hold so that the boiling point stays in its band: a steady drip or pours, when to start, how sure that
 * is, and what to do at each reading. The schedule is searched against many simulated holds, drawn from what is unsure
 * of the bath and from how people and thermometers err. A hold counts when the bath's true temperature is in the band
 * for 95 % of the time. One bath's own error is the same all night: a single bath may hold more or less often than the
 * promise, which is right over many baths.
 *
 * @param givens setup (with the standard uncertainty of its heat as a share, 0.05 where absent) with a bath's charge or
 * a fitted run or both; target and half-width of the band, K; hold, s, 60 to 21,600; parts, kg; pressure, Pa; pours
 * @param options draws, seed, progress, stop, rounds of refining, s between readings, other errors
 * @returns additions (s from parts in, kg, s) and promises: SI; plain data, so that it crosses to and from a worker
 * @throws RangeError for a number out of range; for neither bath nor fit; for a fire that does not keep it boiling; for a
 * measure below 20 s of feed; as `departedSaltRatio`
 * Source: our own simulation of the bath by the slopes of `brineEnthalpy` and `boilingPoint` at the target, held to
 * `simulateBath`; the errors are judgements (`humanErrors`).
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } };
 * const bath = { water: 6.6, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 }, temperature: 291 };
 * const plan = planFeed({ setup, bath, target: 417.6, band: 2.2, hold: 1800, pressure: 101_325, pours: "steady" });
 * plan.additions.length; // 1
 * plan.inBandCorrected > plan.inBand; // true
 * plan.largestSlug <= plan.slugLimit.mass; // true
 */
export function planFeed(givens: PlanGivens, options: PlanOptions = {}): FeedPlan {
  const plan = planning(givens, options);
  const { draws = 300, progress, stop, refine = 0 } = options;
  const times = timesToStart(givens, plan);
  const early = scheduleOf(plan, 1, earlyStart(plan));
  const begin = drawsOf(plan, Math.min(first, draws), 1);
  const guessed = evenTable(plan, Math.min(firstGain, steadiestGain(plan)));
  const nobody = tried(plan, early, begin);
  const corrected = tried(plan, early, begin, guessed);
  const guess: FoundTable = { correcting: guessed, gain: firstGain, promised: corrected };
  const shares = { nobody: nobody.held / nobody.n, table: corrected.held / corrected.n, full: null };
  const soFar = planOf(
    "first",
    givens,
    plan,
    times(early.start),
    early,
    { nobody, corrected },
    tableOf(plan, early, guess, shares),
  );
  progress?.(soFar);
  if (stop?.()) return soFar;

  const searching = [...begin, ...drawsOf(plan, draws - begin.length, 1, begin.length)];
  const does = searchFeed(plan, searching, stop);
  if (stop?.()) return soFar;
  const found = searchTable(plan, does, searching);
  const tables = { corrected: found.correcting, full: fullTable(plan) };
  let promises = promisesOf(plan, does, tables, draws, 2);
  const result = (stage: FeedPlan["stage"]) =>
    planOf(stage, givens, plan, times(does.start), does, promises, tableOf(plan, does, found, sharesOf(promises)));
  let best = result("searched");
  for (let round = 1; round <= refine && !stop?.(); round++) {
    progress?.(best);
    promises = bothOf(promises, promisesOf(plan, does, tables, promises.nobody.n, 10 + round));
    best = result("refined");
  }
  return best;
}

function planOf(
  stage: FeedPlan["stage"],
  givens: PlanGivens,
  plan: Planning,
  times: TimesToStart,
  does: HoldSchedule,
  { nobody, corrected }: { readonly nobody: Promised; readonly corrected: Promised },
  table: CorrectionTable,
): FeedPlan {
  const { bath, dip, limit, hold, slug, measureLimited } = plan;
  const additions = additionsOf(does, limit);
  const { burner } = givens.setup;
  const lit = (times.toBoil ?? 0) + (times.toStart ?? 0) + hold;
  const drift = driftOf(plan);
  const share = ({ held, n }: Promised) => held / n;
  const doubt = (one: Promised) => Math.sqrt(Math.max(0.25 / one.n, share(one) * (1 - share(one))) / one.n);
  const lost = ({ lost: s, held, n }: Promised) => (n > held ? s / (n - held) : 0);
  const pours = [
    ...additions.filter(() => slug > 0).map(({ water }) => water),
    ...table.rows.map(({ water }) => water),
  ];
  const waterTotal = additions.reduce((sum, { water }) => sum + water, 0);
  const { rate: gas, relative } = gasOf(burner);
  const result = {
    stage,
    additions,
    inBand: share(nobody),
    inBandCorrected: share(corrected),
    inBandUncertainty: { nobody: doubt(nobody), corrected: doubt(corrected) },
    inBandOnceBack: { nobody: nobody.heldOnceBack / nobody.n, corrected: corrected.heldOnceBack / corrected.n },
    timeLost: { nobody: lost(nobody), corrected: lost(corrected) },
    waterTotal,
    feed: does.rate,
    gasTotal: gas * lit,
    largestSlug: Math.max(0, ...pours),
    slugLimit: limit,
    measureLimited,
    timeToBoil: times.toBoil,
    timeToStart: times.toStart,
    waterFirst: times.waterFirst,
    startReading: bath.target + does.start,
    startsAt:
      "The hold starts at a reading, not at a clock: put the parts in when the thermometer reads this as it climbs.",
    clockFrom: "parts in" as const,
    drift,
    bandLasts: (2 * bath.band) / drift,
    dip: dip.dip,
    recovery: dip.recovery,
    uncertainty: {
      timeToBoil: times.toBoil === null ? null : bath.heatDoubt * times.toBoil,
      feed: bath.heatDoubt * does.rate,
      waterTotal: bath.heatDoubt * waterTotal,
      // The hold is as long as it is planned; only the way there hangs on the heat.
      gasTotal: gas * Math.hypot(bath.heatDoubt * (lit - hold), relative * lit),
      drift: Math.hypot(bath.heatDoubt, bath.slopeDoubt) * drift,
    },
    table,
    simulated: plan.simulated,
    cautions: [
      limit.caution,
      "Never put salt into a hot bath. The salt's safety data sheet and your local rules come first.",
      "One fit's error is the same all night: your bath may hold more or less often than said; over many baths it is right.",
    ],
  };
  return { ...result, remarks: [...remarksOn(result, plan, times.why), ...(relative > 0 ? [gasByHandbook] : [])] };
}

const gasByHandbook =
  "The gas is reckoned by a handbook share, some 35 of 100 parts of an open flame's heat reaching the bath: the burner's own rate is not known.";

/** kg/s of propane, and its relative standard uncertainty where only the heat that reaches the bath is known. */
function gasOf(burner: PlanGivens["setup"]["burner"]): { readonly rate: number; readonly relative: number } {
  const { value } = propane.grossHeatingValue;
  if (!("heat" in burner)) return { rate: burner.power / value, relative: 0 };
  const share = burnerEfficiencyPrior({ skirted: false, basis: "gross" });
  return { rate: burner.heat / share.value / value, relative: share.standardUncertainty / share.value };
}
