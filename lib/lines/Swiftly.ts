import { sameDimension } from "../measure/dimension.ts";
import type { Dimension, Value } from "../measure/types.ts";
import { type Algebra, algebraOf } from "./algebra.ts";
import { isValue } from "./isValue.ts";
import type { Tree } from "./tree.ts";
import type { Result } from "./types.ts";

/**
 * A formula that remembers the kinds it was last worked with: where they are the same, what it comes to is of the same
 * kind too, and only the numbers are worked. The long way comes first, with its checks and its words.
 * @example
 * const swift = new Swiftly(tree, places);
 * swift.tried(results); // undefined the first time
 * swift.learn(results, await long(results));
 */
export class Swiftly {
  readonly #tree: Tree;
  readonly #places: ReadonlyMap<string, number>;
  /** Made ready at the second work; most formulas of a notebook that is only read have none. */
  #ready: { readonly algebra: Algebra | undefined } | undefined;
  #kinds: readonly Dimension[] | undefined;
  #dimension: Dimension | undefined;

  /**
   * @param tree The formula as read.
   * @param places Place of each line among the inputs.
   */
  constructor(tree: Tree, places: ReadonlyMap<string, number>) {
    this.#tree = tree;
    this.#places = places;
  }

  /** What it comes to, where that is known to be right; else the long way is to be gone. */
  tried(results: readonly unknown[]): Result | undefined {
    if (!this.#kinds || !this.#dimension) return undefined;
    this.#ready ??= { algebra: algebraOf(this.#tree, this.#places) };
    const { algebra } = this.#ready;
    if (!algebra) return undefined;
    for (let i = 0; i < results.length; i++) {
      const result = results[i] as Result;
      if (result.state !== "settled" || !isValue(result.value)) return undefined;
      const kind = this.#kinds[i];
      const { dimension } = result.value;
      if (!kind || (kind !== dimension && !sameDimension(kind, dimension))) return undefined;
    }
    const found = algebra(results as readonly { readonly value: Value }[]);
    if (!found) return undefined;
    return {
      state: "settled",
      value: { value: found.value, dimension: this.#dimension, components: found.components },
    };
  }

  /** Takes note of what the long way came to. */
  learn(results: readonly unknown[], found: Result): void {
    this.#kinds = undefined;
    if (found.state !== "settled" || !isValue(found.value)) return;
    const kinds: Dimension[] = [];
    for (const one of results) {
      const result = one as Result;
      // A temperature on a scale has rules of its own.
      if (result.state !== "settled" || !isValue(result.value) || result.value.dimension.point) return;
      kinds.push(result.value.dimension);
    }
    this.#kinds = kinds;
    this.#dimension = found.value.dimension;
  }
}
