import fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { cutTsv, tsvOf } from "../../../notebooks/page/grid/tsv.ts";

test("a block is copied with its cases, units, numbers and spreads", () => {
  const text = tsvOf(
    [
      {
        name: "gas for the run",
        unit: "lb",
        values: [
          { number: "9.4", spread: "±0.7" },
          { number: "1,830", spread: "+0.5/−1.5" },
        ],
      },
      {
        name: "late by",
        unit: "s",
        values: [
          { number: "−83", spread: "±16" },
          { number: "", spread: "" },
        ],
      },
    ],
    ["Small tank", "Longer tank"],
  );
  expect(text.split("\r\n")).toEqual([
    "line\tunit\tSmall tank\tSmall tank ± 95 %\tLonger tank\tLonger tank ± 95 %",
    "gas for the run\tlb\t9.4\t±0.7\t1830\tup 0.5/-1.5",
    "late by\ts\t-83\t±16\t\t",
  ]);
});

test.for(["=1+1", "+1+cmd", "-2 lb of it", "@SUM", '=HYPERLINK("x")'])(
  "%s is copied as text and read back as it was",
  (name) => {
    const text = tsvOf([{ name, unit: "lb", values: [{ number: name, spread: "", words: true }] }], [""]);
    const row = text.split("\r\n")[1] ?? "";
    for (const value of row.split("\t")) expect(value).not.toMatch(/^"?[=+@-]/u);
    expect(cutTsv(text)[1]).toEqual([name, "lb", name, ""]);
  },
);

test("text with tabs, breaks and quotes comes back whole", () => {
  const words = fc.string({ maxLength: 12 }).map((text) => text.replace(/\r/gu, "").trim());
  fc.assert(
    fc.property(fc.array(words, { minLength: 1, maxLength: 4 }), (texts) => {
      const safe = texts
        .map((text) => (text.startsWith("'") ? text.slice(1).trim() : text))
        .filter((text) => !text.startsWith("'"));
      const values = safe.map((number) => ({ number, spread: "", words: true }));
      const back = cutTsv(
        tsvOf(
          [{ name: "a", unit: "", values }],
          safe.map((_, index) => `case ${index}`),
        ),
      );
      expect(back[1]?.filter((_, at) => at >= 2 && at % 2 === 0)).toEqual(safe);
    }),
  );
});

// A second opinion on the cutting: another program's reader of separated text.
test("a block is cut as papaparse cuts it", () => {
  for (const text of [
    "a\tb\nc\td",
    'x\t"two\nrows"\t"he said ""so"""\r\n1\t\t3\r\n',
    "only",
    "a\t\t\n\tb",
    "1\t2\r\n\r\n3\t4",
  ]) {
    const other = Papa.parse<string[]>(text, { delimiter: "\t" }).data;
    while (other.length > 0 && other.at(-1)?.every((value) => value === "")) other.pop();
    expect(cutTsv(text)).toEqual(other);
  }
});
