import * as v from "valibot";
import { listNames } from "./listNames.ts";
import { safeKeys } from "./safeKeys.ts";
import { scan } from "./scan.ts";
import { shopRecordSchema } from "./schema.ts";
import type { RecordProblem, RecordReading, ShopRecord } from "./types.ts";
import { currentSchema, upgrades as ourUpgrades, type Upgrade } from "./upgrades.ts";
import { pointerTo, whereInRecord } from "./whereInRecord.ts";

/** What a file may be at most before it is read at all. */
export const recordLimits = { characters: 200_000_000, depth: 64 } as const;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function brief(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (isObject(value)) return "an object";
  // The written form tells a text "1" from a number 1.
  const text = typeof value === "number" ? String(value) : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

const problem = (where: string, read: string, expected: string, remedy: string, pointer = "") => ({
  problem: { where, pointer, read, expected, remedy },
});

const otherFile = "Choose another file: one that was saved here with “Save a copy”. This file was not changed.";

function parse(text: string): { value: unknown } | { problem: RecordProblem } {
  const whole = "the whole file";
  if (text.length > recordLimits.characters) {
    const most = `at most ${recordLimits.characters / 1e6} million characters`;
    return problem(whole, `${(text.length / 1e6).toFixed(1)} million characters`, most, otherFile);
  }
  if (text.trim() === "") return problem(whole, "nothing: the file is empty", "a shop record", otherFile);
  const { tooDeepAt, cutShort } = scan(text, recordLimits.depth);
  if (tooDeepAt >= 0) {
    const line = text.slice(0, tooDeepAt).split("\n").length;
    return problem(`line ${line}`, "too many brackets inside one another", `at most ${recordLimits.depth}`, otherFile);
  }
  try {
    return { value: JSON.parse(text.replace(/^\uFEFF/, "")) };
  } catch (error) {
    if (cutShort && /^\s*\uFEFF?\s*[{[]/.test(text)) {
      return problem("the end of the file", "a file that was cut short", "its closing brackets", otherFile);
    }
    if (!/^\s*\uFEFF?\s*[{[]/.test(text)) {
      const start = brief(text.trimStart().split("\n", 1)[0]);
      const remedy = `${otherFile} A log is read on the page One run.`;
      return problem(whole, `a text that begins ${start}`, "a shop record, which begins with a brace", remedy);
    }
    const why = error instanceof Error ? error.message : String(error);
    const position = /position (\d+)/.exec(why)?.[1];
    const where = position === undefined ? whole : `line ${text.slice(0, Number(position)).split("\n").length}`;
    return problem(where, `something that is not JSON (${why})`, "a shop record, written as JSON", otherFile);
  }
}

function upToDate(old: Record<string, unknown>, steps: readonly Upgrade[]): Record<string, unknown> | undefined {
  let record = old;
  // Each step must raise the number, so this ends.
  while (record.schema !== currentSchema) {
    const step = steps.find(({ from, to }) => from === record.schema && to > from);
    if (step === undefined) return undefined;
    record = { ...step.upgrade(record), schema: step.to };
  }
  return record;
}

function repeatedId(record: ShopRecord): { path: (string | number)[]; id: string } | undefined {
  for (const list of listNames) {
    const seen = new Set<string>();
    for (const [i, { id }] of record[list].entries()) {
      if (seen.has(id)) return { path: [list, i, "id"], id };
      seen.add(id);
    }
  }
  return undefined;
}

/**
 * Reads a shop record out of a text. Size and depth are limited before anything is built; an older schema is
 * brought up to date; a newer one is refused; fields that this version does not know are kept.
 *
 * @param text - the text of a file, JSON (RFC 8259), at most 200 million characters and 64 levels.
 * @param steps - the upgrades that are known; ours by default.
 * @returns the record, or the first problem with where it is, what was read, what was expected and what to do.
 * @example
 * readRecord(writeRecord(newRecord())).record.kind; // "shop record"
 */
export function readRecord(text: string, steps: readonly Upgrade[] = ourUpgrades): RecordReading {
  const parsed = parse(text);
  if ("problem" in parsed) return parsed;
  const found = parsed.value;
  if (!isObject(found) || found.kind !== "shop record") {
    const read = isObject(found) && found.kind !== undefined ? `kind ${brief(found.kind)}` : brief(found);
    return problem("the whole file", read, 'a shop record: an object with kind "shop record"', otherFile);
  }
  const number = found.schema;
  if (typeof number !== "number" || !Number.isInteger(number) || number < 0) {
    return problem("schema", brief(number), `a whole number, at most ${currentSchema}`, otherFile, "/schema");
  }
  if (number > currentSchema) {
    const remedy = "Open it with that newer version, or reload this page to get it. Nothing was changed.";
    const read = `schema ${number}: a newer version of Steady Boil wrote this`;
    return problem("schema", read, `schema ${currentSchema} or older`, remedy, "/schema");
  }
  const current = upToDate(found, steps);
  if (current === undefined) {
    return problem("schema", `schema ${number}`, `schema ${currentSchema}`, otherFile, "/schema");
  }
  const checked = v.safeParse(shopRecordSchema, current, { abortEarly: true });
  const mend = "Put this right in the file with a text editor, or choose another copy. This file was not changed.";
  if (!checked.success) {
    const [issue] = checked.issues;
    const path = (issue.path ?? []).map(({ key }) => (typeof key === "number" ? key : String(key)));
    // What is missing is told by the object it is missing from.
    const missing = issue.type === "loose_object" && issue.input === undefined;
    const expected = missing ? `"${path.at(-1)}", which belongs to ${issue.message}` : issue.message;
    return problem(whereInRecord(current, path), brief(issue.input), expected, mend, pointerTo(path));
  }
  // The check leaves out keys such as "constructor", so what was parsed is kept and what the check gives is not.
  const record = current as unknown as ShopRecord;
  const twice = repeatedId(record);
  if (twice !== undefined) {
    const where = whereInRecord(current, twice.path);
    return problem(where, `"${twice.id}" a second time`, "an id that no other has", mend, pointerTo(twice.path));
  }
  const safe = safeKeys(record);
  return number === currentSchema ? { record: safe } : { record: safe, upgradedFrom: number };
}
