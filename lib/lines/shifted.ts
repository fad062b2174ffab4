import { coverage95, standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";

/** How far each source is off in one draw, in its standard uncertainties. */
export type Off = (source: string) => number;

const none: Value["components"] = new Map();

/**
 * An amount as it would be were each of its sources off by so much, without doubt. An amount with a 95 % interval of its
 * own is a normal cut at its value, each half as wide as that side of the interval: its median and its ends are right.
 * @param value The amount.
 * @param off How far each source is off.
 * @returns The amount moved.
 * @example shifted(measuredValue(10, 0.1, {}, "scale"), () => 2).value // 10.2
 */
export function shifted(value: Value, off: Off): Value {
  if (value.components.size === 0) return value;
  let sum = 0;
  for (const [source, component] of value.components) sum += component * off(source);
  const { interval95, dimension } = value;
  if (interval95 && sum !== 0) {
    const end = sum > 0 ? interval95[1] : interval95[0];
    // What is endless can't be drawn: that side stays as wide as its standard uncertainty says.
    if (Number.isFinite(end)) sum *= Math.abs(end - value.value) / (coverage95 * standardUncertainty(value));
  }
  return { value: value.value + sum, dimension, components: none };
}

/** Things inside things are looked through so far down. */
const DEEPEST = 8;

/**
 * How a thing is moved: its amounts wherever they stand in objects, lists and maps.
 * @param thing What a line came to.
 * @returns What moves it; undefined where there is nothing in it that can be off.
 * @example shifterOf({ a: exact(1) }) // undefined
 */
export function shifterOf(thing: unknown, depth = 0): ((off: Off) => unknown) | undefined {
  if (isValue(thing)) return thing.components.size > 0 ? (off) => shifted(thing, off) : undefined;
  if (typeof thing !== "object" || thing === null || depth >= DEEPEST) return undefined;
  const entries = entriesOf(thing);
  if (!entries) return undefined;
  const moving = entries.flatMap(([key, part]) => {
    const shift = shifterOf(part, depth + 1);
    return shift ? [[key, shift] as const] : [];
  });
  if (moving.length === 0) return undefined;
  if (thing instanceof Map)
    return (off) => new Map([...thing, ...moving.map(([key, shift]) => [key, shift(off)] as const)]);
  if (Array.isArray(thing)) {
    const at = new Map<unknown, (off: Off) => unknown>(moving);
    return (off) => thing.map((part: unknown, i) => at.get(i)?.(off) ?? part);
  }
  return (off) => ({ ...thing, ...Object.fromEntries(moving.map(([key, shift]) => [key, shift(off)])) });
}

/** Plain data only: what has methods of its own is left as it is. */
function entriesOf(thing: object): readonly (readonly [unknown, unknown])[] | undefined {
  if (thing instanceof Map) return [...thing];
  if (Array.isArray(thing)) return thing.map((part: unknown, i) => [i, part] as const);
  const proto: unknown = Object.getPrototypeOf(thing);
  return proto === Object.prototype || proto === null ? Object.entries(thing) : undefined;
}
