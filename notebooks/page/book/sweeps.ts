import type { Lines, OwnFigure, Swept } from "../../../lib/lines/index.ts";
import { wordsOf } from "./form.ts";

type Sweep = Extract<OwnFigure, { draws: "a sweep" }>;

/** How far a sweep is. */
export interface SweepShown {
  readonly swept: readonly Swept[] | undefined;
  /** Lines have changed since: it shows what stood before. */
  readonly stale: boolean;
  /** 0 to 1 while it is worked. */
  readonly share: number | undefined;
  readonly failed: string | undefined;
  readonly stopped: boolean;
  readonly stop: () => void;
  readonly again: () => void;
}

interface Kept {
  version: number;
  swept?: readonly Swept[];
  share?: number | undefined;
  failed?: string | undefined;
  stopped: boolean;
  end: () => void;
}

/** ms without a change before a sweep is worked anew: a held key does not work it at each step. */
const pause = 150;

/** The sweeps of one open notebook, each worked anew once its lines have settled. */
export class Sweeps {
  readonly #open: Lines;
  readonly #told: () => void;
  readonly #kept = new Map<string, Kept>();

  constructor(open: Lines, told: () => void) {
    this.#open = open;
    this.#told = told;
  }

  /** What a sweep comes to; begins it where something has changed. `version` rises with every change of the lines. */
  of(figure: Sweep, version: number, busy: boolean): SweepShown {
    const key = JSON.stringify([
      figure,
      this.#open
        .cases()
        .filter(({ hidden }) => !hidden)
        .map(({ name }) => name),
    ]);
    const kept = this.#kept.get(key) ?? { version: -1, stopped: false, end: () => {} };
    this.#kept.set(key, kept);
    if (kept.version !== version && !busy) this.#begin(figure, kept, version);
    return {
      swept: kept.swept,
      stale: kept.share !== undefined || kept.version !== version,
      share: kept.share,
      failed: kept.failed,
      stopped: kept.stopped,
      stop: () => {
        kept.end();
        Object.assign(kept, { share: undefined, stopped: true });
        this.#told();
      },
      again: () => {
        kept.version = -1;
        this.#told();
      },
    };
  }

  #begin(figure: Sweep, kept: Kept, version: number): void {
    kept.end();
    let ended = false;
    Object.assign(kept, { version, share: 0, failed: undefined, stopped: false });
    const waiting = setTimeout(() => void work(), pause);
    kept.end = () => {
      ended = true;
      clearTimeout(waiting);
    };
    const { line, by, from, to } = figure;
    let said = 0;
    const progress = (share: number): boolean => {
      kept.share = share;
      if (share - said >= 0.1) {
        said = share;
        this.#told();
      }
      return ended;
    };
    const work = async (): Promise<void> => {
      try {
        const swept = await this.#open.sweep(line, by, { from, to, progress });
        if (!ended) kept.swept = swept;
      } catch (error) {
        if (!ended) Object.assign(kept, { failed: wordsOf(error), swept: undefined });
      }
      if (ended) return;
      kept.share = undefined;
      this.#told();
    };
  }

  /** Ends what is worked. */
  close(): void {
    for (const { end } of this.#kept.values()) end();
  }
}
