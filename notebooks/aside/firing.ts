import { firingAsFarAsItGoes, firingOf, holdTimes } from "../../lib/bath/firing/firingOf.ts";
import type { Firing, FiringGivens } from "../../lib/bath/firing/types.ts";
import type { Value } from "../../lib/measure/types.ts";
import { number } from "../givensOf.ts";
import { type FiringWay, partsOfFiring } from "../partsOfFiring.ts";
import { asideFunction } from "./asideFunction.ts";

/** What a firing takes, in the order of its formula. */
export const firingTaken = [
  ["fire into the bath", "fire", "power"],
  ["heat lost by walls", "wall", "power"],
  ["heat lost by the top", "top", "power"],
  ["tank length", "length", "length"],
  ["tank width", "width", "length"],
  ["tank depth", "depth", "length"],
  ["salt", "salt", "mass"],
  ["hydroxide share", "hydroxide", "share"],
  ["boiling point offset", "offset", "temperature difference"],
  ["boiling curve scale", "scale", "number"],
  ["target", "target", "temperature"],
  ["band", "band", "temperature difference"],
  ["air pressure", "pressure", "pressure"],
  ["air and feed temperature", "cold", "temperature"],
  ["weight of parts", "parts", "mass"],
  ["hold time", "hold", "time"],
  ["feed", "feed", "water flow"],
] as const satisfies readonly (readonly [string, keyof FiringGivens, string])[];

/** How far from its middle a source is tried, in standard uncertainties: the ends of its 95 %. */
const reach = 1.959964;

/**
 * Doubts of the working itself: more of the fire reaches a bath that is still cold (0 to 15 %), and the evaporation of a
 * quiet bath is known to 35 %. Judgements.
 */
const ownDoubts: readonly { readonly source: string; readonly key: keyof FiringGivens; readonly by: number }[] = [
  { source: "fire while it warms", key: "warming", by: 0.05 },
  { source: "heat loss of a surface in still air", key: "evaporation", by: 0.35 * 0.1075 },
];

interface FiringWork {
  readonly givens: FiringGivens;
  /** What one standard uncertainty of each source moves. */
  readonly sources: readonly { readonly source: string; readonly by: Partial<Record<keyof FiringGivens, number>> }[];
}

function workOf(given: readonly unknown[]): FiringWork {
  const values = firingTaken.flatMap(([what, key], i) => {
    const value = number(what, given[i]);
    if (!value && key !== "feed") throw new Error(`missing ${what}`);
    return value ? [{ key, value }] : [];
  });
  const si = Object.fromEntries(values.map(({ key, value }) => [key, value.value]));
  const givens = { ...si, warming: 1.075, evaporation: 0.1075 } as unknown as FiringGivens;
  const sources = new Map<string, Partial<Record<keyof FiringGivens, number>>>();
  const add = (source: string, key: keyof FiringGivens, part: number) => {
    const by = sources.get(source) ?? {};
    by[key] = (by[key] ?? 0) + part;
    sources.set(source, by);
  };
  for (const { key, value } of values as readonly { key: keyof FiringGivens; value: Value }[])
    for (const [source, part] of value.components) add(source, key, part);
  for (const { source, key, by } of ownDoubts) add(source, key, by);
  return { givens, sources: [...sources].map(([source, by]) => ({ source, by })) };
}

function moved({ givens }: FiringWork, by: Partial<Record<keyof FiringGivens, number>>, z: number): FiringGivens {
  const next: Record<string, number | undefined> = { ...givens };
  for (const [key, part] of Object.entries(by)) next[key] = (next[key] ?? 0) + z * part;
  // An end of a wide doubt may lie where there is no bath: shares and weights stop at what can be.
  const { hydroxide = 0, parts = 0 } = next;
  return {
    ...next,
    hydroxide: Math.min(1, Math.max(0, hydroxide)),
    parts: Math.max(0, parts),
  } as unknown as FiringGivens;
}

function tried(givens: FiringGivens): Partial<Firing> {
  try {
    return firingAsFarAsItGoes(givens);
  } catch {
    return {};
  }
}

/** One firing of a bath, and what each source of doubt makes of it. */
export const firingOfBath = asideFunction<FiringWork, { readonly base: Firing; readonly ways: readonly FiringWay[] }>({
  name: "firing of bath",
  waits: "waiting to be fired in trial",
  work: workOf,
  does(work, says) {
    const base = firingOf(work.givens);
    const ways = work.sources.map(({ source, by }, i): FiringWay => {
      says("firing it in trial, once for each thing that is not sure", i / work.sources.length);
      return { source, up: tried(moved(work, by, reach)), down: tried(moved(work, by, -reach)) };
    });
    return { base, ways };
  },
  parts: ({ base, ways }, { givens }) => partsOfFiring(base, ways, reach, givens, holdTimes(givens.hold)),
  same: (a, b) => JSON.stringify(a) === JSON.stringify(b),
});
