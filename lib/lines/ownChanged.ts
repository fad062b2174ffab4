import type { Kept } from "./Desk.ts";

/**
 * Whether a line, as it stands in one case, is another after an edit.
 * @param before The line before.
 * @param after The line after.
 * @param inCase Id of the case.
 * @param sameMeaning Only names have changed, and they mean what they meant.
 * @returns true where it has to be worked again.
 * @example ownChanged(before, { ...before, line: given("3 lb") }, "case 1", false) // true
 */
export function ownChanged(before: Kept, after: Kept, inCase: string, sameMeaning: boolean): boolean {
  const [was, is] = [before.own?.get(inCase), after.own?.get(inCase)];
  // The name of a given is the name of its source of doubt.
  const renamed = before.name !== after.name && after.line.kind === "given";
  if (was !== is) return JSON.stringify(was) !== JSON.stringify(is) || was?.thing?.[0] !== is?.thing?.[0] || renamed;
  if (is) return renamed || sharedFacts(before) !== sharedFacts(after);
  if (before.thing || after.thing) return before.thing?.[0] !== after.thing?.[0];
  return renamed || (!sameMeaning && before.line !== after.line);
}

/** All of a line but its text: how the text of a case is read hangs on it. */
function sharedFacts({ line }: Kept): string {
  const { kind, ...rest } = line;
  return JSON.stringify({ kind, ...rest, text: undefined, known: undefined, value: undefined });
}
