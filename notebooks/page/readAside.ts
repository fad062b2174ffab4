import { readLog } from "../../lib/log/index.ts";
import type { Hints, LogReading } from "../../lib/log/types.ts";
import type { ReadLogDone, ReadLogJob } from "./readLogJob.ts";
import ReadLogWorker from "./readLogJob.ts?worker&inline";

/** Characters from which a log is read off the page's thread: below it reading takes a few milliseconds. */
const long = 100_000;

let jobs = 0;

export interface Aside {
  readonly reading: Promise<LogReading>;
  /** Ends the reading; the promise then fails with "stopped". */
  readonly stop: () => void;
}

/** Whether a log is so long that it is read off the page's thread. */
export const isLong = (text: string): boolean => text.length > long;

/** Reads a long log off the page's thread; where the browser allows no worker, on it. */
export function readAside(text: string, hints: Hints): Aside {
  let worker: Worker;
  try {
    worker = new ReadLogWorker();
  } catch {
    return { reading: Promise.resolve().then(() => readLog(text, hints)), stop: () => {} };
  }
  jobs += 1;
  const id = jobs;
  let stop = (): void => {};
  const reading = new Promise<LogReading>((resolve, reject) => {
    stop = () => {
      worker.terminate();
      reject(new Error("stopped"));
    };
    worker.onmessage = ({ data }: MessageEvent<ReadLogDone>) => {
      if (data.id !== id) return;
      worker.terminate();
      if ("reading" in data) resolve(data.reading);
      else reject(new Error(data.error));
    };
    worker.onerror = () => {
      worker.terminate();
      // A policy or an old browser refuses the worker: the log is read all the same.
      resolve(readLog(text, hints));
    };
  });
  worker.postMessage({ id, text, hints } satisfies ReadLogJob);
  return { reading, stop: () => stop() };
}
