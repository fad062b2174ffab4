import type { EntryKind, Problem } from "./types.ts";

/** What a cell or a piece of a typed line says, before the log has decided about units. */
export interface Finding {
  readonly kind: EntryKind;
  /** Number and unit as written; the unit may be missing. */
  readonly amount?: string;
  /** The words of an event or remark. */
  readonly text?: string;
  /** Unit that the column's heading names. */
  readonly unit?: string;
  /** A feed that begins (`amount` is then a flow) or ends here. */
  readonly flow?: "on" | "off";
  readonly struck?: true;
  /** Written in a column of its own, where it may mean a running total or what went in since the row before. */
  readonly inColumn?: true;
  /** What could not be understood in it. */
  readonly trouble?: Omit<Problem, "line">;
}

/**
 * A finding for a text that could not be understood: it stays as a remark, with what to do about it.
 *
 * @param text what was read
 * @param expected what the place needs
 * @param remedy what the maker can do
 * @returns a remark with its trouble
 * @example
 * notUnderstood("28x", "a temperature", "Correct it.").kind // "remark"
 */
export function notUnderstood(text: string, expected: string, remedy: string): Finding {
  return { kind: "remark", text, trouble: { read: text.slice(0, 80) || "(blank)", expected, remedy } };
}
