import type { Desk, LineChange } from "./Desk.ts";
import { evaluate } from "./evaluate.ts";
import { type Graph, openGraph, superseded } from "./graph.ts";
import { inItsUnit } from "./inItsUnit.ts";
import { JobAtWork } from "./JobAtWork.ts";
import { readGiven } from "./readGiven.ts";
import { sameResult } from "./sameResult.ts";
import type { Result } from "./types.ts";
import { Wiring } from "./Wiring.ts";

/** What a line came to last, and from what. */
interface Run {
  readonly version: number;
  readonly inputs: readonly unknown[];
  readonly result: Result;
}

/** Works the lines of a desk out, and out again after each change: what depends on it, and nothing else. */
export class Engine {
  /** How many formulas were worked out. */
  worked = 0;
  readonly wiring: Wiring;
  readonly #desk: Desk;
  readonly #graph: Graph;
  readonly #tell: (id: string, result: Result) => void;
  /** Counts how often a line itself was changed: work for an older version is not kept. */
  readonly #versions = new Map<string, number>();
  readonly #runs = new Map<string, Run>();
  readonly #results = new Map<string, Result>();
  readonly #stale = new Set<string>();
  /** What each line came to last, while it is worked again. */
  readonly #before = new Map<string, unknown>();
  readonly #jobs = new Map<string, JobAtWork>();

  constructor(desk: Desk, tell: (id: string, result: Result) => void) {
    this.#desk = desk;
    this.#tell = tell;
    this.wiring = new Wiring(desk);
    this.#graph = openGraph((id, value) => this.#finish(id, value));
  }

  settled(id?: string): Promise<void> {
    return this.#graph.settled(id);
  }

  close(): void {
    for (const id of [...this.#jobs.keys()]) this.#drop(id);
    this.#graph.close();
  }

  result(id: string): Result {
    return (this.#stale.has(id) ? undefined : this.#results.get(id)) ?? this.#working(id);
  }

  /** Ids of the lines whose slow function is at work. */
  atWork(): readonly string[] {
    return [...this.#jobs.keys()];
  }

  /** Ends the work of a line's slow function: the line stays stopped until something changes, or `again`. */
  stop(id: string): void {
    this.#jobs.get(id)?.stopByHand();
  }

  /** Works a line anew. */
  again(id: string): void {
    this.#define(id);
    for (const one of this.wiring.withDependents([id])) this.#stale.add(one);
  }

  #working(id: string): Result {
    const job = this.#jobs.get(id);
    return {
      state: "working",
      ...(this.#before.has(id) && { before: this.#before.get(id) }),
      ...job?.progress,
    };
  }

  /** Nobody waits for this work any more. */
  #drop(id: string): void {
    const job = this.#jobs.get(id);
    this.#jobs.delete(id);
    job?.drop();
  }

  /** Puts changes on the desk and sees to what follows from them. */
  apply(changes: readonly LineChange[]): void {
    const readAgain = new Set<string>();
    const workAgain = new Set<string>();
    let renamed = false;
    for (const { id, at, before, after, sameMeaning } of changes) {
      this.#desk.put(id, at, after);
      if (before?.name !== after?.name) {
        renamed = true;
        for (const user of this.wiring.usedBy(id)) readAgain.add(user);
        if (before) for (const waiter of this.#waitingFor(before.name)) workAgain.add(waiter);
      }
      if (!after) this.#forget(id);
      readAgain.add(id);
      if (!sameMeaning || this.#results.get(id)?.state !== "settled") workAgain.add(id);
    }
    if (renamed) for (const id of this.wiring.unread()) readAgain.add(id);
    let rewired = false;
    for (const id of readAgain) {
      if (!this.#desk.kept.has(id) || !this.wiring.read(id)) continue;
      workAgain.add(id);
      rewired = true;
    }
    if (rewired || renamed) for (const id of this.wiring.findLoops(readAgain)) workAgain.add(id);
    const here = [...workAgain].filter((id) => this.#desk.kept.has(id));
    for (const id of here) this.#define(id);
    for (const id of this.wiring.withDependents(here)) {
      this.#stale.add(id);
      this.#drop(id);
    }
  }

  #define(id: string): void {
    this.#versions.set(id, (this.#versions.get(id) ?? 0) + 1);
    const inputs = this.wiring.loop(id) ? [] : this.wiring.uses(id);
    this.#graph.define(id, inputs, (...results) => this.#work(id, inputs, results));
  }

  #forget(id: string): void {
    this.#drop(id);
    this.#before.delete(id);
    this.#graph.delete(id);
    this.wiring.forget(id);
    this.#runs.delete(id);
    this.#results.delete(id);
    this.#stale.delete(id);
  }

  /** Ids of the lines that wait for a line under this name. */
  #waitingFor(name: string): readonly string[] {
    return [...this.#results].flatMap(([id, result]) => (result.state === "waits" && result.for === name ? [id] : []));
  }

  /** One line's work. Where nothing that it uses has changed, it has nothing to do. */
  #work(id: string, inputs: readonly string[], results: readonly unknown[]): Result | Promise<Result> {
    if (results.includes(superseded)) return superseded;
    const version = this.#versions.get(id) ?? 0;
    const last = this.#runs.get(id);
    if (last?.version === version && results.every((result, i) => result === last.inputs[i])) return last.result;
    const keep = (found: Result): Result => {
      const before = this.#runs.get(id)?.result;
      const result = before && sameResult(before, found) ? before : found;
      if (this.#versions.get(id) === version) this.#runs.set(id, { version, inputs: results, result });
      return result;
    };
    this.#drop(id);
    const job = new JobAtWork(() => this.#tell(id, this.result(id)));
    const found = this.#evaluate(id, inputs, results, job);
    if (!(found instanceof Promise)) return keep(found);
    this.#jobs.set(id, job);
    this.#tellWorking(id);
    return job.outcome(found).then((result) => {
      if (this.#jobs.get(id) === job) this.#jobs.delete(id);
      // Work that was dropped may still end; what it found belongs to older lines.
      return job.dropped ? result : keep(result);
    });
  }

  #evaluate(
    id: string,
    inputs: readonly string[],
    results: readonly unknown[],
    job: JobAtWork,
  ): Result | Promise<Result> {
    const kept = this.#desk.kept.get(id);
    if (!kept) return { state: "not given" };
    const { name, line, thing } = kept;
    if (thing)
      return (thing[0] ?? undefined) === undefined ? { state: "not given" } : { state: "settled", value: thing[0] };
    if (line.kind === "given") return readGiven(name, line);
    const loop = this.wiring.loop(id);
    if (loop) return { state: "stopped", says: this.#loopInWords(loop) };
    const read = this.wiring.formula(id);
    if (!read || "says" in read) return { state: "stopped", says: "nothing is written here: write a formula", ...read };
    this.worked++;
    const places = new Map(inputs.map((input, i) => [input, i]));
    const result = (used: string): Result => {
      const place = places.get(this.#desk.idOf(used) ?? "");
      return place === undefined
        ? { state: "stopped", says: `no line is called "${used}"` }
        : (results[place] as Result);
    };
    const found = evaluate(read.tree, { formula: line.formula, result, job });
    return found instanceof Promise ? found.then((later) => inItsUnit(later, line.unit)) : inItsUnit(found, line.unit);
  }

  #loopInWords(loop: readonly string[]): string {
    const names = loop.map((id) => `"${this.#desk.kept.get(id)?.name ?? id}"`);
    if (names.length === 1) return "this needs itself to be worked out";
    return `this needs itself to be worked out: ${[...names, names[0]].join(" needs ")}`;
  }

  #tellWorking(id: string): void {
    for (const one of this.wiring.withDependents([id])) {
      this.#results.delete(one);
      if (this.#desk.kept.has(one)) this.#tell(one, this.#working(one));
    }
  }

  #finish(id: string, value: unknown): void {
    this.#stale.delete(id);
    // Work gives errors as results; what was thrown all the same is a fault of the engine, and is shown as one.
    const result = value instanceof Error ? ({ state: "stopped", says: value.message } as const) : (value as Result);
    if (result.state === "settled") this.#before.set(id, result.value);
    else this.#before.delete(id);
    if (this.#results.get(id) === result) return;
    this.#results.set(id, result);
    this.#tell(id, result);
  }
}
