/**
 * A line freed from the marks that cross it out: `~~7:46 291~~`, `x 7:46 291`, `7:46 291 (crossed out)`.
 *
 * @param line plain text
 * @returns the text, and the reason to give if it was crossed out
 * @example
 * strikeMarks("x 7:46 291") // { text: "7:46 291", struck: "crossed out in the log" }
 */
export function strikeMarks(line: string): { readonly text: string; readonly struck?: string } {
  const struck = "crossed out in the log";
  const tildes = /^~~(.*?)~~$/.exec(line.trim());
  if (tildes) return { text: (tildes[1] ?? "").replaceAll("~~", ""), struck };
  const cross = /^(?:\[x\]|x|✗|✘|❌)\s+(?=\S*\d)/i.exec(line);
  if (cross) return { text: line.slice(cross[0].length), struck };
  const word = /\s*[([]?\b(?:crossed out|struck out|scratch that|strike that|scratched out)\b[)\]]?\s*$/i.exec(line);
  if (word && word.index > 0) return { text: line.slice(0, word.index), struck };
  return { text: line.includes("~~") ? line.replaceAll("~~", "") : line };
}
