import { readLog } from "../../lib/log/index.ts";
import type { Hints, LogReading } from "../../lib/log/types.ts";

/** A job for the worker: plain data with an id; one result or one error comes back under it. */
export interface ReadLogJob {
  readonly id: number;
  readonly text: string;
  readonly hints: Hints;
}

export type ReadLogDone =
  | { readonly id: number; readonly reading: LogReading }
  | { readonly id: number; readonly error: string };

declare const self: {
  onmessage: ((event: MessageEvent<ReadLogJob>) => void) | null;
  postMessage: (done: ReadLogDone) => void;
};

self.onmessage = ({ data: { id, text, hints } }) => {
  try {
    self.postMessage({ id, reading: readLog(text, hints) });
  } catch (error) {
    self.postMessage({ id, error: error instanceof Error ? error.message : String(error) });
  }
};
