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
const vague = String.raw`(?:~|≈|about |approx\.? |ca\.? )?`;
const doubt = String.raw`(?:\s?(?:±|\+\/-)\s?[\d.,]+\s?[\p{L}%°]{0,6})?`;
const units = String.raw`(?:fl\.? ?oz|floz|fluid ounces?|oz|ounces?|cups?|c|pints?|pts?|quarts?|qts?|gal(?:lon)?s?|ml|millilit(?:er|re)s?|cl|l|lit(?:er|re)s?|lbs?|pounds?|#|kgs?|kilos?|g|grams?|in|inch(?:es)?|"|cm|mm|ft)\.?`;
const temperature = new RegExp(
  String.raw`^${vague}[+-]?\d{1,6}(?:[.,]\d{1,9})?(?:\s?(?:°|deg(?:rees?)?\.?)?\s?(?:f|c|k|fahrenheit|celsius|kelvin)?)\.?${doubt}\??$`,
  "iu",
);
const amount = new RegExp(
  String.raw`^${vague}[+-]?\s?${numberSource}(?:\s?${units}(?:\s(?:and )?${numberSource}\s?${units})?)?${doubt}\??$`,
  "iu",
);
/** A temperature beyond doubt, which "144 C" is not under a heading of amounts: it may be cups. */
const degrees = /^\d{2,3}(?:[.,]\d{1,9})?\s?(?:°\s?[fck]?|f)$/i;
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
  if (kind === "addition" && !context.hasReading && degrees.test(text)) return [{ kind: "reading", amount: text }];
  const over = /^(?=.*\d.*~~|~~.*\d)([^~]*)~~([^~]+)~~([^~]*)$/.exec(text);
  if (over) {
    const [, before = "", crossed = "", behind = ""] = over;
    const old = amountFindings(`~~${crossed}~~`, kind, column, context).map(({ trouble: _, ...finding }) => finding);
    return [...old, ...amountFindings(`${before} ${behind}`.trim(), kind, column, context)];
  }
  const bracket = /^(.*?\d.*?)\s*\([^)]*\)$/.exec(text) ?? /^\((.*)\)$/.exec(text);
  const figures = numberWords(bracket?.[1] ?? text);
  if ((kind === "reading" ? temperature : amount).test(figures)) {
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
    const said = bracket === null ? {} : { text };
    return [
      { kind, amount: bare.replace(/^\+\s?/, ""), ...said, ...(namesUnit(bare) && hasUnit(bare, kind) ? place : unit) },
    ];
  }
  const spoken = kind === "reading" || kind === "addition" ? "line" : "note";
  const findings = readStatement(text, { ...context, of: spoken, hasReading: kind !== "reading", hasPour: false });
  if (findings.some((finding) => finding.kind === kind)) return findings;
  // Without a heading, a row that is short of a reading may have its words there: "8:10, end".
  if (/^column \d+$/.test(column.heading) && /^\p{L}[^\d?]*$/u.test(text)) return findings;
  const other = findings.some((finding) => finding.kind !== "remark" && finding.kind !== kind);
  if (other && (!/^[-+\d]/.test(text) || (kind === "reading" && pours(findings)))) return findings;
  const [wanted, remedy] = expected.get(kind) ?? ["a number", "Correct the number."];
  return [notUnderstood(text, `${wanted} under "${column.heading}"`, remedy)];
}

/** A pour with its unit that stands one column too far to the left, as in a row without a reading. */
function pours(findings: readonly Finding[]): boolean {
  return findings.some(({ kind, amount = "" }) => kind === "addition" && namesUnit(amount));
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
