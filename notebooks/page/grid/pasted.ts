import { foldName, type Given, type Line, type Result } from "../../../lib/lines/index.ts";
import { dimensionName, readNumber, sameDimension } from "../../../lib/measure/index.ts";
import { joinField } from "../fieldText.ts";
import { isValue } from "../shownIn.ts";
import { pasteShape } from "./pasteShape.ts";
import { cutTsv } from "./tsv.ts";
import type { Place } from "./types.ts";

/** What a pasted block is held against. */
export interface PasteTarget {
  /** The lines that the grid lists, in their order. */
  readonly lines: readonly string[];
  readonly cases: readonly string[];
  /** Where the hand is: a block without names begins there. */
  readonly from: Place;
  readonly line: (name: string) => Line;
  readonly text: (place: Place) => string;
  /** The unit that the line shows, taken by a number without one. */
  readonly unit: (place: Place) => string;
  /** The value and spread as copying them would give: what comes back as it went is no change. */
  readonly shown: (place: Place) => { readonly number: string; readonly spread: string };
  /** Reads a text as the line's given. */
  readonly read: (name: string, line: Given, text: string) => Result;
}

export interface Taken extends Place {
  readonly text: string;
}

export interface Refused {
  /** "tank length, Long tank". */
  readonly where: string;
  readonly read: string;
  readonly expected: string;
  readonly remedy: string;
}

export interface Pasted {
  readonly takes: readonly Taken[];
  readonly refused: readonly Refused[];
  /** Values that stand there already. */
  readonly same: number;
}

/** More than this is no block of a notebook. */
const mostRows = 5000;

/**
 * What a tab-separated block changes. Each value is read with its unit, from its own text, its row or its heading, and
 * taken or refused by itself. Texts are data: nothing is worked out of them.
 */
export function pasted(text: string, target: PasteTarget): Pasted {
  const cut = cutTsv(text);
  const { columns, rows } = pasteShape(cut.slice(0, mostRows), {
    lines: target.lines,
    cases: target.cases,
    from: target.from.inCase,
  });
  const takes = new Map<string, Taken>();
  const refused: Refused[] = [];
  let same = 0;
  if (cut.length > mostRows)
    refused.push({
      where: `beyond ${mostRows} rows`,
      read: "",
      expected: "a block of a notebook's lines",
      remedy: "Paste it in parts.",
    });
  const named = columns.findIndex(({ is }) => is === "line");
  const unitAt = columns.findIndex(({ is }) => is === "unit");
  const start = Math.max(0, target.lines.indexOf(target.from.line));
  rows.forEach((row, index) => {
    const wanted = named < 0 ? target.lines[start + index] : (row[named] ?? "");
    const name = target.lines.find((one) => foldName(one) === foldName(wanted ?? ""));
    columns.forEach((column, at) => {
      const value = row[at] ?? "";
      if (value === "" || column.is === "line" || column.is === "unit" || column.is === "spread") return;
      const refuse = (where: string, expected: string, remedy: string) =>
        refused.push({ where, read: value, expected, remedy });
      if (name === undefined) {
        if (named < 0) refuse("below the last line", "a line to take it", "Add a line first, or paste higher up.");
        else
          refuse(
            wanted === "" ? "a row without a name" : (wanted ?? ""),
            "the name of a line of this notebook",
            "Name the line as it is named here, or add it first.",
          );
        return;
      }
      if (column.is === "unknown") {
        const heading = column.heading === "" ? "beyond the last case" : column.heading;
        refuse(
          `${name}, ${heading}`,
          "the name of a case that is shown",
          "Name the case as it is named here, or add it first.",
        );
        return;
      }
      const place = { line: name, inCase: column.inCase };
      const spreadAt = columns.findIndex((one) => one.is === "spread" && one.inCase === column.inCase);
      const outcome = one(place, value, column.unit || (row[unitAt] ?? ""), row[spreadAt] ?? "", target);
      if (outcome === "same") same += 1;
      else if ("text" in outcome) takes.set(JSON.stringify(place), outcome);
      else refused.push(outcome);
    });
  });
  return { takes: [...takes.values()], refused, same };
}

const whereOf = ({ line, inCase }: Place): string => (inCase === "" ? line : `${line}, ${inCase}`);

/** One value at its place: taken, the same as it was, or refused. */
function one(place: Place, value: string, unit: string, spread: string, target: PasteTarget): Taken | Refused | "same" {
  const line = target.line(place.line);
  const shown = target.shown(place);
  const wasSpread = spread === "" || spread === shown.spread;
  if (value === shown.number && wasSpread && sameText(unit, target.unit(place))) return "same";
  const where = whereOf(place);
  if (line.kind !== "given")
    return {
      where,
      read: value,
      expected: `no value: this line is ${line.kind} by a formula`,
      remedy: "Change what feeds it, or its formula.",
    };
  const text = textOf(line, value, unit || target.unit(place), wasSpread ? "" : spread);
  if (text === target.text(place)) return "same";
  const result = target.read(place.line, line, text);
  if (result.state !== "stopped") {
    const other = otherSort(target.read(place.line, line, target.text(place)), result);
    return other ? { where, read: text, ...other } : { ...place, text };
  }
  const [expected = "", ...remedy] = result.says.split(/\.\s+/u);
  return { where, read: text, expected, remedy: remedy.join(". ") || "Look at the number and its unit again." };
}

/** A line that takes any sort keeps the sort it has: a block with a wrong unit must not turn blades into pounds. */
function otherSort(before: Result, after: Result): Pick<Refused, "expected" | "remedy"> | undefined {
  if (before.state !== "settled" || after.state !== "settled") return undefined;
  const [was, is] = [before.value, after.value];
  if (!isValue(was) || !isValue(is) || sameDimension(was.dimension, is.dimension)) return undefined;
  const sort = dimensionName(was.dimension);
  return { expected: `${sort}, as it is now`, remedy: `Type over it if it is to be ${dimensionName(is.dimension)}.` };
}

const sameText = (one: string, other: string): boolean => one === "" || one.trim() === other.trim();

/** The text of a given from a value, its unit and its spread, each where it is not in the value already. */
function textOf(line: Given, value: string, unit: string, spread: string): string {
  if (line.choices || line.takes === "words" || !readNumber(value)) return value;
  const number = joinField(value, unit);
  const half = spread.replace(/^(?:±|\+\/-)\s*/u, "");
  if (half === "" || !readNumber(half) || number.includes("±")) return number;
  return `${number} ± ${joinField(half, unit)}`;
}
