import { answerJobs } from "../page/answerJobs.ts";
import { asideFunctions } from "./functions.ts";

/** What is sent to the worker: which function, and what it works on. */
export interface AsideWork {
  readonly name: string;
  readonly data: unknown;
}

answerJobs(({ name, data }: AsideWork, says) => {
  const func = asideFunctions.find((one) => one.name === name);
  if (!func) throw new Error(`unknown function aside: ${name}`);
  return func.does(data, says);
});
