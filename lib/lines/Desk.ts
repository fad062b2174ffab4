import type { Knowing } from "../measure/types.ts";
import { foldName } from "./foldName.ts";
import type { CaseFrom, Func, Line } from "./types.ts";

/** What a case has of its own for a given. */
export interface Own {
  readonly text: string;
  readonly known?: Knowing;
  /** Id of the case whose very reading it is: one reading, so what it is off by is one and the same. */
  readonly sameAs?: string;
  /** A thing that no text can hold, in a box of one. */
  readonly thing?: readonly [unknown];
}

/** A line as it is kept while a notebook is open. Its id stays when its name changes. */
export interface Kept {
  readonly id: string;
  readonly name: string;
  readonly line: Line;
  /** A thing that no text can hold, in a box of one. */
  readonly thing?: readonly [unknown];
  /** By id of the case. What a removed case had stays, so that undoing brings it back. */
  readonly own?: ReadonlyMap<string, Own>;
}

/** A case as it is kept while a notebook is open. Its id stays when its name changes. */
export interface KeptCase {
  readonly id: string;
  readonly name: string;
  readonly hidden: boolean;
  readonly from?: CaseFrom;
}

/** All cases in their order, never none, and the id of the one that the others are compared with. */
export interface KeptCases {
  readonly list: readonly KeptCase[];
  readonly base: string;
}

/** One line before and after an edit; without a before it was added, without an after removed. `at` is its place. */
export interface LineChange {
  readonly id: string;
  readonly at: number;
  readonly before?: Kept;
  readonly after?: Kept;
  /** Only names have changed: the line comes to what it came to before. */
  readonly sameMeaning?: boolean;
}

/** The lines of an open notebook, in their order, under their ids and their names, and its cases. */
export class Desk {
  readonly kept = new Map<string, Kept>();
  /** Names of lines under their folded form, for reading formulas. */
  readonly lines = new Map<string, string>();
  readonly functions: ReadonlyMap<string, Func>;
  cases: KeptCases;
  readonly #ids = new Map<string, string>();
  #order: string[] = [];

  constructor(functions: ReadonlyMap<string, Func>, cases: KeptCases) {
    this.functions = functions;
    this.cases = cases;
  }

  get order(): readonly string[] {
    return this.#order;
  }

  /** The id of a line, if there is one of that name. */
  idOf(name: string): string | undefined {
    return this.#ids.get(foldName(name));
  }

  /** A line by its name. */
  named(name: string): Kept {
    const id = this.idOf(name);
    const kept = id === undefined ? undefined : this.kept.get(id);
    if (!kept) throw new Error(`unknown line: ${name}; one of ${[...this.lines.values()].slice(0, 20).join(", ")}`);
    return kept;
  }

  /** A case by its name; the base without one. */
  caseNamed(name: string | undefined): KeptCase {
    const { list, base } = this.cases;
    const found =
      name === undefined
        ? list.find(({ id }) => id === base)
        : list.find((one) => foldName(one.name) === foldName(name));
    if (!found) throw new Error(`unknown case: ${name}; one of ${list.map((one) => one.name).join(", ")}`);
    return found;
  }

  /** Puts a line from one state into another: added, changed, renamed or removed. */
  put(id: string, at: number, next: Kept | undefined): void {
    const now = this.kept.get(id);
    if (now && now.name !== next?.name) {
      this.lines.delete(foldName(now.name));
      this.#ids.delete(foldName(now.name));
    }
    if (!next) {
      this.kept.delete(id);
      this.#order = this.#order.filter((one) => one !== id);
      return;
    }
    this.kept.set(id, next);
    this.lines.set(foldName(next.name), next.name);
    this.#ids.set(foldName(next.name), id);
    if (now) return;
    // Opening puts each line behind the last: that must not copy the whole order.
    if (at >= this.#order.length) this.#order.push(id);
    else this.#order.splice(at, 0, id);
  }
}
