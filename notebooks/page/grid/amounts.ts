import type { Line, Result } from "../../../lib/lines/index.ts";
import { difference, interval95, type Shown, usualUnit } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import { isValue } from "../shownIn.ts";
import { type System, unitOf, written } from "../writtenAs.ts";

/** A number as the grid writes it: with nothing where it is exact. */
export interface AmountShown extends Pick<Shown, "number" | "low" | "high"> {
  /** "±0.3"; "" for a number that is exact. */
  readonly spread: string;
  readonly sides?: Shown["sides"];
  readonly exactly: boolean;
}

const amounts = new WeakMap<Value, Map<string, AmountShown>>();
const differences = new WeakMap<Value, WeakMap<Value, Value>>();

/** The unit that a line's numbers are shown in: its own, the one that was written, or the usual one of its kind. */
export function unitShown(line: Line, result: Result, system: System): string {
  const own = unitOf(line, system);
  if (own !== "" || result.state !== "settled") return own;
  if (line.kind === "given" && result.written) return result.written.unit;
  const value = isValue(result.value) ? result.value : undefined;
  return value ? usualUnit(value.dimension, system) : "";
}

/** A number with its spread in words; the same number is written once. */
export function amountShown(value: Value, unit: string, system: System): AmountShown {
  const key = `${unit} ${system}`;
  const known = amounts.get(value) ?? new Map<string, AmountShown>();
  const found = known.get(key) ?? shown(value, unit, system);
  amounts.set(value, known.set(key, found));
  return found;
}

function shown(value: Value, unit: string, system: System): AmountShown {
  try {
    const { number, spread, sides, low, high } = written(value, unit, system);
    const exactly = spread === "exactly";
    return {
      number: exactly && value.value === 0 ? "0" : number,
      spread: exactly ? "" : spread,
      ...(sides && { sides }),
      low,
      high,
      exactly,
    };
  } catch {
    // A unit of something else, or none at all: the number in SI is better than nothing.
    const [low, high] = interval95(value).map(String);
    return { number: String(value.value), spread: "", low: low ?? "", high: high ?? "", exactly: low === high };
  }
}

/** A case less its base, with its sign: "+4.5", "−31", "0" where nothing differs. Undefined for amounts of two kinds. */
export function differenceShown(mine: Value, base: Value, unit: string, system: System): AmountShown | undefined {
  const less = differenceOf(mine, base);
  if (!less) return undefined;
  const amount = amountShown(less, unit, system);
  const plus = less.value > 0 && /[1-9]/.test(amount.number);
  return plus ? { ...amount, number: `+${amount.number}` } : amount;
}

function differenceOf(mine: Value, base: Value): Value | undefined {
  const known = differences.get(mine) ?? new WeakMap<Value, Value>();
  differences.set(mine, known);
  const found = known.get(base);
  if (found) return found;
  try {
    const less = difference(mine, base);
    known.set(base, less);
    return less;
  } catch {
    return undefined;
  }
}
