import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { departedBoilingPoint, departedSaltRatio } from "../../../lib/physics/departedBoilingPoint.ts";
import { saltCurvePrior } from "../../../lib/physics/saltCurvePrior.ts";

const brine = { sodiumHydroxide: 0.9, sodiumNitrate: 0.4 };

test("departedBoilingPoint without departure is boilingPoint", () => {
  expect(departedBoilingPoint(brine, 9e4, { offset: 0, scale: 1 })).toBeCloseTo(boilingPoint(brine, 9e4), 10);
});

test("departedBoilingPoint moves by the offset alone at the pivot", () => {
  const pivot = boilingPoint(brine, 9e4);
  expect(departedBoilingPoint(brine, 9e4, { offset: -2, scale: 1.2, pivot })).toBeCloseTo(pivot - 2, 10);
});

test("departedSaltRatio undoes departedBoilingPoint", () => {
  const departure = { offset: saltCurvePrior.offset.value, scale: 1.07 };
  const T = departedBoilingPoint(brine, 9e4, departure);
  expect(departedSaltRatio(T, 9e4, brine, departure)).toBeCloseTo(1.3, 9);
});

test.each([
  [{ offset: Number.NaN, scale: 1 }, "invalid offset: NaN K"],
  [{ offset: 0, scale: 0 }, "invalid scale: 0; above 0"],
  [{ offset: 0, scale: 1, pivot: Number.NaN }, "invalid pivot: NaN K"],
])("departedBoilingPoint refuses %j", (departure, message) => {
  expect(() => departedBoilingPoint(brine, 9e4, departure)).toThrow(message);
});
