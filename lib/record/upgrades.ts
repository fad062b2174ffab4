import * as v from "valibot";
import { notebookData } from "./notebookSchema.ts";
import { isObject, longest } from "./schemaParts.ts";

/** Brings a record of one schema number to the next. The text it came from is left as it was. */
export interface Upgrade {
  readonly from: number;
  readonly to: number;
  readonly upgrade: (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** Number of the schema that this version reads and writes. */
export const currentSchema = 2;

/** Schema 1 took any object for a notebook: what is none becomes a note of one, so that nothing vanishes. */
function withNotebooks(old: Readonly<Record<string, unknown>>): Record<string, unknown> {
  if (!Array.isArray(old.notebooks)) return { ...old };
  const notebooks = old.notebooks.map((item: unknown) => {
    if (!isObject(item) || !isObject(item.notebook)) return item;
    if (v.safeParse(notebookData, item.notebook, { abortEarly: true }).success) return item;
    const asks = typeof item.name === "string" ? item.name : "";
    const text = JSON.stringify(item.notebook);
    const notes = Array.from({ length: Math.ceil(text.length / longest.text) }, (_, i) =>
      text.slice(i * longest.text, (i + 1) * longest.text),
    );
    return { ...item, notebook: { asks, lines: {}, notes: notes.slice(0, 1000) } };
  });
  return { ...old, notebooks };
}

/** The steps from older schemas to the present one, in any order. */
export const upgrades: readonly Upgrade[] = [{ from: 1, to: 2, upgrade: withNotebooks }];
