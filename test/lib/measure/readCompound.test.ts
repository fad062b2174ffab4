import { describe, expect, test } from "vitest";
import { given, openLines, worked } from "../../../lib/lines/index.ts";
import { findUnit, readCompound } from "../../../lib/measure/index.ts";

// 1 gal = 231 in³ = 0.003785411784 m³ and 1 lb/ft = 0.45359237 / 0.3048 kg/m, exact (NIST SP 811, appendix B).
const perGallon = 1 / 0.003785411784;
const lbPerFt = 0.45359237 / 0.3048;

describe("readCompound", () => {
  test.each([
    ["$4.20/gal", 4.2 * perGallon, 0],
    ["$ 4.20 per gal", 4.2 * perGallon, 0],
    ["4.20 $/gal", 4.2 * perGallon, 0],
    ["4.20 ± 0.05 $/gal", 4.2 * perGallon, (0.05 * perGallon) / 1.96],
    ["4.20 $/gal ± 0.05", 4.2 * perGallon, (0.05 * perGallon) / 1.96],
    ["1 1/2 lb/ft", 1.5 * lbPerFt, 1.5 * lbPerFt * 0.03],
    ["about 1.5 lb/ft", 1.5 * lbPerFt, 1.5 * lbPerFt * 0.15],
    ["1.5 lb/ft exactly", 1.5 * lbPerFt, 0],
    ["2 lb/ft ± 10 %", 2 * lbPerFt, (0.2 * lbPerFt) / 1.96],
  ])("%s", (text, si, u) => {
    const read = readCompound(text);
    expect(read?.si).toBeCloseTo(si, 8);
    expect(read?.standardUncertainty).toBeCloseTo(u, 4);
    expect(read?.text).toBe(text);
  });

  test.each(["", "rubbish", "$/gal", "6 lb/blade", "4 $/gal ± 1 lb", "1e400 lb/ft", "<img>"])("refuses %j", (text) => {
    expect(readCompound(text)).toBeUndefined();
  });

  test("takes its usual unit where none is written, and no other sort", () => {
    const usual = findUnit("$/gal");
    expect(readCompound("4.20", usual)?.unit).toBe("$/gal");
    expect(readCompound("1 $/l", usual)?.si).toBeCloseTo(1000, 9);
    expect(readCompound("5 lb", usual)).toBeUndefined();
  });
});

test("a price for each gallon keeps its unit in a line, however it is written", async () => {
  const lines = openLines({
    asks: "?",
    lines: {
      "gas price": given("$4.20/gal"),
      "in its unit": given("4.20", undefined, { unit: "$/gal" }),
      cost: worked("gas price * 2 gal", "$"),
      same: worked("gas price / in its unit"),
      wrong: given("5 lb", undefined, { unit: "$/gal" }),
      unknown: given("5 furlongs"),
    },
  });
  expect(await lines.value("cost")).toMatchObject({ text: "$8.40\u00a0exactly" });
  expect(await lines.value("same")).toMatchObject({ value: 1 });
  expect(await lines.value("wrong")).toMatchObject({
    stopped: expect.stringContaining("an amount in $/gal was expected"),
  });
  expect(await lines.value("unknown")).toMatchObject({
    stopped: expect.stringMatching(/furlongs.* is no unit known/u),
  });
});
