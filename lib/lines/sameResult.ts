import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import type { Result } from "./types.ts";

/**
 * Whether two results are known to be equal, as far as that is cheap to tell: amounts by number, dimension and doubt,
 * other things by being the very same.
 * @param a One result.
 * @param b The other.
 * @returns true where nothing that depends on it can come out differently.
 * @example sameResult({ state: "not given" }, { state: "not given" }) // true
 */
export function sameResult(a: Result, b: Result): boolean {
  if (a === b) return true;
  if (a.state === "settled" && b.state === "settled") return sameThing(a.value, b.value) && sameWritten(a, b);
  if (a.state === "waits" && b.state === "waits") return a.for === b.for;
  if (a.state === "stopped" && b.state === "stopped") return a.says === b.says && a.at === b.at;
  return a.state === b.state && a.state !== "working";
}

function sameThing(a: unknown, b: unknown): boolean {
  return Object.is(a, b) || (isValue(a) && isValue(b) && sameValue(a, b));
}

function sameWritten(a: Result & { state: "settled" }, b: Result & { state: "settled" }): boolean {
  return a.written?.unit === b.written?.unit && a.written?.known === b.written?.known;
}

function sameValue(a: Value, b: Value): boolean {
  if (!Object.is(a.value, b.value) || a.components.size !== b.components.size) return false;
  for (const [source, part] of a.components) if (b.components.get(source) !== part) return false;
  const keys = new Set([...Object.keys(a.dimension), ...Object.keys(b.dimension)]) as Set<keyof Value["dimension"]>;
  for (const key of keys) if ((a.dimension[key] ?? 0) !== (b.dimension[key] ?? 0)) return false;
  return a.interval95?.[0] === b.interval95?.[0] && a.interval95?.[1] === b.interval95?.[1];
}
