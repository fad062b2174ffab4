import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { expect, test } from "vitest";
import { newRecord, readRecord, writeRecord } from "../../../lib/record/index.ts";
import { record } from "./example.ts";

const published = JSON.parse(readFileSync(new URL("../../../data/schema/shop-record-2.json", import.meta.url), "utf8"));
// Strict: a keyword that the standard does not know, or that cannot apply, is an error in our schema.
const accepts = new Ajv2020({ strict: true }).compile(published);

// A record of an older schema is read by way of its upgrade, not as it stands.
function reads(value: unknown): boolean {
  const reading = readRecord(JSON.stringify(value));
  return "record" in reading && reading.upgradedFrom === undefined;
}

const copy = () => JSON.parse(writeRecord(record));

test("the published schema is one of JSON Schema 2020-12", () => {
  expect(published.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(new Ajv2020().validateSchema(published)).toBe(true);
});

test("the published schema accepts what writeRecord() writes", () => {
  expect(accepts(copy()) ? [] : accepts.errors).toEqual([]);
  expect(accepts(JSON.parse(writeRecord(newRecord())))).toBe(true);
});

/** Every place of a value, as the keys that lead there. */
function places(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== "object" || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, part]) =>
    places(part, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return [path, ...inner];
}

function put(root: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  const next = (root as Record<string, unknown>)[first];
  const changed = put(next, rest, value);
  if (Array.isArray(root)) return root.map((item, i) => (i === first ? changed : item));
  return changed === undefined
    ? Object.fromEntries(Object.entries(root as object).filter(([key]) => key !== first))
    : { ...(root as object), [first]: changed };
}

const others: readonly unknown[] = [
  undefined,
  null,
  true,
  false,
  0,
  -1,
  0.5,
  1,
  2,
  "",
  "some text",
  "2026-11-25T13:20:00.000Z",
  "2026-13-25T13:20:00.000Z",
  "2026-11-25T25:20:00Z",
  "weighed",
  "reading",
  "US",
  [],
  {},
  ["x"],
  { text: "x" },
  { text: 1 },
  { x: { text: "x" } },
];

test("the published schema and readRecord() accept and refuse the same, whatever stands wherever", () => {
  const differ: string[] = [];
  let accepted = 0;
  let refused = 0;
  for (const path of places(copy())) {
    for (const other of others) {
      // A hole in a list cannot be written in JSON.
      if (path.length === 0 || (other === undefined && typeof path.at(-1) === "number")) continue;
      const changed = JSON.parse(JSON.stringify(put(copy(), path, other)));
      const [schema, reader] = [accepts(changed), reads(changed)];
      if (schema !== reader) differ.push(`/${path.join("/")} = ${JSON.stringify(other)}: schema ${schema}`);
      if (schema) accepted++;
      else refused++;
    }
  }
  expect(differ).toEqual([]);
  expect(accepted).toBeGreaterThan(200);
  expect(refused).toBeGreaterThan(1000);
});

test("the published schema and readRecord() agree on any JSON under any known name", () => {
  const path = fc.constantFrom(...places(copy()).filter(({ length }) => length > 0));
  fc.assert(
    fc.property(path, fc.jsonValue({ maxDepth: 3 }), (where, value) => {
      const changed = put(copy(), where, value);
      expect(reads(changed)).toBe(accepts(JSON.parse(JSON.stringify(changed))));
    }),
    { numRuns: 300 },
  );
});
