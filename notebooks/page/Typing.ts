/** ms without a keystroke after which what stands in a blank is taken. */
const pause = 400;

/** A blank that is being typed in: the answer waits for it, and what stands in it is not rewritten under the hand. */
export class Typing {
  #key: string | undefined;
  #text = "";
  #timer: ReturnType<typeof setTimeout> | undefined;
  #take: (() => void) | undefined;
  readonly #told: () => void;

  constructor(told: () => void) {
    this.#told = told;
  }

  /** Whether something was typed that is not taken yet. */
  get waiting(): boolean {
    return this.#take !== undefined;
  }

  /** The text in a blank while it is in hand; undefined for any other. */
  textIn(key: string): string | undefined {
    return key === this.#key ? this.#text : undefined;
  }

  /** A keystroke: `take` is called once the hand pauses. */
  typed(key: string, text: string, take: () => void): void {
    clearTimeout(this.#timer);
    this.#key = key;
    this.#text = text;
    this.#take = take;
    this.#timer = setTimeout(() => this.takeNow(), pause);
    this.#told();
  }

  /** Takes what is waiting at once: the blank was left. */
  takeNow(): void {
    clearTimeout(this.#timer);
    const take = this.#take;
    this.#take = undefined;
    take?.();
    this.#told();
  }

  /** Forgets what is waiting. */
  drop(): void {
    clearTimeout(this.#timer);
    this.#take = undefined;
    this.#key = undefined;
    this.#told();
  }

  /** The hand has left the blank. */
  left(): void {
    this.takeNow();
    this.#key = undefined;
    this.#told();
  }
}
