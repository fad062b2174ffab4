import * as v from "valibot";

export const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** As many characters as a name, an id or a remark may have. */
export const longest = { id: 200, name: 2000, text: 100_000, source: 60_000_000 } as const;

export const text = (what: string, most: number = longest.text) =>
  v.pipe(v.string(what), v.maxLength(most, `${what}, at most ${most} characters`));

export const id = v.pipe(text("an id: some letters and digits", longest.id), v.minLength(1, "an id that is not empty"));
export const number = v.pipe(v.number("a number"), v.finite("a number that is not endless"));
export const atLeastZero = v.pipe(number, v.minValue(0, "a number that is not negative"));
export const flag = v.boolean("true or false");

export const instant = v.pipe(
  v.string("a date and time"),
  v.regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d+)?Z$/,
    "a date and time in universal time, like 2026-11-25T13:20:00.000Z",
  ),
);

// valibot's looseObject() takes a list for an object.
export const fields = <E extends v.ObjectEntries>(entries: E, what: string) =>
  v.pipe(v.custom<Record<string, unknown>>(isObject, what), v.looseObject(entries, what));

// valibot's own record() passes over keys such as "constructor": a Map passes over none.
export const byWords = <S extends v.GenericSchema>(what: string, inner: S) =>
  v.pipe(
    v.custom<Record<string, unknown>>(isObject, what),
    v.transform((value) => new Map(Object.entries(value))),
    v.map(v.pipe(v.string(), v.maxLength(longest.name, "a shorter name")), inner),
  );

export const knowing = v.picklist(
  ["weighed", "measured", "guessed", "from the label", "published"],
  'one of "weighed", "measured", "guessed", "from the label", "published"',
);

export const fact = fields(
  { text: text("what was written, as text"), known: v.optional(knowing), carriedOver: v.optional(flag) },
  "a fact: an object with a text",
);
export const factsSchema = byWords("facts by the name of their line", fact);
export const hints = byWords("answers by the id of their question", text("an answer, as text"));
