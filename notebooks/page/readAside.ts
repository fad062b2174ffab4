import { readLog } from "../../lib/log/index.ts";
import type { Hints, LogReading } from "../../lib/log/types.ts";
import { type AsideJob, aside } from "./aside.ts";
import type { ReadLogWork } from "./readLogJob.ts";
import ReadLogWorker from "./readLogJob.ts?worker&inline";

/** Characters from which a log is read off the page's thread: below it reading takes a few milliseconds. */
const long = 100_000;

const reader = aside<ReadLogWork, LogReading>(
  () => new ReadLogWorker(),
  ({ text, hints }) => readLog(text, hints),
);

/** Whether a log is so long that it is read off the page's thread. */
export const isLong = (text: string): boolean => text.length > long;

/** Reads a long log off the page's thread; where the browser allows no worker, on it. */
export const readAside = (text: string, hints: Hints): AsideJob<LogReading> => reader.start({ text, hints });
