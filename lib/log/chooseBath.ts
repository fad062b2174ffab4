import { bareNumber } from "./amountReader.ts";
import { type Column, cellsByColumn } from "./column.ts";
import { plainText } from "./plainText.ts";
import { type Inquiry, settle } from "./settle.ts";
import type { Row } from "./splitRows.ts";

/**
 * The columns of temperatures that are not the bath's. One column of several is taken: the one whose heading says so
 * best, then the one that stays nearest to where baths are held.
 *
 * @param columns the table's columns
 * @param rows the table's rows; the first 200 decide
 * @param decimalComma whether "144,5" is a decimal in this log
 * @param inquiry where answers come from and questions go to
 * @param line line of the heading
 * @returns places of the columns to leave aside
 * @example
 * chooseBath(columns, rows, false, inquiry, 1).has(2) // true where column 2 is the flue's
 */
export function chooseBath(
  columns: readonly Column[],
  rows: readonly Row[],
  decimalComma: boolean,
  inquiry: Inquiry,
  line: number,
): ReadonlySet<number> {
  const found = columns.filter(({ role }) => role === "temperature");
  if (found.length < 2) return new Set();
  const names = new Map<string, Column>();
  for (const column of found) {
    const name = plainText(column.heading);
    names.set(names.has(name) ? `${name} (column ${column.index + 1})` : name, column);
  }
  const judged = [...names].map(([name, column]) => ({ name, column, ...judge(column, columns, rows, decimalComma) }));
  judged.sort((one, other) => other.score - one.score);
  const best = judged[0];
  if (best === undefined) return new Set();
  const answer = settle<string>(inquiry, {
    id: "temperature column",
    asks: "Which column is the temperature of the bath?",
    line,
    likeliest: best.name,
    open: true,
    answers: judged.map(({ name, middle }) => ({
      answer: name,
      says: `"${name}" is the bath.`,
      changes:
        name === best.name
          ? `As taken: the middle reading is ${middle}.`
          : `The middle reading would be ${middle} instead of ${best.middle}.`,
    })),
  });
  const taken = names.get(answer)?.index ?? best.column.index;
  return new Set(found.map(({ index }) => index).filter((index) => index !== taken));
}

function judge(column: Column, columns: readonly Column[], rows: readonly Row[], decimalComma: boolean) {
  const numbers = rows
    .slice(0, 200)
    .map((row) => bareNumber(plainText((cellsByColumn(columns, row)[column.index] ?? "").slice(0, 40)), decimalComma))
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  const middle = numbers[Math.floor(numbers.length / 2)] ?? Number.NaN;
  const heading = column.heading.toLowerCase();
  let score = numbers.length > 0 ? numbers.length / Math.max(1, Math.min(rows.length, 200)) : -5;
  if (/\bbath\b|\btank\b/.test(heading)) score += 6;
  else if (/\bsalts?\b|\bsolution\b|\bliquor\b|\bpot\b/.test(heading)) score += 4;
  if (/\b(?:1|a|main)\b/.test(heading)) score += 0.5;
  const fahrenheit = column.unit === "°C" ? middle * 1.8 + 32 : column.unit === "K" ? middle * 1.8 - 459.67 : middle;
  const near = (value: number) => value >= 230 && value <= 340;
  if (near(fahrenheit) || (column.unit === undefined && near(middle * 1.8 + 32))) score += 3;
  if (column.unit === "°F") score += 0.2;
  return { score, middle };
}
