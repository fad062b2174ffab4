import { fitRun } from "../../lib/fit/index.ts";
import { fitWork } from "../givensOf.ts";
import { partsOfThisLog } from "../ofThisLog.ts";
import { partsOfFit } from "../partsOfFit.ts";
import { asideFunction } from "./asideFunction.ts";

/** Fits the bath to a run's log. */
export const fitOfRun = asideFunction({
  name: "fit of run",
  waits: "waiting to be fitted",
  work: fitWork,
  does({ run, givens }, says) {
    const readings = run.entries.filter(({ kind, struck }) => kind === "reading" && !struck).length;
    says(`fitting the bath to ${readings.toLocaleString("en-US")} readings`);
    return fitRun(run, givens);
  },
  parts: (fit, { aims, run }) => partsOfThisLog(partsOfFit(fit, aims), run),
  same: (a, b) => a.run === b.run && a.aims === b.aims && JSON.stringify(a.givens) === JSON.stringify(b.givens),
});
