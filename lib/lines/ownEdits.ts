import type { Desk, Kept, KeptCase, LineChange, Own } from "./Desk.ts";
import { inWords, type Planned } from "./edits.ts";
import { foldName } from "./foldName.ts";
import { isValue } from "./isValue.ts";
import type { AmountEdit, Edit } from "./Lines.ts";
import type { OwnGiven } from "./types.ts";

/** What a case is to have of its own: a text, or a thing that no text can hold. */
export type NewOwn = OwnGiven | { readonly value: unknown };

/**
 * The change that gives one case a reading of its own, or takes it away.
 * @param desk The lines as they are.
 * @param name The line; a given.
 * @param inCase The case.
 * @param edit What it is set to; undefined to take the line as written again.
 * @returns The change, or undefined where it changes nothing.
 * @throws Error `unknown line: …`; `invalid edit: …` for a line that is worked, since its formula holds in every case.
 * @example planOwn(desk, "tank length", longer, { given: "42 in" })?.undo // "tank length of Longer tank was 30 in"
 */
export function planOwn(
  desk: Desk,
  name: string,
  inCase: KeptCase,
  edit: Edit | AmountEdit | undefined,
): Planned | undefined {
  const before = desk.named(name);
  if (before.line.kind !== "given")
    throw new Error(`invalid edit: ${before.name} is ${before.line.kind} by one formula in every case; change that`);
  const own = edit && ownOf(edit, before);
  const was = before.own?.get(inCase.id);
  if (JSON.stringify(own) === JSON.stringify(was) && own?.thing?.[0] === was?.thing?.[0]) return undefined;
  const after = withOwn(before, inCase.id, own);
  const whose = inCase.name === "" ? before.name : `${before.name} of ${inCase.name}`;
  return {
    undo: `${whose} was ${saidIn(before, inCase)}`,
    redo: `${whose} is ${saidIn(after, inCase)}`,
    changes: [{ id: before.id, at: desk.order.indexOf(before.id), before, after }],
  };
}

function ownOf(edit: Edit | AmountEdit, { line, name }: Kept): Own {
  if ("value" in edit) return { text: "", thing: [edit.value] };
  if (!("given" in edit)) throw new Error(`invalid edit: ${name} is given; a formula holds in every case`);
  if (isValue(edit.given)) return { text: "", thing: [edit.given] };
  const known = ("known" in edit ? edit.known : undefined) ?? (line.kind === "given" ? line.known : undefined);
  return { text: edit.given, ...(known !== undefined && { known }) };
}

function saidIn(kept: Kept, inCase: KeptCase): string {
  const own = kept.own?.get(inCase.id);
  if (!own) return inWords(kept);
  if (own.thing) return inWords({ line: kept.line, thing: own.thing });
  return own.text.trim() || "not given";
}

/**
 * A line with another reading of its own in one case. Cases whose reading was this very one keep the old one among them.
 * @param kept The line.
 * @param inCase Id of the case.
 * @param own Its own reading; undefined for none.
 * @returns The line.
 * @example withOwn(kept, "case 2", { text: "42 in" }).own?.get("case 2") // { text: "42 in" }
 */
export function withOwn(kept: Kept, inCase: string, own: Own | undefined): Kept {
  const all = new Map(kept.own);
  const [heir, ...others] = [...all].flatMap(([id, one]) => (one.sameAs === inCase ? [id] : []));
  if (heir !== undefined) {
    all.set(heir, without(all.get(heir)));
    for (const id of others) all.set(id, { ...without(all.get(id)), sameAs: heir });
  }
  if (own) all.set(inCase, own);
  else all.delete(inCase);
  const { own: _, ...rest } = kept;
  return all.size > 0 ? { ...rest, own: all } : rest;
}

function without(own: Own | undefined): Own {
  const { sameAs: _, ...rest } = own ?? { text: "" };
  return rest;
}

/**
 * The changes that give a case all that another has of its own: the very same readings.
 * @param desk The lines as they are.
 * @param from Id of the case that is copied; undefined for none, so that `to` loses what it had.
 * @param to Id of the case that gets them.
 * @returns The changes.
 * @example copiedOwn(desk, "case 1", "case 2").length // as many as there are givens that differ
 */
export function copiedOwn(desk: Desk, from: string, to: string): readonly LineChange[] {
  return desk.order.flatMap((id, at) => {
    const before = desk.kept.get(id);
    if (!before?.own || (!before.own.has(from) && !before.own.has(to))) return [];
    const own = before.own.get(from);
    return [{ id, at, before, after: withOwn(before, to, own && { ...own, sameAs: own.sameAs ?? from }) }];
  });
}

/**
 * A reading of a case's own as a notebook writes it.
 * @param given As a notebook's `cases` hold it.
 * @param idOf Finds the id of a case by its name.
 * @returns As a desk keeps it.
 * @throws Error `unknown case: …` for a `sameAs` that names none.
 * @example ownFrom("42 in", () => undefined) // { text: "42 in" }
 */
export function ownFrom(given: NewOwn, idOf: (name: string) => string | undefined): Own {
  if (typeof given === "string") return { text: given };
  if ("value" in given) return { text: "", thing: [given.value] };
  const { text, known, sameAs } = given;
  const same = sameAs === undefined ? undefined : idOf(foldName(sameAs));
  if (sameAs !== undefined && same === undefined) throw new Error(`unknown case: ${sameAs}; a case of this notebook`);
  return { text, ...(known !== undefined && { known }), ...(same !== undefined && { sameAs: same }) };
}
