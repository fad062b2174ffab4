import type { Separator } from "./chooseSeparator.ts";

const sampled = 400;

/**
 * Whether a log writes decimals with a comma: "144,5". It does if it has such numbers and none with a point; three
 * digits behind the comma count only where semicolons or tabs separate the cells.
 *
 * @param lines lines of the log; the first 400 decide
 * @param separator what separates its cells
 * @returns true for a decimal comma
 * @example
 * usesDecimalComma(["0:00;144,5"], ";") // true
 */
export function usesDecimalComma(lines: readonly string[], separator: Separator): boolean {
  if (separator === ",") return lines.slice(0, sampled).some((line) => /"\d+,\d{1,2}"/.test(line));
  let commas = 0;
  let points = 0;
  for (const line of lines.slice(0, sampled)) {
    const bare = line.slice(0, 400).replace(/\d{1,2}\.\d{1,2}\.\d{2,4}/g, "");
    if (/(?:^|[^\d,.])\d{1,6},\d{1,2}(?![\d,])/.test(bare)) commas += 1;
    if ((separator === ";" || separator === "\t") && /(?:^|[^\d,.])\d{1,3},\d{3,9}(?![\d,])/.test(bare)) commas += 1;
    if (/\d\.\d/.test(bare)) points += 1;
  }
  return commas > 0 && commas > points;
}
