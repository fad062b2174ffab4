/** Headings of the table that `writeLog` writes and `readLog` knows again, in order. */
export const writtenColumns = [
  "time (s)",
  "clock",
  "kind",
  "amount",
  "unit",
  "words",
  "ran for (s)",
  "struck out",
  "why",
  "said before",
  "amount in SI",
  "standard uncertainty in SI",
  "known",
  "line",
  "id",
] as const;

export type WrittenColumn = (typeof writtenColumns)[number];

const plainAmount = /^[+-]\s*[\d.,½¼¾]+\s*[\p{L}°% .]*$/u;

/**
 * A text as a cell that no spreadsheet takes for a formula: a quote is put before what could be one.
 *
 * @param text any text
 * @returns the text, guarded where needed
 * @example
 * guardCell("=1+1") // "'=1+1"
 */
export function guardCell(text: string): string {
  return /^[=@\t\r']/.test(text) || (/^[+-]/.test(text) && !plainAmount.test(text)) ? `'${text}` : text;
}

/**
 * The text that `guardCell` guarded.
 *
 * @param cell a cell as written
 * @returns the text
 * @example
 * bareCell("'=1+1") // "=1+1"
 */
export function bareCell(cell: string): string {
  return cell.startsWith("'") ? cell.slice(1) : cell;
}
