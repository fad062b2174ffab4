import type { Job } from "./types.ts";

/** Some pieces of work that are one job to whoever waits for it. */
export interface JobsTogether {
  /** The job as one piece sees it. */
  part(index: number): Job;
  /** A piece is done. */
  done(index: number): void;
  /** Ends every piece. */
  end(): void;
  over(): boolean;
}

/**
 * Lets pieces of work that run side by side tell how far they are as one, and end together.
 * @param job The one job, if anybody waits with one.
 * @param count How many pieces there are.
 * @returns A job for each piece; the share that is told is the mean of theirs.
 * @example jobsTogether(undefined, 3).over() // false
 */
export function jobsTogether(job: Job | undefined, count: number): JobsTogether {
  const shares = new Array<number>(count).fill(0);
  let words = "working it out";
  let over = false;
  let ends: (() => void)[] = [];
  const tell = () => {
    if (!over) job?.says(words, shares.reduce((sum, share) => sum + share, 0) / count);
  };
  const end = () => {
    if (over) return;
    over = true;
    for (const one of ends) one();
    ends = [];
  };
  job?.onStop(end);
  return {
    part: (index) => ({
      says: (said, share) => {
        words = said;
        if (share !== undefined) shares[index] = Math.min(1, Math.max(0, share));
        tell();
      },
      onStop: (stop) => {
        if (over) stop();
        else ends.push(stop);
      },
    }),
    done: (index) => {
      shares[index] = 1;
      tell();
    },
    end,
    over: () => over,
  };
}
