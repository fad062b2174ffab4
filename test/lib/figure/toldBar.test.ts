import { expect, test } from "vitest";
import { toldBar } from "../../../lib/figure/toldBar.ts";
import type { ToldBarData } from "../../../lib/figure/types.ts";
import { badAttributes, clipped, page, words } from "./figureSupport.ts";

const told: ToldBarData = { prior: { low: 0, high: 40 }, posterior: { low: 18, high: 22 }, told: "much" };
const draw = (data: ToldBarData, width = 160) => toldBar(data, { document: page(), width });
const ends = (root: Element) => {
  const line = root.querySelector('[data-mark="prior"] line');
  const bar = root.querySelector('[data-mark="posterior"]');
  const number = (element: Element | null, name: string) => Number(element?.getAttribute(name));
  return {
    rule: [number(line, "x1"), number(line, "x2")] as const,
    bar: [number(bar, "x"), number(bar, "x") + number(bar, "width")] as const,
  };
};

test("toldBar draws the thick bar over the thin rule on one scale, and its word", () => {
  const root = draw(told);
  const { rule, bar } = ends(root);
  const scale = (rule[1] - rule[0]) / 40;
  expect(bar[0]).toBeCloseTo(rule[0] + 18 * scale, 1);
  expect(bar[1]).toBeCloseTo(rule[0] + 22 * scale, 1);
  expect(words(root)).toEqual(["much"]);
  expect(Number(root.getAttribute("height"))).toBe(16);
});

test("toldBar starts its rules at one place whatever the word, so that a ledger's stand under each other", () => {
  const starts = (["nothing", "some", "much"] as const).map((word) => ends(draw({ ...told, told: word })).rule[0]);
  expect(new Set(starts).size).toBe(1);
});

test("toldBar says the word and how much narrower the spread became", () => {
  const root = draw(told);
  expect(root.getAttribute("role")).toBe("img");
  expect(root.getAttribute("aria-label")).toBe("The log told much: the 95 % spread is 10 % of what it was");
});

test.each([
  ["a posterior beyond its prior", { ...told, posterior: { low: 30, high: 55 } }],
  ["a posterior of no width", { ...told, posterior: { low: 40, high: 40 } }],
  ["a prior of no width", { ...told, prior: { low: 20, high: 20 } }],
  ["nothing wide at all", { ...told, prior: { low: 3, high: 3 }, posterior: { low: 3, high: 3 } }],
] as [string, ToldBarData][])("toldBar draws %s inside its width", (_, data) => {
  for (const width of [80, 160, 400]) {
    const root = draw(data, width);
    expect(badAttributes(root)).toEqual([]);
    expect(clipped(root)).toEqual([]);
    const { bar, rule } = ends(root);
    expect(bar[1] - bar[0]).toBeGreaterThanOrEqual(2.99);
    expect(Math.max(bar[1], rule[1])).toBeLessThanOrEqual(width);
    expect(Math.min(bar[0], rule[0])).toBeGreaterThanOrEqual(50);
  }
});

test.each([
  [
    { ...told, prior: { low: Number.NaN, high: 1 } },
    160,
    "invalid told bar prior low: NaN; a finite number in SI units",
  ],
  [{ ...told, prior: { low: 2, high: 1 } }, 160, "invalid interval: 2 to 1; the lower limit first"],
  [told, 20, "invalid figure width: 20; 80 to 10,000 px"],
] as [ToldBarData, number, string][])("toldBar refuses %o at %i px", (data, width, message) => {
  expect(() => draw(data, width)).toThrow(message);
  expect(() => draw(data, width)).toThrow(RangeError);
});
