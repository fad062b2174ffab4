import { foldName } from "../../../lib/lines/index.ts";
import { findUnit } from "../../../lib/measure/index.ts";
import { spreadHead } from "./tsv.ts";

/** Where a column of a pasted block goes: a case's values or spreads, the lines' names, their units, or nowhere. */
export type PasteColumn =
  | { readonly is: "line" }
  | { readonly is: "unit" }
  | { readonly is: "value" | "spread"; readonly inCase: string; readonly unit: string }
  | { readonly is: "unknown"; readonly heading: string };

export interface PasteShape {
  readonly columns: readonly PasteColumn[];
  readonly rows: readonly (readonly string[])[];
}

export interface PasteNames {
  /** Names of all lines, and of the cases that are shown, in order. */
  readonly lines: readonly string[];
  readonly cases: readonly string[];
  /** The case that the hand is in. */
  readonly from: string;
}

const lineHeads = new Set(["line", "name", "lines"]);
const unitHeads = new Set(["unit", "units"]);

/** What the columns of a pasted block are: told by its heading, by lines' names in the first, or by where the hand is. */
export function pasteShape(rows: readonly (readonly string[])[], names: PasteNames): PasteShape {
  const [head = [], ...rest] = rows;
  if (isHeading(head, names)) return { columns: head.map((text) => columnOf(text, names)), rows: rest };
  const lines = new Set(names.lines.map(foldName));
  const named = rows.some(([first = ""]) => lines.has(foldName(first)));
  const widest = Math.max(0, ...rows.map(({ length }) => length));
  const units = named && widest > 2 && rows.every(([, second = ""]) => second === "" || isUnitName(second));
  const before: PasteColumn[] = [
    ...(named ? [{ is: "line" } as const] : []),
    ...(units ? [{ is: "unit" } as const] : []),
  ];
  const at = Math.max(0, names.cases.indexOf(names.from));
  const after = Array.from({ length: widest - before.length }, (_, index): PasteColumn => {
    const inCase = names.cases[at + index];
    return inCase === undefined ? { is: "unknown", heading: "" } : { is: "value", inCase, unit: "" };
  });
  return { columns: [...before, ...after], rows };
}

const isUnitName = (text: string): boolean => findUnit(text, "temperature") !== undefined;

function isHeading(head: readonly string[], names: PasteNames): boolean {
  const folded = head.map(foldName);
  if (folded.some((text) => lineHeads.has(text) || unitHeads.has(text))) {
    const lines = new Set(names.lines.map(foldName));
    // A line may itself be called "unit": its row has a number behind it.
    return !(lines.has(folded[0] ?? "") && head.slice(1).some((text) => /^[-+]?\d/u.test(text)));
  }
  return head.some((text) => {
    const column = columnOf(text, names);
    return column.is === "value" || column.is === "spread";
  });
}

/** "Long tank (cm)", "Long tank [cm]" and "Long tank, cm" name a case and its unit. */
const withUnit = /^(.*?)\s*(?:\(([^()]+)\)|\[([^[\]]+)\]|,\s*([^,]+))$/u;

function columnOf(text: string, { cases }: PasteNames): PasteColumn {
  const folded = foldName(text);
  if (lineHeads.has(folded)) return { is: "line" };
  if (unitHeads.has(folded)) return { is: "unit" };
  const find = (wanted: string) => cases.find((one) => foldName(one === "" ? "value" : one) === foldName(wanted));
  const spread = cases.find((one) => foldName(spreadHead(one)) === folded || foldName(`${one} ±`) === folded);
  if (spread !== undefined) return { is: "spread", inCase: spread, unit: "" };
  const whole = find(text);
  if (whole !== undefined) return { is: "value", inCase: whole, unit: "" };
  const cut = withUnit.exec(text);
  const unit = cut?.[2] ?? cut?.[3] ?? cut?.[4] ?? "";
  const inCase = cut && isUnitName(unit) ? find(cut[1] ?? "") : undefined;
  return inCase === undefined ? { is: "unknown", heading: text } : { is: "value", inCase, unit };
}
