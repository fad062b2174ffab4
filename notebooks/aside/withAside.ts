import type { Vocabulary } from "../../lib/lines/index.ts";
import { aside } from "../page/aside.ts";
import { asideFunctions } from "./functions.ts";
import { SharedWorks } from "./shared.ts";
import AsideWorker from "./worker.ts?worker&inline";

const queue = aside<{ readonly name: string; readonly data: unknown }, unknown>(
  () => new AsideWorker(),
  ({ name, data }) => asideFunctions.find((one) => one.name === name)?.does(data, () => {}),
);

const works = new SharedWorks((name, data, says) => queue.start({ name, data }, says));

/** The vocabulary with what takes long done off the page's thread, one after another. */
export function withAside(vocabulary: Vocabulary): Vocabulary {
  return {
    functions: vocabulary.functions.map((func) => {
      const slow = asideFunctions.find(({ name }) => name === func.name);
      if (!func.work || !slow) return func;
      return {
        ...func,
        slow: (job, ...given) => {
          const data = slow.work(given);
          job.says(slow.waits);
          const { found, stop } = works.start(slow, data, (words, share) => job.says(words, share));
          job.onStop(stop);
          return found.then((result) => slow.parts(result, data));
        },
      };
    }),
  };
}
