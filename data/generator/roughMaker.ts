import type { Random } from "./random.ts";

const flOz = 0.0295735295625 * 0.9982;

/** How a maker keeps the water up: by the clock, by the thermometer, two or three times a night, never, or by a drip. */
export type Habit = "steady" | "by eye" | "few" | "none" | "drip";
export const habits: readonly Habit[] = ["steady", "by eye", "few", "none", "drip"];

/** A pour as the maker would write it, and kg that truly went in. For a drip: one for each setting of the tap. */
export interface MadePour {
  readonly time: number;
  readonly ounces: number;
  readonly mass: number;
}

export interface Drip {
  readonly on: number;
  off: number;
  /** fl oz/min as the maker believes; kg/s in truth. */
  readonly ouncesPerMinute: number;
  readonly rate: number;
}

export interface MakerGivens {
  readonly habit: Habit;
  /** Share by which the cup is wrong all night, and standard deviation of each pour. */
  readonly cup: number;
  readonly eachPour: number;
  /** kg/s that boil off, about. */
  readonly boilOff: number;
  readonly holds: number;
  /** ln-standard deviation of the gaps of a steady maker. */
  readonly unsteady: number;
}

export interface Maker {
  /** kg that go in at this second. */
  readonly pours: (time: number, shown: number, since: number) => number;
  readonly made: readonly MadePour[];
  readonly drips: readonly Drip[];
}

/** A maker at the tank. What was poured is kept in `made` and `drips` as the run goes on. */
export function roughMaker(givens: MakerGivens, r: Random): Maker {
  const made: MadePour[] = [];
  const drips: Drip[] = [];
  const { habit, boilOff, holds } = givens;
  const many = r.chance(0.5);
  const minutes = habit === "few" ? r.from(12, 25) : many ? r.from(2, 4.5) : r.from(4, 10);
  const slug = Math.max(4, Math.round((boilOff * 60 * minutes) / flOz / 2) * 2);
  let interval = ((slug * flOz) / boilOff) * r.from(0.9, 1.15);
  const odd = habit === "steady" ? 0.1 : 0.3;
  const rise = r.from(0, 2.5);
  let next = r.from(0.3, 1.2) * interval;
  let target = Number.NaN;
  let left = habit === "few" ? r.pick([1, 2, 2, 3]) : 1e9;
  const pour = (time: number, since: number) => {
    left--;
    next = since + interval * Math.exp(givens.unsteady * r.normal());
    const ounces = Math.max(2, r.chance(odd) ? Math.round((slug * r.from(0.5, 1.8)) / 2) * 2 : slug);
    const mass = ounces * flOz * (1 + givens.cup) * Math.max(0.5, 1 + givens.eachPour * r.normal());
    made.push({ time, ounces, mass });
    return mass;
  };
  const dripping = (time: number, since: number) => {
    const now = drips.at(-1);
    if (!now || since >= next) {
      if (now) now.off = time;
      next = since + r.from(15, 40) * 60;
      const ouncesPerMinute = Math.max(0.2, Math.round((boilOff * 60 * r.from(0.6, 1.2) * 10) / flOz) / 10);
      const rate = ((ouncesPerMinute * flOz) / 60) * (1 + givens.cup) * (1 + givens.eachPour * r.normal());
      drips.push({ on: time, off: 1e9, ouncesPerMinute, rate });
    }
    return drips.at(-1)?.rate ?? 0;
  };
  return {
    made,
    drips,
    pours: (time, shown, since) => {
      if (since < 0 || habit === "none" || left <= 0) return 0;
      if (Number.isNaN(target)) target = shown + rise;
      if (habit === "drip") return since < next && drips.length === 0 ? 0 : dripping(time, since);
      if (habit === "steady") {
        if (since < next) return 0;
        // Who pours by the clock looks at the thermometer too when it has gone far.
        if (Math.abs(shown - target) > 3) interval *= shown > target ? 0.9 : 1.1;
        return pour(time, since);
      }
      // By the thermometer, but not before some of the last pour has boiled off, nor in the last minute.
      const rested = since >= next - 0.4 * interval;
      return rested && shown > target + 0.5 && since < holds - 60 ? pour(time, since) : 0;
    },
  };
}
