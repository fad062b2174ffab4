/** A step back or forth that has a name for the maker. */
export interface Step<Change> {
  readonly undo: string;
  readonly redo: string;
  readonly change: Change;
}

/** Steps are forgotten beyond this many, so that a day of editing does not fill the memory. */
const MOST = 1000;

/**
 * What was done, and what was undone and can be done again.
 * @example
 * const history = new History<number>();
 * history.did({ undo: "a was 1", redo: "a is 2", change: 1 });
 * history.back()?.undo // "a was 1"
 */
export class History<Change> {
  #done: Step<Change>[] = [];
  #undone: Step<Change>[] = [];

  /** The step that `back` would take. */
  get last(): Step<Change> | undefined {
    return this.#done.at(-1);
  }

  /** The step that `forth` would take. */
  get next(): Step<Change> | undefined {
    return this.#undone.at(-1);
  }

  did(step: Step<Change>): void {
    this.#done.push(step);
    if (this.#done.length > MOST) this.#done.shift();
    this.#undone = [];
  }

  back(): Step<Change> | undefined {
    const step = this.#done.pop();
    if (step) this.#undone.push(step);
    return step;
  }

  forth(): Step<Change> | undefined {
    const step = this.#undone.pop();
    if (step) this.#done.push(step);
    return step;
  }
}
