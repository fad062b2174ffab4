import { type FittedRun, fitRun } from "../lib/fit/index.ts";
import type { Vocabulary } from "../lib/lines/index.ts";
import FitWorker from "./fitJob.ts?worker&inline";
import { type FitWork, fitWork } from "./givensOf.ts";
import { aside } from "./page/aside.ts";
import { partsOfFit } from "./partsOfFit.ts";

const fitter = aside<FitWork, FittedRun>(
  () => new FitWorker(),
  ({ run, givens }) => fitRun(run, givens),
);

/** The vocabulary with its fits done off the page's thread. */
export function withFitsAside(vocabulary: Vocabulary): Vocabulary {
  return {
    functions: vocabulary.functions.map((func) =>
      func.work && func.name === "fit of run"
        ? {
            ...func,
            slow: (job, ...given) => {
              const work = fitWork(given);
              job.says("waiting to be fitted");
              const { found, stop } = fitter.start(work, (words, share) => job.says(words, share));
              job.onStop(stop);
              return found.then((fit) => partsOfFit(fit, work.aims));
            },
          }
        : func,
    ),
  };
}
