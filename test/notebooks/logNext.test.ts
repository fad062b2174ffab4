import { expect, test } from "vitest";
import { gainSaid } from "../../notebooks/logNext.ts";

const one = (boilOff: [number, number], water: [number, number]) => ({
  what: "Weigh one full cup",
  how: "",
  boilOff: { now: boilOff[0], after: boilOff[1] },
  waterToTarget: { now: water[0], after: water[1] },
  gain: 0.3,
});

test("a gain is said of the answer that it narrows most", () => {
  expect(gainSaid(one([0.11, 0.08], [1, 0.99]), "US")).toBe("Would narrow the boil-off from ±11\u00a0% to ±8\u00a0%.");
});

test("a gain in water is said in fluid ounces or millilitres", () => {
  // 1 US fl oz of water is 29.5735 ml (NIST Handbook 44) at 0.998 kg/l: 0.591 kg are 20 fl oz, 0.354 kg 12.
  const said = gainSaid(one([0.11, 0.1095], [0.591, 0.354]), "US");
  expect(said).toBe("Would narrow the water to come back to target from ±20\u00a0fl oz to ±12\u00a0fl oz.");
  expect(gainSaid(one([0.11, 0.1095], [0.998, 0.499]), "metric")).toContain("±1000\u00a0ml to ±500\u00a0ml");
});

test("both answers are named where both get narrower, and small gains show their decimals", () => {
  const said = gainSaid(one([0.102, 0.098], [0.6, 0.3]), "US");
  expect(said).toContain("water to come back");
  expect(gainSaid(one([0.102, 0.098], [0.6, 0.6]), "US")).toContain("from ±10.2\u00a0% to ±9.8\u00a0%");
  expect(gainSaid(one([0.2, 0.1], [0.6, 0.3]), "US")).toMatch(/boil-off .*, and the water to come back/);
});
