import { afterEach, expect, test } from "vitest";
import { given, type Lines, notebook, openLines, type Trial, worked } from "../../lib/lines/index.ts";
import { vocabulary } from "../../notebooks/vocabulary.ts";

// A bath as a maker would work it, by slopes and by drawing. The two are ways of working one model: where a line is
// nearly straight they must agree, and where a given is hardly known they must not.

let open: Lines | undefined;
afterEach(() => open?.close());

function bath(water: string, salt = "24 lb ± 0.2 lb"): Lines {
  open = openLines(
    notebook({
      asks: "Where does it boil?",
      lines: {
        salt: given(salt, "weighed", { takes: "mass", unit: "lb" }),
        "water in the tank": given(water, "measured", { takes: "water", unit: "gal" }),
        "salt to water": worked("salt / water in the tank", "lb/gal"),
        "air pressure": given("29.9 ± 0.2 inHg", "measured", { takes: "pressure", unit: "inHg" }),
        "boils at": worked("boiling point of bath(salt to water, air pressure, 70 %)", "°F"),
        "plain water boils at": worked("boiling point of water(air pressure)", "°F"),
        rise: worked("boils at - plain water boils at", "°F"),
      },
    }),
    { vocabulary },
  );
  return open;
}

async function tried(lines: Lines, name: string): Promise<Trial> {
  const found = await lines.trial(name, undefined, { draws: 10_000, seconds: 1000 });
  if ("stopped" in found) throw new Error(found.stopped);
  return found;
}

test("with salt and water well known, slopes and draws say the same", async () => {
  const lines = bath("2 gal ± 0.02 gal");
  for (const name of ["salt to water", "plain water boils at", "boils at", "rise"]) {
    const found = await tried(lines, name);
    const wide = found.linear95[1] - found.linear95[0];
    // Within a twentieth of the half-width, which is as close as a ± is shown.
    for (const end of [0, 1] as const)
      expect(Math.abs(found.trial95[end] - found.linear95[end]), name).toBeLessThan(wide / 40);
    expect(found.without).toBe(0);
  }
}, 60_000);

test("a quotient has the quantiles of its closed form", async () => {
  const found = await tried(bath("2 gal ± 0.8 gal", "24 lb exactly"), "salt to water");
  // 24 lb over a normal amount of water: the ends are 24/2.8 and 24/1.2 lb/gal, by monotony; the slopes' 12 ± 4.8.
  const unit = 0.45359237 / 3.785411784;
  const water = found.value.value / ((found.median / unit) * unit);
  expect(water).toBeGreaterThan(1);
  const ratio = found.trial95[1] / found.trial95[0];
  expect(Math.abs(ratio - 2.8 / 1.2)).toBeLessThan(0.1);
  expect(found.goodEnough).toBe(false);
  expect(await open?.isStraight("salt to water")).toBe(false);
});

test("with the water hardly known, slopes fail, and the trial says what to take", async () => {
  const lines = bath("2 gal ± 0.7 gal");
  const found = await tried(lines, "boils at");
  expect(found.goodEnough).toBe(false);
  expect(found.says).toMatch(/not good enough here.*°F/u);
  expect(found.value.interval95).toEqual(found.trial95);
  expect(await lines.isStraight("boils at")).toBe(false);
}, 60_000);
