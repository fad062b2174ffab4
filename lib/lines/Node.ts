import type { JobAtWork } from "./JobAtWork.ts";
import type { Result } from "./types.ts";

/** One line in one case: what it came to, and from what. */
export class Node {
  readonly line: string;
  readonly inCase: string;
  /** Counts how often the line itself was changed in this case: work for an older version is not kept. */
  version = 0;
  /** What the last work was done for: its version and inputs, and what it came to. */
  workedVersion = -1;
  workedFrom: readonly unknown[] = [];
  worked: Result | undefined;
  /** What others were told that it came to. */
  result: Result | undefined;
  /** An edit is on its way to it. */
  stale = false;
  /** What it came to last, while it is worked again. */
  before: (Result & { readonly state: "settled" }) | undefined;
  job: JobAtWork | undefined;

  constructor(line: string, inCase: string) {
    this.line = line;
    this.inCase = inCase;
  }

  /** What it comes to now. */
  get now(): Result {
    return (this.stale ? undefined : this.result) ?? this.working;
  }

  get working(): Result {
    return { state: "working", ...(this.before && { before: this.before.value }), ...this.job?.progress };
  }

  /** Nobody waits for its work any more. */
  drop(): void {
    const { job } = this;
    this.job = undefined;
    job?.drop();
  }

  /** Whether the last work was done for this version and these inputs. */
  isWorkedFrom(results: readonly unknown[]): boolean {
    if (this.workedVersion !== this.version || this.worked === undefined) return false;
    for (let i = 0; i < results.length; i++) if (results[i] !== this.workedFrom[i]) return false;
    return true;
  }
}
