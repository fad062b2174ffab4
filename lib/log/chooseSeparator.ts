import { heading } from "./heading.ts";

export type Separator = "\t" | ";" | "," | "|" | "blanks" | "none";

const enough = 0.6;

/**
 * What separates the cells of a log's lines: the first of tab, bar, semicolon, comma and wide gaps that most
 * lines have. A comma inside a number (`144,5`) is no separator. "none" is a typed scrap: one statement a line.
 *
 * @param lines lines of text; the first 300 that are not blank decide
 * @returns the separator, "blanks" for columns lined up with blanks, "none" for scraps
 * @example
 * chooseSeparator(["0:00 144,5", "1:30 145"]) // "none"
 */
export function chooseSeparator(lines: readonly string[]): Separator {
  const told = /^sep=([;,|\t])\s*$/i.exec(lines[0] ?? "")?.[1];
  if (told === ";" || told === "," || told === "|" || told === "\t") return told;
  const sample: string[] = [];
  for (const line of lines) {
    const bare = line.slice(0, 400);
    if (bare.trim() !== "" && !/^\s*(?:#|\/\/)/.test(bare)) sample.push(bare.replace(/"[^"]*"/g, '""'));
    if (sample.length === 300) break;
  }
  const most = (has: (line: string) => boolean) => sample.filter(has).length >= Math.max(1, enough * sample.length);
  const headed = ([";", "\t", "|", ","] as const).find((mark) =>
    lines.slice(0, 40).some((line) => isHeading(line, mark)),
  );
  if (headed !== undefined && sample.filter((line) => line.includes(headed)).length >= sample.length * 0.3)
    return headed;
  if (most((line) => line.trim().includes("\t"))) return "\t";
  if (most((line) => line.includes("|"))) return "|";
  if (most((line) => line.includes(";"))) return ";";
  if (most(hasComma)) return ",";
  if (sample.length > 1 && most((line) => /\S {2,}\S/.test(line))) return "blanks";
  return "none";
}

function hasComma(line: string): boolean {
  if (/\D,|,\D|:\d\d,|,$/.test(line)) return true;
  return line.includes(",") && !/\d\s+\S/.test(line);
}

function isHeading(line: string, mark: string): boolean {
  if (!line.includes(mark) || line.length > 1000) return false;
  const cells = line
    .replace(/^\s*(?:#|\/\/)/, "")
    .replaceAll('"', "")
    .split(mark);
  if (cells.some((cell) => /^\s*[-+~]?[\d.]/.test(cell))) return false;
  const roles = new Set(cells.map((cell) => heading(cell.slice(0, 60)).role));
  return roles.has("temperature") && (roles.has("time") || roles.has("water")) && cells.length < 100;
}
