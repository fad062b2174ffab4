import { exact } from "../measure/measuredValue.ts";
import type { Value } from "../measure/types.ts";
import { isValue } from "./isValue.ts";
import { JobAtWork } from "./JobAtWork.ts";
import { pauses } from "./pauses.ts";
import { suppose, type World } from "./supposed.ts";

/** What a worked line comes to for one amount of a given, the given itself without doubt; or why it has no amount. */
export type Probe = (x: number) => Promise<Value | { readonly says: string }>;

/**
 * Prepares to ask what a worked line would come to for other amounts of one given.
 * @param world The open notebook, settled.
 * @param inCase Id of the case.
 * @param line Id of the line asked for.
 * @param by Id of the given.
 * @returns The probe, the given's present amount, and how to end slow work.
 * @throws Error, worded for the maker, where the line does not depend on the given or the given has no amount.
 * @example (await probe(world, "case 1", "line 3", "line 1").at(2))
 */
export function probe(
  world: World,
  inCase: string,
  line: string,
  by: string,
): { readonly at: Probe; readonly now: Value; readonly end: () => void } {
  const { desk, wiring, result } = world;
  const nameOf = (id: string) => desk.kept.get(id)?.name ?? id;
  if (desk.kept.get(by)?.line.kind !== "given")
    throw new Error(`"${nameOf(by)}" is worked out, so it can't be moved by hand: choose a given`);
  const read = wiring.formula(line);
  if (read && "says" in read) throw new Error(`"${nameOf(line)}" can't be worked out: ${read.says}`);
  if (wiring.loop(line)) throw new Error(`"${nameOf(line)}" can't be worked out: it needs itself`);
  if (line === by || !wiring.withDependents([by]).has(line))
    throw new Error(`"${nameOf(line)}" does not depend on "${nameOf(by)}": choose a given that feeds it`);
  const present = result(by, inCase);
  if (present.state === "stopped") throw new Error(`"${nameOf(by)}" has no amount: ${present.says}`);
  if (present.state !== "settled" || !isValue(present.value))
    throw new Error(`"${nameOf(by)}" has no amount yet: write one to start from`);
  const now = present.value;
  const job = new JobAtWork(() => {});
  const clock = pauses();
  const ask = suppose(world, inCase, line, [by], () => job);
  return {
    now,
    end: () => job.stopByHand(),
    async at(x) {
      // A page must go on living while it is asked a few thousand times.
      if (clock.due()) await clock.pause();
      const { written: _, ...settled } = present;
      const found = await ask(new Map([[by, { ...settled, value: exact(x, now.dimension) }]]));
      if (found.state === "settled")
        return isValue(found.value) ? found.value : { says: "it comes to a thing, not an amount" };
      if (found.state === "stopped") return { says: found.says };
      return { says: found.state === "waits" ? `it waits for "${found.for}"` : "it has no number" };
    },
  };
}
