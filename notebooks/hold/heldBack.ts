import { type FeedPlan, humanErrors, type PlanGivens, type PlanOptions, planFeed } from "../../lib/fit/index.ts";
import type { Says } from "../aside/asideFunction.ts";
import { heatDoubtOf, type PlanWork } from "./planWork.ts";

/** One thing that would keep more holds in the band, and how many, of a hundred. */
export interface HeldBack {
  readonly what: string;
  readonly how: string;
  /** Of a hundred, with the table followed and nobody correcting: now, and with it. */
  readonly corrected: { readonly now: number; readonly after: number };
  readonly nobody: { readonly now: number; readonly after: number };
  /** Standard uncertainty of a difference, of a hundred, from the number of holds. */
  readonly u: number;
}

const draws = 1000;

interface Better {
  readonly what: string;
  readonly how: string;
  readonly givens?: PlanGivens;
  readonly errors?: PlanOptions["errors"];
}

/** Each doubt halved by itself. */
function bettersOf({ givens, options }: PlanWork): readonly Better[] {
  const errors = { ...humanErrors, ...options.errors };
  const half = (...names: readonly (keyof typeof errors)[]) =>
    Object.fromEntries(names.map((name) => [name, errors[name] / 2]));
  return [
    {
      what: "A checked thermometer",
      how: "Read it in plain boiling water, with the barometer of that hour: its error is the same all night. Worked for half of it.",
      errors: half("thermometerFixed"),
    },
    {
      what: "A steadier place for the probe",
      how: "In the roll, off wall, bottom and surface, always there. Worked for half of what readings scatter and wander.",
      errors: half("eachReading", "wandering"),
    },
    {
      what: "A sheltered fire",
      how: "A windbreak that leaves the burner all its air. Worked for gusts half as strong.",
      errors: half("gusts"),
    },
    {
      what: "A fire known better",
      how: "The log of one more run, the cylinder weighed before and after. Worked for half of the doubt of its heat.",
      givens: withHeatDoubt(givens, heatDoubtOf(givens) / 2),
    },
    {
      what: "A feed measured better",
      how: "A marked jug or a scale in place of a cup, a drip counted against the clock. Worked for half of their errors.",
      errors: half("cupAllNight", "eachPour", "steadyFeed"),
    },
  ];
}

/** What holds a promise back: each doubt halved in turn on the same draws, the most helpful first. */
export function heldBack(work: PlanWork, says: Says): readonly HeldBack[] {
  const { givens, options } = work;
  const plan = (better?: Better): FeedPlan =>
    planFeed(better?.givens ?? givens, { ...options, errors: { ...options.errors, ...better?.errors }, draws });
  says("what holds it back", 0.05);
  const now = plan();
  const betters = bettersOf(work);
  const u = 100 * Math.hypot(now.inBandUncertainty.corrected, now.inBandUncertainty.corrected) * 0.7;
  const found = betters.map((better, i): HeldBack => {
    says(`what holds it back: ${better.what.toLowerCase()}`, (i + 1) / (betters.length + 1));
    const after = plan(better);
    return {
      what: better.what,
      how: better.how,
      corrected: { now: 100 * now.inBandCorrected, after: 100 * after.inBandCorrected },
      nobody: { now: 100 * now.inBand, after: 100 * after.inBand },
      u,
    };
  });
  const gain = ({ corrected, nobody }: HeldBack): number =>
    corrected.after - corrected.now + 0.5 * (nobody.after - nobody.now);
  return found.sort((a, b) => gain(b) - gain(a));
}

function withHeatDoubt(givens: PlanGivens, doubt: number): PlanGivens {
  const { fit, setup } = givens;
  if (!fit) return { ...givens, setup: { ...setup, heatUncertainty: doubt } };
  const parameters = fit.parameters.map((one) =>
    one.name === "heat into the bath" ? { ...one, standardUncertainty: doubt * one.value } : one,
  );
  return { ...givens, setup: { ...setup, heatUncertainty: doubt }, fit: { ...fit, parameters } };
}
