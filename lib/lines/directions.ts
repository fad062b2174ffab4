import { standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";

/** What a function takes, in order; undefined where it was left out. */
export type Inputs = readonly (Value | undefined)[];

/** One way in which the arguments can be off, by one standard unit of it. */
export interface Direction {
  /** How far each argument moves, SI. */
  readonly by: readonly number[];
  /** What part of each source it is. */
  readonly sources: ReadonlyMap<string, number>;
  /** The argument that moves alone, if it is one. */
  readonly alone?: number;
}

/**
 * The ways in which the arguments of a function can be off, as few as will do: one for each source where there are
 * fewer sources than doubtful arguments, or where arguments share a source and so are off together; else one for each
 * doubtful argument. An argument with a 95 % interval of its own moves alone, since that is carried by its own slope.
 * @param inputs What the function takes.
 * @param slopesKnown Whether slopes by argument are at hand: then nothing is gained by fewer ways.
 * @returns The ways; none where nothing is in doubt.
 * @example directionsOf([measuredValue(3, 0.1, {}, "tape"), exact(2)]).map(({ by }) => by) // [[0.1, 0]]
 */
export function directionsOf(inputs: Inputs, slopesKnown = false): readonly Direction[] {
  const doubtful = inputs.flatMap((each, i) => (each && standardUncertainty(each) > 0 ? [{ each, i }] : []));
  const sources = new Set(doubtful.flatMap(({ each }) => [...each.components.keys()]));
  const named = doubtful.reduce((count, { each }) => count + each.components.size, 0);
  const bySource = sources.size < doubtful.length || named > sources.size;
  if (!slopesKnown && bySource && doubtful.every(({ each }) => each.interval95 === undefined))
    return [...sources].map((source) => ({
      by: inputs.map((each) => each?.components.get(source) ?? 0),
      sources: new Map([[source, 1]]),
    }));
  return doubtful.map(({ each, i }) => {
    const width = standardUncertainty(each);
    return {
      by: inputs.map((_, other) => (other === i ? width : 0)),
      sources: new Map(Array.from(each.components, ([source, part]) => [source, part / width])),
      alone: i,
    };
  });
}

/**
 * How far to go in a direction, in its standard units, for a difference that tells the slope.
 * @param inputs What the function takes.
 * @param direction The direction.
 * @param share The share of a standard unit that is wanted.
 * @param least The least relative move of an argument that is to be told from rounding.
 * @returns The share, or more where arguments are so sure that it would drown in rounding.
 * @example stepAlong([exact(3)], { by: [0.3], sources: new Map() }, 0.125, 1e-6) // 0.125
 */
export function stepAlong(inputs: Inputs, direction: Direction, share: number, least: number): number {
  const moves = direction.by.map((by, i) => {
    const size = Math.abs(inputs[i]?.value ?? 0);
    return by === 0 ? 0 : Math.abs(by) / size;
  });
  return Math.max(share, least / Math.max(...moves));
}
