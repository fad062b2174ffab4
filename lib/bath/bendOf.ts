import { at } from "./at.ts";
import { belowBoil } from "./belowBoil.ts";
import type { Reading } from "./logFacts.ts";

/** Shares of the fire that evaporate water just below the boil: a slow fire under a wide tank reaches the highest. */
const evaporating = [0, 0.2, 0.4, 0.6] as const;
/** The climb at the boil over what the heat of the warm-up makes likely; ln doubted by 0.35. */
const climbing = [0.6, 1, 1.6] as const;
const lessLost = 0.12;
/** K: how far one reading is off by itself; beyond three of it a reading counts no more than linearly (Huber). */
const noise = 0.4;
/** s: variance of the time that gusts put a warming bath ahead or behind, for each s of warming: a tenth, for some minutes. */
const gusts = 2;
/** K: where the bath boils, before anything is known. */
const unknown = 20;
const mostReadings = 40;

interface Bend {
  readonly time: number;
  readonly rate: number;
  readonly evaporates: number;
  readonly climbs: number;
  readonly cost: number;
}

/** What the rest of the log makes likely. */
export interface Expected {
  /** K: where the bath should boil by what was told of its water, and how well that is known. */
  readonly boils?: { readonly T: number; readonly u: number };
  /** K/s by which its boiling point climbs left alone, by the pours that held it; good to a factor of 1.5. */
  readonly climbs?: number;
  /** K by which the pours up to a time have pulled a reading down. */
  readonly pulled?: (time: number) => number;
}

function huber(x: number): number {
  const a = Math.abs(x);
  return a <= 3 ? (a * a) / 2 : 3 * a - 4.5;
}

function thin(readings: readonly Reading[]): readonly Reading[] {
  const step = Math.ceil(readings.length / mostReadings);
  return readings.filter((_, i) => i % step === 0 || i === readings.length - 1);
}

/**
 * When a bath that was logged while it warmed up first boiled: below the boil the fire warms it, ever more slowly as
 * its surface steams more; at the boil the same fire only makes the boiling point climb, at a known small part of that
 * speed.
 *
 * @param readings up to some time after the first pour, in time order; four or more
 * @param climb K by which the boiling point climbs for each K that the same heat would warm the bath, some 0.08
 * @param lag s, of the thermometer
 * @param from s, the earliest that is thought of
 * @param expected what the rest of the log makes likely
 * @param margin of ln likelihood: of places that are so nearly as likely the earliest is taken
 * @returns s, when it boiled; undefined where no bend can be found
 * @example bendOf(facts.readings, 0.08, 15, 0)
 */
export function bendOf(
  readings: readonly Reading[],
  climb: number,
  lag: number,
  from: number,
  expected: Expected = {},
  margin = 0,
): number | undefined {
  const list = thin(readings);
  const first = list[0];
  const last = list.at(-1);
  if (list.length < 4 || !first || !last) return undefined;
  const speeds = list.slice(2).flatMap((reading, i) => {
    const before = list[i] as Reading;
    return reading.time > before.time ? [(reading.T - before.T) / (reading.time - before.time)] : [];
  });
  const sorted = speeds.filter((speed) => speed > 0).sort((a, b) => b - a);
  const fastest = sorted[0] ?? 0;
  if (!(fastest > 0)) return undefined;
  // A misread reading can make the fastest too fast; a long hold leaves few that are fast at all.
  const slowest = sorted[Math.floor(sorted.length / 5)] ?? fastest;
  const rates = Array.from({ length: 9 }, (_, i) => 0.5 * slowest * ((6 * fastest) / slowest) ** (i / 8));

  const pulled = list.map(({ time }) => expected.pulled?.(time) ?? 0);
  // Backwards from the last reading: what gusts did to a warming bath before, it carries to its boil.
  const costOf = (time: number, rate: number, evaporates: number, climbs: number): number => {
    let cost = ((evaporates - 0.25) / 0.15) ** 2 / 2 + (Math.log(climbs) / 0.35) ** 2 / 2;
    if (expected.climbs) cost += huber(Math.log((climbs * climb * rate) / expected.climbs) / 0.4);
    let level = expected.boils?.T ?? last.T;
    let variance = expected.boils ? expected.boils.u ** 2 : unknown ** 2;
    let behind = -Infinity;
    for (let i = list.length - 1; i >= 0; i--) {
      const reading = list[i] as Reading;
      const toBoil = time - (reading.time - lag);
      const drop = at(pulled, i);
      const shape =
        toBoil > 0 ? -belowBoil(toBoil, { rate, evaporates, faster: lessLost }) : climbs * climb * rate * -toBoil;
      variance += gusts * rate * rate * (Math.max(0, toBoil) - Math.max(0, behind));
      behind = toBoil;
      // A cup, and a pour that was written down late, leave a fifth of what they pull in doubt.
      const seen = variance + noise ** 2 + (0.2 * drop) ** 2;
      const off = reading.T + drop - shape - level;
      const away = Math.abs(off) / Math.sqrt(seen);
      cost += huber(away) + Math.log(seen / noise ** 2) / 2;
      const gain = (variance / seen) * Math.min(1, 3 / away);
      level += gain * off;
      variance *= 1 - gain;
    }
    return cost;
  };
  let best: Bend | undefined;
  const look = (
    times: readonly number[],
    rates: readonly number[],
    shares: readonly number[],
    factors: readonly number[],
  ) => {
    for (const time of times)
      for (const rate of rates)
        for (const evaporates of shares)
          for (const climbs of factors) {
            const cost = costOf(time, rate, evaporates, climbs);
            if (!best || cost < best.cost) best = { time, rate, evaporates, climbs, cost };
          }
  };
  const span = Math.max(1, last.time - from);
  const times = Array.from({ length: 25 }, (_, i) => from + (span * i) / 24);
  const places = times.map((time) => {
    best = undefined;
    look([time], rates, evaporating, climbing);
    return best as Bend | undefined;
  });
  const least = Math.min(...places.map((place) => place?.cost ?? Infinity));
  best = places.find((place) => (place?.cost ?? Infinity) <= least + margin);
  for (let width = span / 24; width > 4 && best; width /= 2.5) {
    const { time, rate, evaporates, climbs } = best;
    const near = [-1, -0.4, 0, 0.4, 1];
    const fine = width / (span / 24);
    look(
      near.map((x) => time + x * width),
      near.map((x) => rate * Math.exp(0.3 * fine * x)),
      near.map((x) => Math.min(0.8, Math.max(0, evaporates + 0.12 * fine * x))),
      [-1, 0, 1].map((x) => climbs * Math.exp(0.3 * fine * x)),
    );
  }
  return best?.time;
}
