import type { Written } from "../measure/index.ts";
import type { Entry, EntryKind, Run } from "./types.ts";

export type Measured = Entry & { readonly quantity: Written };

function measured(run: Run, wanted: EntryKind): Measured[] {
  return run.entries.filter(
    (entry): entry is Measured => entry.kind === wanted && !entry.struck && entry.quantity !== undefined,
  );
}

/**
 * The readings of a run that are not struck out, in time order.
 *
 * @param run a run
 * @returns entries with their temperatures, K
 * @example
 * readings(readLog("0:00 212 F\n1:30 286 F").run)[0]?.quantity.si // 373.15
 */
export function readings(run: Run): readonly Measured[] {
  return measured(run, "reading");
}

/**
 * The additions of water of a run that are not struck out, in time order.
 *
 * @param run a run
 * @returns entries with their water, kg
 * @example
 * additions(readLog("0:00 284 F\n1:30 1 kg water").run)[0]?.quantity.si // 1
 */
export function additions(run: Run): readonly Measured[] {
  return measured(run, "addition");
}
