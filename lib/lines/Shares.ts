import { coverage95 } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import type { Trial } from "./Trial.ts";

/** A component is told from none where it is so many of its standard errors. */
const TOLD = 4;

/**
 * What part of a trial's spread each source has: its covariance with the line, so that what the line shares with others
 * stays shared. Of the linear part it is known; only the rest is gathered from the draws.
 * @example
 * const shares = new Shares(measuredValue(1, 0.1, {}, "scale"));
 * shares.add([["scale", Float64Array.of(1, -1)]], [0, 1], [1.1, 0.9], [0.1, -0.1]);
 */
export class Shares {
  readonly #value: Value;
  readonly #sums = new Map<string, number>();
  #rest = 0;
  #count = 0;

  constructor(value: Value) {
    this.#value = value;
  }

  /** Adds a block: each source's draws, which of them count, and for those the line and what slopes say of it. */
  add(
    rows: readonly (readonly [source: string, draws: Float64Array])[],
    used: readonly number[],
    found: readonly number[],
    linear: readonly number[],
  ): void {
    const rest = found.map((draw, i) => draw - this.#value.value - (linear[i] ?? 0));
    for (const each of rest) this.#rest += each * each;
    this.#count += rest.length;
    for (const [source, draws] of rows) {
      let sum = this.#sums.get(source) ?? 0;
      for (let i = 0; i < used.length; i++) sum += (rest[i] as number) * (draws[used[i] as number] as number);
      this.#sums.set(source, sum);
    }
  }

  /**
   * The trial's amount. What no source has alone, the bend and what sources do together, is a source of its own.
   * Where the spread has not settled (1/x about zero has none), the amount is the median and its spread that of its ends.
   */
  valueOf(trial: Pick<Trial, "trial95" | "mean" | "median" | "standardUncertainty" | "settled">, bend: string): Value {
    const [low, high] = trial.trial95;
    const sound = trial.settled && trial.mean >= low && trial.mean <= high;
    const spread = sound ? trial.standardUncertainty : (high - low) / (2 * coverage95);
    const value = sound ? trial.mean : trial.median;
    const components = new Map<string, number>();
    if (sound) {
      const noise = Math.sqrt(this.#rest) / this.#count;
      for (const [source, sum] of this.#sums) {
        const more = sum / this.#count;
        const component = (this.#value.components.get(source) ?? 0) + (Math.abs(more) > TOLD * noise ? more : 0);
        if (component !== 0) components.set(source, component);
      }
    }
    const told = Math.hypot(...components.values());
    if (told > spread) for (const [source, part] of components) components.set(source, (part * spread) / told);
    const left = Math.sqrt(Math.max(0, spread ** 2 - told ** 2));
    if (left > 0) components.set(bend, left);
    return { value, dimension: this.#value.dimension, components, interval95: trial.trial95 };
  }
}
