import { superseded } from "./graph.ts";
import type { Job, Result } from "./types.ts";

/**
 * A slow function at work for one line: it tells how far it is, and can be ended by a newer edit or by hand.
 * @example
 * const job = new JobAtWork(() => {});
 * job.says("fitting", 0.5);
 * job.progress // { says: "fitting", share: 0.5 }
 */
export class JobAtWork implements Job {
  progress: { readonly says?: string; readonly share?: number } = {};
  /** A newer edit came: what this work finds is not wanted. */
  dropped = false;
  #over = false;
  #ends: (() => void)[] = [];
  #stopped: ((result: Result) => void) | undefined;
  readonly #tell: () => void;

  /** @param tell Called when the work says how far it is. */
  constructor(tell: () => void) {
    this.#tell = tell;
  }

  says(words: string, share?: number): void {
    if (this.#over) return;
    this.progress = { says: words, ...(share !== undefined && { share: Math.min(1, Math.max(0, share)) }) };
    this.#tell();
  }

  onStop(end: () => void): void {
    if (this.#over) end();
    else this.#ends.push(end);
  }

  /** What the work comes to, or that it was stopped, whichever is first. */
  outcome(found: Promise<Result>): Promise<Result> {
    return new Promise((end) => {
      this.#stopped = end;
      const finish = (result: Result) => {
        this.#over = true;
        end(result);
      };
      found.then(finish, (error: unknown) => finish({ state: "stopped", says: String(error) }));
    });
  }

  /** The runtime works a line again only when its earlier work has come to something. */
  drop(): void {
    this.dropped = true;
    this.#end();
    this.#stopped?.(superseded);
  }

  stopByHand(): void {
    if (this.#over) return;
    this.#end();
    this.#stopped?.({ state: "stopped", says: "stopped by you", byYou: true });
  }

  #end(): void {
    if (this.#over) return;
    this.#over = true;
    const ends = this.#ends;
    this.#ends = [];
    for (const end of ends) end();
  }
}
