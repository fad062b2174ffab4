import type { Given, Line, Lines } from "../../../lib/lines/index.ts";
import type { Knowing } from "../../../lib/measure/types.ts";
import { joinField } from "../fieldText.ts";
import { type System, unitOf } from "../writtenAs.ts";
import { unitEdit } from "./unitEdit.ts";

/** Words for what came of an edit. */
export function keptWords(open: Lines, line: string, inCase: string, what: string, where: string): string {
  const result = open.result(line, inCase);
  const kept = `kept${where}: ${line} is ${what === "" ? "not given" : what}`;
  return result.state === "stopped" ? `${kept}. It is stopped: ${result.says}` : kept;
}

/** Makes an edit; gives the reason where it is refused: a line that comes with a notebook stays as it is. */
export function refusal(edit: () => void): string | undefined {
  try {
    edit();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Keeps a formula: it holds in every case. */
export function keepFormula(open: Lines, line: string, inCase: string, formula: string): string {
  const { kind } = open.line(line);
  const refused = refusal(() => open.set(line, kind === "fitted" ? { fitted: formula } : { worked: formula }));
  if (refused !== undefined) return `not kept: ${refused}`;
  return keptWords(open, line, inCase, formula, open.cases().length > 1 ? " in every case" : "");
}

/** The text that a given is to have: a bare number takes the line's unit. */
const given = (line: Line, typed: string, system: System): string =>
  line.kind === "given" && (line.choices || line.takes === "words") ? typed : joinField(typed, unitOf(line, system));

/** Keeps a given's text for one case alone, or in every case. */
export function keepGiven(
  open: Lines,
  { line, inCase, system }: { readonly line: string; readonly inCase: string; readonly system: System },
  typed: string,
  everywhere: boolean,
): string {
  const text = given(open.line(line), typed, system);
  const known = knownOf(open, line, inCase);
  const edit = { given: text, ...(known !== undefined && { known }) };
  const refused = refusal(() => {
    if (inCase === "" || !everywhere) open.set(line, edit, inCase);
    else
      open.together(`${line} was set in every case`, () => {
        for (const { name } of open.cases()) if (open.own(line, name)) open.putBack(line, name);
        open.set(line, edit);
      });
  });
  if (refused !== undefined) return `not kept: ${refused}`;
  return keptWords(
    open,
    line,
    inCase,
    text,
    inCase === "" ? "" : everywhere ? " in every case" : ` for ${inCase} alone`,
  );
}

/** How a given is known in a case. */
export function knownOf(open: Lines, line: string, inCase: string): Knowing | undefined {
  const found = open.line(line);
  if (found.kind !== "given") return undefined;
  return (inCase === "" ? undefined : open.own(line, inCase)?.known) ?? found.known;
}

/** Says how a given is known: of the case's own text if it has one, else of the text that all share. */
export function setKnown(open: Lines, line: string, inCase: string, known: Knowing): void {
  const own = inCase === "" ? undefined : open.own(line, inCase);
  if (own) open.set(line, { given: own.text, known }, inCase);
  else open.set(line, { given: open.text(line, inCase), known });
}

/** Shows a line in another unit. A bare number was in the old unit: it gets it written behind. Gives back what is wrong. */
export function setUnit(open: Lines, name: string, typed: string, system: System): string | undefined {
  const line = open.line(name);
  const results = open.cases().map((one) => open.result(name, one.name));
  const change = unitEdit(line, typed, system, results);
  if ("wrong" in change) return change.wrong;
  return refusal(() => {
    if (line.kind !== "given") open.set(name, change.edit);
    else
      open.together(`unit of ${name} was ${unitOf(line, system) || "the usual one"}`, () => {
        writeUnits(open, name, line);
        open.set(name, change.edit);
      });
  });
}

function writeUnits(open: Lines, name: string, { text, unit = "", known, choices, takes }: Given): void {
  if (choices || takes === "words" || unit === "") return;
  const whole = (bare: string) => joinField(bare, unit);
  for (const one of open.cases()) {
    const own = one.name === "" ? undefined : open.own(name, one.name);
    if (own && whole(own.text) !== own.text)
      open.set(name, { given: whole(own.text), ...(own.known && { known: own.known }) }, one.name);
  }
  if (whole(text) !== text) open.set(name, { given: whole(text), ...(known && { known }) });
}
