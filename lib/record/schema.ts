import * as v from "valibot";

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** As many characters as a name, an id or a remark may have. */
export const longest = { id: 200, name: 2000, text: 100_000, source: 60_000_000 } as const;

const text = (what: string, most: number = longest.text) =>
  v.pipe(v.string(what), v.maxLength(most, `${what}, at most ${most} characters`));

const id = v.pipe(text("an id: some letters and digits", longest.id), v.minLength(1, "an id that is not empty"));
const number = v.pipe(v.number("a number"), v.finite("a number that is not endless"));
const atLeastZero = v.pipe(number, v.minValue(0, "a number that is not negative"));
const flag = v.boolean("true or false");

const instant = v.pipe(
  v.string("a date and time"),
  v.regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d+)?Z$/,
    "a date and time in universal time, like 2026-11-25T13:20:00.000Z",
  ),
);

// valibot's looseObject() takes a list for an object.
const fields = <E extends v.ObjectEntries>(entries: E, what: string) =>
  v.pipe(v.custom<Record<string, unknown>>(isObject, what), v.looseObject(entries, what));

// valibot's own record() passes over keys such as "constructor": a Map passes over none.
const byWords = <S extends v.GenericSchema>(what: string, inner: S) =>
  v.pipe(
    v.custom<Record<string, unknown>>(isObject, what),
    v.transform((value) => new Map(Object.entries(value))),
    v.map(v.pipe(v.string(), v.maxLength(longest.name, "a shorter name")), inner),
  );

const knowing = v.picklist(
  ["weighed", "measured", "guessed", "from the label", "published"],
  'one of "weighed", "measured", "guessed", "from the label", "published"',
);

const fact = fields(
  { text: text("what was written, as text"), known: v.optional(knowing), carriedOver: v.optional(flag) },
  "a fact: an object with a text",
);
const facts = byWords("facts by the name of their line", fact);
const hints = byWords("answers by the id of their question", text("an answer, as text"));

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

/** What a shop record of schema 1 must be; further fields are allowed anywhere. Used to check, not to convert. */
export const shopRecordSchema = fields(
  {
    schema: v.literal(1, "the number 1"),
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
    setups: v.array(fields({ ...kept, facts, hints }, "a setup"), "a list of setups"),
    baths: v.array(
      fields({ ...kept, facts, account: v.array(account, "a list: the bath's account") }, "a bath"),
      "a list of baths",
    ),
    runs: v.array(
      fields(
        {
          ...kept,
          setup: v.optional(id),
          bath: v.optional(id),
          date: v.optional(text("a date, as text", longest.name)),
          facts,
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
      fields({ ...kept, notebook: v.custom<unknown>(isObject, "a notebook: an object") }, "a notebook"),
      "a list of notebooks",
    ),
  },
  "a shop record: an object in braces",
);
