import { foldName } from "./foldName.ts";
import type { Func } from "./types.ts";

/** The names that a formula may use, under their folded form: lines as they are kept, functions as handed in. */
export interface Names {
  readonly lines: ReadonlyMap<string, string>;
  readonly functions: ReadonlyMap<string, Func>;
  /** A folded name that is not to be found: the one that is being looked at itself. */
  readonly except?: string;
}

/**
 * The names of some lines and functions, ready for reading formulas.
 * @param lines Names of lines.
 * @param functions Functions that formulas may call.
 * @returns Maps under folded names, so that no name can reach anything else.
 * @throws Error `ambiguous function: …` where two functions have one name.
 * @example namesOf(["Salt"]).lines.get("salt") // "Salt"
 */
export function namesOf(lines: Iterable<string>, functions: Iterable<Func> = []): Names {
  const byName = new Map<string, Func>();
  for (const func of functions) {
    const folded = foldName(func.name);
    if (byName.has(folded)) throw new Error(`ambiguous function: ${func.name}; each needs a name of its own`);
    byName.set(folded, func);
  }
  return { lines: new Map(Array.from(lines, (name) => [foldName(name), name])), functions: byName };
}
