import { expect, test } from "vitest";
import { readLog } from "../../../lib/log/index.ts";
import type { Entry } from "../../../lib/log/types.ts";

const first = (text: string, kind: Entry["kind"]) => readLog(text).run.entries.find((entry) => entry.kind === kind);

// Exact definitions: NIST SP 811 (2008), app. B.8 and B.9: °F, lb, in, US fl oz = 29.5735295625 mL. Water by measure at
// 998.2 kg/m³ (Tanaka et al., Metrologia 38 (2001) 301, 20 °C: 998.207).
test.each([
  ["0:00 212 F", "reading", 373.15],
  ["0:00 284 °F", "reading", 413.15],
  ["0:00 144.5 C", "reading", 417.65],
  ["0:00 284 F\n1:00 24 fl oz", "addition", 24 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 24 oz", "addition", 24 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 1 cup", "addition", 8 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 1 pint", "addition", 16 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 1 qt", "addition", 32 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 0.1 gal", "addition", 12.8 * 29.5735295625e-6 * 998.2],
  ["0:00 284 F\n1:00 700 ml", "addition", 0.7e-3 * 998.2],
  ["0:00 284 F\n1:00 0.7 l", "addition", 0.7e-3 * 998.2],
  ["0:00 284 F\n1:00 +1.5 lb", "addition", 1.5 * 0.45359237],
  ["0:00 284 F\n1:00 0.7 kg water", "addition", 0.7],
  ["0:00 284 F\n1:00 added 1 lb salt", "salt in", 0.45359237],
  ["0:00 284 F\n1:00 cylinder 31.2 lb", "cylinder", 31.2 * 0.45359237],
  ["0:00 284 F\n1:00 depth 3 1/2 in", "depth", 3.5 * 0.0254],
  ["0:00 284 F\n1:00 burner to 3/4", "burner", 0.75],
  ["0:00 284 F\n1:00 fire to 70 %", "burner", 0.7],
] as const)("readLog(%j) gives a %s of %d in SI", (text, kind, si) => {
  expect(first(text, kind)?.quantity?.si).toBeCloseTo(si, 9);
});

test("readLog takes several hundred rows of one time in the order of the log", () => {
  const text = Array.from({ length: 300 }, (_, row) => `7:40 pm ${200 + row / 10} F`).join("\n");
  expect(readLog(text).run.entries.map(({ line }) => line)).toEqual(Array.from({ length: 300 }, (_, row) => row + 1));
});

test("readLog keeps the quantity as it was written", () => {
  expect(first("0:00;144,5 °C\n1:00;145,0 °C", "reading")?.quantity?.text).toBe("144,5 °C");
});

test("readLog takes what stands behind ± as the 95 % half-width", () => {
  expect(first("time,temp F\n0:00,284 ± 2\n1:00,285", "reading")?.quantity?.standardUncertainty).toBeCloseTo(
    2 / 1.8 / 1.96,
    3,
  );
});

test("readLog gives every entry an id of its own, the same each time", () => {
  const text = "7:40 284, boils, parts in\n7:40 284, boils, parts in\n7:41 3 cups";
  const ids = readLog(text).run.entries.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(readLog(text).run.entries.map(({ id }) => id)).toEqual(ids);
});

test("readLog keeps the ids of the rows before when a row is added below", () => {
  const text = "7:40 284 boils\n7:46 291 parts in\n";
  const more = readLog(`${text}7:51 3 cups\n`).run.entries.map(({ id }) => id);
  expect(more.slice(0, 4)).toEqual(readLog(text).run.entries.map(({ id }) => id));
});

test("readLog measures times from the earliest row", () => {
  expect(readLog("5:00 284 F\n2:00 285 F").run.entries.map(({ time }) => time)).toEqual([0, 180]);
});

test("readLog refuses what is no string", () => {
  // @ts-expect-error a file that was not decoded
  expect(() => readLog(new Uint8Array(3))).toThrow("invalid log: object; a string is needed");
});

test.each([
  ["a spreadsheet's file", "PK\u0003\u0004\u0014\0\u0006\0"],
  ["a PDF", "%PDF-1.7 …"],
  ["a word processor's file", "{\\rtf1\\ansi"],
  ["a picture", "\ufffdPNG\r\n"],
  ["bytes", "\u0001\u0002\ufffd\ufffd\u0003\ufffd\u0006\ufffd\ufffd\u0001\u0002\ufffd\ufffd\u0003\ufffd\u0006\ufffd"],
])("readLog of %s gives a problem that says what to do and no entries", (_, text) => {
  const { run, problems } = readLog(text);
  expect(run.entries).toEqual([]);
  expect(problems[0]?.remedy).toContain("paste");
});

test("readLog says which line each problem is on, beyond quoted line breaks", () => {
  const { problems } = readLog('time,temp F,notes\n0:00,284,"two\nlines"\n5:00,hot,\n');
  expect(problems).toEqual([expect.objectContaining({ line: 4, read: "hot" })]);
});

test("readLog says of a row too long how much of it was read", () => {
  const { problems } = readLog(`0:00 284 F\n1:00 285 F ${"x".repeat(30_000)}`);
  expect(problems).toEqual([expect.objectContaining({ line: 2, remedy: expect.stringContaining("20000") })]);
});

test("readLog skips none of a logger's 100,000 rows", () => {
  const row = (second: number) => `${second},${(284 + Math.sin(second / 600) * 4).toFixed(2)}`;
  const text = `seconds,bath °F\n${Array.from({ length: 100_000 }, (_, second) => row(second)).join("\n")}`;
  const { run, problems, questions } = readLog(text);
  expect(run.entries.length).toBe(100_000);
  expect(run.entries.every(({ kind, time }, second) => kind === "reading" && time === second)).toBe(true);
  expect([problems, questions]).toEqual([[], []]);
});

test("readLog says so where a logger's column without a heading is left out", () => {
  const text = Array.from({ length: 3000 }, (_, second) => `${second},284.5,21`).join("\n");
  const { run, problems } = readLog(text);
  expect(run.entries.every(({ kind }) => kind === "reading")).toBe(true);
  expect(problems).toEqual([
    expect.objectContaining({ read: "column 3", remedy: expect.stringContaining("left out") }),
  ]);
});

test.each([
  ["one long word", "x".repeat(1e6)],
  ["one long number", `7:40 ${"1".repeat(1e6)}`],
  ["commas", "a,".repeat(5e5)],
  ["quotes", '"'.repeat(1e6)],
  ["open quotes", `time,temp\n${'"1,'.repeat(3e5)}`],
  ["rows of open quotes", '"7:40\n'.repeat(1e5)],
  ["tags", "<td>".repeat(2e5)],
  ["open tags", "<".repeat(1e6)],
  ["numbers", "1 ".repeat(5e5)],
  ["empty lines", "\n".repeat(1e6)],
  ["strokes", "~~".repeat(5e5)],
  ["bars", "|".repeat(1e6)],
  ["feeds", "7:40 drip on 5 fl oz/min\n".repeat(2e4)],
])("readLog of a million characters of %s is done in 5 s", (_, text) => {
  const began = performance.now();
  readLog(text);
  expect(performance.now() - began).toBeLessThan(5000);
});
