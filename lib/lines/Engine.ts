import type { Desk, Kept, KeptCases, LineChange } from "./Desk.ts";
import { evaluate } from "./evaluate.ts";
import { type Graph, openGraph, superseded } from "./graph.ts";
import { inItsUnit } from "./inItsUnit.ts";
import { JobAtWork } from "./JobAtWork.ts";
import { Node } from "./Node.ts";
import { nodeOf } from "./nodeOf.ts";
import { ownChanged } from "./ownChanged.ts";
import { readInCase } from "./readInCase.ts";
import { sameResult } from "./sameResult.ts";
import type { Result } from "./types.ts";
import { type Loop, Wiring } from "./Wiring.ts";

/** What is told of a line in a case: ids of both. */
export type Told = (line: string, result: Result, inCase: string) => void;

/** Works the lines of a desk out in each case, and out again after each change: what depends on it, and nothing else. */
export class Engine {
  /** How many formulas were worked out. */
  worked = 0;
  readonly wiring: Wiring;
  readonly #desk: Desk;
  readonly #graph: Graph;
  readonly #told: Told;
  readonly #nodes = new Map<string, Node>();
  /** Nodes whose slow function is at work. */
  readonly #atWork = new Set<Node>();

  constructor(desk: Desk, told: Told) {
    this.#desk = desk;
    this.#told = told;
    this.wiring = new Wiring(desk);
    this.#graph = openGraph((node, value) => this.#finish(node, value));
  }

  settled(line?: string, inCase = this.#desk.cases.base): Promise<void> {
    return this.#graph.settled(line === undefined ? undefined : nodeOf(line, inCase));
  }

  close(): void {
    for (const node of this.#atWork) node.drop();
    this.#graph.close();
  }

  result(line: string, inCase: string): Result {
    return this.#nodes.get(nodeOf(line, inCase))?.now ?? { state: "working" };
  }

  /** The lines whose slow function is at work, each with its case. */
  atWork(): readonly { readonly line: string; readonly inCase: string }[] {
    return [...this.#atWork].filter(({ job }) => job).map(({ line, inCase }) => ({ line, inCase }));
  }

  /** Ends the work of a line's slow function: the line stays stopped until something changes, or `again`. */
  stop(line: string, inCase: string): void {
    this.#nodes.get(nodeOf(line, inCase))?.job?.stopByHand();
  }

  /** Works a line anew. */
  again(line: string, inCase: string): void {
    this.#define(line, inCase);
    for (const one of this.wiring.workedWith([line])) {
      const node = this.#nodes.get(nodeOf(one, inCase));
      if (node) node.stale = true;
    }
  }

  /** Puts other cases in place of those there are: what is new is worked, what is gone forgotten. */
  applyCases(after: KeptCases): void {
    const before = this.#desk.cases;
    this.#desk.cases = after;
    const lines = this.#desk.order;
    for (const { id } of before.list)
      if (!after.list.some((one) => one.id === id)) for (const line of lines) this.#forget(nodeOf(line, id));
    for (const { id, name } of after.list) {
      const was = before.list.find((one) => one.id === id);
      if (was?.name === name) continue;
      // A case's name is in the names of its own sources of doubt.
      const touched = was ? lines.filter((line) => hasReadingOf(this.#desk.kept.get(line), id)) : lines;
      const cases = was ? after.list.map((one) => one.id) : [id];
      for (const one of cases) this.#workAgain(touched, one);
    }
  }

  /** Puts changes on the desk and sees to what follows from them. */
  apply(changes: readonly LineChange[]): void {
    const readAgain = new Set<string>();
    /** Lines to be worked again in every case, and those in single cases. */
    const everywhere = new Set<string>();
    const inCases = new Map<string, Set<string>>();
    let renamed = false;
    for (const { id, at, before, after, sameMeaning } of changes) {
      this.#desk.put(id, at, after);
      if (before?.name !== after?.name) {
        renamed = true;
        for (const user of this.wiring.usedBy(id)) readAgain.add(user);
        if (before) for (const waiter of this.#waitingFor(before.name)) everywhere.add(waiter);
      }
      if (!after) {
        this.wiring.forget(id);
        for (const inCase of this.#desk.cases.list) this.#forget(nodeOf(id, inCase.id));
      }
      readAgain.add(id);
      for (const inCase of this.#desk.cases.list) {
        if (before && after && !ownChanged(before, after, inCase.id, sameMeaning === true)) {
          const settled = this.#nodes.get(nodeOf(id, inCase.id))?.result?.state === "settled";
          if (settled || !sameMeaning) continue;
        }
        const lines = inCases.get(inCase.id) ?? new Set();
        inCases.set(inCase.id, lines.add(id));
      }
    }
    if (renamed) for (const id of this.wiring.unread()) readAgain.add(id);
    let rewired = false;
    for (const id of readAgain) {
      if (!this.#desk.kept.has(id) || !this.wiring.read(id)) continue;
      everywhere.add(id);
      rewired = true;
    }
    if (rewired || renamed) for (const id of this.wiring.findLoops(readAgain)) everywhere.add(id);
    // Mostly the same lines change in every case: what follows from them is looked for once.
    const found = new Map<string, ReadonlySet<string>>();
    for (const { id } of this.#desk.cases.list) {
      const lines = [...new Set([...everywhere, ...(inCases.get(id) ?? [])])];
      const key = lines.join();
      const dependents = found.get(key) ?? this.wiring.workedWith(lines);
      found.set(key, dependents);
      this.#workAgain(lines, id, dependents);
    }
  }

  #workAgain(lines: Iterable<string>, inCase: string, dependents?: ReadonlySet<string>): void {
    const here = [...lines].filter((line) => this.#desk.kept.has(line));
    if (here.length === 0) return;
    for (const line of here) this.#define(line, inCase);
    for (const line of dependents ?? this.wiring.workedWith(here)) {
      const node = this.#nodes.get(nodeOf(line, inCase));
      if (!node) continue;
      node.stale = true;
      node.drop();
    }
  }

  #define(line: string, inCase: string): void {
    const name = nodeOf(line, inCase);
    const node = this.#nodes.get(name) ?? new Node(line, inCase);
    this.#nodes.set(name, node);
    node.version += 1;
    const inputs = this.wiring.loop(line) ? [] : this.wiring.uses(line).map((used) => nodeOf(used, inCase));
    this.#graph.define(name, inputs, (...results) => this.#work(node, results));
  }

  #forget(name: string): void {
    this.#nodes.get(name)?.drop();
    this.#nodes.delete(name);
    this.#graph.delete(name);
  }

  /** Ids of the lines that wait for a line under this name. */
  #waitingFor(name: string): readonly string[] {
    return [...this.#nodes.values()].flatMap(({ result, line }) =>
      result?.state === "waits" && result.for === name ? [line] : [],
    );
  }

  /** One line's work in one case. Where nothing that it uses has changed, it has nothing to do. */
  #work(node: Node, results: readonly unknown[]): Result | Promise<Result> {
    for (let i = 0; i < results.length; i++) if (results[i] === superseded) return superseded;
    if (node.worked && node.isWorkedFrom(results)) return node.worked;
    if (node.job) node.drop();
    const { version } = node;
    const found = this.#evaluate(node, results);
    if (!(found instanceof Promise)) return this.#keep(node, version, results, found);
    const job = node.job ?? this.#jobFor(node);
    this.#atWork.add(node);
    this.#tellWorking(node);
    return job.outcome(found).then((result) => {
      if (node.job === job) node.job = undefined;
      if (!node.job) this.#atWork.delete(node);
      // Work that was dropped may still end; what it found belongs to older lines.
      return job.dropped ? result : this.#keep(node, version, results, result);
    });
  }

  #jobFor(node: Node): JobAtWork {
    node.job ??= new JobAtWork(() => this.#told(node.line, node.now, node.inCase));
    return node.job;
  }

  /** What was found, or the very thing that it came to before where that is equal: then nothing follows from it. */
  #keep(node: Node, version: number, results: readonly unknown[], found: Result): Result {
    const result = node.worked && sameResult(node.worked, found) ? node.worked : found;
    if (node.version === version) {
      node.workedVersion = version;
      node.workedFrom = results;
      node.worked = result;
    }
    return result;
  }

  #evaluate(node: Node, results: readonly unknown[]): Result | Promise<Result> {
    const { line: id, inCase } = node;
    const kept = this.#desk.kept.get(id);
    if (!kept) return { state: "not given" };
    const { line } = kept;
    if (line.kind === "given" || kept.thing) return readInCase(kept, inCase, this.#desk.cases);
    const loop = this.wiring.loop(id);
    if (loop) return { state: "stopped", says: this.#loopInWords(loop) };
    const read = this.wiring.formula(id);
    if (!read || "says" in read) return { state: "stopped", says: "nothing is written here: write a formula", ...read };
    this.worked++;
    const { places, swiftly } = read;
    const swift = swiftly.tried(results);
    if (swift) return swift;
    const result = (used: string): Result => {
      const place = places.get(used);
      return place === undefined
        ? { state: "stopped", says: `no line is called "${used}"` }
        : (results[place] as Result);
    };
    const found = evaluate(read.tree, { formula: line.formula, result, jobOf: () => this.#jobFor(node) });
    if (found instanceof Promise) return found.then((later) => inItsUnit(later, line.unit));
    const shown = inItsUnit(found, line.unit);
    swiftly.learn(results, shown);
    return shown;
  }

  #loopInWords({ way, more }: Loop): string {
    const names = way.map((id) => `"${this.#desk.kept.get(id)?.name ?? id}"`);
    if (names.length === 1) return "this needs itself to be worked out";
    const rest = more > 0 ? ` needs, by way of ${more.toLocaleString("en-US")} more,` : " needs";
    return `this needs itself to be worked out: ${names.join(" needs ")}${rest} ${names[0]}`;
  }

  #tellWorking({ line, inCase }: Node): void {
    for (const one of this.wiring.workedWith([line])) {
      const node = this.#nodes.get(nodeOf(one, inCase));
      if (!node) continue;
      node.result = undefined;
      this.#told(one, node.working, inCase);
    }
  }

  #finish(name: string, value: unknown): void {
    const node = this.#nodes.get(name);
    if (!node) return;
    node.stale = false;
    // Work gives errors as results; what was thrown all the same is a fault of the engine, and is shown as one.
    const result = value instanceof Error ? ({ state: "stopped", says: value.message } as const) : (value as Result);
    node.before = result.state === "settled" ? result : undefined;
    if (node.result === result) return;
    node.result = result;
    this.#told(node.line, result, node.inCase);
  }
}

/** Whether some case's own reading of a line bears a case's name. */
function hasReadingOf(kept: Kept | undefined, inCase: string): boolean {
  if (!kept?.own) return false;
  for (const [id, own] of kept.own) if (id === inCase || own.sameAs === inCase) return true;
  return false;
}
