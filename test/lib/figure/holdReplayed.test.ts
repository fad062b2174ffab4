import fc from "fast-check";
import { expect, test } from "vitest";
import { holdReplayed } from "../../../lib/figure/holdReplayed.ts";
import type { HoldReplayedData } from "../../../lib/figure/types.ts";
import {
  badAttributes,
  clipped,
  fahrenheit,
  fluidOunce,
  inventedHold,
  overlaps,
  page,
  words,
} from "./figureSupport.ts";

const draw = (data: HoldReplayedData, width = 1280, system: "US" | "metric" = "US") =>
  holdReplayed(data, { document: page(), width, system });

const nothing: HoldReplayedData = { readings: [], additions: [], events: [] };

test("holdReplayed draws every reading, ring, pour and word of the fire", () => {
  const root = draw(inventedHold());
  expect(root.querySelectorAll('[data-mark="dot"] circle')).toHaveLength(32);
  expect(root.querySelectorAll('[data-state="struck out"]')).toHaveLength(1);
  expect(root.querySelectorAll('rect[data-mark="water"]')).toHaveLength(6);
  expect(root.querySelectorAll('line[data-mark="event"]')).toHaveLength(2);
});

test("holdReplayed says limits, time in the band, stretches out of it, the ring's reason and the water", () => {
  const said = words(draw(inventedHold()));
  for (const text of [
    "286",
    "292",
    "286–292 °F",
    "in the band 34 of 40 min",
    "6 min over",
    "279 °F at 12:48, struck out: probe out of the bath",
    "130 fl oz in six pours",
    "minutes from parts in",
    "down to ¾",
  ]) {
    expect(said).toContain(text);
  }
});

test("holdReplayed runs the strip from edge to edge between the target's limits", () => {
  const root = draw(inventedHold(), 900);
  const strip = root.querySelector('[data-part="strip"]');
  expect(strip?.getAttribute("x")).toBe("0");
  expect(strip?.getAttribute("width")).toBe("900");
});

test("holdReplayed hangs water to heights in proportion to the pours", () => {
  const heights = [...draw(inventedHold()).querySelectorAll('rect[data-mark="water"]')].map((bar) =>
    Number(bar.getAttribute("height")),
  );
  const [first = 0, , , , fifth = 0, sixth = 0] = heights;
  expect(first / fifth).toBeCloseTo(20 / 36, 2);
  expect(sixth / fifth).toBeCloseTo(14 / 36, 2);
});

test("holdReplayed shows °C, ml and no US unit in metric", () => {
  const said = words(draw(inventedHold(), 1280, "metric")).join("\n");
  expect(said).toMatch(/141\.1–144\.4 °C/);
  expect(said).toMatch(/3845 ml in six pours/);
  expect(said).not.toMatch(/°F|fl oz/);
});

test.each([390, 600, 768, 1000, 1280, 1920])("holdReplayed keeps texts apart and inside at %i px", (width) => {
  const root = draw(inventedHold(), width);
  expect(overlaps(root)).toEqual([]);
  expect(clipped(root)).toEqual([]);
});

test.each([390, 1280])("holdReplayed sets no text below 13 px on a phone, 14 on a desk (%i px)", (width) => {
  const sizes = [...draw(inventedHold(), width).querySelectorAll("text")].map((one) =>
    Number(one.getAttribute("font-size")),
  );
  expect(Math.min(...sizes)).toBe(width < 600 ? 13 : 14);
});

test("holdReplayed uses no colour but the custom properties, and no inline style sheet", () => {
  const root = draw(inventedHold());
  const paints = [...root.querySelectorAll("*")].flatMap((one) => [
    one.getAttribute("fill"),
    one.getAttribute("stroke"),
  ]);
  const used = new Set(paints.filter((paint) => paint !== null && paint !== "none"));
  for (const paint of used) expect(paint).toMatch(/^var\(--[a-z]+\)$/);
  expect(root.querySelectorAll("style")).toHaveLength(0);
});

test("holdReplayed is one image with a label, and labels nothing inside it", () => {
  const root = draw(inventedHold());
  expect(root.getAttribute("role")).toBe("img");
  expect(root.getAttribute("aria-label")).toMatch(/Target band 286–292 °F/);
  expect(root.querySelectorAll("[aria-label]")).toHaveLength(0);
});

test("holdReplayed extends the rule to a reading far off and says why it stands there", () => {
  const hold = inventedHold();
  const far = { id: "far", time: 1000, temperature: fahrenheit(29), struck: true, reason: "a figure is missing" };
  const root = draw({ ...hold, readings: [...hold.readings, far] });
  const ring = root.querySelector('[data-reading="far"] circle');
  const plate = root.querySelector('[data-part="plate"] rect');
  const bottom = Number(plate?.getAttribute("y")) + Number(plate?.getAttribute("height"));
  expect(Number(ring?.getAttribute("cy"))).toBeLessThan(bottom);
  expect(root.querySelectorAll('[data-mark="break"]')).toHaveLength(1);
  expect(words(root)).toContain("29 °F at 5:40, struck out: a figure is missing");
  const strip = root.querySelector('[data-part="strip"]');
  expect(Number(strip?.getAttribute("height"))).toBeGreaterThan(50);
});

test("holdReplayed thins 7,200 readings to what the width can show and keeps the highest", () => {
  const readings = Array.from({ length: 7200 }, (_, index) => ({
    id: `l${index}`,
    time: index,
    temperature: fahrenheit(289 + Math.sin(index / 200) + (index === 3333 ? 2 : 0)),
    struck: false,
  }));
  const root = draw({ ...nothing, readings, target: { low: fahrenheit(286), high: fahrenheit(292) } });
  const dots = [...root.querySelectorAll('[data-mark="dot"] circle')];
  expect(dots.length).toBeLessThan(1400);
  expect(dots.length).toBeGreaterThan(300);
  const top = Math.min(...dots.map((dot) => Number(dot.getAttribute("cy"))));
  const highest = Math.max(...readings.map((one) => one.temperature));
  const lone = draw({ ...nothing, readings: readings.filter((one) => one.temperature === highest || one.id === "l0") });
  expect(top).toBeGreaterThan(0);
  expect(lone.querySelectorAll('[data-mark="dot"] circle').length).toBe(2);
});

test("holdReplayed says so when there is no reading yet", () => {
  expect(words(draw(nothing))).toContain("no readings yet");
});

test.each([
  ["no target", { ...inventedHold(), target: undefined, inBand: undefined }],
  ["no pours", { ...inventedHold(), additions: [] }],
  ["one reading", { ...nothing, readings: [{ id: "1", time: 40, temperature: 416, struck: false }] }],
  ["one struck reading", { ...nothing, readings: [{ id: "1", time: 40, temperature: 416, struck: true }] }],
  [
    "120 pours",
    {
      ...inventedHold(),
      additions: Array.from({ length: 120 }, (_, i) => ({ time: 660 + 20 * i, mass: fluidOunce * (3 + (i % 4)) })),
    },
  ],
  ["a feed", { ...inventedHold(), additions: [{ time: 660, duration: 2400, mass: 4 }] }],
  ["a pour of nothing", { ...inventedHold(), additions: [{ time: 660, mass: 0 }] }],
  [
    "30 events",
    {
      ...inventedHold(),
      events: Array.from({ length: 30 }, (_, i) => ({ time: 100 * i, text: "turned the burner a little" })),
    },
  ],
] as [string, HoldReplayedData][])("holdReplayed draws %s", (_, data) => {
  const plain: HoldReplayedData = JSON.parse(JSON.stringify(data));
  for (const width of [390, 1280]) {
    const root = draw(plain, width);
    expect(badAttributes(root)).toEqual([]);
    expect(overlaps(root)).toEqual([]);
    expect(clipped(root)).toEqual([]);
  }
});

test.each([
  ["temperature", { ...nothing, readings: [{ id: "1", time: 0, temperature: Number.NaN, struck: false }] }],
  ["time", { ...nothing, readings: [{ id: "1", time: Number.POSITIVE_INFINITY, temperature: 400, struck: false }] }],
  ["mass", { ...nothing, additions: [{ time: 0, mass: Number.NaN }] }],
] as [string, HoldReplayedData][])("holdReplayed refuses a %s that is not finite and names it", (name, data) => {
  expect(() => draw(data)).toThrow(RangeError);
  expect(() => draw(data)).toThrow(name);
});

test("holdReplayed refuses a width that no figure has", () => {
  expect(() => draw(nothing, Number.NaN)).toThrow("invalid figure width: NaN; 200 to 10,000 px");
});

const time = fc.double({ min: -3600, max: 30000, noNaN: true });
const temperature = fc.double({ min: 250, max: 700, noNaN: true });
const oddHold = fc.record(
  {
    readings: fc.array(
      fc.record({ id: fc.string(), time, temperature, struck: fc.boolean(), reason: fc.string(), apart: fc.boolean() }),
      { maxLength: 40 },
    ),
    additions: fc.array(fc.record({ time, mass: fc.double({ min: 0, max: 20, noNaN: true }) }), { maxLength: 20 }),
    events: fc.array(fc.record({ time, text: fc.string() }), { maxLength: 8 }),
    target: fc.tuple(temperature, temperature).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) + 0.1 })),
    partsIn: time,
    partsOut: time,
  },
  { requiredKeys: ["readings", "additions", "events"] },
);

test("holdReplayed never lets texts meet, leave the figure or carry a broken number, whatever the data", () => {
  fc.assert(
    fc.property(oddHold, fc.constantFrom(390, 768, 1280), (data, width) => {
      const root = draw(data as HoldReplayedData, width);
      // A remark may hold the very words looked for, so only drawing attributes are searched.
      root.removeAttribute("aria-label");
      for (const one of root.querySelectorAll("[data-label], [data-reading]")) {
        one.removeAttribute("data-label");
        one.removeAttribute("data-reading");
      }
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
    { numRuns: 120 },
  );
});
