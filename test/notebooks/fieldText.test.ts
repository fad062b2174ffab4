import fc from "fast-check";
import { expect, test } from "vitest";
import { cutField, joinField } from "../../notebooks/page/fieldText.ts";

test.each([
  ["24 lb", "24", "lb"],
  ["3 1/2 gal", "3 1/2", "gal"],
  ["3½ gal", "3½", "gal"],
  ["2,300 ft", "2,300", "ft"],
  ["−1.5 °F", "−1.5", "°F"],
  ["65-75 %", "65-75", "%"],
  ["2 gal 1 qt", "2 gal 1 qt", ""],
  ["24 lb ± 0.5 lb", "24 lb ± 0.5 lb", ""],
  ["type K", "type K", ""],
  ["", "", ""],
])("cutField(%j) is %j and %j", (text, number, unit) => {
  expect(cutField(text)).toEqual({ number, unit });
});

test.each([
  ["25", "lb", "25 lb"],
  ["25 kg", "lb", "25 kg"],
  ["3 1/2", "gal", "3 1/2 gal"],
  ["", "lb", ""],
  ["about 3", "gal", "about 3"],
])("joinField(%j, %j) is %j", (typed, unit, text) => {
  expect(joinField(typed, unit)).toBe(text);
});

test("cutField and joinField are inverse for a number with its unit", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 9999 }), fc.constantFrom("lb", "fl oz", "°F", "inHg", "%"), (n, unit) => {
      const { number, unit: cut } = cutField(`${n} ${unit}`);
      expect(joinField(number, cut)).toBe(`${n} ${unit}`);
    }),
  );
});
