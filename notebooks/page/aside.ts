/** One job that is done off the page's thread. */
export interface AsideJob<Found> {
  readonly found: Promise<Found>;
  /** Ends the job; `found` then fails with "stopped". */
  readonly stop: () => void;
}

/** Does jobs off the page's thread, one after another. */
export interface Aside<Work, Found> {
  start(work: Work, says?: (words: string, share?: number) => void): AsideJob<Found>;
}

/** What goes to the worker: plain data under an id. */
export interface AsideSent<Work> {
  readonly id: number;
  readonly work: Work;
}

/** What comes back under that id: how far it is, any number of times; then one result or one error. */
export type AsideBack<Found> =
  | { readonly id: number; readonly says: string; readonly share?: number }
  | { readonly id: number; readonly found: Found }
  | { readonly id: number; readonly error: string };

interface Waiting<Work, Found> extends AsideSent<Work> {
  readonly says: (words: string, share?: number) => void;
  readonly resolve: (found: Found) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Jobs for one worker, one after another; a job that is stopped ends the worker, and the next one gets a new one. Where
 * the browser allows no worker, or refuses it, jobs are done on the page's own thread, by `here`.
 */
export function aside<Work, Found>(make: () => Worker, here: (work: Work) => Found): Aside<Work, Found> {
  let worker: Worker | undefined;
  let refused = false;
  let ids = 0;
  let running: Waiting<Work, Found> | undefined;
  let queue: Waiting<Work, Found>[] = [];

  function finish(end: (job: Waiting<Work, Found>) => void): void {
    const job = running;
    running = undefined;
    if (job) end(job);
    next();
  }

  function heard({ data }: MessageEvent<AsideBack<Found>>): void {
    if (data.id !== running?.id) return;
    if ("says" in data) running.says(data.says, data.share);
    else if ("found" in data) finish(({ resolve }) => resolve(data.found));
    else finish(({ reject }) => reject(new Error(data.error)));
  }

  function doHere({ work, resolve, reject }: Waiting<Work, Found>): void {
    try {
      resolve(here(work));
    } catch (error) {
      reject(error instanceof Error ? error : new Error(String(error)));
    }
  }

  /** A policy or an old browser refuses the worker: the work is done all the same. */
  function refuse(): void {
    refused = true;
    worker?.terminate();
    worker = undefined;
    // In a turn of its own: the page is drawn first.
    setTimeout(() => finish(doHere));
  }

  function next(): void {
    if (running) return;
    running = queue.shift();
    if (!running) return;
    if (refused) {
      refuse();
      return;
    }
    try {
      worker ??= make();
      worker.onmessage = heard;
      worker.onerror = refuse;
    } catch {
      refuse();
      return;
    }
    const { id, work } = running;
    worker.postMessage({ id, work } satisfies AsideSent<Work>);
  }

  function stop(id: number): void {
    const stopped = new Error("stopped");
    const waiting = queue.find((job) => job.id === id);
    if (waiting) {
      queue = queue.filter((job) => job !== waiting);
      waiting.reject(stopped);
    } else if (running?.id === id) {
      worker?.terminate();
      worker = undefined;
      finish(({ reject }) => reject(stopped));
    }
  }

  return {
    start(work, says = () => {}) {
      ids += 1;
      const id = ids;
      const found = new Promise<Found>((resolve, reject) => {
        queue.push({ id, work, says, resolve, reject });
      });
      next();
      return { found, stop: () => stop(id) };
    },
  };
}
