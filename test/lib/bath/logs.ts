import type { InventedLog } from "../../../data/generator/inventLog.ts";
import type { BalanceGivens } from "../../../lib/bath/index.ts";
import type { Entry, EntryKind } from "../../../lib/log/types.ts";

let count = 0;

/** An entry made by hand: kind, s, SI. */
export function entry(kind: EntryKind, time: number, si?: number, text?: string): Entry {
  count++;
  return {
    id: `${kind} ${count}`,
    time,
    kind,
    line: count,
    struck: false,
    ...(si === undefined
      ? {}
      : {
          quantity: {
            text: String(si),
            si,
            dimension: {},
            unit: "",
            standardUncertainty: 0,
            known: "measured" as const,
          },
        }),
    ...(text === undefined ? {} : { text }),
  };
}

/** A temperature: s, K. */
export function reading(time: number, si: number): Entry {
  return entry("reading", time, si);
}

/** What the invented maker believes of the bath. */
export function gives({ told }: InventedLog): BalanceGivens {
  return {
    salts: { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate },
    pressure: told.pressure,
    ...(told.water === undefined ? {} : { water: { value: told.water, standardUncertainty: 0.05 * told.water } }),
  };
}
