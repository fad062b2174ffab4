import fc from "fast-check";
import { expect, test } from "vitest";
import { tankPlan } from "../../../lib/figure/tankPlan.ts";
import { barFaces } from "../../../lib/figure/tankPlanFaces.ts";
import { tankPlanFinding } from "../../../lib/figure/tankPlanFinding.ts";
import type { TankPlanData } from "../../../lib/figure/types.ts";
import { badAttributes, clipped, overlaps, page, words } from "./figureSupport.ts";

/** A bar that stands square in the tank, from one corner to another. */
const upright = (from: readonly number[], to: readonly number[]) =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((place) => {
    const at = (axis: number) => ((place >> axis) & 1 ? to : from)[axis] ?? 0;
    return [at(0), at(1), at(2)] as const;
  });

const tank: TankPlanData = {
  length: 0.6096,
  width: 0.1524,
  depth: 0.127,
  freeboard: 0.1016,
  clearance: 0.0127,
  part: {
    length: 0.508,
    width: 0.0254,
    thickness: 0.00635,
    lies: "straight",
    corners: upright([0.05, 0.03, 0.02], [0.558, 0.0554, 0.02635]),
  },
};
const draw = (data: TankPlanData, width = 480, system: "US" | "metric" = "US") =>
  tankPlan(data, { document: page(), width, system });

const pointsOf = (root: Element, view: string) =>
  [...root.querySelectorAll(`[data-part="part"][data-view="${view}"] path`)].flatMap((face) =>
    [...(face.getAttribute("d") ?? "").matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]),
  );
const spanOf = (points: readonly (readonly number[])[], axis: number) => {
  const all = points.map((point) => point[axis] ?? 0);
  return Math.max(...all) - Math.min(...all);
};

test("tankPlan draws tank and part to one scale in both views", () => {
  const root = draw(tank);
  const liquid = root.querySelector('[data-part="liquid"]');
  const perMetre = Number(liquid?.getAttribute("width")) / tank.length;
  expect(Number(liquid?.getAttribute("height")) / perMetre).toBeCloseTo(0.127, 4);
  expect(Number(root.querySelector('[data-part="plan"]')?.getAttribute("height")) / perMetre).toBeCloseTo(0.1524, 4);
  expect(spanOf(pointsOf(root, "above"), 0) / perMetre).toBeCloseTo(0.508, 3);
  expect(spanOf(pointsOf(root, "above"), 1) / perMetre).toBeCloseTo(0.0254, 3);
  expect(spanOf(pointsOf(root, "side"), 1) / perMetre).toBeCloseTo(0.00635, 3);
});

test("tankPlan sets the part where it lies: above the bottom, and nearer the front edge", () => {
  const root = draw(tank);
  const of = (part: string, name: string) => Number(root.querySelector(`[data-part="${part}"]`)?.getAttribute(name));
  const perMetre = of("liquid", "width") / tank.length;
  const lowest = Math.max(...pointsOf(root, "side").map(([, y]) => y ?? 0));
  expect((of("liquid", "y") + of("liquid", "height") - lowest) / perMetre).toBeCloseTo(0.02, 3);
  const front = Math.max(...pointsOf(root, "above").map(([, y]) => y ?? 0));
  expect((of("plan", "y") + of("plan", "height") - front) / perMetre).toBeCloseTo(0.03, 3);
});

test("tankPlan says its measures with units, and the part's below", () => {
  const said = words(draw(tank));
  expect(said).toEqual(expect.arrayContaining(["24 in", "6 in", "5 in", "4 in", "From above", "From the side"]));
  expect(said.join(" ")).toContain("Part 20 in long, 1 in wide, ¼ in thick, straight.");
  expect(words(draw(tank, 480, "metric"))).toEqual(expect.arrayContaining(["61 cm", "15.2 cm", "12.7 cm"]));
});

test("tankPlanFinding says tank, wall, part and clearance", () => {
  expect(tankPlanFinding(tank, { system: "US" })).toBe(
    "Tank 24 in long and 6 in wide inside, liquid 5 in deep. The wall rises 4 in above the liquid. " +
      "Part 20 in long, 1 in wide, ¼ in thick, straight. Dashed: ½ in clear of walls, bottom and surface.",
  );
});

test("barFaces ends with the face that the eye meets", () => {
  const cube = upright([0, 0, 0], [1, 1, 1]);
  expect(
    barFaces(cube, "side")
      .at(-1)
      ?.every(([, y]) => y === 0),
  ).toBe(true);
  expect(
    barFaces(cube, "above")
      .at(0)
      ?.every(([, , z]) => z === 0),
  ).toBe(true);
  expect(() => barFaces(cube.slice(1), "above")).toThrow("invalid part: 7 corners; 8 of a bar");
});

test.each([
  [{ ...tank, depth: 0 }, "invalid tank: 0 m; length, width and depth above 0"],
  [{ ...tank, freeboard: -0.1 }, "invalid tank: -0.1 m; freeboard and clearance 0 or more"],
  [{ ...tank, length: Number.NaN }, "invalid tank length: NaN"],
])("tankPlan refuses what cannot be drawn, %#", (data, message) => {
  expect(() => draw(data)).toThrow(message);
});

test("tankPlan keeps its words apart and inside for any tank", () => {
  const size = fc.double({ min: 0.02, max: 6, noNaN: true });
  const small = fc.double({ min: 0, max: 0.5, noNaN: true });
  const data = fc.record(
    { length: size, width: size, depth: size, freeboard: small, clearance: small },
    { requiredKeys: ["length", "width", "depth"] },
  );
  fc.assert(
    fc.property(data, fc.constantFrom(260, 400, 700), fc.boolean(), (one, width, hasPart) => {
      const { part } = tank;
      const root = draw({ ...one, ...(hasPart && part ? { part } : {}) } as TankPlanData, width);
      expect(badAttributes(root)).toEqual([]);
      expect(overlaps(root)).toEqual([]);
      expect(clipped(root)).toEqual([]);
    }),
  );
});

test("a wall too low for its own dimension is said below, once", () => {
  const said = (freeboard: number) => words(draw({ ...tank, freeboard })).join(" ");
  expect(said(0.009525)).toContain("The wall rises ⅜ in above the liquid.");
  expect(said(0.1016)).not.toContain("The wall rises");
});
