import { isValue } from "../lib/lines/index.ts";
import type { Run } from "../lib/log/types.ts";
import type { Value } from "../lib/measure/types.ts";

/** Doubts that every bath shares, whoever logged it: they cancel between cases. */
const shared: ReadonlySet<string> = new Set(["boiling curve", "heats of the brine"]);

/** A log's own name among sources of doubt: its start as it was written; a number made of its entries without one. */
function logName({ start, entries }: Run): string {
  // A time of day alone may be another night's, too.
  if (start !== undefined && /^\d{4}-\d{2}-\d{2}T/.test(start)) return start.replace("T", " ");
  let sum = entries.length;
  for (const { time, quantity } of entries)
    sum = (sum * 31 + Math.round(time) + Math.round(1000 * (quantity?.si ?? 0))) % 99991;
  return `no. ${Math.abs(sum)}`;
}

/**
 * An amount that was read out of a log: what was off that night (its readings, fire, pours, cup) is off in this log
 * alone, so that it does not cancel against another night's.
 *
 * @example ofThisLog(boilOff, run).components // Map { "readings, log of 2026-11-14 18:02" => … }
 */
export function ofThisLog<V extends Value>(value: V, run: Run): V {
  const name = logName(run);
  const components = new Map(
    [...value.components].map(([source, part]) => [shared.has(source) ? source : `${source}, log of ${name}`, part]),
  );
  return { ...value, components };
}

/** The same for all amounts among the parts of a fit or a balance. */
export function partsOfThisLog(parts: ReadonlyMap<string, unknown>, run: Run): ReadonlyMap<string, unknown> {
  return new Map([...parts].map(([name, part]) => [name, isValue(part) ? ofThisLog(part, run) : part]));
}
