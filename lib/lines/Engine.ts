import type { Desk, Kept, KeptCases, LineChange } from "./Desk.ts";
import { evaluate } from "./evaluate.ts";
import { type Graph, openGraph, superseded } from "./graph.ts";
import { inItsUnit } from "./inItsUnit.ts";
import { JobAtWork } from "./JobAtWork.ts";
import { lineAndCase, nodeOf } from "./node.ts";
import { ownChanged } from "./ownChanged.ts";
import { readInCase } from "./readInCase.ts";
import { sameResult } from "./sameResult.ts";
import type { Result } from "./types.ts";
import { Wiring } from "./Wiring.ts";

/** What a line came to last in a case, and from what. */
interface Run {
  readonly version: number;
  readonly inputs: readonly unknown[];
  readonly result: Result;
}

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
  /** Counts how often a line itself was changed in a case: work for an older version is not kept. */
  readonly #versions = new Map<string, number>();
  readonly #runs = new Map<string, Run>();
  readonly #results = new Map<string, Result>();
  readonly #stale = new Set<string>();
  /** What each line came to last, while it is worked again. */
  readonly #before = new Map<string, unknown>();
  readonly #jobs = new Map<string, JobAtWork>();

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
    for (const node of [...this.#jobs.keys()]) this.#drop(node);
    this.#graph.close();
  }

  result(line: string, inCase: string): Result {
    return this.#resultOf(nodeOf(line, inCase));
  }

  #resultOf(node: string): Result {
    return (this.#stale.has(node) ? undefined : this.#results.get(node)) ?? this.#working(node);
  }

  /** The lines whose slow function is at work, each with its case. */
  atWork(): readonly { readonly line: string; readonly inCase: string }[] {
    return [...this.#jobs.keys()].map(lineAndCase);
  }

  /** Ends the work of a line's slow function: the line stays stopped until something changes, or `again`. */
  stop(line: string, inCase: string): void {
    this.#jobs.get(nodeOf(line, inCase))?.stopByHand();
  }

  /** Works a line anew. */
  again(line: string, inCase: string): void {
    this.#define(line, inCase);
    for (const one of this.wiring.withDependents([line])) this.#stale.add(nodeOf(one, inCase));
  }

  #working(node: string): Result {
    const job = this.#jobs.get(node);
    return {
      state: "working",
      ...(this.#before.has(node) && { before: this.#before.get(node) }),
      ...job?.progress,
    };
  }

  /** Nobody waits for this work any more. */
  #drop(node: string): void {
    const job = this.#jobs.get(node);
    this.#jobs.delete(node);
    job?.drop();
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
          const settled = this.#results.get(nodeOf(id, inCase.id))?.state === "settled";
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
    for (const { id } of this.#desk.cases.list)
      this.#workAgain(new Set([...everywhere, ...(inCases.get(id) ?? [])]), id);
  }

  #workAgain(lines: Iterable<string>, inCase: string): void {
    const here = [...lines].filter((line) => this.#desk.kept.has(line));
    if (here.length === 0) return;
    for (const line of here) this.#define(line, inCase);
    for (const line of this.wiring.withDependents(here)) {
      const node = nodeOf(line, inCase);
      this.#stale.add(node);
      this.#drop(node);
    }
  }

  #define(line: string, inCase: string): void {
    const node = nodeOf(line, inCase);
    this.#versions.set(node, (this.#versions.get(node) ?? 0) + 1);
    const inputs = this.wiring.loop(line) ? [] : this.wiring.uses(line).map((used) => nodeOf(used, inCase));
    this.#graph.define(node, inputs, (...results) => this.#work(node, line, inCase, results));
  }

  #forget(node: string): void {
    this.#drop(node);
    this.#before.delete(node);
    this.#graph.delete(node);
    this.#runs.delete(node);
    this.#results.delete(node);
    this.#stale.delete(node);
  }

  /** Ids of the lines that wait for a line under this name. */
  #waitingFor(name: string): readonly string[] {
    return [...this.#results].flatMap(([node, result]) =>
      result.state === "waits" && result.for === name ? [lineAndCase(node).line] : [],
    );
  }

  /** One line's work in one case. Where nothing that it uses has changed, it has nothing to do. */
  #work(node: string, line: string, inCase: string, results: readonly unknown[]): Result | Promise<Result> {
    if (results.includes(superseded)) return superseded;
    const version = this.#versions.get(node) ?? 0;
    const last = this.#runs.get(node);
    if (last?.version === version && results.every((result, i) => result === last.inputs[i])) return last.result;
    const keep = (found: Result): Result => {
      const before = this.#runs.get(node)?.result;
      const result = before && sameResult(before, found) ? before : found;
      if (this.#versions.get(node) === version) this.#runs.set(node, { version, inputs: results, result });
      return result;
    };
    this.#drop(node);
    let job: JobAtWork | undefined;
    const jobOf = () => {
      job ??= new JobAtWork(() => this.#tell(node));
      return job;
    };
    const found = this.#evaluate(line, inCase, results, jobOf);
    if (!(found instanceof Promise)) return keep(found);
    const atWork = jobOf();
    this.#jobs.set(node, atWork);
    this.#tellWorking(line, inCase);
    return atWork.outcome(found).then((result) => {
      if (this.#jobs.get(node) === atWork) this.#jobs.delete(node);
      // Work that was dropped may still end; what it found belongs to older lines.
      return atWork.dropped ? result : keep(result);
    });
  }

  #evaluate(id: string, inCase: string, results: readonly unknown[], jobOf: () => JobAtWork): Result | Promise<Result> {
    const kept = this.#desk.kept.get(id);
    if (!kept) return { state: "not given" };
    const { line } = kept;
    if (line.kind === "given" || kept.thing) return readInCase(kept, inCase, this.#desk.cases);
    const loop = this.wiring.loop(id);
    if (loop) return { state: "stopped", says: this.#loopInWords(loop) };
    const read = this.wiring.formula(id);
    if (!read || "says" in read) return { state: "stopped", says: "nothing is written here: write a formula", ...read };
    this.worked++;
    const { places } = read;
    const result = (used: string): Result => {
      const place = places.get(used);
      return place === undefined
        ? { state: "stopped", says: `no line is called "${used}"` }
        : (results[place] as Result);
    };
    const found = evaluate(read.tree, { formula: line.formula, result, jobOf });
    return found instanceof Promise ? found.then((later) => inItsUnit(later, line.unit)) : inItsUnit(found, line.unit);
  }

  #loopInWords(loop: readonly string[]): string {
    const names = loop.map((id) => `"${this.#desk.kept.get(id)?.name ?? id}"`);
    if (names.length === 1) return "this needs itself to be worked out";
    return `this needs itself to be worked out: ${[...names, names[0]].join(" needs ")}`;
  }

  #tell(node: string): void {
    const { line, inCase } = lineAndCase(node);
    this.#told(line, this.#resultOf(node), inCase);
  }

  #tellWorking(line: string, inCase: string): void {
    for (const one of this.wiring.withDependents([line])) {
      const node = nodeOf(one, inCase);
      this.#results.delete(node);
      if (this.#desk.kept.has(one)) this.#told(one, this.#working(node), inCase);
    }
  }

  #finish(node: string, value: unknown): void {
    this.#stale.delete(node);
    // Work gives errors as results; what was thrown all the same is a fault of the engine, and is shown as one.
    const result = value instanceof Error ? ({ state: "stopped", says: value.message } as const) : (value as Result);
    if (result.state === "settled") this.#before.set(node, result.value);
    else this.#before.delete(node);
    if (this.#results.get(node) === result) return;
    this.#results.set(node, result);
    const { line, inCase } = lineAndCase(node);
    this.#told(line, result, inCase);
  }
}

/** Whether some case's own reading of a line bears a case's name. */
function hasReadingOf(kept: Kept | undefined, inCase: string): boolean {
  if (!kept?.own) return false;
  for (const [id, own] of kept.own) if (id === inCase || own.sameAs === inCase) return true;
  return false;
}
