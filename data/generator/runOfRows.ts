import type { Entry, Run } from "../../lib/log/types.ts";
import type { InventedRow } from "./inventLog.ts";

const flOz = 0.0295735295625 * 0.9982;

/** The rows of an invented log as a run, without going through its text. */
export function runOfRows(rows: readonly InventedRow[]): Run {
  const entries: Entry[] = [];
  rows.forEach((row, i) => {
    const base = { time: row.time, line: i + 2, struck: false };
    const written = (text: string, si: number, unit: string) => ({
      text,
      si,
      dimension: {},
      unit,
      standardUncertainty: 0,
      known: "measured" as const,
    });
    if (row.fahrenheit) {
      const si = (Number(row.fahrenheit) + 459.67) / 1.8;
      entries.push({ ...base, id: `${i + 2} reading`, kind: "reading", quantity: written(row.fahrenheit, si, "°F") });
    }
    if (row.water)
      entries.push({
        ...base,
        id: `${i + 2} addition`,
        kind: "addition",
        quantity: written(row.water, Number(row.water) * flOz, "fl oz"),
      });
    if (row.note) {
      const burner = /^burner to (\d+) %$/.exec(row.note);
      if (burner)
        entries.push({
          ...base,
          id: `${i + 2} burner`,
          kind: "burner",
          text: row.note,
          quantity: written(row.note, Number(burner[1]) / 100, "%"),
        });
      else
        entries.push({
          ...base,
          id: `${i + 2} note`,
          kind: row.note === "parts in" ? "parts in" : "remark",
          text: row.note,
        });
    }
  });
  return { entries };
}
