import type { Value } from "../measure/types.ts";
import { isTemperature, literalValue } from "./literal.ts";
import { childrenOf, type Tree } from "./tree.ts";

/** Works plain algebra over amounts whose kinds are known to go together; undefined where the long way has to say why not. */
export type Algebra = (inputs: readonly Settled[]) => Pick<Value, "value" | "components"> | undefined;

/** What a line came to, an amount. */
interface Settled {
  readonly value: Value;
}

const CONSTANT = 0;
const INPUT = 1;
const PLUS = 2;
const MINUS = 3;
const TIMES = 4;
const OVER = 5;
const NEGATIVE = 6;
const POWER = 7;
const CODES = { "+": PLUS, "-": MINUS, "*": TIMES, "/": OVER, "^": POWER } as const;

/** One piece: what it does, and the places of the pieces it does it to; `number` is a constant or an exponent. */
interface Step {
  readonly code: number;
  readonly left: number;
  readonly right: number;
  readonly number: number;
}

/**
 * A formula of nothing but names, numbers and + - * / ^, made ready to be worked often: its number, and its slope by
 * each line, in one pass back through the pieces (Griewank and Walther, Evaluating Derivatives, 2nd ed., 2008, 3.2: the
 * adjoint mode), so that doubt is carried once and not piece by piece. Kinds are not looked at.
 * @param tree The formula as read.
 * @param places Place of each line among the inputs.
 * @returns The work; undefined for a formula that has anything else in it, or a written temperature.
 * @example algebraOf(tree, new Map([["salt", 0], ["water", 1]]))?.([{ value: salt }, { value: water }])
 */
export function algebraOf(tree: Tree, places: ReadonlyMap<string, number>): Algebra | undefined {
  const steps: Step[] = [];
  if (add(tree, places, steps) === undefined) return undefined;
  const count = steps.length;
  const codes = steps.map(({ code }) => code);
  const lefts = steps.map(({ left }) => left);
  const rights = steps.map(({ right }) => right);
  const constants = steps.map(({ number }) => number);

  return (inputs) => {
    const { numbers, slopes, inputSlopes } = roomFor(Math.max(count, inputs.length));
    for (let i = 0; i < count; i++) {
      const code = codes[i];
      const left = lefts[i] as number;
      const a = code === INPUT || code === CONSTANT ? 0 : (numbers[left] as number);
      const b = numbers[rights[i] as number] as number;
      let number: number;
      if (code === CONSTANT) number = constants[i] as number;
      else if (code === INPUT) number = (inputs[left] as Settled).value.value;
      else if (code === PLUS) number = a + b;
      else if (code === MINUS) number = a - b;
      else if (code === TIMES) number = a * b;
      else if (code === OVER) number = a / b;
      else if (code === NEGATIVE) number = -a;
      else number = a ** (constants[i] as number);
      if (!Number.isFinite(number)) return undefined;
      numbers[i] = number;
    }
    slopes.fill(0, 0, count);
    inputSlopes.fill(0, 0, inputs.length);
    slopes[count - 1] = 1;
    for (let i = count - 1; i >= 0; i--) {
      const slope = slopes[i] as number;
      const code = codes[i];
      const left = lefts[i] as number;
      if (code === POWER) {
        const exponent = constants[i] as number;
        const by = exponent === 0 ? 0 : exponent * (numbers[left] as number) ** (exponent - 1);
        // Even where nothing asks for it: a slope without end times none is not none.
        if (!Number.isFinite(by)) return undefined;
        slopes[left] = (slopes[left] as number) + slope * by;
        continue;
      }
      if (code === OVER && !Number.isFinite((numbers[left] as number) / (numbers[rights[i] as number] as number) ** 2))
        return undefined;
      if (code === CONSTANT || slope === 0) continue;
      const right = rights[i] as number;
      if (code === INPUT) inputSlopes[left] = (inputSlopes[left] as number) + slope;
      else if (code === PLUS || code === MINUS) {
        slopes[left] = (slopes[left] as number) + slope;
        slopes[right] = (slopes[right] as number) + (code === PLUS ? slope : -slope);
      } else if (code === TIMES) {
        slopes[left] = (slopes[left] as number) + slope * (numbers[right] as number);
        slopes[right] = (slopes[right] as number) + slope * (numbers[left] as number);
      } else if (code === OVER) {
        const over = numbers[right] as number;
        slopes[left] = (slopes[left] as number) + slope / over;
        slopes[right] = (slopes[right] as number) - (slope * (numbers[i] as number)) / over;
      } else slopes[left] = (slopes[left] as number) - slope;
    }
    const components = new Map<string, number>();
    let cancelled = false;
    for (let k = 0; k < inputs.length; k++) {
      const slope = inputSlopes[k] as number;
      const { components: parts, interval95 } = (inputs[k] as Settled).value;
      // A skewed interval, or a slope without end, is the long way's business.
      if (interval95 || (parts.size > 0 && !Number.isFinite(slope))) return undefined;
      if (slope === 0) continue;
      for (const [source, part] of parts) {
        const before = components.get(source);
        const after = before === undefined ? slope * part : before + slope * part;
        if (!Number.isFinite(after)) return undefined;
        if (after === 0) cancelled = true;
        components.set(source, after);
      }
    }
    if (cancelled) for (const [source, part] of components) if (part === 0) components.delete(source);
    return { value: numbers[count - 1] as number, components };
  };
}

/** Numbers and slopes of the pieces: one formula is worked at a time, so all write on the same slate. */
let slate = { numbers: new Float64Array(64), slopes: new Float64Array(64), inputSlopes: new Float64Array(64) };

function roomFor(count: number): typeof slate {
  if (slate.numbers.length < count) {
    const size = 2 * count;
    slate = {
      numbers: new Float64Array(size),
      slopes: new Float64Array(size),
      inputSlopes: new Float64Array(size),
    };
  }
  return slate;
}

/** Puts a piece's steps behind the others; gives the place of its last, undefined where it is no plain algebra. */
function add(tree: Tree, places: ReadonlyMap<string, number>, steps: Step[]): number | undefined {
  const put = (code: number, left = 0, right = 0, number = 0) => steps.push({ code, left, right, number }) - 1;
  if (tree.kind === "number") {
    if (tree.unit !== undefined && isTemperature(tree.unit)) return undefined;
    return put(CONSTANT, 0, 0, literalValue(tree.value, tree.unit, true).value);
  }
  if (tree.kind === "line") {
    const place = places.get(tree.name);
    return place === undefined ? undefined : put(INPUT, place);
  }
  if (tree.kind === "negative") {
    const of = add(tree.of, places, steps);
    return of === undefined ? undefined : put(NEGATIVE, of);
  }
  if (tree.kind !== "sign") return undefined;
  const [first, second] = childrenOf(tree);
  const left = first && add(first, places, steps);
  if (left === undefined || !second) return undefined;
  if (tree.sign === "^")
    return second.kind === "number" && second.unit === undefined ? put(POWER, left, 0, second.value) : undefined;
  const right = add(second, places, steps);
  return right === undefined ? undefined : put(CODES[tree.sign], left, right);
}
