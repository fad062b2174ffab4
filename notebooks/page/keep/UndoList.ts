import type { ShopRecord } from "../../../lib/record/index.ts";

/** One change: what it was called, and the record on both sides of it. */
export interface Step {
  /** What undoing it brings back: "altitude was 2,100 ft". */
  readonly name: string;
  /** What doing it again brings: "altitude 2,400 ft". */
  readonly again: string;
  readonly before: ShopRecord;
  readonly after: ShopRecord;
}

const most = 500;

/** The changes of this tab since it was opened, and how far they are taken back. */
export class UndoList {
  #done: readonly Step[] = [];
  #undone: readonly Step[] = [];

  get toUndo(): Step | undefined {
    return this.#done.at(-1);
  }

  get toRedo(): Step | undefined {
    return this.#undone.at(-1);
  }

  did(step: Step): void {
    this.#done = [...this.#done, step].slice(-most);
    this.#undone = [];
  }

  undid(step: Step): void {
    this.#done = this.#done.slice(0, -1);
    this.#undone = [...this.#undone, step];
  }

  redid(step: Step): void {
    this.#undone = this.#undone.slice(0, -1);
    this.#done = [...this.#done, step];
  }
}
