import type { WaterBalance } from "../../lib/bath/types.ts";
import type { FittedRun } from "../../lib/fit/index.ts";
import type { Result } from "../../lib/lines/index.ts";
import type { Entry } from "../../lib/log/types.ts";
import { standardUncertainty } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import type { FigureInput } from "../page/drawings.ts";
import { shownIn } from "../page/shownIn.ts";

/** The number that a line came to, SI; undefined where it has none. */
export function numberOf(result: Result): number | undefined {
  return shownIn(result)?.value.value;
}

/** What a line came to; or, while it is worked again, what it came to before. */
function thingOf(result: Result): ReadonlyMap<string, unknown> | undefined {
  const thing = result.state === "settled" ? result.value : result.state === "working" ? result.before : undefined;
  return thing instanceof Map ? thing : undefined;
}

/** The whole water balance behind a notebook's lines; undefined where there is none. */
export function balanceOf({ notebook }: Pick<FigureInput, "notebook">): WaterBalance | undefined {
  return thingOf(notebook.result("water balance"))?.get("whole balance") as WaterBalance | undefined;
}

/** The whole fitted bath behind a notebook's lines; undefined where there is none. */
export function fitOf({ notebook }: Pick<FigureInput, "notebook">): FittedRun | undefined {
  return thingOf(notebook.result("fitted bath"))?.get("whole fit") as FittedRun | undefined;
}

/** Limits of the target band, K. */
export function targetOf({ notebook }: Pick<FigureInput, "notebook">): { low: number; high: number } | undefined {
  const low = numberOf(notebook.result("lower limit"));
  const high = numberOf(notebook.result("upper limit"));
  return low !== undefined && high !== undefined && low < high ? { low, high } : undefined;
}

/** K by which the thermometer is taken to read high. */
export function readsHighBy({ notebook }: Pick<FigureInput, "notebook">): number {
  return numberOf(notebook.result("thermometer reads high by")) ?? 0;
}

/** Time of the first or last entry of a kind that is not struck out, s. */
export function timeOf(entries: readonly Entry[], kind: Entry["kind"], which: "first" | "last"): number | undefined {
  const found = entries.filter((entry) => entry.kind === kind && !entry.struck);
  return (which === "first" ? found[0] : found.at(-1))?.time;
}

/** A value's standard uncertainty, or 0 where the line has no number. */
export function doubtOf(result: Result): number {
  return result.state === "settled" &&
    typeof result.value === "object" &&
    result.value !== null &&
    "components" in result.value
    ? standardUncertainty(result.value as Value)
    : 0;
}

/** Readings that the fitted bath sets apart, or the balance where there is no fit: by id, with the reason. */
export function apart(notebook: FigureInput["notebook"]): ReadonlyMap<string, string> {
  const fit = fitOf({ notebook });
  const found = fit?.probablyMisread.filter(({ probability }) => probability >= 0.5);
  return new Map((found ?? balanceOf({ notebook })?.misread ?? []).map(({ id, reason }) => [id, reason]));
}
