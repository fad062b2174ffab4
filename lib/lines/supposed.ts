import type { Desk } from "./Desk.ts";
import { evaluate } from "./evaluate.ts";
import { inItsUnit } from "./inItsUnit.ts";
import type { Job, Result } from "./types.ts";
import type { Wiring } from "./Wiring.ts";

/** An open notebook as seen by who supposes something: nothing of it is changed. */
export interface World {
  readonly desk: Desk;
  readonly wiring: Wiring;
  /** What a line has come to in a case. */
  readonly result: (line: string, inCase: string) => Result;
}

/** Works one line out under suppositions: what some lines come to is supposed, the rest follows. */
export type Suppose = (supposed: ReadonlyMap<string, Result>) => Promise<Result>;

/**
 * Prepares to ask "what if" of one line in one case. Only the lines between the supposed ones and the one asked for are
 * worked, in their order; everything else stands as it came to. The notebook itself stays as it is.
 * @param world The open notebook, settled.
 * @param inCase Id of the case.
 * @param asked Id of the line that is asked for.
 * @param moved Ids of the lines that will be supposed.
 * @param jobOf Gives the job for slow functions.
 * @returns What works it out; called with the results that are supposed, by id.
 * @example await suppose(world, "case 1", "line 3", ["line 1"])(new Map([["line 1", { state: "settled", value: exact(2) }]]))
 */
export function suppose(
  { desk, wiring, result }: World,
  inCase: string,
  asked: string,
  moved: Iterable<string>,
  jobOf?: () => Job,
): Suppose {
  const set = new Set(moved);
  const dependents = wiring.withDependents(set);
  const way = orderOf(asked, (id) =>
    set.has(id) ? [] : wiring.uses(id).filter((used) => dependents.has(used)),
  ).filter((id) => dependents.has(id) && !set.has(id));
  const steps = way.flatMap((id) => {
    const line = desk.kept.get(id)?.line;
    const read = wiring.formula(id);
    return line && line.kind !== "given" && read && "tree" in read && !wiring.loop(id) ? [{ id, line, read }] : [];
  });
  // The asker may give the thread back between two questions: an edit that comes meanwhile must not mix with the answers.
  const stood = new Map(
    [asked, ...steps.flatMap(({ id, read }) => [id, ...read.uses])].map((id) => [id, result(id, inCase)]),
  );
  return async (supposed) => {
    const found = new Map<string, Result>(supposed);
    const of = (id: string): Result =>
      found.get(id) ?? stood.get(id) ?? { state: "stopped", says: "this line was removed" };
    for (const { id, line, read } of steps) {
      const around = {
        formula: line.formula,
        result: (name: string) => of(read.uses[read.places.get(name) ?? -1] ?? ""),
        ...(jobOf && { jobOf }),
      };
      const worked = evaluate(read.tree, around);
      found.set(id, inItsUnit(worked instanceof Promise ? await worked : worked, line.unit));
    }
    return of(asked);
  };
}

/**
 * Lines from the first that must be worked to the one asked for; without calling itself, since chains may be long.
 * @param asked The last line.
 * @param uses The lines that a line uses, as far as they belong to it.
 * @returns Ids, each behind those that it uses.
 * @example orderOf("b", (id) => (id === "b" ? ["a"] : [])) // ["a", "b"]
 */
export function orderOf(asked: string, uses: (id: string) => readonly string[]): readonly string[] {
  const order: string[] = [];
  const seen = new Set<string>();
  const left: { readonly id: string; readonly done: boolean }[] = [{ id: asked, done: false }];
  for (let next = left.pop(); next; next = left.pop()) {
    if (next.done) {
      order.push(next.id);
      continue;
    }
    if (seen.has(next.id)) continue;
    seen.add(next.id);
    left.push({ id: next.id, done: true });
    for (const id of uses(next.id)) if (!seen.has(id)) left.push({ id, done: false });
  }
  return order;
}
