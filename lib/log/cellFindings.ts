import { bareNumber, namesUnit } from "./amountReader.ts";
import type { Column } from "./column.ts";
import { eventOf } from "./eventOf.ts";
import { type Finding, notUnderstood } from "./finding.ts";
import { isBlank } from "./isBlank.ts";
import { numberSource, numberWords } from "./numberWords.ts";
import { plainText } from "./plainText.ts";
import { readStatement } from "./readStatement.ts";
import type { EntryKind } from "./types.ts";

export interface CellContext {
  readonly decimalComma: boolean;
  readonly hasReading: boolean;
  readonly hasPour: boolean;
  /** What the state columns (burner, parts) said last, by column: only a change is an event. */
  readonly states: Map<number, string>;
}

const quick = /^\d{1,7}(?:\.\d{1,9})?$/;
const amount = new RegExp(
  String.raw`^(?:~|≈|about |approx\.? |ca\.? )?[+-]?\s?${numberSource}(?:\s?(?:±|\+\/-)\s?[\d.,]+)?\s?[^\d?!]{0,20}(?:\s(?:and )?${numberSource}\s?[\p{L}. ]{1,12})?\??$`,
  "iu",
);
const kinds = new Map<string, EntryKind>([
  ["temperature", "reading"],
  ["water", "addition"],
  ["water total", "addition"],
  ["depth", "depth"],
  ["level", "level"],
  ["cylinder", "cylinder"],
  ["salt in", "salt in"],
]);
const expected = new Map<EntryKind, readonly [string, string]>([
  ["reading", ["a temperature", "Correct the number, or move the words to the remarks."]],
  ["addition", ["an amount of water", 'Write it as "24 fl oz", "3 cups" or "700 ml".']],
  ["depth", ["a depth of liquid", 'Write it as "3 1/2 in" or "9 cm".']],
  ["level", ["the water left in the jug", 'Write it as "1 gal" or "3 l".']],
  ["cylinder", ["the weight of the cylinder", 'Write it as "31.2 lb" or "14 kg".']],
  ["salt in", ["a weight of salt", 'Write it as "1 lb" or "0.5 kg".']],
]);

/**
 * What one cell of a table says, by the role of its column.
 *
 * @param cell the cell as written
 * @param column its column
 * @param context what the row holds already and how numbers are written
 * @returns findings, none for a blank cell
 * @example
 * cellFindings("284", { index: 1, role: "temperature", heading: "°F" }, context) // [{ kind: "reading", amount: "284" }]
 */
export function cellFindings(cell: string, column: Column, context: CellContext): readonly Finding[] {
  if (cell === "") return [];
  const text = plainText(cell);
  if (isBlank(text)) return [];
  const kind = kinds.get(column.role);
  if (kind !== undefined) return amountFindings(text, kind, column, context);
  if (column.role === "burner" || column.role === "parts") return stateFindings(text, column, context);
  if (column.role === "remark" || column.role === "event") {
    return readStatement(cell, { ...context, of: "note" });
  }
  if (column.role === "unknown") return [{ kind: "remark", text: `${column.heading}: ${text}` }];
  return [];
}

function amountFindings(text: string, kind: EntryKind, column: Column, context: CellContext): Finding[] {
  const place = kind === "addition" ? { inColumn: true as const } : {};
  const unit = column.unit === undefined ? place : { unit: column.unit, ...place };
  if (quick.test(text)) return kind === "addition" && Number(text) === 0 ? [] : [{ kind, amount: text, ...unit }];
  const struck = /^~~(.*)~~$/.exec(text)?.[1];
  if (struck !== undefined) {
    return amountFindings(struck.trim(), kind, column, context).map((finding) => ({ ...finding, struck: true }));
  }
  const figures = numberWords(text);
  if (amount.test(figures)) {
    const bare = figures.replace(/\s?\?$/, "");
    const size = bareNumber(bare, context.decimalComma);
    if (kind === "addition" && size < 0) {
      return [
        notUnderstood(
          text,
          "an amount of water that went in",
          "Take the minus sign away, or write in the remarks that water was taken out.",
        ),
      ];
    }
    if (kind === "addition" && size === 0) return [];
    return [{ kind, amount: bare.replace(/^\+\s?/, ""), ...(namesUnit(bare) && hasUnit(bare, kind) ? place : unit) }];
  }
  const findings = readStatement(text, { ...context, of: kind === "reading" ? "line" : "note", hasPour: false });
  if (findings.some((finding) => finding.kind === kind)) return findings;
  if (findings.some((finding) => finding.kind !== "remark") && !/^[-+\d]/.test(text)) return findings;
  const [wanted, remedy] = expected.get(kind) ?? ["a number", "Correct the number."];
  return [notUnderstood(text, `${wanted} under "${column.heading}"`, remedy)];
}

function hasUnit(text: string, kind: EntryKind): boolean {
  return (
    kind !== "reading" || /[fck]/i.test(text.replace(/^(?:about|approx\.?|ca\.?)/i, "").replace(/deg(?:rees?)?/i, ""))
  );
}

function stateFindings(text: string, column: Column, context: CellContext): readonly Finding[] {
  const before = context.states.get(column.index);
  context.states.set(column.index, text);
  if (before === text) return [];
  const unit = column.unit === "%" && /^[\d.,]+$/.test(text) ? `${text} %` : text;
  const word = column.role === "burner" ? "burner" : "parts";
  const event = eventOf(`${word} ${unit}`, text, true);
  if (event !== undefined && event.kind !== "remark") return [event];
  return [{ kind: "remark", text: `${column.heading}: ${text}` }];
}
