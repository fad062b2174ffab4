import { normalChance } from "./chance.ts";

interface Row {
  readonly next: () => number;
  /** How many blocks it has been through. */
  made: number;
  block: Float64Array;
}

/**
 * How far each source is off, draw by draw, in blocks of draws. What a source does hangs on the seed and its name alone,
 * not on when it is first asked for: two lines that share a source share its draws.
 * @example
 * const draws = new Draws(1, 100);
 * draws.of("scale") === draws.of("scale") // true
 */
export class Draws {
  readonly size: number;
  /** Which draw of the block it is. */
  at = 0;
  readonly #seed: number;
  readonly #rows = new Map<string, Row>();
  #block = 1;

  constructor(seed: number, size: number) {
    this.#seed = seed;
    this.size = size;
  }

  nextBlock(): void {
    this.#block += 1;
    this.at = 0;
  }

  /** The present draw of a source. */
  readonly of = (source: string): number => this.#row(source)[this.at] as number;

  /** The sources that were asked for, each with the present block. */
  rows(): readonly (readonly [source: string, block: Float64Array])[] {
    return [...this.#rows.keys()].map((source) => [source, this.#row(source)]);
  }

  #row(source: string): Float64Array {
    let row = this.#rows.get(source);
    if (!row) {
      row = { next: normalChance(`${this.#seed} ${source}`), made: 0, block: new Float64Array(this.size) };
      this.#rows.set(source, row);
    }
    for (; row.made < this.#block; row.made++) for (let i = 0; i < this.size; i++) row.block[i] = row.next();
    return row.block;
  }
}
