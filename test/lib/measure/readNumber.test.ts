import { expect, test } from "vitest";
import { readNumber } from "../../../lib/measure/index.ts";

const numbers: readonly (readonly [text: string, plain: number, decimalComma: number])[] = [
  ["24", 24, 24],
  ["0", 0, 0],
  ["007", 7, 7],
  [".5", 0.5, 0.5],
  [",5", 0.5, 0.5],
  ["5.", 5, 5],
  ["1.5", 1.5, 1.5],
  ["1,5", 1.5, 1.5],
  ["1,25", 1.25, 1.25],
  ["1,2345", 1.2345, 1.2345],
  ["1,234", 1234, 1.234],
  ["1.234", 1.234, 1234],
  ["0,234", 0.234, 0.234],
  ["0.234", 0.234, 0.234],
  ["1234,567", 1234.567, 1234.567],
  ["1,234.5", 1234.5, 1234.5],
  ["1.234,5", 1234.5, 1234.5],
  ["1,234,567", 1234567, 1234567],
  ["1.234.567", 1234567, 1234567],
  ["1,234,567.8", 1234567.8, 1234567.8],
  ["1 234", 1234, 1234],
  ["1\u202f234.5", 1234.5, 1234.5],
  ["1\u2009234\u2009567,8", 1234567.8, 1234567.8],
  ["-4", -4, -4],
  ["\u22124", -4, -4],
  ["\u20134", -4, -4],
  ["− 4", -4, -4],
  ["+4", 4, 4],
  ["3 1/2", 3.5, 3.5],
  ["3-1/2", 3.5, 3.5],
  ["-3 1/2", -3.5, -3.5],
  ["3½", 3.5, 3.5],
  ["⅞", 0.875, 0.875],
  ["3⁄16", 0.1875, 0.1875],
  ["11/16", 0.6875, 0.6875],
  ["1e-3", 0.001, 0.001],
  ["1E3", 1000, 1000],
  ["1,5e2", 150, 150],
  ["1e\u22123", 0.001, 0.001],
];

test.each(numbers)("readNumber(%j) is %d, and %d with decimalComma", (text, plain, decimalComma) => {
  expect(readNumber(text)?.number).toBeCloseTo(plain, 12);
  expect(readNumber(text)?.end).toBe(text.length);
  expect(readNumber(text, { decimalComma: true })?.number).toBeCloseTo(decimalComma, 12);
});

test.each(["1,23,4", "1.23.4", "1,234.5,6", "12,34.5", "1234 567", "0/0", "1,2,3"])(
  "readNumber(%j) is no number that can be used",
  (text) => {
    expect(readNumber(text)?.number).toBeNaN();
  },
);

test.each(["", "lb", "-", "e3", "½½".slice(2), "±2", "NaN", "Infinity"])("readNumber(%j) is undefined", (text) => {
  expect(readNumber(text)).toBeUndefined();
});

test("readNumber stops where the number stops", () => {
  expect(readNumber("3 1/2 gal")).toEqual({ number: 3.5, end: 5, fraction: true });
  expect(readNumber("24lb")).toEqual({ number: 24, end: 2, fraction: false });
  expect(readNumber("2e lb")?.end).toBe(1);
  expect(readNumber("7 lb 250 g")?.end).toBe(1);
});
