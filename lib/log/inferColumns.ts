import { bareNumber, namesUnit } from "./amountReader.ts";
import type { Column, Table } from "./column.ts";
import { heading, type Role } from "./heading.ts";
import { isBlank } from "./isBlank.ts";
import { plainText } from "./plainText.ts";
import type { Row } from "./splitRows.ts";
import { timeMark } from "./timeMark.ts";

const sampled = 200;

/**
 * The columns of a table without a heading, by what stands in them. Undefined where no column of times and none of
 * temperatures can be made out: such rows are read one by one as typed lines.
 *
 * @param rows all rows; the first 200 decide
 * @param decimalComma whether "144,5" is a decimal in this log
 * @returns columns named by their place
 * @example
 * inferColumns([{ line: 1, cells: ["0:00", "284"] }, { line: 2, cells: ["1:30", "285"] }], false)?.columns[1]?.role // "temperature"
 */
export function inferColumns(rows: readonly Row[], decimalComma: boolean): Table | undefined {
  const sample = rows.filter(({ cells }) => cells.length > 1).slice(0, sampled);
  const width = sample.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  if (sample.length < 2 || sample.length < rows.slice(0, sampled).length * 0.6 || width > 100) return undefined;
  const columns: Column[] = [];
  const traits = Array.from({ length: width }, (_, index) =>
    traitsOf(
      sample.map(({ cells }) => plainText((cells[index] ?? "").slice(0, 80))),
      decimalComma,
    ),
  );
  const dated = traits.findIndex(({ date }) => date > 0.7);
  let time = traits.findIndex(({ time }) => time > 0.7);
  const numeric = traits.filter(({ number }) => number > 0.7).length;
  if (time < 0 && numeric > 1)
    time = traits.findIndex(({ number, rising, filled }) => number > 0.9 && rising && filled > 0.9);
  const hot = traits.map(({ hot, liquid }, index) => hot && liquid < 0.5 && index !== time && index !== dated);
  if (time < 0 || !hot.includes(true)) return undefined;
  traits.forEach((trait, index) => {
    let role: Role = "remark";
    if (index === time) role = "time";
    else if (index === dated && index !== time) role = "date";
    else if (hot[index]) role = "temperature";
    else if (trait.filled > 0 && trait.number > 0.7)
      role = trait.liquid > 0.5 || columnIsSparse(trait) ? "water" : "unknown";
    columns.push({ index, role, heading: `column ${index + 1}` });
  });
  // A number on every one of many rows is a logger's second channel rather than water.
  const few = sample.length <= 20;
  if (
    few &&
    columns.filter(({ role }) => role === "unknown").length === 1 &&
    !columns.some(({ role }) => role === "water")
  ) {
    const at = columns.findIndex(({ role }) => role === "unknown");
    const column = columns[at];
    if (column !== undefined) columns[at] = { ...column, role: "water" };
  }
  return { columns, from: 0, line: sample[0]?.line ?? 1 };
}

interface Traits {
  readonly filled: number;
  readonly time: number;
  readonly date: number;
  readonly number: number;
  readonly liquid: number;
  readonly rising: boolean;
  readonly hot: boolean;
}

function columnIsSparse({ filled }: Traits): boolean {
  return filled < 0.9;
}

function traitsOf(cells: readonly string[], decimalComma: boolean): Traits {
  const filled = cells.filter((cell) => !isBlank(cell));
  const share = (test: (cell: string) => boolean) => filled.filter(test).length / Math.max(1, filled.length);
  const numbers = filled.map((cell) => (/^[~+-]?[\d.,½¼¾]/.test(cell) ? bareNumber(cell, decimalComma) : Number.NaN));
  const known = numbers.filter(Number.isFinite).sort((a, b) => a - b);
  const middle = known[Math.floor(known.length / 2)] ?? 0;
  const shape = (cell: string) => timeMark(cell, 2000, decimalComma)?.shape;
  const degrees = share(
    (cell) => /\d\s?(?:°|deg|[fF]$|[cC]$)/.test(cell) && heading(cell.replace(/^[\d.,\s]+/, "")).role === "temperature",
  );
  return {
    filled: filled.length / Math.max(1, cells.length),
    time: share((cell) => !["number", "none", undefined].includes(shape(cell)) && !/['"]/.test(cell)),
    date: share((cell) => shape(cell) === "none"),
    number: known.length / Math.max(1, filled.length),
    liquid: share((cell) => namesUnit(cell) && /oz|cup|ml|\bl$|gal|qt|pint|quart|lb|kg/i.test(cell)),
    rising: numbers.every((number, index) => index === 0 || number >= (numbers[index - 1] ?? number)),
    hot: known.length > 0.7 * filled.length && filled.length > 0 && (degrees > 0.5 || (middle >= 95 && middle <= 450)),
  };
}
