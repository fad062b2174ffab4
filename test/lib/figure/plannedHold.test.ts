import { expect, test } from "vitest";
import { fireTradeOff } from "../../../lib/figure/fireTradeOff.ts";
import { plannedHold } from "../../../lib/figure/plannedHold.ts";
import type { FireTradeOffData, PlannedHoldData } from "../../../lib/figure/planTypes.ts";
import { holdsWords } from "../../../lib/figure/words.ts";
import { badAttributes, clipped, fahrenheit, fluidOunce, overlaps, page, words } from "./figureSupport.ts";

const moments = (wide: number) =>
  Array.from({ length: 16 }, (_, i) => ({
    time: 120 * i,
    value: fahrenheit(289),
    low: fahrenheit(289 - wide - 0.05 * i),
    high: fahrenheit(289 + wide + 0.05 * i),
  }));
const invented: PlannedHoldData = {
  target: { low: fahrenheit(286), high: fahrenheit(292) },
  hold: 1800,
  corrected: moments(1.5),
  nobody: moments(2.4),
  start: fahrenheit(288.6),
  startReads: fahrenheit(289),
  additions: [{ time: 0, mass: 56 * fluidOunce, duration: 1800 }],
  poured: "1.9 fl oz/min, 56 fl oz",
  holds: { nobody: 71.2, corrected: 99.7 },
};

test.each([390, 768, 820, 1280])("the planned hold at %i px: nothing overlaps, leaves or is no number", (width) => {
  const root = plannedHold(invented, { document: page(), width, system: "US" });
  expect(badAttributes(root)).toEqual([]);
  expect(overlaps(root)).toEqual([]);
  expect(clipped(root)).toEqual([]);
});

test("the planned hold names both promises and never says all", () => {
  const root = plannedHold(invented, { document: page(), width: 1280, system: "US" });
  expect(words(root)).toContain("71 in 100 hold");
  expect(words(root)).toContain("over 99 in 100 hold");
  expect(root.getAttribute("aria-label")).toContain("Nobody correcting it is 71 in 100");
});

test("the planned hold draws a pour for each addition, at its minute", () => {
  const additions = [1, 2, 3].map((i) => ({ time: 300 * i, mass: 4 * fluidOunce, duration: 20 }));
  const root = plannedHold({ ...invented, additions }, { document: page(), width: 1280, system: "metric" });
  const bars = [...root.querySelectorAll('[data-mark="water"]')].map((bar) => Number(bar.getAttribute("x")));
  expect(bars).toHaveLength(3);
  expect((bars[1] ?? 0) - (bars[0] ?? 0)).toBeCloseTo((bars[2] ?? 0) - (bars[1] ?? 0), 1);
});

const fires: FireTradeOffData = {
  fires: [
    { share: 1, feed: 0.002, nobody: 60, corrected: 88, steady: true },
    { share: 0.9, feed: 0.0017, nobody: 66, corrected: 91, steady: true },
    { share: 0.8, feed: 0.0014, nobody: 72, corrected: 93, steady: true },
    { share: 0.7, feed: 0.0011, nobody: 70, corrected: 90, steady: false },
    { share: 0.6, feed: 0.0008, steady: false },
  ],
  best: 0.8,
};

test.each([390, 768, 1280])("the trade-off of fires at %i px: nothing overlaps, leaves or is no number", (width) => {
  const root = fireTradeOff(fires, { document: page(), width, system: "US" });
  expect(badAttributes(root)).toEqual([]);
  expect(overlaps(root)).toEqual([]);
  expect(clipped(root)).toEqual([]);
  expect(root.querySelectorAll('[data-mark="best"]')).toHaveLength(1);
  expect(root.getAttribute("aria-label")).toContain("The least feeding that still boils steadily is at 80 %.");
});

test("fires that a gust can stop are drawn open", () => {
  const root = fireTradeOff(fires, { document: page(), width: 1280, system: "US" });
  const open = [...root.querySelectorAll("circle")].filter((one) => one.getAttribute("fill") === "var(--ground)");
  expect(open).toHaveLength(2);
});

test("a share of holds is neither all nor none", () => {
  expect([100, 99.6, 99.4, 50.2, 0.4, 0].map(holdsWords)).toEqual([
    "over 99",
    "over 99",
    "99",
    "50",
    "under 1",
    "under 1",
  ]);
});
