import fc from "fast-check";
import { expect, test } from "vitest";
import { readLog } from "../../../lib/log/index.ts";

const ordinary = [
  "7:40 pm 284 boils\n7:46 291 parts in\n7:51 3 cups\n7:53 289\n8:10 end\n",
  'Time,Temp (°C),Water (ml),Notes\n0:00,138,,start\n5:00,"141,5",200,"two\nlines"\n10:00,144,,parts in\n',
  "time;bath °C;water l\n0;138,5;\n1,5;139;0,25\n12,5;144,25;1,5\n",
  "Date\tTime\tBath F\tdepth in\n11/9/2026\t7:40 PM\t284\t3 1/2\n11/9/2026\t7:46 PM\t286\t3\n",
  "<table><tr><td>0:00</td><td>284 F</td></tr><tr><td>5:00</td><td><s>391</s></td></tr></table>",
];

const word = fc.constantFrom(
  "time",
  "7:40",
  "pm",
  "291",
  "°F",
  "C",
  ",",
  ";",
  "\t",
  "|",
  "\n",
  "\r",
  '"',
  "~~",
  "x ",
  "-",
);
const more = fc.constantFrom(
  "3 cups",
  "½",
  "1 1/2",
  "oz",
  "+24",
  "parts in",
  "burner",
  "depth",
  "jug",
  "drip on 5 oz/min",
  "@",
  "11/9/2026",
  "2026-11-09T",
  "0:30",
  "__proto__",
  "NaN",
  "1e999",
  "\0",
  "<td>",
  "#",
);
const scraps = fc
  .array(fc.oneof(word, more, fc.string({ unit: "binary", maxLength: 4 })), { maxLength: 60 })
  .map((parts) => parts.join(" "));
const pasted = fc.array(fc.oneof(word, more), { maxLength: 60 }).map((parts) => parts.join(""));
const mutilated = fc
  .tuple(
    fc.constantFrom(...ordinary),
    fc.nat(300),
    fc.nat(40),
    fc.oneof(fc.string({ unit: "binary", maxLength: 6 }), word, more),
  )
  .map(([text, at, length, put]) => text.slice(0, at) + put + text.slice(at + length));
const anything = fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), scraps, pasted, mutilated);

test("readLog of any text gives entries in time order with sound numbers, and problems worded in full", () => {
  fc.assert(
    fc.property(anything, (text) => {
      const { run, problems, questions } = readLog(text);
      const lines = text.split(/\r\n?|[\n\u2028\u2029\u0085\v\f]/).length;
      let before = 0;
      for (const { time, quantity, line, duration = 1 } of run.entries) {
        expect(time).toBeGreaterThanOrEqual(before);
        expect(line).toBeGreaterThanOrEqual(1);
        expect(line).toBeLessThanOrEqual(lines);
        expect(duration).toBeGreaterThan(0);
        if (quantity) expect([quantity.si, quantity.standardUncertainty].every(Number.isFinite)).toBe(true);
        before = time;
      }
      expect(new Set(run.entries.map(({ id }) => id)).size).toBe(run.entries.length);
      for (const { line, read, expected, remedy } of problems) {
        expect(line).toBeGreaterThanOrEqual(1);
        expect([read, expected, remedy].filter((words) => words.trim() === "")).toEqual([]);
      }
      for (const { taken, answers, asks } of questions) {
        expect(answers.map(({ answer }) => answer)).toContain(taken);
        expect(asks).not.toBe("");
      }
    }),
    { numRuns: 3000 },
  );
});

test("readLog of any text answers any of its questions in any way it offers", () => {
  fc.assert(
    fc.property(anything, fc.nat(), (text, pick) => {
      for (const { id, answers } of readLog(text).questions) {
        const answer = answers[pick % answers.length]?.answer ?? "";
        const { questions } = readLog(text, { [id]: answer });
        expect(questions.map((question) => question.id)).not.toContain(id);
      }
    }),
    { numRuns: 500 },
  );
});

test("readLog loses no number of a mutilated log: it is in an entry, a problem or a heading", () => {
  const rows = fc.array(
    fc.tuple(fc.integer({ min: 240, max: 310 }), fc.constantFrom("", "8", "x", "lots", "-3", "1/2", "n.b.", "7 cats")),
    { minLength: 2, maxLength: 12 },
  );
  fc.assert(
    fc.property(rows, (list) => {
      const text = `min,temp F,water fl oz\n${list.map(([temp, water], row) => `${row},${temp},${water}`).join("\n")}`;
      const { run, problems } = readLog(text);
      list.forEach(([temp, water], row) => {
        const said = run.entries
          .filter(({ line }) => line === row + 2)
          .map(({ quantity, text: words }) => quantity?.text ?? words);
        expect(said).toContain(String(temp));
        if (water !== "" && !/^[\d/]+$/.test(water)) {
          expect(said.join(" ")).toContain(water);
          expect(problems.some(({ line }) => line === row + 2)).toBe(true);
        } else if (water !== "") expect(said.length).toBe(2);
      });
    }),
    { numRuns: 300 },
  );
});
