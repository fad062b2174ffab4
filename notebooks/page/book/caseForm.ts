import { html, type TemplateResult } from "lit-html";
import { type AddCase, type CaseFrom, foldName, type Lines } from "../../../lib/lines/index.ts";
import { type Facts, itemOf, type ShopRecord, shown } from "../../../lib/record/index.ts";
import { blank, type Choice, choose, form } from "./form.ts";

type Thing = CaseFrom["kind"];

/** Everything that a case can be taken from, to be picked from one list. */
function sources(record: ShopRecord, open: Lines): readonly Choice[] {
  const of = (
    kind: Thing,
    items: readonly { readonly id: string; readonly name: string; readonly invented?: boolean }[],
  ) =>
    items.map(({ id, name, invented }) => ({
      value: `${kind} ${id}`,
      says: `the ${kind} ${name}${invented ? " (invented data)" : ""}`,
    }));
  const cases = open
    .cases()
    .map(({ name }) => ({ value: `case ${name}`, says: name === "" ? "the case there is" : `the case ${name}` }));
  return [
    { value: "", says: "the lines as they are written" },
    ...cases,
    ...of("setup", shown(record.setups)),
    ...of("bath", shown(record.baths)),
    ...of("run", shown(record.runs)),
  ];
}

/** What a thing's facts say of a notebook's givens, as they stand now: a later change never alters the case. */
export function ownFrom(open: Lines, facts: Facts): NonNullable<AddCase["own"]> {
  const byName = new Map(Object.entries(facts).map(([name, fact]) => [foldName(name), fact]));
  const own: Record<string, { text: string; known?: NonNullable<Facts[string]["known"]> }> = Object.create(null);
  for (const name of open.names()) {
    const fact = byName.get(foldName(name));
    if (open.line(name).kind !== "given" || !fact || fact.text.trim() === "") continue;
    own[name] = { text: fact.text, ...(fact.known && { known: fact.known }) };
  }
  return own;
}

/** The givens of a notebook that take a log. */
export function logLines(open: Pick<Lines, "names" | "line">): readonly string[] {
  return open.names().filter((name) => {
    const line = open.line(name);
    return line.kind === "given" && line.takes === "log";
  });
}

/** How a case is added that is taken from one thing of the record. */
export function caseFrom(open: Lines, record: ShopRecord, source: string): AddCase {
  const [kind, id] = [source.slice(0, source.indexOf(" ")), source.slice(source.indexOf(" ") + 1)];
  if (kind === "case") return { copyOf: id, from: { kind, id, says: id } };
  if (kind === "run") {
    const run = itemOf(record, "runs", id);
    if (!run) return {};
    const own: NonNullable<AddCase["own"]> = Object.assign(Object.create(null), ownFrom(open, run.facts));
    const logs = Object.fromEntries(logLines(open).map((name) => [name, { value: run.log }]));
    return { own: { ...own, ...logs }, from: { kind, id, says: run.name } };
  }
  if (kind !== "setup" && kind !== "bath") return {};
  const thing = itemOf(record, kind === "setup" ? "setups" : "baths", id);
  return thing ? { own: ownFrom(open, thing.facts), from: { kind, id, says: thing.name } } : {};
}

export interface CaseFormProps {
  readonly open: Lines;
  readonly record: ShopRecord;
  readonly wrong: string | undefined;
  readonly attempt: (edit: () => void) => void;
  readonly close: () => void;
  /** Cases are runs, shown as they are. */
  readonly runsOnly?: boolean;
}

/** Blanks for another run beside the one that is open. */
function runForm({ open, record, wrong, attempt, close }: CaseFormProps): TemplateResult {
  const runs = sources(record, open).filter(({ value }) => value.startsWith("run "));
  if (runs.length === 0) return html`<p class="because" role="alert">There is no other run yet.</p>`;
  return form({
    id: "case",
    title: "Put another run beside it",
    blanks: choose("from", "run", runs),
    does: "put it beside",
    wrong,
    take: (written) =>
      attempt(() => {
        const { from } = caseFrom(open, record, written("from"));
        open.addCase(from?.says ?? "", from ? { from } : {});
      }),
    close,
  });
}

/** Blanks for a new case: its name and what it starts from. */
export function caseForm(props: CaseFormProps): TemplateResult {
  const { open, record, wrong, attempt, close } = props;
  if (props.runsOnly) return runForm(props);
  return form({
    id: "case",
    title: "Add a case",
    blanks: html`${blank("name", "name", { about: "A supposed change, a tank, a run: longer tank." })}
      ${choose("from", "starts from", sources(record, open))}
      <p class="faint small wide">It gets a copy of what is known there, for every given of the same name. Later changes there leave the case as it is.</p>`,
    does: "add it",
    wrong,
    take: (written) =>
      attempt(() => {
        const how = caseFrom(open, record, written("from"));
        open.addCase(written("name") || (how.from?.says ?? ""), how);
      }),
    close,
  });
}
