import fc from "fast-check";
import { expect, test } from "vitest";
import { standAlone } from "../../../lib/figure/standAlone.ts";
import type { HeatAmount, WhereHeatWentData } from "../../../lib/figure/types.ts";
import { whereHeatWent } from "../../../lib/figure/whereHeatWent.ts";
import { whereHeatWentFinding } from "../../../lib/figure/whereHeatWentFinding.ts";
import { badAttributes, clipped, overlaps, page, words } from "./figureSupport.ts";

/** International Table BTU in J (NIST SP 811, appendix B.8). */
const btu = 1055.05585262;
const heat = (value: number, up: number, down = up): HeatAmount => ({
  value: value * btu,
  low: (value - down) * btu,
  high: (value + up) * btu,
});
const invented: WhereHeatWentData = {
  start: 240,
  end: 2640,
  steam: heat(9300, 700),
  makeUpWater: heat(2700, 300),
  wallsAndTop: heat(900, 500),
  parts: heat(310, 60),
  bath: heat(420, 150),
  total: heat(13630, 800),
  fire: heat(36000, 2000),
};
const draw = (data: WhereHeatWentData, width = 1280, system: "US" | "metric" = "US") =>
  whereHeatWent(data, { document: page(), width, system });
const { fire: _fire, ...withoutFire } = invented;

const lengthOf = (root: Element, kind: string, side: "width" | "height" = "width"): number =>
  Number(root.querySelector(`[data-piece="${kind}"] [data-hatch] rect`)?.getAttribute(side));

test("whereHeatWent names every piece with its amount and spread, in BTU", () => {
  const said = words(draw(invented));
  for (const text of [
    "steam",
    "9,300 ±700 BTU",
    "make-up water",
    "2,700 ±300 BTU",
    "walls and top",
    "900 ±500 BTU",
    "parts",
    "310 ±60 BTU",
    "the bath itself",
    "420 ±150 BTU",
    "gas burnt 36,000 ±2,000 BTU",
  ])
    expect(said).toContain(text);
});

test("whereHeatWent gives the whole with the time and the mean", () => {
  // 13,630 BTU in 40 min are 20,445 BTU/h.
  expect(words(draw(invented))).toContain("into the bath 13,600 ±800 BTU in 40 min, a mean of 20,400 ±1,200 BTU/h");
});

test.each([
  [1280, "width"],
  [390, "height"],
] as const)("whereHeatWent cuts its bar to scale at %i px", (width, side) => {
  const root = draw(invented, width);
  // A saw's kerf of 2 px is taken from each piece.
  const steam = lengthOf(root, "steam", side) + 2;
  expect((lengthOf(root, "makeUpWater", side) + 2) / steam).toBeCloseTo(2700 / 9300, 2);
  expect((lengthOf(root, "wallsAndTop", side) + 2) / steam).toBeCloseTo(900 / 9300, 2);
});

test("whereHeatWent lines every piece differently, so that no colour is needed", () => {
  const hatches = [...draw(invented).querySelectorAll("[data-piece] [data-hatch]")].map((one) =>
    one.getAttribute("data-hatch"),
  );
  expect(hatches).toHaveLength(5);
  expect(new Set(hatches).size).toBe(5);
});

test("whereHeatWent says what went past the tank, as wide as gas and bath together allow", () => {
  // 36,000 less 13,630, ±(2,000 + 800).
  expect(words(draw(invented))).toContain("past the tank 22,000 ±3,000 BTU");
  const given = draw({ ...invented, pastTank: heat(22370, 1900) });
  expect(words(given).join("\n")).toMatch(/past the tank 22,\d00 ±1,900 BTU/);
});

test("whereHeatWent draws the gas to scale", () => {
  const gas = draw(invented).querySelector('[data-part="gas"]');
  const [into = 0, past = 0] = [...(gas?.querySelectorAll("[data-hatch] rect") ?? [])].map((one) =>
    Number(one.getAttribute("width")),
  );
  expect((into + 1) / (into + past + 2)).toBeCloseTo(13630 / 36000, 2);
});

test("whereHeatWent says that it cannot tell where a spread reaches nothing, and draws that piece open", () => {
  const root = draw({ ...withoutFire, wallsAndTop: heat(400, 600) });
  expect(words(root)).toEqual(expect.arrayContaining(["can't tell", "−200 to 1,000 BTU"]));
  expect(root.querySelector('[data-piece="wallsAndTop"] [data-hatch]')?.getAttribute("data-hatch")).toBe("open");
  const below = draw({ ...withoutFire, wallsAndTop: heat(-200, 600) });
  expect(words(below)).toContain("walls and top: can't tell, −800 to 400 BTU");
  expect(below.querySelector('[data-piece="wallsAndTop"]')).toBeNull();
  const bounded = draw({ ...withoutFire, parts: heat(0, 500, 0) });
  expect(words(bounded)).toContain("parts: can't tell, up to 500 BTU");
});

test("whereHeatWent says what gave heat back, and ends the whole short of the bar", () => {
  const root = draw({ ...withoutFire, bath: heat(-1500, 300), total: heat(11710, 800) });
  expect(words(root)).toContain("the bath itself gave back 1,500 ±300 BTU");
  const bar = 1280 - 2 * 96;
  const line = root.querySelector('[data-part="whole"] path:nth-of-type(3)')?.getAttribute("d") ?? "";
  expect(Number(/L([\d.]+)/.exec(line)?.[1])).toBeCloseTo(96 + (bar * 11710) / 13210, 0);
});

test("whereHeatWent tells none from not known", () => {
  const { wallsAndTop: _walls, ...rest } = withoutFire;
  const root = draw({ ...rest, parts: heat(0, 0), total: heat(12420, 800) });
  expect(words(root)).toEqual(expect.arrayContaining(["none: parts", "not known: walls and top"]));
  // A total that is more than what is known leaves a piece for what is not.
  const more = draw({ ...rest, total: heat(14000, 800) });
  expect(lengthOf(more, "rest")).toBeGreaterThan(20);
  expect(words(more)).toContain("not known");
});

test("whereHeatWent does not call unknown walls heat that went past the tank", () => {
  const { wallsAndTop: _walls, total: _total, ...rest } = invented;
  // 36,000 less 12,730, ±(2,000 + 1,210), and no half-width is shown a twentieth too narrow.
  expect(words(draw(rest)).join("\n")).toMatch(/past the tank or not known 23,000 ±4,000 BTU/);
});

test("whereHeatWent says so where the gas is less than what it heated", () => {
  const root = draw({ ...invented, fire: heat(9000, 1000) });
  expect(words(root)).toContain("gas burnt 9,000 ±1,000 BTU, less than went into the bath: one is wrong");
  expect(root.querySelector('[data-part="gas"]')).toBeNull();
  expect(root.getAttribute("aria-label")).toMatch(/Gas burnt 9,000 ±1,000 BTU, less than went into the bath/);
});

test("whereHeatWent without a total adds up its pieces, never too narrow", () => {
  const { total: _total, ...rest } = withoutFire;
  // 700 + 300 + 500 + 60 + 150 = 1,710.
  expect(words(draw(rest)).join("\n")).toMatch(/into the bath 13,600 ±1,700 BTU|into the bath 14,000 ±2,000 BTU/);
});

test("whereHeatWent shows MJ, or kJ for a small bath, and W", () => {
  const said = words(draw(invented, 1280, "metric")).join("\n");
  // 13,630 BTU are 14.38 MJ; in 2400 s a mean of 5992 W.
  expect(said).toMatch(/into the bath 14\.4 ±0\.9 MJ in 40 min, a mean of 6000 ±400 W/);
  expect(said).not.toMatch(/BTU/);
  const small = { start: 0, end: 600, steam: { value: 2e6, low: 1.8e6, high: 2.2e6 } };
  expect(words(draw(small, 1280, "metric"))).toContain("2000 ±200 kJ");
});

test("whereHeatWentFinding gives all shares, the gas and what ± means", () => {
  expect(whereHeatWentFinding({ ...invented, parts: heat(0, 0) }, { system: "US" })).toBe(
    "Where the heat went. Into the bath in 40 min: 13,600 ±800 BTU, a mean of 20,400 ±1,200 BTU/h. " +
      "Into steam 9,300 ±700 BTU; warming make-up water 2,700 ±300 BTU; walls and top 900 ±500 BTU; parts none; " +
      "warming the bath itself 420 ±150 BTU. Of 36,000 ±2,000 BTU of gas, 22,000 ±3,000 BTU went past the tank. " +
      "± is the 95 % spread.",
  );
});

test("whereHeatWent is one image whose label is its finding, in custom properties alone", () => {
  const root = draw(invented);
  expect(root.getAttribute("role")).toBe("img");
  expect(root.getAttribute("aria-label")).toBe(whereHeatWentFinding(invented, { system: "US" }));
  const paints = [...root.querySelectorAll("*")].flatMap((one) => [
    one.getAttribute("fill"),
    one.getAttribute("stroke"),
  ]);
  for (const paint of new Set(paints.filter((one) => one !== null && one !== "none")))
    expect(paint).toMatch(/^var\(--[a-z]+\)$/);
  expect(root.querySelectorAll("[id], style")).toHaveLength(0);
  expect(standAlone(draw(invented, 1200), { title: "Most went into steam" })).not.toContain("var(");
});

test.each([390, 600, 768, 1000, 1280, 1920])("whereHeatWent keeps texts apart and inside at %i px", (width) => {
  for (const data of [invented, withoutFire, { ...withoutFire, wallsAndTop: heat(400, 600) }]) {
    for (const system of ["US", "metric"] as const) {
      const root = draw(data, width, system);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
      const sizes = [...root.querySelectorAll("[font-size]")].map((one) => Number(one.getAttribute("font-size")));
      expect(Math.min(...sizes)).toBe(width < 600 ? 13 : 14);
    }
  }
});

test("whereHeatWent without any heat says so", () => {
  const root = draw({ start: 0, end: 0 });
  expect(words(root)).toContain("no heat to show yet");
  expect(root.getAttribute("aria-label")).toBe("Where the heat went. Not known yet.");
});

test.each([
  ["steam", { start: 0, end: 60, steam: { value: Number.NaN, low: 0, high: 1 } }],
  ["end", { start: 0, end: Number.POSITIVE_INFINITY }],
  ["total", { start: 0, end: 60, total: { value: 2, low: 3, high: 4 } }],
] as [string, WhereHeatWentData][])("whereHeatWent refuses a bad %s and names it", (name, data) => {
  expect(() => draw(data)).toThrow(RangeError);
  expect(() => draw(data)).toThrow(name);
});

const amount = fc
  .tuple(fc.integer({ min: -1e8, max: 1e8 }), fc.integer({ min: 0, max: 5e7 }))
  .map(([value, half]) => ({ value, low: value - half, high: value + half }));
const some = fc.oneof(amount, fc.constant({ value: 0, low: 0, high: 0 }));

test("whereHeatWent keeps texts apart and numbers whole, whatever the amounts", () => {
  fc.assert(
    fc.property(
      fc.record(
        {
          start: fc.constant(0),
          end: fc.integer({ min: 0, max: 20000 }),
          steam: some,
          makeUpWater: some,
          wallsAndTop: some,
          parts: some,
          bath: some,
          total: some,
          fire: some,
        },
        { requiredKeys: ["start", "end"] },
      ),
      fc.constantFrom(390, 768, 1280),
      fc.constantFrom("US" as const, "metric" as const),
      (data, width, system) => {
        const root = draw(data as WhereHeatWentData, width, system);
        expect(badAttributes(root)).toEqual([]);
        expect(overlaps(root)).toEqual([]);
        expect(clipped(root)).toEqual([]);
      },
    ),
    { numRuns: 300 },
  );
});
