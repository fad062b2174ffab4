import type { Firing, FiringGivens, FiringNumber } from "../lib/bath/firing/types.ts";
import { dimensionOf } from "../lib/measure/index.ts";
import type { Kind, Value } from "../lib/measure/types.ts";

/** The firing with one source at either end of its 95 %, as far as it goes there: it may never boil. */
export interface FiringWay {
  readonly source: string;
  readonly up: Partial<Firing>;
  readonly down: Partial<Firing>;
}

/** A course of a hold: K over the target at each time, with its 95 %. */
export interface HoldCourse {
  /** s after parts in. */
  readonly times: readonly number[];
  readonly T: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** Holds of one firing, for a figure. K is the target, and half of the band. */
export interface HoldsOfFiring {
  readonly target: number;
  readonly band: number;
  readonly unfed: HoldCourse;
  readonly fed: HoldCourse;
}

const names: readonly (readonly [part: string, key: FiringNumber, kind: Kind])[] = [
  ["time to the boil", "toBoil", "time"],
  ["boil-off", "boilOff", "water flow"],
  ["make-up water", "makeUp", "water flow"],
  ["drift left alone", "drift", "temperature rate"],
  ["time to the upper limit", "late", "time"],
  ["dip", "dip", "temperature difference"],
  ["time to come back", "back", "time"],
  ["heat to spare", "spare", "power"],
  ["water", "water", "water"],
  ["water in the cold bath", "waterCold", "water"],
];

type Read = (firing: Partial<Firing>) => number | undefined;

/** How far each end of a source moves a number; where there is none, as far as the other end does, the other way. */
function ends({ up, down }: FiringWay, base: number, read: Read): readonly [number, number] {
  const [high, low] = [read(up), read(down)];
  const rise = high === undefined ? undefined : high - base;
  const fall = low === undefined ? undefined : low - base;
  return [rise ?? -(fall ?? 0), fall ?? -(rise ?? 0)];
}

interface Carried {
  readonly value: number;
  readonly components: ReadonlyMap<string, number>;
  readonly interval95: readonly [low: number, high: number];
}

/**
 * A number with its doubt source by source: the component is the slope between both ends of a source's 95 %; the sides
 * of the interval are the root of the sum of squares of what each source adds to that side.
 */
function carried(base: Firing, ways: readonly FiringWay[], reach: number, read: Read): Carried {
  const value = read(base) ?? Number.NaN;
  const components = new Map<string, number>();
  let [above, below] = [0, 0];
  for (const way of ways) {
    const [up, down] = ends(way, value, read);
    const component = (up - down) / (2 * reach);
    if (component !== 0) components.set(way.source, component);
    above += Math.max(0, up, down) ** 2;
    below += Math.min(0, up, down) ** 2;
  }
  return { value, components, interval95: [value - Math.sqrt(below), value + Math.sqrt(above)] };
}

function amountOf({ value, components, interval95: [low, high] }: Carried, kind: Kind): Value {
  if (kind === "power") return { value, dimension: dimensionOf(kind), components, interval95: [low, high] };
  // Nothing else of a firing can be below 0.
  return { value, dimension: dimensionOf(kind), components, interval95: [Math.max(0, Math.min(low, value)), high] };
}

function courseOf(
  base: Firing,
  ways: readonly FiringWay[],
  reach: number,
  which: "fed" | "unfed",
  times: readonly number[],
): HoldCourse {
  const all = times.map((_, i) => carried(base, ways, reach, (firing) => firing[which]?.[i]));
  return {
    times,
    T: all.map(({ value }) => value),
    low: all.map(({ interval95 }) => interval95[0]),
    high: all.map(({ interval95 }) => interval95[1]),
  };
}

/** What a firing came to, under the names that formulas call its parts by. */
export function partsOfFiring(
  base: Firing,
  ways: readonly FiringWay[],
  reach: number,
  { target, band }: FiringGivens,
  times: readonly number[],
): ReadonlyMap<string, unknown> {
  const parts = new Map<string, unknown>(
    names.map(([part, key, kind]) => [
      part,
      amountOf(
        carried(base, ways, reach, (firing) => firing[key]),
        kind,
      ),
    ]),
  );
  const hold: HoldsOfFiring = {
    target,
    band,
    unfed: courseOf(base, ways, reach, "unfed", times),
    fed: courseOf(base, ways, reach, "fed", times),
  };
  return parts.set("whole hold", hold);
}
