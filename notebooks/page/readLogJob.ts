import { readLog } from "../../lib/log/index.ts";
import type { Hints } from "../../lib/log/types.ts";
import { answerJobs } from "./answerJobs.ts";

/** A log to be read by the worker. */
export interface ReadLogWork {
  readonly text: string;
  readonly hints: Hints;
}

answerJobs(({ text, hints }: ReadLogWork) => readLog(text, hints));
