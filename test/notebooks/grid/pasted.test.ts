import { expect, test } from "vitest";
import { given, type Line, notebook, openLines, readGiven, worked } from "../../../lib/lines/index.ts";
import { givenShown } from "../../../notebooks/page/grid/givenShown.ts";
import { type PasteTarget, pasted } from "../../../notebooks/page/grid/pasted.ts";
import { pasteWords } from "../../../notebooks/page/grid/pasteWords.ts";

const lines: Readonly<Record<string, Line>> = {
  "tank length": given("24 in", "measured", { unit: "in" }),
  "salt in the bath": given("24 lb", "weighed", { unit: "lb" }),
  "boiling point": given("291 °F", "measured", { unit: "°F" }),
  burners: given("one ring", undefined, { takes: "words", choices: ["one ring", "two rings"] }),
  "what to remember": given("", undefined, { takes: "words" }),
  twice: worked("2 * tank length", "in"),
  blades: given("6", undefined, { exact: true }),
};
const cases = ["Small tank", "Longer tank"];

function target(from = { line: "tank length", inCase: "Small tank" }): PasteTarget {
  const open = openLines(
    notebook({ asks: "?", lines, cases: { "Small tank": {}, "Longer tank": { "tank length": "42 in" } } }),
  );
  const lineOf = (name: string) => open.line(name);
  const unit = (line: string) => open.line(line).unit ?? "";
  return {
    lines: Object.keys(lines),
    cases,
    from,
    line: lineOf,
    text: ({ line, inCase }) => open.text(line, inCase),
    unit: ({ line }) => unit(line),
    shown: ({ line, inCase }) => {
      const one = open.line(line);
      const text = open.text(line, inCase);
      const number =
        one.kind === "given" ? givenShown(one, text, readGiven(line, { ...one, text }), unit(line)).text : "48";
      return { number, spread: "±0.12" };
    },
    read: (name, line, text) => readGiven(name, { ...line, text }),
  };
}

const takes = (text: string, from?: Parameters<typeof target>[0]) =>
  pasted(text, target(from)).takes.map(({ line, inCase, text: one }) => `${line}, ${inCase}: ${one}`);

test("a bare block goes on from where the hand is, in the lines' units", () => {
  expect(takes("30\t36\n26")).toEqual([
    "tank length, Small tank: 30 in",
    "tank length, Longer tank: 36 in",
    "salt in the bath, Small tank: 26 lb",
  ]);
});

test("lines and cases are found by their names, whatever the order", () => {
  expect(
    takes("line\tunit\tLonger tank\tSmall tank\r\nSalt in the bath\tkg\t12\t11\r\ntank length\tcm\t100\t"),
  ).toEqual([
    "salt in the bath, Longer tank: 12 kg",
    "salt in the bath, Small tank: 11 kg",
    "tank length, Longer tank: 100 cm",
  ]);
});

test("names without a heading are enough, with a unit column or without", () => {
  expect(takes("salt in the bath\tkg\t12\ntank length\tft\t3")).toEqual([
    "salt in the bath, Small tank: 12 kg",
    "tank length, Small tank: 3 ft",
  ]);
  expect(takes("tank length\t3 ft\t40")).toEqual(["tank length, Small tank: 3 ft", "tank length, Longer tank: 40 in"]);
});

test("a heading names a case's unit", () => {
  expect(takes("line\tSmall tank (cm)\tLonger tank [ft]\ntank length\t61\t3")).toEqual([
    "tank length, Small tank: 61 cm",
    "tank length, Longer tank: 3 ft",
  ]);
});

test("another spread is taken with its value, the one that stands there is not", () => {
  expect(takes("line\tunit\tSmall tank\tSmall tank ± 95 %\ntank length\tin\t24\t±0.5")).toEqual([
    "tank length, Small tank: 24 in ± 0.5 in",
  ]);
  const same = pasted("line\tunit\tSmall tank\tSmall tank ± 95 %\ntank length\tin\t24\t±0.12", target());
  expect(same).toEqual({ takes: [], refused: [], same: 1 });
});

test("what does not fit is refused by itself, with where, what was expected and what to do", () => {
  const { takes: taken, refused } = pasted(
    "line\tunit\tSmall tank\tNo such case\ntank length\tlb\t30\t3\nboiling point\t\t-600\t\ntwice\tin\t99\t\nno such line\tin\t1\t\nsalt in the bath\tlb\t25\t",
    target(),
  );
  expect(taken.map(({ text }) => text)).toEqual(["25 lb"]);
  expect(refused.map(({ where }) => where)).toEqual([
    "tank length, Small tank",
    "tank length, No such case",
    "boiling point, Small tank",
    "twice, Small tank",
    "no such line",
  ]);
  for (const { read, expected, remedy } of refused) {
    expect(read).not.toBe("");
    expect(expected).not.toBe("");
    expect(remedy).not.toBe("");
  }
  expect(refused[0]?.expected).toMatch(/a length.* was expected/u);
  expect(refused[3]?.expected).toContain("worked by a formula");
  const words = pasteWords(pasted("tank length\tten miles of it", target()));
  expect(words).toMatch(/^Nothing was changed; 1 left out\. tank length, Small tank: /u);
});

test.for(["=1+1", "+cmd|' /C calc'!A0", "@SUM(1)", '=HYPERLINK("http://x")', "-1+1"])(
  "%s is data: refused for an amount, kept as words where words go",
  (text) => {
    const amount = pasted(text, target());
    expect(amount.takes).toEqual([]);
    expect(amount.refused).toHaveLength(1);
    const quoted = text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
    expect(takes(quoted, { line: "what to remember", inCase: "Small tank" })).toEqual([
      `what to remember, Small tank: ${text}`,
    ]);
  },
);

test("a word of a few is taken as it is and any other refused", () => {
  const from = { line: "burners", inCase: "Small tank" };
  expect(takes("two rings\tone ring", from)).toEqual(["burners, Small tank: two rings"]);
  expect(pasted("nine rings", target(from)).refused[0]?.expected).toContain("none of the choices");
});

test("what reaches beyond the last line or case is said", () => {
  const { refused } = pasted("1\t2\t3", target({ line: "twice", inCase: "Longer tank" }));
  expect(refused.map(({ where }) => where)).toEqual([
    "twice, Longer tank",
    "twice, beyond the last case",
    "twice, beyond the last case",
  ]);
  expect(pasted("a\nb", target({ line: "blades", inCase: "Small tank" })).refused[1]?.where).toBe(
    "below the last line",
  );
});

test("a flood of rows ends", () => {
  const began = performance.now();
  const { refused } = pasted("tank length\t1 parsec\n".repeat(200_000), target());
  expect(refused[0]?.where).toContain("beyond 5000 rows");
  expect(performance.now() - began).toBeLessThan(10_000);
});

test("a line that takes any sort keeps the sort it has: a wrong unit makes no weight of a count", () => {
  const { takes: taken, refused } = pasted("line\tunit\tSmall tank\nblades\tlb\t4", target());
  expect(taken).toEqual([]);
  expect(refused).toMatchObject([
    { where: "blades, Small tank", read: "4 lb", expected: "a plain number, as it is now" },
  ]);
  expect(takes("line\tSmall tank\nblades\t4")).toEqual(["blades, Small tank: 4"]);
});

test("what is refused alike at one place is said once", () => {
  const words = pasteWords(pasted(`30\t36${"\t7".repeat(50)}`, target()));
  expect(words).toMatch(/2 values taken; 50 left out\. tank length, beyond the last case: "7" and 49 more: /u);
  expect(words.split("beyond the last case")).toHaveLength(2);
});
