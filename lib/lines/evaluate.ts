import { sameDimension } from "../measure/dimension.ts";
import { exact } from "../measure/measuredValue.ts";
import type { Value } from "../measure/types.ts";
import { argumentOf } from "./argumentOf.ts";
import { callDrawn } from "./callDrawn.ts";
import { callPlain } from "./callPlain.ts";
import { compared } from "./compared.ts";
import { FormulaError } from "./FormulaError.ts";
import { isValue } from "./isValue.ts";
import { literalValue } from "./literal.ts";
import { NotGiven, WaitsFor } from "./outcomes.ts";
import { partOf } from "./partOf.ts";
import { saidOf } from "./saidOf.ts";
import { signed, unlike } from "./signed.ts";
import type { Tree } from "./tree.ts";
import type { Job, Result } from "./types.ts";

/** What a formula is worked in: its own text, and what the lines came to. */
export interface Surroundings {
  readonly formula: string;
  readonly result: (line: string) => Result;
  /** Gives the job for slow functions: without one they work on this thread. */
  readonly jobOf?: () => Job;
  /** In a trial: an amount as this draw has it. What a function is not sure of itself is drawn where it is called. */
  readonly drawn?: (value: Value) => Value;
}

/** What slow functions gave so far, by the call in the formula. */
type Given = Map<Tree, unknown>;

/** Thrown to leave a formula while a slow function works. */
class Slow {
  readonly call: Tree;
  readonly promise: PromiseLike<unknown>;

  constructor(call: Tree, promise: PromiseLike<unknown>) {
    this.call = call;
    this.promise = promise;
  }
}

/**
 * Works a formula out. Nothing is thrown: what went wrong is a result too.
 * @param tree The formula as read.
 * @param around Its text, for what is said of an error, and the results of the lines that it names.
 * @returns The result, or a promise of it where a function is slow.
 * @example evaluate(tree, { formula: "2 * 3", result }) // { state: "settled", value: { value: 6, … } }
 */
export function evaluate(tree: Tree, around: Surroundings): Result | Promise<Result> {
  return attempt(tree, around, new Map());
}

function attempt(tree: Tree, around: Surroundings, given: Given): Result | Promise<Result> {
  try {
    const value = work(tree, around, given);
    return value instanceof NotGiven ? { state: "waits", for: value.line } : { state: "settled", value };
  } catch (error) {
    if (error instanceof Slow) {
      const { call, promise } = error;
      return Promise.resolve(promise).then(
        (value) => attempt(tree, around, given.set(call, finished(value, call))),
        (reason: unknown) => stopped(reason, call.from),
      );
    }
    return error instanceof WaitsFor ? { state: "waits", for: error.line } : stopped(error, tree.from);
  }
}

function stopped(error: unknown, from: number): Result {
  if (error instanceof FormulaError) return { state: "stopped", says: error.message, at: error.at };
  return { state: "stopped", says: error instanceof Error ? error.message : String(error), at: from };
}

function work(tree: Tree, around: Surroundings, given: Given): unknown {
  const inner = (piece: Tree) => work(piece, around, given);
  const needed = (piece: Tree) => {
    const value = inner(piece);
    if (value instanceof NotGiven) throw new WaitsFor(value.line);
    return value;
  };
  const truth = (piece: Tree): boolean => {
    const value = needed(piece);
    if (typeof value === "boolean") return value;
    throw new FormulaError(`"${quote(piece, around)}" is no condition: write one, say a > b`, piece.from);
  };
  switch (tree.kind) {
    case "number":
      return literalValue(tree.value, tree.unit, true);
    case "words":
      return tree.words;
    case "line":
      return lineValue(tree.name, around.result(tree.name));
    case "part":
      return part(tree, needed(tree.of), around);
    case "call":
      return call(tree, inner, given, around);
    case "negative":
    case "sign":
      return signed(tree, needed, (piece) => quote(piece, around));
    case "compare":
      return compared(tree, needed, (piece) => quote(piece, around));
    case "is given":
      return !(inner(tree.of) instanceof NotGiven) !== tree.not;
    case "and":
      return truth(tree.left) && truth(tree.right);
    case "or":
      return truth(tree.left) || truth(tree.right);
    case "not":
      return !truth(tree.of);
    case "choice": {
      const branch = tree.branches.find((one) => truth(one.when));
      return inner(branch ? branch.is : tree.otherwise);
    }
  }
}

function lineValue(name: string, result: Result): unknown {
  if (result.state === "settled") return result.value;
  if (result.state === "not given") return new NotGiven(name);
  throw new WaitsFor(result.state === "waits" ? result.for : name);
}

function part(tree: Tree & { kind: "part" }, thing: unknown, around: Surroundings): unknown {
  let value: unknown;
  try {
    [value] = partOf(thing, tree.part);
  } catch (error) {
    const why = error instanceof Error ? error.message : "";
    const minus =
      tree.part.includes("-") && !why.includes("did you mean") ? "; a minus needs a blank on each side" : "";
    throw new FormulaError(`"${quote(tree.of, around)}" ${why}${minus}`, tree.from);
  }
  if (value === undefined || value === null)
    throw new FormulaError(`"${tree.part}" is not known from "${quote(tree.of, around)}"`, tree.from);
  return amount(value, tree);
}

function call(
  tree: Tree & { kind: "call" },
  inner: (piece: Tree) => unknown,
  given: Given,
  around: Surroundings,
): unknown {
  if (given.has(tree)) return given.get(tree);
  const { func } = tree;
  const each = tree.args.map((piece, i) => {
    const value = inner(piece);
    if (!(value instanceof NotGiven)) return argumentOf(func, i, value, piece, quote(piece, around));
    if (!func.takes[i]?.optional) throw new WaitsFor(value.line);
    return undefined;
  });
  const args = func.alike ? alike(tree, each, around) : each;
  const { jobOf, drawn } = around;
  const result: unknown = tellingWhere(tree, () => {
    if (drawn && func.numbers) return callDrawn(func, args, drawn);
    if (!func.work) return callPlain(func, args, jobOf);
    return func.slow && jobOf ? func.slow(jobOf(), ...args) : func.work(...args);
  });
  if (isThenable(result)) throw new Slow(tree, result);
  const found = finished(result, tree);
  return drawn && isValue(found) ? drawn(found) : found;
}

function tellingWhere<T>(tree: Tree, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw new FormulaError(saidOf(error), tree.from);
  }
}

/** Amounts that are compared with each other must be of one kind. A written temperature is what the others are, point or step. */
function alike(tree: Tree & { kind: "call" }, args: readonly unknown[], around: Surroundings): readonly unknown[] {
  const steps = args.some((arg) => isValue(arg) && arg.dimension.temperature === 1 && !arg.dimension.point);
  const meant = args.map((arg, i) => {
    const piece = tree.args[i];
    const isPoint = isValue(arg) && arg.dimension.point;
    return steps && isPoint && piece?.kind === "number" ? literalValue(piece.value, piece.unit, false) : arg;
  });
  const [first] = tree.args;
  const [like] = meant;
  if (!first || !isValue(like)) return meant;
  tree.args.forEach((piece, i) => {
    const arg = meant[i];
    if (isValue(arg) && !sameDimension(arg.dimension, like.dimension))
      throw new FormulaError(
        unlike(first, like, piece, arg, (one) => quote(one, around)),
        piece.from,
      );
  });
  return meant;
}

function isThenable(thing: unknown): thing is PromiseLike<unknown> {
  return typeof thing === "object" && thing !== null && "then" in thing && typeof thing.then === "function";
}

function finished(value: unknown, tree: (Tree & { kind: "call" }) | Tree): unknown {
  if (value === undefined || value === null)
    throw new FormulaError(`${tree.kind === "call" ? tree.func.name : "this"} gave nothing`, tree.from);
  return amount(value, tree);
}

/** Plain numbers become amounts; what is no finite number is an error. */
function amount(value: unknown, tree: Tree): unknown {
  if (typeof value !== "number" && !isValue(value)) return value;
  const number = typeof value === "number" ? value : value.value;
  if (!Number.isFinite(number)) throw new FormulaError("this comes to no number", tree.from);
  return typeof value === "number" ? exact(value, {}) : value;
}

function quote(tree: Tree, around: Surroundings): string {
  return around.formula.slice(tree.from, tree.to);
}
