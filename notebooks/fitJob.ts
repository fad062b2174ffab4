import { fitRun } from "../lib/fit/index.ts";
import type { FitWork } from "./givensOf.ts";
import { answerJobs } from "./page/answerJobs.ts";

answerJobs(({ run, givens }: FitWork, says) => {
  const readings = run.entries.filter(({ kind, struck }) => kind === "reading" && !struck).length;
  says(`fitting the bath to ${readings.toLocaleString("en-US")} readings`);
  return fitRun(run, givens);
});
