import { sameDimension } from "../measure/dimension.ts";
import { standardUncertainty } from "../measure/standardUncertainty.ts";
import { evaluate } from "./evaluate.ts";
import { inItsUnit } from "./inItsUnit.ts";
import { isValue } from "./isValue.ts";
import { partOf } from "./partOf.ts";
import { type Off, shifted, shifterOf } from "./shifted.ts";
import { orderOf, type World } from "./supposed.ts";
import { childrenOf, type Tree } from "./tree.ts";
import type { Result } from "./types.ts";
import type { Read } from "./Wiring.ts";

/** A line made ready to be worked for many draws: what it comes to where each source is off by so much. */
export interface DrawnLine {
  readonly work: (off: Off) => Result;
  /** Ids of the lines that it rests on, itself among them. */
  readonly rests: readonly string[];
  /** What rounding may leave in it: a 1e-10 of the largest amount of its kind that it is made of, and of its doubt. */
  readonly grain: number;
}

type Formula = Extract<Read, { readonly tree: Tree }>;

interface Step {
  readonly id: string;
  readonly unit: string | undefined;
  readonly formula: string;
  readonly read: Formula;
}

/**
 * Prepares to work a line anew for many draws. Givens are moved along their sources. So is what a slow function gave,
 * and every thing with parts (a fit, a balance): what such a function found, with its sources, is its whole answer, and
 * doing a fit again from moved givens would count twice what the log had to say of them. A function that sees to doubt
 * itself and left out that of its inputs has judged it: it is not asked again either. All else is worked by formula.
 * @param world The open notebook, settled.
 * @param inCase Id of the case.
 * @param asked Id of the line.
 * @returns The line, made ready.
 * @example drawnLine(world, "case 1", "line 3").work(() => 0)
 */
export function drawnLine({ desk, wiring, result }: World, inCase: string, asked: string): DrawnLine {
  const rests = orderOf(asked, (id) => wiring.uses(id));
  const now = new Map(rests.map((id) => [id, result(id, inCase)]));
  const steps: Step[] = [];
  const moving = new Set<string>();
  const leaves: string[] = [];
  for (const id of rests) {
    const kept = desk.kept.get(id);
    const read = wiring.formula(id);
    const present = now.get(id);
    if (!kept || !present) continue;
    const { line } = kept;
    const written = line.kind === "given" || kept.thing || wiring.loop(id);
    const inputs = () => (read && "tree" in read ? read.uses.map((used) => now.get(used)) : []);
    const formula = !written && read && "tree" in read && isQuick(read.tree) && !isThing(present);
    if (formula && !(hasWork(read.tree) && leavesOut(present, inputs()))) {
      if (!read.uses.some((used) => moving.has(used)) && !isDoubtful(present)) continue;
      moving.add(id);
      steps.push({ id, unit: line.unit, formula: line.formula, read });
    } else if (present.state === "settled" && shifterOf(present.value)) {
      moving.add(id);
      leaves.push(id);
    }
  }
  const movers = leaves.map((id) => [id, moverOf(id, now.get(id) as Result, steps, id === asked)] as const);
  return {
    rests,
    grain: grainOf(now, asked),
    work(off) {
      const found = new Map(now);
      for (const [id, mover] of movers) found.set(id, mover(off));
      for (const { id, unit, formula, read } of steps) {
        const inputs = read.uses.map((used) => found.get(used) as Result);
        found.set(id, read.swiftly.tried(inputs) ?? inItsUnit(worked(formula, read, inputs, off), unit));
      }
      return found.get(asked) as Result;
    },
  };
}

function grainOf(now: ReadonlyMap<string, Result>, asked: string): number {
  const amounts = [...now].flatMap(([id, one]) =>
    one.state === "settled" && isValue(one.value) ? [{ id, value: one.value }] : [],
  );
  const kind = amounts.find(({ id }) => id === asked)?.value.dimension ?? {};
  const alike = amounts.filter(({ value }) => sameDimension(value.dimension, kind));
  return 1e-10 * Math.max(0, ...alike.map(({ value }) => Math.abs(value.value) + standardUncertainty(value)));
}

function worked(formula: string, { tree, places }: Formula, inputs: readonly Result[], off: Off): Result {
  const result = (name: string): Result => inputs[places.get(name) ?? -1] ?? { state: "waits", for: name };
  const outcome = evaluate(tree, { formula, result, drawn: (value) => shifted(value, off) });
  if (!(outcome instanceof Promise)) return outcome;
  // Of a function that only now turns out to be slow nothing is waited for.
  outcome.catch(() => {});
  return { state: "stopped", says: "a function takes too long to be tried many times" };
}

/** Moves a line's amount, or of a thing the parts that formulas ask for. */
function moverOf(id: string, present: Result, steps: readonly Step[], whole: boolean): (off: Off) => Result {
  if (present.state !== "settled") return () => present;
  const { value } = present;
  if (isValue(value)) return (off) => ({ state: "settled", value: shifted(value, off) });
  const parts = new Set<string>();
  const all = steps.reduce((needed, { read }) => {
    const names = [...read.places].flatMap(([name, place]) => (read.uses[place] === id ? [name] : []));
    return names.some((name) => partsAsked(read.tree, name, parts)) || needed;
  }, whole);
  const thing = all ? value : new Map([...parts].map((part) => [part, partIfThere(value, part)]));
  const shift = shifterOf(thing);
  return (off) => ({ state: "settled", value: shift ? shift(off) : thing });
}

function partIfThere(thing: unknown, part: string): unknown {
  try {
    return partOf(thing, part)[0];
  } catch {
    return undefined;
  }
}

/** Notes the parts of a line that a formula asks for; true where it takes the line as a whole. */
function partsAsked(tree: Tree, name: string, parts: Set<string>): boolean {
  if (tree.kind === "line") return tree.name === name;
  if (tree.kind === "part" && tree.of.kind === "line" && tree.of.name === name) {
    parts.add(tree.part);
    return false;
  }
  return childrenOf(tree)
    .map((child) => partsAsked(child, name, parts))
    .includes(true);
}

/** Whether a formula can be worked at once: it calls no slow function, and takes no part of what a call gives. */
function isQuick(tree: Tree): boolean {
  if (tree.kind === "call" && (tree.func.slow || tree.func.slowNumbers)) return false;
  if (tree.kind === "part" && tree.of.kind !== "line") return false;
  return childrenOf(tree).every(isQuick);
}

/** Whether it calls a function that sees to doubt itself. */
const hasWork = (tree: Tree): boolean =>
  (tree.kind === "call" && tree.func.work !== undefined) || childrenOf(tree).some(hasWork);

/** Whether an amount knows nothing of a source that one of its inputs has. */
function leavesOut(present: Result, inputs: readonly (Result | undefined)[]): boolean {
  if (present.state !== "settled" || !isValue(present.value)) return false;
  const { components } = present.value;
  return inputs.some(
    (one) =>
      one?.state === "settled" &&
      isValue(one.value) &&
      [...one.value.components.keys()].some((key) => !components.has(key)),
  );
}

const isThing = (result: Result): boolean =>
  result.state === "settled" && typeof result.value === "object" && !isValue(result.value);

const isDoubtful = (result: Result): boolean =>
  result.state === "settled" && isValue(result.value) && standardUncertainty(result.value) > 0;
