import { expect, test } from "vitest";
import { differs, examplesOf, programOf } from "./examples.ts";

test.each<[given: unknown, gives: string]>([
  [373.1243, "373.12"],
  [373.1243, "about 373.12 K"],
  [-2.04, "−2.0"],
  ["a b", '"a b"'],
  [{ a: 1.004, b: "c", d: 3 }, '{ a: 1.00, b: "c" }'],
  [[1, 2], "[1, 2]"],
  [undefined, "undefined"],
  [101325, "101,325 Pa"],
  [1.5e-7, "1.5e-7"],
  [{ a: 0.23611, b: 1 }, "{ a: 0.2361..., ... }"],
  [0.23619, "0.2361..."],
  ["−1.5 °F", '"−1.5 °F"'],
  ["10\u00a0kg", '"10 kg"'],
  [[0, 5], "0, 5"],
  [["a", "b", "c"], '["a", "b", …]'],
  [{ a: {} }, "{ a: … }"],
  ["In the file: nothing", '"In the file…"'],
])("differs(%j, %j) finds nothing", (given, gives) => {
  expect(differs(given, gives)).toBe(undefined);
});

test.each<[given: unknown, gives: string]>([
  [373.13, "373.12"],
  [2, "-2"],
  ["a", '"b"'],
  [{ a: 1 }, "{ a: 1, b: 2 }"],
  [[1, 2, 3], "[1, 2]"],
  [null, "{ a: 1 }"],
  [Number.NaN, "1"],
  [1, "as one would think"],
])("differs(%j, %j) finds a difference", (given, gives) => {
  expect(differs(given, gives)).toBeTypeOf("string");
});

test("examplesOf(file, source) takes the example of each exported name", () => {
  const source = "/**\n * Doubles.\n * @example\n * double(2) // 4\n */\nexport function double(a: number) {}\n";
  expect(examplesOf("a.ts", source)).toEqual([
    { name: "double", file: "a.ts", line: 3, steps: [{ code: "double(2)", gives: "4" }] },
  ]);
});

test("programOf(steps) keeps what comes before an expression", () => {
  const program = programOf([{ code: "const a = 1;\nf(\n  a,\n);", gives: "2" }]);
  expect(program).toBe("const a = 1;;\nawait theExample(0, async () => (f(\n  a,\n)\n));");
});
