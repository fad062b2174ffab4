import type { AsideBack, AsideSent } from "./aside.ts";

declare const self: {
  onmessage: ((event: MessageEvent<AsideSent<unknown>>) => void) | null;
  postMessage: (back: AsideBack<unknown>) => void;
};

/** Inside a worker: does each job that comes, and sends back how far it is, then one result or one error. */
export function answerJobs<Work, Found>(
  does: (work: Work, says: (words: string, share?: number) => void) => Found,
): void {
  self.onmessage = ({ data: { id, work } }) => {
    try {
      const found = does(work as Work, (says, share) =>
        self.postMessage({ id, says, ...(share === undefined ? {} : { share }) }),
      );
      self.postMessage({ id, found });
    } catch (error) {
      self.postMessage({ id, error: error instanceof Error ? error.message : String(error) });
    }
  };
}
