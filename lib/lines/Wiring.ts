import type { Desk } from "./Desk.ts";
import { findLoop } from "./findLoop.ts";
import { parseFormula } from "./parseFormula.ts";
import { ringsOf } from "./ringsOf.ts";
import { Swiftly } from "./Swiftly.ts";
import type { Tree } from "./tree.ts";
import { usesOf } from "./usesOf.ts";

/** A formula as read, with the ids of the lines it uses, or why it cannot be read. */
export type Read =
  | {
      readonly tree: Tree;
      readonly uses: readonly string[];
      /** Place of each line among `uses`, by its name in the formula. */
      readonly places: ReadonlyMap<string, number>;
      readonly swiftly: Swiftly;
    }
  | { readonly says: string; readonly at: number };

/** A few lines are looked at one by one for a loop; for more it is cheaper to look at the whole. */
const FEW = 8;
/** A way round longer than this is told by its first lines and the number of the others, the same for its whole ring. */
const LONG = 40;

/** The way from a line back to itself: ids, the line itself first, and how many more there are behind them. */
export interface Loop {
  readonly way: readonly string[];
  readonly more: number;
}

/** Which line uses which, as the formulas on a desk say. */
export class Wiring {
  readonly #desk: Desk;
  readonly #read = new Map<string, Read>();
  readonly #usedBy = new Map<string, Set<string>>();
  #loops: ReadonlyMap<string, Loop> = new Map();

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  /** A line's formula as read; undefined for a given. */
  formula(id: string): Read | undefined {
    return this.#read.get(id);
  }

  /** Ids of the lines that a line's formula names. */
  uses(id: string): readonly string[] {
    const read = this.#read.get(id);
    return read && "uses" in read ? read.uses : [];
  }

  /** Ids of the lines whose formulas name a line. */
  usedBy(id: string): readonly string[] {
    return [...(this.#usedBy.get(id) ?? [])];
  }

  /** Some lines and all that depend on them, however far. */
  withDependents(ids: Iterable<string>): ReadonlySet<string> {
    const found = new Set<string>(ids);
    for (const id of found) for (const user of this.#usedBy.get(id) ?? []) found.add(user);
    return found;
  }

  /** Some lines and all that are worked again with them. A line that needs itself is not: it stays stopped, and what uses it waits. */
  workedWith(ids: Iterable<string>): ReadonlySet<string> {
    const found = new Set<string>(ids);
    for (const id of found) for (const user of this.#usedBy.get(id) ?? []) if (!this.#loops.has(user)) found.add(user);
    return found;
  }

  /** The way from a line back to itself, if its formula leads there. */
  loop(id: string): Loop | undefined {
    return this.#loops.get(id);
  }

  /** Ids of the lines whose formulas cannot be read: a new name may be the one that they missed. */
  unread(): readonly string[] {
    return [...this.#read].flatMap(([id, read]) => ("says" in read ? [id] : []));
  }

  /** Reads a line's formula anew. Tells whether it uses other lines than before, or fails otherwise than before. */
  read(id: string): boolean {
    const line = this.#desk.kept.get(id)?.line;
    if (!line || line.kind === "given") {
      const before = this.#read.has(id);
      this.forget(id);
      return before;
    }
    const before = outline(this.#read.get(id));
    const parsed = parseFormula(line.formula, this.#desk);
    const names = "tree" in parsed ? usesOf(parsed.tree).filter((name) => this.#desk.idOf(name) !== undefined) : [];
    const uses = names.flatMap((name) => this.#desk.idOf(name) ?? []);
    const places = new Map(names.map((name, i) => [name, i]));
    const after: Read =
      "tree" in parsed ? { tree: parsed.tree, uses, places, swiftly: new Swiftly(parsed.tree, places) } : parsed;
    this.forget(id);
    this.#read.set(id, after);
    for (const used of uses) {
      const users = this.#usedBy.get(used);
      if (users) users.add(id);
      else this.#usedBy.set(used, new Set([id]));
    }
    return before !== outline(after);
  }

  /** Takes a line's formula out. */
  forget(id: string): void {
    for (const used of this.uses(id)) this.#usedBy.get(used)?.delete(id);
    this.#read.delete(id);
  }

  /** Finds the loops anew after some lines were read; gives the lines whose place in one has changed. */
  findLoops(touched: ReadonlySet<string>): readonly string[] {
    const uses = (id: string) => this.uses(id);
    const before = this.#loops;
    const starts =
      touched.size > FEW ? this.#desk.order : [...touched, ...before.keys()].filter((id) => this.#desk.kept.has(id));
    const after = new Map<string, Loop>();
    for (const ring of ringsOf(starts, uses)) {
      const inside = new Set(ring);
      const wayOf = (id: string) =>
        shortened(findLoop(id, (one) => uses(one).filter((used) => inside.has(used))) ?? [id]);
      const all = ring.length > LONG ? wayOf(ring[0] ?? "") : undefined;
      for (const id of ring) after.set(id, all ?? wayOf(id));
    }
    this.#loops = after;
    const either = new Set([...before.keys(), ...after.keys()]);
    return [...either].filter((id) => !sameLoop(before.get(id), after.get(id)));
  }
}

/** What must stay the same for a line to be left as it is. */
function outline(read: Read | undefined): string | undefined {
  if (!read) return undefined;
  return "says" in read ? `stopped ${read.at} ${read.says}` : read.uses.join();
}

const shortened = (way: readonly string[]): Loop => ({ way: way.slice(0, LONG), more: Math.max(0, way.length - LONG) });

function sameLoop(a: Loop | undefined, b: Loop | undefined): boolean {
  return a === b || (a?.more === b?.more && a?.way.join() === b?.way.join());
}
