import * as v from "valibot";
import { notebookData } from "./notebookSchema.ts";
import {
  atLeastZero,
  factsSchema,
  fields,
  flag,
  hints,
  id,
  instant,
  knowing,
  longest,
  number,
  text,
} from "./schemaParts.ts";

export { longest } from "./schemaParts.ts";

const exponent = v.optional(number);
const dimension = fields(
  {
    length: exponent,
    mass: exponent,
    time: exponent,
    temperature: exponent,
    money: exponent,
    point: v.optional(v.literal(true, "true, or nothing at all")),
  },
  "the exponents of a dimension",
);
const written = fields(
  {
    text: text("what was written, as text"),
    si: number,
    dimension,
    unit: text("a unit, as text", longest.name),
    standardUncertainty: atLeastZero,
    known: knowing,
  },
  "a quantity as it was written",
);

const kinds = [
  "reading",
  "addition",
  "salt in",
  "burner",
  "parts in",
  "parts out",
  "depth",
  "level",
  "cylinder",
  "remark",
] as const;
const entry = fields(
  {
    id,
    time: number,
    clock: v.optional(text("a time of day, as text", longest.name)),
    kind: v.picklist(kinds, `one of ${kinds.map((kind) => `"${kind}"`).join(", ")}`),
    quantity: v.optional(written),
    text: v.optional(text("words, as text")),
    duration: v.optional(atLeastZero),
    line: v.pipe(atLeastZero, v.integer("a whole number")),
    struck: flag,
    reason: v.optional(text("a reason, as text")),
    before: v.optional(v.array(text("what it said before, as text"), "a list of what it said before")),
  },
  "an entry of a log",
);
const log = fields(
  {
    entries: v.array(entry, "a list of entries"),
    start: v.optional(text("a date and time, as text", longest.name)),
    columns: v.optional(
      v.array(
        fields({ heading: text("a heading, as text"), taken: text("words, as text") }, "a heading"),
        "a list of headings",
      ),
    ),
  },
  "a log: an object with entries",
);

const was = fields(
  { at: instant, what: text("what was changed, as text"), was: text("what it said before, as text", longest.source) },
  "what was said before a change",
);
const kept = {
  id,
  changed: instant,
  name: text("a name, as text", longest.name),
  invented: v.optional(flag),
  removed: v.optional(flag),
  history: v.optional(v.array(was, "a list of what was said before")),
};
const accountKinds = ["charge", "top-up", "water", "drag-out", "sludge out", "stored", "emptied"] as const;
const account = fields(
  {
    id,
    date: text("a date, as text", longest.name),
    kind: v.picklist(accountKinds, `one of ${accountKinds.map((kind) => `"${kind}"`).join(", ")}`),
    text: text("what was written, as text"),
  },
  "an entry of the bath's account",
);

/** What a shop record of schema 2 must be; further fields are allowed anywhere. Used to check, not to convert. */
export const shopRecordSchema = fields(
  {
    schema: v.literal(2, "the number 2"),
    kind: v.literal("shop record", '"shop record"'),
    id,
    saved: instant,
    settings: fields(
      {
        units: v.picklist(["US", "metric"], '"US" or "metric"'),
        openRun: v.optional(id),
        copied: v.optional(instant),
        changed: v.optional(instant),
      },
      "settings",
    ),
    setups: v.array(fields({ ...kept, facts: factsSchema, hints }, "a setup"), "a list of setups"),
    baths: v.array(
      fields({ ...kept, facts: factsSchema, account: v.array(account, "a list: the bath's account") }, "a bath"),
      "a list of baths",
    ),
    runs: v.array(
      fields(
        {
          ...kept,
          setup: v.optional(id),
          bath: v.optional(id),
          date: v.optional(text("a date, as text", longest.name)),
          facts: factsSchema,
          log,
          source: text("the log as it came, as text", longest.source),
          hints,
          outcome: v.optional(text("words, as text")),
        },
        "a run",
      ),
      "a list of runs",
    ),
    notebooks: v.array(
      fields(
        { ...kept, of: v.optional(text("a notebook's name, as text", longest.name)), notebook: notebookData },
        "a notebook",
      ),
      "a list of notebooks",
    ),
  },
  "a shop record: an object in braces",
);
