const before = /[;,]?\s+(?=\d{1,3}:\d\d(?::\d\d)?(?:\s?[ap]\.?m\b\.?)?\s*[-:=]?\s+\d)/i;

/**
 * A typed line that holds several rows behind each other, each beginning with its time, as those rows.
 *
 * @param line a typed line
 * @returns its rows; the line alone where it holds one
 * @example
 * severalTimes("0:00 284; 0:30 285") // ["0:00 284", "0:30 285"]
 */
export function severalTimes(line: string): readonly string[] {
  if (!/^\s*\d{1,3}:\d\d/.test(line)) return [line];
  const rows = line.split(before);
  return rows.length > 1 && rows.every((row) => /^\s*\d{1,3}:\d\d/.test(row)) ? rows : [line];
}
