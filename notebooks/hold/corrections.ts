import type { CorrectionRow } from "../../lib/fit/index.ts";
import { fromUnit, inUnit } from "../../lib/measure/index.ts";
import type { ShownPlan } from "./shownPlan.ts";

export type System = "US" | "metric";

/** What to do at a range of readings. */
export type Does =
  | { readonly kind: "nothing" }
  | { readonly kind: "add"; readonly water: number; readonly limited: boolean }
  | { readonly kind: "wait"; readonly pause: number }
  | { readonly kind: "stop"; readonly side: "above" | "below" };

/** Readings, both ends included, in whole degrees of the thermometer's unit, and what to do there. */
export interface Correction {
  /** Undefined where it goes on without end. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly does: Does;
  /** s until the next reading. */
  readonly again: number;
}

/** Pauses are given in quarters of a minute. */
const quarter = 15;
/** Readings and waits in half-minutes: what is read off a clock in gloves. */
const halfMinute = 30;

const degree = { temperature: 1, point: true } as const;

/** kg that one step of an amount stands for: half a fluid ounce, or ten millilitres. */
export const amountStep = (system: System): number =>
  system === "US" ? fromUnit(0.5, "fl oz", { mass: 1 }) : fromUnit(10, "ml", { mass: 1 });

/** A reading on this thermometer as K over the target. */
const offOf = (degrees: number, { work }: ShownPlan, system: System): number =>
  fromUnit(degrees, system === "US" ? "°F" : "°C", degree) - work.readsHighBy - work.givens.target;

/** The table between two of its rows. */
function rowAt(rows: readonly CorrectionRow[], off: number): { readonly water: number; readonly pause: number } {
  const [first] = rows;
  const last = rows.at(-1);
  if (!first || !last) return { water: 0, pause: 0 };
  const after = rows.findIndex((row) => row.off >= off);
  const high = rows[after] ?? last;
  const low = rows[after - 1] ?? first;
  if (after <= 0) return off <= first.off ? first : last;
  const part = high.off > low.off ? (off - low.off) / (high.off - low.off) : 0;
  return { water: low.water + part * (high.water - low.water), pause: low.pause + part * (high.pause - low.pause) };
}

/** kg, the most for one pour: the limit at its safe end, down to a whole step of a maker's measure where it is that much. */
export function mostAtOnce({ plan }: ShownPlan, system: System): number {
  const limit = plan.slugLimit.mass;
  const step = amountStep(system);
  return limit >= step ? Math.floor(limit / step + 1e-9) * step : limit;
}

/**
 * The correction table of a plan as a maker reads it: whole degrees on this thermometer, those with the same thing to
 * do together, the most above first; both ends say stop. No pour goes beyond the limit at its safe end.
 */
export function corrections(shown: ShownPlan, system: System): readonly Correction[] {
  const { plan, work } = shown;
  const { rows, readEvery } = plan.table;
  const [first] = rows;
  const last = rows.at(-1);
  if (!first || !last) return [];
  const most = mostAtOnce(shown, system);
  const step = amountStep(system);
  const unit = system === "US" ? "°F" : "°C";
  const at = (off: number) => inUnit(work.givens.target + work.readsHighBy + off, degree, unit);
  const lowest = Math.ceil(at(first.off) - 1e-6);
  const highest = Math.floor(at(last.off) + 1e-6);
  const found: Correction[] = [
    { from: highest + 1, to: undefined, does: { kind: "stop", side: "above" }, again: readEvery },
  ];
  for (let degrees = highest; degrees >= lowest; degrees--) {
    const one = rowAt(rows, offOf(degrees, shown, system));
    const water = Math.min(most, Math.round(one.water / step) * step);
    const pause = Math.round(one.pause / quarter) * quarter;
    const does: Does =
      water > 0
        ? { kind: "add", water, limited: water >= most - 1e-9 }
        : pause > 0
          ? { kind: "wait", pause }
          : { kind: "nothing" };
    const settles = (rows.find(({ off }) => off > 0)?.wait ?? readEvery) + (does.kind === "wait" ? does.pause : 0);
    const again = Math.max(readEvery, Math.ceil(settles / halfMinute) * halfMinute);
    const before = found.at(-1);
    if (before && sameDoing(before.does, does)) found[found.length - 1] = { ...before, from: degrees };
    else found.push({ from: degrees, to: degrees, does, again });
  }
  found.push({ from: undefined, to: lowest - 1, does: { kind: "stop", side: "below" }, again: readEvery });
  return found;
}

function sameDoing(a: Does, b: Does): boolean {
  if (a.kind === "add" && b.kind === "add") return a.water === b.water;
  if (a.kind === "wait" && b.kind === "wait") return a.pause === b.pause;
  return a.kind === "nothing" && b.kind === "nothing";
}
