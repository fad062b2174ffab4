import type { Draft } from "./draft.ts";
import type { EntryKind } from "./types.ts";

/** What may be told without a time: it holds from the row before it. */
export const timeless: ReadonlySet<EntryKind> = new Set(["level", "cylinder", "depth", "salt in"]);

/**
 * A row whose time is missing or unreadable, its words kept as a remark: a temperature without a time is no reading.
 * Rows with a time, and what needs none (the jug's level, a depth), stay as they are.
 *
 * @param draft a row
 * @returns the same row, or one with a single remark
 * @example
 * untimed({ line: 3, findings: [{ kind: "reading", amount: "284" }] }).findings // [{ kind: "remark", text: "284" }]
 */
export function untimed(draft: Draft): Draft {
  const { mark, aside, badTime, findings } = draft;
  if (mark !== undefined || aside) return draft;
  if (badTime === undefined && findings.length > 0 && findings.every(({ kind }) => timeless.has(kind))) return draft;
  const words = findings.map(({ text, amount, unit }) => text ?? [amount, unit].filter(Boolean).join(" "));
  const text = draft.words ?? [badTime, ...words].filter((word) => word !== undefined && word !== "").join(", ");
  return text === "" ? { ...draft, findings: [] } : { ...draft, findings: [{ kind: "remark", text }] };
}
