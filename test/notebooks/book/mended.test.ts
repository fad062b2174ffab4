import fc from "fast-check";
import { expect, test } from "vitest";
import { type Line, openLines } from "../../../lib/lines/index.ts";
import { keyed, type NotebookData } from "../../../lib/record/index.ts";
import { mended } from "../../../notebooks/page/book/mended.ts";

const given = (text: string): Line => ({ kind: "given", text });
const book = (lines: Record<string, Line>, rest: Partial<NotebookData> = {}): NotebookData => ({
  asks: "?",
  lines,
  ...rest,
});

test("a good notebook is opened as it is", () => {
  const data = book({ salt: given("1 lb"), twice: { kind: "worked", formula: "salt * 2" } });
  expect(mended(data)).toEqual({ book: { asks: "?", lines: data.lines }, says: [] });
});

test("two tabs that each added a line of one name: both lines are there, and the page says so", () => {
  const { book: opened, says } = mended(book({ salt: given("1 lb"), Salt: given("2 lb") }));
  expect(Object.entries(opened.lines)).toEqual([
    ["salt", given("1 lb")],
    ["renamed line", given("2 lb")],
  ]);
  expect(says.join()).toContain("the name of another line");
});

test.each(["min", "2 tanks", "", "a {b}", "<img src=x>", "salt-water", "x".repeat(200)])(
  "a line called %j is called otherwise and kept",
  (name) => {
    const { book: opened, says } = mended(book({ salt: given("1 lb"), water: given("1 gal"), [name]: given("9 lb") }));
    expect(Object.values(opened.lines)).toContainEqual(given("9 lb"));
    expect(says).toHaveLength(1);
    expect(() => openLines(opened).close()).not.toThrow();
  },
);

test("cases come in their order; what no given can take is left out", () => {
  const { book: opened } = mended(
    book(
      { salt: given("1 lb"), twice: { kind: "worked", formula: "salt * 2" } },
      {
        cases: {
          b: { salt: "2 lb", gone: "3 lb", twice: "4 lb" },
          a: { salt: { text: "5 lb", sameAs: "nowhere" } },
          B: {},
        },
        caseOrder: ["a", "b"],
        base: "nowhere",
      },
    ),
  );
  expect(Object.entries(opened.cases ?? {}).map(([name, own]) => [name, { ...own }])).toEqual([
    ["a", { salt: { text: "5 lb" } }],
    ["b", { salt: "2 lb" }],
  ]);
  expect(opened.base).toBe(undefined);
});

test("an amount that no text made, and a kind that nobody knows, do not stop a notebook", async () => {
  const strange = {
    kind: "given",
    text: "2 lb",
    takes: "secrets",
    value: { value: 1, components: {} },
  } as unknown as Line;
  const lines = openLines(mended(book({ salt: strange })).book);
  expect(await lines.value("salt")).toMatchObject({ value: 2 * 0.45359237 });
  lines.close();
});

test("whatever a stranger wrote by the schema can be opened, and nothing of it is run", () => {
  const name = fc.oneof(fc.string(), fc.constantFrom("__proto__", "constructor", "toString", "salt", "Salt", "min"));
  const line: fc.Arbitrary<Line> = fc.oneof(
    fc.record({
      kind: fc.constant("given" as const),
      text: fc.string(),
      takes: fc.oneof(fc.string(), fc.constant("mass")),
    }),
    fc.record({
      kind: fc.constant("worked" as const),
      formula: fc.oneof(fc.string(), fc.constant("constructor.constructor('return 1')()"), fc.constant("salt * 2")),
    }),
  );
  const own = fc.array(fc.tuple(name, fc.string()), { maxLength: 3 }).map(keyed);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(name, line), { maxLength: 6 }).map(keyed),
      fc.array(fc.tuple(name, own), { maxLength: 3 }).map(keyed),
      fc.array(name, { maxLength: 3 }),
      (lines, cases, caseOrder) => {
        const { book: opened } = mended({ asks: "?", lines, cases, caseOrder });
        expect(Object.keys(opened.lines)).toHaveLength(Object.keys(lines).length);
        const open = openLines(opened);
        expect(open.names()).toHaveLength(Object.keys(lines).length);
        open.close();
      },
    ),
    { numRuns: 200 },
  );
});

test("a thousand lines, one of them under a name that none can have, are mended soon", () => {
  const lines: Record<string, Line> = {};
  for (let i = 0; i < 999; i++)
    lines[`line ${i}`] = i === 0 ? given("5 lb") : { kind: "worked", formula: `line ${i - 1} * 2` };
  lines.min = given("3");
  const { book: opened, says } = mended(book(lines));
  // The test's own time-out is the guard: work without bounds would not end.
  expect(says).toEqual([expect.stringContaining("“min” is called “renamed line” here: its name is a unit")]);
  expect(Object.keys(opened.lines)).toHaveLength(1000);
});
