import type { AsideJob } from "../page/aside.ts";
import type { AsideFunction, Says } from "./asideFunction.ts";

/** How many finished works are kept for a case that comes to the same later. */
const most = 8;

interface Shared {
  readonly name: string;
  readonly data: unknown;
  readonly job: AsideJob<unknown>;
  readonly says: Set<Says>;
  users: number;
  done: boolean;
}

/** Starts works, and lets those that are one and the same have one job; it ends when nobody waits for it any more. */
export class SharedWorks {
  readonly #start: (name: string, data: unknown, says: Says) => AsideJob<unknown>;
  #works: Shared[] = [];

  constructor(start: (name: string, data: unknown, says: Says) => AsideJob<unknown>) {
    this.#start = start;
  }

  start(func: AsideFunction, data: unknown, says: Says): AsideJob<unknown> {
    const work =
      this.#works.find((one) => one.name === func.name && func.same?.(one.data, data)) ?? this.#begin(func.name, data);
    work.users += 1;
    work.says.add(says);
    let left = false;
    return {
      found: work.job.found,
      stop: () => {
        if (left || work.done) return;
        left = true;
        work.users -= 1;
        work.says.delete(says);
        if (work.users > 0) return;
        this.#works = this.#works.filter((one) => one !== work);
        work.job.stop();
      },
    };
  }

  #begin(name: string, data: unknown): Shared {
    const says = new Set<Says>();
    const job = this.#start(name, data, (words, share) => {
      for (const one of says) one(words, share);
    });
    const work: Shared = { name, data, job, says, users: 0, done: false };
    job.found.then(
      () => {
        work.done = true;
        const done = this.#works.filter((one) => one.done);
        const [oldest] = done;
        if (done.length > most) this.#works = this.#works.filter((one) => one !== oldest);
      },
      () => {
        work.done = true;
        this.#works = this.#works.filter((one) => one !== work);
      },
    );
    this.#works.push(work);
    return work;
  }
}
