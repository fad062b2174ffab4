import { checkName, readsAsFormula } from "./checkName.ts";
import type { Desk, Kept, LineChange } from "./Desk.ts";
import { foldName, tidyName } from "./foldName.ts";
import { isValue } from "./isValue.ts";
import type { AmountEdit, Edit } from "./Lines.ts";
import type { Names } from "./names.ts";
import { parseFormula } from "./parseFormula.ts";
import { renameIn } from "./renameIn.ts";
import type { Given, Line, Worked } from "./types.ts";
import { mentionsIn } from "./usesOf.ts";

type UnitEdit = Extract<Edit, { unit: unknown }>;

/** What an edit changes, and how it is called when it is undone or done again. */
export interface Planned {
  readonly undo: string;
  readonly redo: string;
  readonly changes: readonly LineChange[];
}

/**
 * The change that sets a line to something else, in every case that has no text of its own.
 * @param desk The lines as they are.
 * @param name The line.
 * @param edit What it is set to.
 * @returns The change, or undefined where it changes nothing.
 * @throws Error `unknown line: …`.
 * @example planSet(desk, "altitude", { given: "2,300 ft" })?.undo // "altitude was 2,100 ft"
 */
export function planSet(desk: Desk, name: string, edit: Edit | AmountEdit): Planned | undefined {
  const before = desk.named(name);
  const { own } = before;
  if ("unit" in edit) return planUnit(desk, before, edit);
  const after: Kept =
    "value" in edit
      ? { ...before, thing: [edit.value] }
      : { id: before.id, name: before.name, line: edited(before.line, edit), ...(own && { own }) };
  if (!before.thing && !after.thing && sameLine(before.line, after.line)) return undefined;
  if (before.thing && after.thing && Object.is(before.thing[0], after.thing[0])) return undefined;
  return {
    undo: `${before.name} was ${inWords(before)}`,
    redo: `${before.name} is ${inWords(after)}`,
    changes: [{ id: before.id, at: desk.order.indexOf(before.id), before, after }],
  };
}

function sameLine(before: Line, after: Line): boolean {
  const amount = (line: Line) => (line.kind === "given" ? line.value : undefined);
  return amount(before) === amount(after) && JSON.stringify(before) === JSON.stringify(after);
}

/** Another unit to be shown in; what the line is stays. */
function planUnit(desk: Desk, before: Kept, { unit, metricUnit }: UnitEdit): Planned | undefined {
  const { unit: was, metricUnit: metricWas, ...rest } = before.line;
  if (was === unit && metricWas === metricUnit) return undefined;
  const line: Line = {
    ...rest,
    ...(unit !== undefined && { unit }),
    ...(metricUnit !== undefined && { metricUnit }),
  };
  const said = (one: string | undefined, metric: string | undefined) =>
    [one ?? "the usual one", ...(metric === undefined ? [] : [metric])].join(" or ");
  return {
    undo: `unit of ${before.name} was ${said(was, metricWas)}`,
    redo: `unit of ${before.name} is ${said(unit, metricUnit)}`,
    changes: [{ id: before.id, at: desk.order.indexOf(before.id), before, after: { ...before, line } }],
  };
}

function edited(line: Line, edit: Exclude<Edit, { value: unknown } | UnitEdit> | AmountEdit): Line {
  const { unit, metricUnit, key, group, about, hidden } = line;
  const common = {
    ...(unit !== undefined && { unit }),
    ...(metricUnit !== undefined && { metricUnit }),
    ...(key !== undefined && { key }),
    ...(group !== undefined && { group }),
    ...(about !== undefined && { about }),
    ...(hidden !== undefined && { hidden }),
  };
  if ("given" in edit) {
    const { value: _, ...rest }: Given = line.kind === "given" ? line : { kind: "given", text: "", ...common };
    if (isValue(edit.given)) return { ...rest, text: "", value: edit.given };
    return { ...rest, text: edit.given, ...("known" in edit && edit.known !== undefined && { known: edit.known }) };
  }
  const rest: Omit<Worked, "kind" | "formula"> = line.kind === "given" ? common : line;
  return "worked" in edit
    ? { ...rest, kind: "worked", formula: edit.worked }
    : { ...rest, kind: "fitted", formula: edit.fitted };
}

/** What a line is set to, as the name of an undo says it. */
export function inWords({ line, thing }: Pick<Kept, "line" | "thing">): string {
  if (thing) return thing[0] === undefined ? "not given" : "another";
  if (line.kind !== "given") return line.formula.trim() || "empty";
  return line.text.trim() || (line.value ? "an amount found by a fit" : "not given");
}

/**
 * The change that adds a line.
 * @param desk The lines as they are.
 * @param id An id that no line has had.
 * @param name Its name.
 * @param line The line.
 * @param after The line behind which it goes; the end if left out.
 * @returns The change.
 * @throws Error `invalid line name: …` with the reason, `ambiguous line name: …`, `unknown line: …`.
 * @example planAdd(desk, "line 9", "min", given("3")) // throws invalid line name: min; it is a unit: a formula could not tell them apart
 */
export function planAdd(desk: Desk, id: string, name: string, line: Line, after?: string): Planned {
  const tidy = tidyName(name);
  refuseName(desk, tidy);
  const at = after === undefined ? desk.order.length : desk.order.indexOf(desk.named(after).id) + 1;
  return { undo: `adding ${tidy}`, redo: `adding ${tidy}`, changes: [{ id, at, after: { id, name: tidy, line } }] };
}

/**
 * The change that removes a line.
 * @param desk The lines as they are.
 * @param name The line.
 * @returns The change.
 * @throws Error `unknown line: …`.
 * @example planRemove(desk, "salt").undo // "removing salt"
 */
export function planRemove(desk: Desk, name: string): Planned {
  const before = desk.named(name);
  const words = `removing ${before.name}`;
  return { undo: words, redo: words, changes: [{ id: before.id, at: desk.order.indexOf(before.id), before }] };
}

/**
 * The change that gives a line another name, in all formulas too.
 * @param desk The lines as they are.
 * @param name The line.
 * @param next Its new name.
 * @param users Ids of the lines whose formulas name it.
 * @returns The change, or undefined where it has that name already.
 * @throws Error as `planAdd`; also where a formula would be read another way.
 * @example planRename(desk, "salt", "lye", [])?.undo // "lye was called salt"
 */
export function planRename(desk: Desk, name: string, next: string, users: readonly string[]): Planned | undefined {
  const before = desk.named(name);
  const tidy = tidyName(next);
  if (tidy === before.name) return undefined;
  refuseName(desk, tidy, before.name);
  const own: LineChange = {
    id: before.id,
    at: desk.order.indexOf(before.id),
    before,
    after: { ...before, name: tidy },
    // The name of a given is the name of its source of doubt.
    sameMeaning: before.line.kind !== "given",
  };
  const lines = new Map(desk.lines);
  lines.delete(foldName(before.name));
  lines.set(foldName(tidy), tidy);
  const changes = users.flatMap(
    (id) => renamedFormula(desk, id, before.name, tidy, { lines, functions: desk.functions }) ?? [],
  );
  return {
    undo: `${tidy} was called ${before.name}`,
    redo: `${before.name} is called ${tidy}`,
    changes: [own, ...changes],
  };
}

function renamedFormula(desk: Desk, id: string, name: string, next: string, names: Names): LineChange | undefined {
  const before = desk.kept.get(id);
  if (!before || before.line.kind === "given") return undefined;
  const parsed = parseFormula(before.line.formula, desk);
  if (!("tree" in parsed)) return undefined;
  const mentions = mentionsIn(parsed.tree);
  const formula = renameIn(
    before.line.formula,
    mentions.filter((mention) => mention.name === name),
    next,
  );
  const wanted = mentions.map((mention) => (mention.name === name ? next : mention.name));
  if (mentioned(formula, names) !== wanted.join("\n"))
    throw new Error(`invalid line name: ${next}; the formula of ${before.name} would be read another way`);
  const after: Kept = { ...before, line: { ...before.line, formula } };
  return { id, at: desk.order.indexOf(id), before, after, sameMeaning: true };
}

/** Throws if a line cannot have a name; `old` is the name that it gives up. */
function refuseName(desk: Desk, name: string, old?: string): void {
  const lines = new Map(desk.lines);
  if (old !== undefined) lines.delete(foldName(old));
  const now: Names = { lines, functions: desk.functions };
  if (lines.has(foldName(name))) throw new Error(`ambiguous line name: ${name}; each line needs a name of its own`);
  const wrong = checkName(name, now);
  if (wrong !== undefined) throw new Error(`invalid line name: ${name}; it ${wrong}`);
  const then: Names = { lines: new Map(lines).set(foldName(name), name), functions: desk.functions };
  for (const other of lines.values())
    if (readsAsFormula(other, then))
      throw new Error(`invalid line name: ${name}; with it, "${other}" could be read as a formula`);
  for (const kept of desk.kept.values()) {
    if (kept.line.kind === "given" || kept.name === old || !foldName(kept.line.formula).includes(foldName(name)))
      continue;
    const [one, other] = [mentioned(kept.line.formula, desk), mentioned(kept.line.formula, then)];
    // A rename is looked at formula by formula, with the new name in its place.
    if (one !== undefined && one !== other && !(old !== undefined && one.split("\n").includes(old)))
      throw new Error(`invalid line name: ${name}; the formula of ${kept.name} would be read another way`);
  }
}

/** The lines that a formula mentions, one to a row; undefined where it cannot be read. */
function mentioned(formula: string, names: Names): string | undefined {
  const parsed = parseFormula(formula, names);
  return "tree" in parsed
    ? mentionsIn(parsed.tree)
        .map((mention) => mention.name)
        .join("\n")
    : undefined;
}
