import { html, type TemplateResult } from "lit-html";
import { given, type Lines, worked } from "../../../lib/lines/index.ts";
import { unitTable } from "../../../lib/measure/index.ts";
import type { Knowing } from "../../../lib/measure/types.ts";
import { blank, choose, form, type Written } from "./form.ts";

const ways: readonly Knowing[] = ["weighed", "measured", "guessed", "from the label", "published"];
const units = [...unitTable.map(({ symbol }) => symbol).filter((symbol) => symbol !== "")];

/** Adds what was written as a line. Throws with the reason for a name that is refused. */
function add(open: Lines, written: Written): void {
  const [name, text, unit] = [written("name"), written("text"), written("unit")];
  if (written("kind") === "worked") {
    open.add(name, worked(text, unit === "" ? undefined : unit));
    return;
  }
  const known = ways.find((way) => way === written("known"));
  open.add(name, given(text, known, { ...(unit !== "" && { unit }), ...(known === undefined && { exact: true }) }));
}

export interface LineFormProps {
  readonly open: Lines;
  readonly kind: string;
  readonly setKind: (kind: string) => void;
  readonly wrong: string | undefined;
  /** Runs an edit; says what is wrong where it throws. */
  readonly attempt: (edit: () => void) => void;
  readonly close: () => void;
}

/** Blanks for a new line: its name, what it is, its text or formula, its unit. */
export function lineForm({ open, kind, setKind, wrong, attempt, close }: LineFormProps): TemplateResult {
  const isGiven = kind !== "worked";
  return form({
    id: "line",
    title: "Add a line",
    blanks: html`${blank("name", "name", { about: "In your own words: gas price, blades." })}
      ${choose(
        "kind",
        "it is",
        [
          { value: "given", says: "given: you write it" },
          { value: "worked", says: "worked: from other lines" },
        ],
        kind,
        setKind,
      )}
      ${blank("text", isGiven ? "what it is" : "formula", {
        wide: true,
        about: isGiven
          ? "An amount with its unit, as you would write it: 4.20 $/lb"
          : "Over names of lines: gas price * 3 lb / blades",
      })}
      ${blank("unit", "unit", { list: units, about: isGiven ? "Taken when none is written." : "Shown in it; left blank, the usual one." })}
      ${isGiven ? choose("known", "known how", [{ value: "", says: "as written, exactly" }, ...ways.map((way) => ({ value: way, says: way }))]) : ""}`,
    does: "add it",
    wrong,
    take: (written) => attempt(() => add(open, written)),
    close,
  });
}
