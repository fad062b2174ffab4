import type { Draft } from "./draft.ts";
import { draftLine, type LineContext } from "./draftLine.ts";
import { plainText } from "./plainText.ts";
import { timeless } from "./untimed.ts";

const someDate = /\b(?:\d{4}-\d\d-\d\d|\d{1,2}[/.]\d{1,2}[/.]\d{2,4})\b/;

/**
 * A row above the first one with a time: a title or a comment that needs none, its date counting for the rows below;
 * or something told beforehand, such as the jug's level.
 *
 * @param text the row as written
 * @param line its line in the source
 * @param context how this log writes times and numbers
 * @returns the draft
 * @example
 * draftTitle("Tank 2, 11/9/2026", 1, context).findings // [{ kind: "remark", text: "Tank 2, 11/9/2026" }]
 */
export function draftTitle(text: string, line: number, context: LineContext): Draft {
  const draft = draftLine(text, line, context);
  if (draft.findings.some(({ kind }) => timeless.has(kind))) return draft;
  const words = plainText(text.replace(/^\s*(?:#|\/\/)\s*/, ""));
  if (words === "") return { line, findings: [], aside: true };
  const date = someDate.exec(words)?.[0];
  const mark = date === undefined ? draft.mark : draftLine(date, line, context).mark;
  const dated = mark?.shape === "none" ? { mark } : {};
  return { line, findings: [{ kind: "remark", text: words }], aside: true, ...dated };
}

/**
 * Whether a typed line without a time reads like a title: words, and neither a temperature nor water.
 *
 * @param draft the line's draft
 * @returns true for a title
 * @example
 * isTitle({ line: 1, words: "Bath log", findings: [{ kind: "remark", text: "Bath log" }] }) // true
 */
export function isTitle({ mark, findings, words = "" }: Draft): boolean {
  const plain = findings.every(({ kind, trouble }) => kind === "remark" && trouble === undefined);
  return mark === undefined && plain && /\p{L}{3}/u.test(words);
}
