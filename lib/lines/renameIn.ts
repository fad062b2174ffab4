import type { Mention } from "./usesOf.ts";

/**
 * A formula with one line called by another name; all else stays as it was written.
 * @param formula The formula's text.
 * @param mentions Where the line stands in it.
 * @param name The new name.
 * @returns The new text.
 * @example renameIn("salt / water", [{ name: "salt", from: 0, to: 4 }], "lye") // "lye / water"
 */
export function renameIn(formula: string, mentions: readonly Mention[], name: string): string {
  let text = "";
  let at = 0;
  for (const { from, to } of [...mentions].sort((a, b) => a.from - b.from)) {
    text += formula.slice(at, from) + name;
    at = to;
  }
  return text + formula.slice(at);
}
