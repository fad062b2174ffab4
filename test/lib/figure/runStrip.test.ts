import { expect, test } from "vitest";
import { runStrip, runStripFinding } from "../../../lib/figure/runStrip.ts";
import type { RunStripData } from "../../../lib/figure/types.ts";
import { badAttributes, fahrenheit, inventedHold, page } from "./figureSupport.ts";

const { target, course, readings, additions } = inventedHold();
const span = { start: 0, end: 3200 };
const draw = (data: RunStripData, width = 700) => runStrip(data, { document: page(), width, system: "US" });

test("runStrip draws the strip edge to edge, the line, and a mark for each pour, and no words", () => {
  const root = draw({ readings, additions, span, ...(target ? { target } : {}), ...(course ? { course } : {}) });
  expect(root.querySelector('[data-part="strip"]')?.getAttribute("width")).toBe("700");
  expect(root.querySelectorAll('[data-mark="water"]')).toHaveLength(6);
  expect(root.querySelectorAll('[data-mark="line"] path')).toHaveLength(1);
  expect(root.querySelectorAll("text")).toHaveLength(0);
});

test("runStrip without a course joins the readings that count", () => {
  const root = draw({ readings, additions: [], span });
  const path = root.querySelector('[data-mark="line"] path')?.getAttribute("d") ?? "";
  expect(path.split(/[ML]/)).toHaveLength(readings.filter((one) => !one.struck).length + 1);
});

test.each([
  ["nothing", { readings: [], additions: [], span }],
  ["one reading", { readings: readings.slice(0, 1), additions: [], span }],
  ["a span of no length", { readings, additions, span: { start: 5, end: 5 } }],
  ["a feed", { readings, additions: [{ time: 100, duration: 900, mass: 2 }], span }],
] as [string, RunStripData][])("runStrip draws %s", (_, data) => {
  expect(badAttributes(draw(data))).toEqual([]);
});

test("runStripFinding says target, readings and pours", () => {
  const data = { readings, additions, span, target: { low: fahrenheit(286), high: fahrenheit(292) } };
  expect(runStripFinding(data, { system: "US" })).toBe("target band 286–292 °F; 32 readings, 276 to 295 °F; six pours");
});
