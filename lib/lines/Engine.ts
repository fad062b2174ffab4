import type { Desk, LineChange } from "./Desk.ts";
import { evaluate } from "./evaluate.ts";
import { findLoop } from "./findLoop.ts";
import { type Graph, openGraph } from "./graph.ts";
import { inItsUnit } from "./inItsUnit.ts";
import { loopSuspects } from "./loopSuspects.ts";
import { parseFormula } from "./parseFormula.ts";
import { readGiven } from "./readGiven.ts";
import { sameResult } from "./sameResult.ts";
import type { Tree } from "./tree.ts";
import type { Result } from "./types.ts";
import { usesOf } from "./usesOf.ts";

type Read = { readonly tree: Tree; readonly uses: readonly string[] } | { readonly says: string; readonly at: number };

interface Run {
  readonly version: number;
  readonly inputs: readonly unknown[];
  readonly result: Result;
}

const WORKING: Result = { state: "working" };
/** A few lines are looked at one by one for a loop; for more it is cheaper to look at the whole. */
const FEW = 8;

/** Works the lines of a desk out, and out again after each change: what depends on it, and nothing else. */
export class Engine {
  /** How many formulas were worked out. */
  worked = 0;
  readonly #desk: Desk;
  readonly #graph: Graph;
  readonly #tell: (id: string, result: Result) => void;
  readonly #read = new Map<string, Read>();
  readonly #usedBy = new Map<string, Set<string>>();
  #loops = new Map<string, readonly string[]>();
  readonly #versions = new Map<string, number>();
  readonly #runs = new Map<string, Run>();
  readonly #results = new Map<string, Result>();
  readonly #stale = new Set<string>();

  constructor(desk: Desk, tell: (id: string, result: Result) => void) {
    this.#desk = desk;
    this.#tell = tell;
    this.#graph = openGraph((id, value) => this.#finish(id, value as Result));
  }

  settled(id?: string): Promise<void> {
    return this.#graph.settled(id);
  }

  close(): void {
    this.#graph.close();
  }

  result(id: string): Result {
    return this.#stale.has(id) ? WORKING : (this.#results.get(id) ?? WORKING);
  }

  /** Ids of the lines that a line's formula names. */
  uses(id: string): readonly string[] {
    const read = this.#read.get(id);
    return read && "uses" in read ? read.uses : [];
  }

  usedBy(id: string): readonly string[] {
    return [...(this.#usedBy.get(id) ?? [])];
  }

  tree(id: string): Tree | undefined {
    const read = this.#read.get(id);
    return read && "tree" in read ? read.tree : undefined;
  }

  /** Puts changes on the desk and sees to what follows from them. */
  apply(changes: readonly LineChange[]): void {
    const again = new Set<string>();
    const rework = new Set<string>();
    let renamed = false;
    for (const { id, at, before, after, sameMeaning } of changes) {
      this.#desk.put(id, at, after);
      if (before?.name !== after?.name) {
        renamed = true;
        for (const user of this.usedBy(id)) again.add(user);
        if (before && after) for (const waiter of this.#waitingFor(before.name)) rework.add(waiter);
      }
      if (!after) this.#forget(id);
      again.add(id);
      if (!sameMeaning || this.#results.get(id)?.state !== "settled") rework.add(id);
    }
    // A new name may be the one that a formula missed.
    if (renamed) for (const [id, read] of this.#read) if ("says" in read) again.add(id);
    let rewired = false;
    for (const id of again) {
      if (!this.#desk.kept.has(id)) continue;
      const changed = this.#readAgain(id);
      if (changed) rework.add(id);
      rewired ||= changed;
    }
    if (rewired || renamed) for (const id of this.#findLoops(again)) rework.add(id);
    for (const id of rework) if (this.#desk.kept.has(id)) this.#define(id);
    this.#markStale(rework);
  }

  /** Reads a line's formula. Tells whether it uses other lines than before, or can be read where it could not, or not any more. */
  #readAgain(id: string): boolean {
    const line = this.#desk.kept.get(id)?.line;
    const before = this.#read.get(id);
    if (!line || line.kind === "given") {
      this.#read.delete(id);
      this.#wire(id, before, undefined);
      return before !== undefined;
    }
    const parsed = parseFormula(line.formula, this.#desk);
    const after: Read = "tree" in parsed ? { tree: parsed.tree, uses: this.#ids(usesOf(parsed.tree)) } : parsed;
    this.#read.set(id, after);
    this.#wire(id, before, after);
    const [one, other] = [
      before && "uses" in before ? before.uses.join() : undefined,
      "uses" in after ? after.uses.join() : undefined,
    ];
    return one !== other || (other === undefined && JSON.stringify(before) !== JSON.stringify(after));
  }

  #ids(names: readonly string[]): readonly string[] {
    return names.flatMap((name) => this.#desk.idOf(name) ?? []);
  }

  #wire(id: string, before: Read | undefined, after: Read | undefined): void {
    if (before && "uses" in before) for (const used of before.uses) this.#usedBy.get(used)?.delete(id);
    if (!after || !("uses" in after)) return;
    for (const used of after.uses) {
      const users = this.#usedBy.get(used);
      if (users) users.add(id);
      else this.#usedBy.set(used, new Set([id]));
    }
  }

  /** Finds the loops anew; gives the lines whose place in one has changed. */
  #findLoops(touched: ReadonlySet<string>): readonly string[] {
    const uses = (id: string) => this.uses(id);
    const before = this.#loops;
    const suspects = touched.size > FEW ? loopSuspects(this.#desk.order, uses) : [...touched, ...before.keys()];
    const after = new Map<string, readonly string[]>();
    for (const id of suspects) {
      if (after.has(id) || !this.#desk.kept.has(id)) continue;
      const way = findLoop(id, uses) ?? [];
      way.forEach((one, i) => {
        if (!after.has(one)) after.set(one, [...way.slice(i), ...way.slice(0, i)]);
      });
    }
    this.#loops = after;
    return [...new Set([...before.keys(), ...after.keys()])].filter(
      (id) => before.get(id)?.join() !== after.get(id)?.join(),
    );
  }

  #define(id: string): void {
    this.#versions.set(id, (this.#versions.get(id) ?? 0) + 1);
    const inputs = this.#loops.has(id) ? [] : this.uses(id);
    this.#graph.define(id, inputs, (...results) => this.#work(id, inputs, results));
  }

  #forget(id: string): void {
    this.#graph.delete(id);
    this.#wire(id, this.#read.get(id), undefined);
    for (const map of [this.#read, this.#runs, this.#results, this.#stale, this.#loops]) map.delete(id);
  }

  #waitingFor(name: string): readonly string[] {
    return [...this.#results].flatMap(([id, result]) => (result.state === "waits" && result.for === name ? [id] : []));
  }

  #markStale(from: Iterable<string>): void {
    const left = [...from].filter((id) => this.#desk.kept.has(id));
    const seen = new Set(left);
    for (let id = left.pop(); id !== undefined; id = left.pop()) {
      this.#stale.add(id);
      for (const user of this.usedBy(id)) if (!seen.has(user)) left.push(user), seen.add(user);
    }
  }

  /** One line's work. Where nothing that it uses has changed, it has nothing to do. */
  #work(id: string, inputs: readonly string[], results: readonly unknown[]): Result | Promise<Result> {
    const version = this.#versions.get(id) ?? 0;
    const last = this.#runs.get(id);
    if (last?.version === version && results.every((result, i) => result === last.inputs[i])) return last.result;
    const finish = (found: Result): Result => {
      const line = this.#desk.kept.get(id)?.line;
      const fresh = line && line.kind !== "given" ? inItsUnit(found, line.unit) : found;
      const before = this.#runs.get(id)?.result;
      const result = before && sameResult(before, fresh) ? before : fresh;
      if (this.#versions.get(id) === version) this.#runs.set(id, { version, inputs: results, result });
      return result;
    };
    const found = this.#evaluate(id, inputs, results);
    if (!(found instanceof Promise)) return finish(found);
    this.#tellWorking(id);
    return found.then(finish);
  }

  #evaluate(id: string, inputs: readonly string[], results: readonly unknown[]): Result | Promise<Result> {
    const kept = this.#desk.kept.get(id);
    if (!kept) return { state: "not given" };
    if (kept.thing)
      return kept.thing[0] === undefined || kept.thing[0] === null
        ? { state: "not given" }
        : { state: "settled", value: kept.thing[0] };
    if (kept.line.kind === "given") return readGiven(kept.name, kept.line);
    const loop = this.#loops.get(id);
    if (loop) return { state: "stopped", says: this.#loopInWords(loop) };
    const read = this.#read.get(id);
    if (!read) return { state: "stopped", says: "nothing is written here: write a formula" };
    if ("says" in read) return { state: "stopped", says: read.says, at: read.at };
    this.worked++;
    const places = new Map(inputs.map((input, i) => [input, i]));
    const result = (name: string): Result => {
      const place = places.get(this.#desk.idOf(name) ?? "");
      return place === undefined
        ? { state: "stopped", says: `no line is called "${name}"` }
        : (results[place] as Result);
    };
    return evaluate(read.tree, { formula: kept.line.formula, result });
  }

  #loopInWords(loop: readonly string[]): string {
    const names = loop.map((id) => `"${this.#desk.kept.get(id)?.name ?? id}"`);
    if (names.length === 1) return "this needs itself to be worked out";
    return `this needs itself to be worked out: ${[...names, names[0]].join(" needs ")}`;
  }

  #tellWorking(id: string): void {
    const left = [id];
    const seen = new Set(left);
    for (let one = left.pop(); one !== undefined; one = left.pop()) {
      this.#results.delete(one);
      if (this.#desk.kept.has(one)) this.#tell(one, WORKING);
      for (const user of this.usedBy(one)) if (!seen.has(user)) left.push(user), seen.add(user);
    }
  }

  #finish(id: string, value: Result): void {
    this.#stale.delete(id);
    // Work gives errors as results; what is no result was thrown by the engine itself.
    const result: Result = value instanceof Error ? { state: "stopped", says: value.message } : value;
    if (this.#results.get(id) === result) return;
    this.#results.set(id, result);
    this.#tell(id, result);
  }
}
