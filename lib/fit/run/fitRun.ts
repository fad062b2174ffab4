import type { Run } from "../../log/types.ts";
import { fitKnowing } from "./fitKnowing.ts";
import type { FitGivens, FittedRun } from "./types.ts";

/**
 * Fits the boiling bath to one run's log: the heat of the fire, the water, how the bath departs from the published
 * boiling curve, thermometer, mixing, burner changes and cup, each with a prior from the setup; pours that were never
 * written and readings that do not belong are weighed against each other as explanations. Where the log cannot tell,
 * answers come out as wide as that is, and a remark says so.
 *
 * @param run a log as `readLog` gives it; struck-out entries count for nothing
 * @param givens as for `waterBalance`, with target and band (half-width) in K; the tank in m, the burner's gas in W
 * gross, where they are known
 * @returns SI; `boilOff` is the mean from the first boil to the log's last row
 * @throws RangeError for a number out of range; Error, in the maker's words, where the log lacks what is essential:
 * two readings at the boil at different times
 * Source: Gaussian linearisation with covariances (JCGM 101 and 102 in spirit; a mixture over discrete faults); heats
 * by `brineEnthalpy`, boiling line by `boilingPoint`.
 * @example
 * const reading = (time, si) => ({ id: `r${time}`, time, kind: "reading", line: 1, struck: false,
 *   quantity: { text: "", si, dimension: {}, unit: "K", standardUncertainty: 0, known: "measured" } });
 * const run = { entries: [reading(0, 415), reading(600, 416), reading(1200, 417)] };
 * const salts = { sodiumHydroxide: 8, sodiumNitrate: 3 };
 * fitRun(run, { salts, pressure: 101_325, target: 417.6, band: 1.1 }).boilOff.value // 0.0004
 */
export function fitRun(run: Run, givens: FitGivens): FittedRun {
  return fitKnowing(run, givens, {});
}
