/** Brings a record of one schema number to the next. The text it came from is left as it was. */
export interface Upgrade {
  readonly from: number;
  readonly to: number;
  readonly upgrade: (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** Number of the schema that this version reads and writes. */
export const currentSchema = 1;

/** The steps from older schemas to the present one, in any order. Schema 1 is the first, so there is none yet. */
export const upgrades: readonly Upgrade[] = [];
