import * as v from "valibot";
import { byWords, fields, flag, isObject, knowing, longest, number, text } from "./schemaParts.ts";

/** As many lines, cases, figures and notes as a kept notebook may have, and as many characters as a formula. */
export const notebookLimits = {
  lines: 1000,
  cases: 60,
  figures: 200,
  notes: 1000,
  clauses: 50,
  formula: 10_000,
} as const;

const words = text("words, as text");
const name = text("a name, as text", longest.name);
const listOf = <S extends v.GenericSchema>(inner: S, what: string, most: number) =>
  v.pipe(v.array(inner, what), v.maxLength(most, `${what}, at most ${most}`));

/** What every line may have beside its text or formula: how a page lists it. */
const listed = {
  key: v.optional(name),
  unit: v.optional(name),
  metricUnit: v.optional(name),
  group: v.optional(name),
  about: v.optional(words),
  hidden: v.optional(flag),
  rare: v.optional(flag),
};

const given = v.looseObject({
  kind: v.literal("given"),
  text: text("what was written, as text"),
  known: v.optional(knowing),
  ...listed,
  keptWith: v.optional(name),
  ownOnly: v.optional(flag),
  exact: v.optional(flag),
  choices: v.optional(listOf(name, "a list of words to choose from", 1000)),
  takes: v.optional(name),
  atLeast: v.optional(number),
  atMost: v.optional(number),
});

const worked = v.looseObject({
  kind: v.picklist(["worked", "fitted"]),
  formula: text("a formula, as text", notebookLimits.formula),
  ...listed,
  plain: v.optional(flag),
  mark: v.optional(name),
  below: v.optional(name),
  safe: v.optional(v.picklist(["at most", "at least"], '"at most" or "at least"')),
  caution: v.optional(words),
});

const line = v.pipe(
  v.custom<Record<string, unknown>>(isObject, "a line: an object with a kind"),
  v.variant("kind", [given, worked], 'a line of kind "given", "worked" or "fitted"'),
);

interface ClauseData {
  readonly says: string;
  readonly otherwise?: string | ClauseData | undefined;
}

// The file nests at most 64 deep, so this ends.
const clause: v.GenericSchema<unknown, ClauseData> = fields(
  {
    says: words,
    otherwise: v.optional(v.union([words, v.lazy(() => clause)], "words, or a clause")),
    caution: v.optional(
      v.union([words, listOf(words, "a list of cautions", notebookLimits.clauses)], "words, or a list of them"),
    ),
  },
  "a clause: an object with what it says",
);

const ownGiven = v.union(
  [
    text("what was written, as text"),
    fields(
      { text: text("what was written, as text"), known: v.optional(knowing), sameAs: v.optional(name) },
      "an object with a text",
    ),
  ],
  "what a case has of its own: a text, or an object with a text",
);

const from = fields(
  {
    kind: v.picklist(["run", "setup", "bath", "case"], 'one of "run", "setup", "bath", "case"'),
    id: text("an id, as text", longest.id),
    says: v.optional(words),
  },
  "where a case was taken from",
);

const title = v.optional(words);
const figure = v.union(
  [
    name,
    v.pipe(
      v.custom<Record<string, unknown>>(isObject, "a figure: an object"),
      v.variant("draws", [
        v.looseObject({ draws: v.literal("a line across cases"), line: name, title }),
        v.looseObject({ draws: v.literal("a sweep"), line: name, by: name, from: name, to: name, title }),
        v.looseObject({ draws: v.literal("a line against another"), line: name, against: name, title }),
      ]),
    ),
  ],
  "a figure: a name, or an object that says what it draws",
);

const few = <S extends v.GenericSchema>(
  inner: v.GenericSchema<unknown, Map<string, v.InferOutput<S>>>,
  what: string,
  most: number,
) => v.pipe(inner, v.maxSize(most, `${what}, at most ${most}`));

/** What a kept notebook must be; further fields are allowed anywhere. Formulas are looked at when it is opened. */
export const notebookData = fields(
  {
    asks: text("a question, as text"),
    name: v.optional(name),
    lines: few(byWords("lines by their names", line), "lines", notebookLimits.lines),
    cases: v.optional(
      few(
        byWords("cases by their names", byWords("what a case has of its own, by line", ownGiven)),
        "cases",
        notebookLimits.cases,
      ),
    ),
    caseOrder: v.optional(listOf(name, "a list of cases", notebookLimits.cases)),
    base: v.optional(name),
    hiddenCases: v.optional(listOf(name, "a list of cases", notebookLimits.cases)),
    casesFrom: v.optional(few(byWords("where cases were taken from", from), "cases", notebookLimits.cases)),
    answer: v.optional(
      v.union(
        [words, listOf(v.union([words, clause], "words, or a clause"), "a list of clauses", notebookLimits.clauses)],
        "words, or a list of clauses",
      ),
    ),
    figures: v.optional(listOf(figure, "a list of figures", notebookLimits.figures)),
    notes: v.optional(listOf(words, "a list of notes", notebookLimits.notes)),
  },
  "a notebook: an object with lines",
);
