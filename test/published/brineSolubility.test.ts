import { expect, test } from "vitest";
import { solubility } from "../../lib/physics/solubility.ts";

// Figures of other sources than the tables the function holds.
test.each([
  ["potassiumNitrate", 10, 21, "a school chemistry of about 1900 (read)"],
  ["potassiumNitrate", 100, 246, "a school chemistry of about 1900 (read)"],
  ["sodiumNitrate", 10, 81, "a school chemistry of about 1900 (read)"],
  ["sodiumNitrate", 100, 180, "a school chemistry of about 1900 (read)"],
  ["sodiumHydroxide", 20, 109.2, "Great Soviet Encyclopedia, 52.2 % at 20 °C (read)"],
  ["sodiumHydroxide", 80, 313.2, "Great Soviet Encyclopedia, 75.8 % at 80 °C (read)"],
  ["sodiumHydroxide", 20, 111, "a general encyclopedia, 1110 g/L (read)"],
] as const)("solubility of %s at %f °C is %f g per 100 g within 3 percent: %s", (salt, t, grams, _source) => {
  const found = solubility({ [salt]: 1 }, t + 273.15);
  expect(found.state).toBe("published");
  expect(Math.abs((found.state === "published" ? found.ratio * 100 : Number.NaN) / grams - 1)).toBeLessThan(0.03);
});
