import { expect, test } from "vitest";
import { caseMark } from "../../../lib/figure/caseMark.ts";

test("caseMark gives dot, square, triangle first, and twelve that differ in outline or filling", () => {
  const marks = Array.from({ length: 12 }, (_, index) => caseMark(index));
  expect(marks.slice(0, 3).map((mark) => mark.word)).toEqual(["dot", "square", "triangle"]);
  expect(new Set(marks.map((mark) => mark.word)).size).toBe(12);
  expect(new Set(marks.map((mark) => mark.path + mark.filled)).size).toBe(12);
});

test("caseMark comes round again after twelve", () => {
  expect(caseMark(14)).toEqual(caseMark(2));
});

test.each(Array.from({ length: 12 }, (_, index) => index))("mark %i stays within its radius and a half", (index) => {
  const { path } = caseMark(index, 10);
  const corners = [...path.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => Math.hypot(Number(x), Number(y)));
  expect(corners.length).toBeGreaterThan(0);
  expect(Math.max(...corners)).toBeLessThanOrEqual(15);
  expect(path).not.toMatch(/NaN|undefined/);
});

test.each([-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])("caseMark refuses %f", (index) => {
  expect(() => caseMark(index)).toThrow(`invalid case: ${index}; a whole number from 0`);
});
