import { coverage95 } from "../measure/standardUncertainty.ts";
import { type DrawStatistics, drawStatistics, errorOfMean, meanOf } from "./drawStatistics.ts";

/** One figure of a trial, and its own standard error. */
export interface Figure {
  readonly figure: number;
  readonly error: number;
}

export type Figures = Readonly<Record<keyof DrawStatistics, Figure>>;

const KEYS = ["mean", "deviation", "low", "high"] as const;

/**
 * Gathers the draws of a trial block by block. Beside each draw stands what slopes alone would have come to in it
 * (`linear`, relative to the line's amount). Of that the exact figures are known, so what the blocks have missed of it
 * tells what they miss of the line: a control variate (Hammersley and Handscomb, Monte Carlo Methods, 1964, 5.5; from
 * memory). Each figure is taken with or without that control, whichever scatters less between blocks.
 * @example
 * const gathered = new Gathered(10, 1);
 * gathered.add([11, 9, 12, 8], [1, -1, 2, -2]);
 * gathered.count // 4
 */
export class Gathered {
  readonly #amount: number;
  readonly #linear: DrawStatistics;
  readonly #plain: DrawStatistics[] = [];
  readonly #controlled: DrawStatistics[] = [];
  readonly #draws: Float64Array[] = [];
  count = 0;

  /**
   * @param amount What the line comes to.
   * @param uncertainty Its standard uncertainty by slopes.
   */
  constructor(amount: number, uncertainty: number) {
    this.#amount = amount;
    const half = coverage95 * uncertainty;
    this.#linear = { mean: amount, deviation: uncertainty, low: amount - half, high: amount + half };
  }

  /** How many blocks there are. */
  get blocks(): number {
    return this.#plain.length;
  }

  /** Adds a block: what the line came to, and what slopes alone say of the same draws. At least two. */
  add(draws: ArrayLike<number>, linear: ArrayLike<number>): void {
    const sorted = Float64Array.from(draws).sort();
    const plain = drawStatistics(sorted);
    this.#draws.push(sorted);
    this.count += sorted.length;
    this.#plain.push(plain);
    this.#controlled.push(this.#control(plain, drawStatistics(Float64Array.from(linear).sort())));
  }

  /** A block's figures less what it missed of the linear ones: ends and deviation in proportion, the mean by difference. */
  #control(plain: DrawStatistics, found: DrawStatistics): DrawStatistics {
    const [amount, exact] = [this.#amount, this.#linear];
    if (exact.deviation === 0) return plain;
    const end = (key: "low" | "high") => amount + (plain[key] - amount) * ((exact[key] - amount) / found[key]);
    return {
      mean: plain.mean - found.mean,
      deviation: plain.deviation * (exact.deviation / found.deviation),
      low: end("low"),
      high: end("high"),
    };
  }

  /** All draws in rising order. */
  sorted(): Float64Array {
    const all = new Float64Array(this.count);
    let at = 0;
    for (const block of this.#draws) {
      all.set(block, at);
      at += block.length;
    }
    return all.sort();
  }

  /** Mean, deviation and ends, as far as the blocks tell (JCGM 101:2008, 7.9.4: averages over blocks, and their scatter). */
  figures(): Figures {
    const figure = (key: keyof DrawStatistics): Figure => {
      const [plain, controlled] = [this.#plain, this.#controlled].map((blocks) => blocks.map((block) => block[key]));
      const one = { figure: meanOf(plain ?? []), error: errorOfMean(plain ?? []) };
      const other = { figure: meanOf(controlled ?? []), error: errorOfMean(controlled ?? []) };
      return other.error <= one.error ? other : one;
    };
    const [mean, deviation, low, high] = KEYS.map(figure) as [Figure, Figure, Figure, Figure];
    return { mean, deviation, low, high };
  }
}
