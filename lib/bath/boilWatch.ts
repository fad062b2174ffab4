import type { SimulationEvent, SlugReport } from "./simulationTypes.ts";

/** A number as an event says it: three digits. */
export const few = (value: number): string => String(Number(value.toPrecision(3)));

interface Watched {
  readonly place: number;
  /** s, until when a stop is its doing. */
  readonly until: number;
  stoppedAt: number | undefined;
}

/** Follows when the bath boils and when not, and which slug stopped it for how long. */
export class BoilWatch {
  boiling: boolean;
  readonly slugs: SlugReport[] = [];
  readonly #events: SimulationEvent[];
  #watched: Watched[] = [];

  /**
   * @param boiling whether it does at the start
   * @param events where to say what happens
   */
  constructor(boiling: boolean, events: SimulationEvent[]) {
    this.boiling = boiling;
    this.#events = events;
  }

  /** A slug goes in; `until`, s, is when it is mixed. */
  add(slug: Omit<SlugReport, "stoppedBoil" | "stoppedFor">, until: number): void {
    if (this.boiling) this.#watched.push({ place: this.slugs.length, until, stoppedAt: undefined });
    this.slugs.push({ ...slug, stoppedBoil: false });
  }

  /** It no longer boils from `time` on. */
  stop(time: number): void {
    if (!this.boiling) return;
    this.boiling = false;
    this.#watched = this.#watched.filter(({ until }) => until >= time);
    for (const one of this.#watched) {
      one.stoppedAt = time;
      this.#replace(one.place, { stoppedBoil: true });
    }
    this.#events.push({
      time,
      says: this.#watched.length > 0 ? "the water put in stops the boil" : "the boil stops",
    });
  }

  /** It boils from `time` on. */
  start(time: number): void {
    if (this.boiling) return;
    this.boiling = true;
    const before = this.#watched.length > 0 ? this.#watched[0]?.stoppedAt : undefined;
    for (const { place, stoppedAt } of this.#watched) {
      if (stoppedAt !== undefined) this.#replace(place, { stoppedFor: time - stoppedAt });
    }
    this.#watched = [];
    const after = before === undefined ? "" : `, ${few(time - before)} s after the water stopped it`;
    this.#events.push({ time, says: `the bath boils${after}` });
  }

  #replace(place: number, more: Partial<SlugReport>): void {
    const report = this.slugs[place];
    if (report) this.slugs[place] = { ...report, ...more };
  }
}
