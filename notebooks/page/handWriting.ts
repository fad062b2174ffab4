/** What a maker writes in one row of a log: each as typed, empty where nothing was. */
export interface HandRow {
  readonly time: string;
  readonly temperature: string;
  readonly water: string;
  readonly waterUnit: string;
  readonly remark: string;
}

const headings = { US: "time\t°F\twater\tremark", metric: "time\t°C\twater\tremark" } as const;

/** The heading of a log that is written row by row on the page. */
export function handHeading(system: "US" | "metric"): string {
  return headings[system];
}

/** Whether a log's text was written on the page, so that a further row goes below its last one. */
export function isHandWritten(source: string): boolean {
  return source.startsWith(headings.US) || source.startsWith(headings.metric);
}

/**
 * A number pad has no colon: three or four figures are taken as hours or minutes before the last two ("746" is
 * 7:46), five or six as three pairs, a dot or comma before two figures as a colon; am and pm may follow. Anything else
 * stays as it was typed.
 */
export function timeFromNumberPad(typed: string): string {
  const half = /\s*([ap])\.?\s?m?\.?$/i.exec(typed.trim());
  const trimmed = half ? typed.trim().slice(0, half.index) : typed.trim();
  const behind = half ? ` ${half[1]?.toLowerCase()}m` : "";
  return `${withColons(trimmed)}${behind}`;
}

function withColons(trimmed: string): string {
  if (/^\d{1,2}[.,]\d\d$/.test(trimmed)) return trimmed.replace(/[.,]/, ":");
  if (/^\d{5,6}$/.test(trimmed)) return trimmed.replace(/(\d{1,2})(\d\d)(\d\d)$/, "$1:$2:$3");
  if (/^\d{3,4}$/.test(trimmed)) return trimmed.replace(/(\d{1,2})(\d\d)$/, "$1:$2");
  return trimmed;
}

const cell = (text: string): string => text.replace(/[\t\r\n]+/g, " ").trim();

/** One row of a hand-written log, ready to go below the others. */
export function handRow(row: HandRow): string {
  const water = cell(row.water);
  const bare = /^[\d.,\s/½¼¾⅓⅔⅛-]+$/.test(water);
  return [
    timeFromNumberPad(cell(row.time)),
    cell(row.temperature),
    bare ? `${water} ${row.waterUnit}` : water,
    cell(row.remark),
  ].join("\t");
}

/** The log's text with one more row at its foot. */
export function withRow(source: string, row: HandRow): string {
  return `${source.replace(/\n+$/, "")}\n${handRow(row)}\n`;
}

/** The time of day as a clock shows it: "7:46:12 pm". */
export function clockNow(now: Date): string {
  const hours = now.getHours();
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${hours % 12 === 0 ? 12 : hours % 12}:${two(now.getMinutes())}:${two(now.getSeconds())} ${hours < 12 ? "am" : "pm"}`;
}
