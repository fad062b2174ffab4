import { expect, test } from "vitest";
import { given, type Line, notebook, openLines, worked } from "../../../lib/lines/index.ts";
import { standardUncertainty } from "../../../lib/measure/index.ts";

const open = (lines: Record<string, Line>, cases?: Record<string, Record<string, string>>) =>
  openLines(notebook({ asks: "?", lines, ...(cases && { cases }) }));
const inch = 0.0254;

const tank = () =>
  open(
    {
      length: given("24 ±0.2 in"),
      width: given("6 ±0.1 in"),
      depth: given("5 ±0.1 in"),
      "liquid volume": worked("length * width * depth", "gal"),
      "no length": worked("width * depth", "in²"),
    },
    { small: {}, wide: { width: "8 ±0.1 in" } },
  );

test("solve finds the given that a worked line needs, with the width that the others leave it", async () => {
  const found = await tank().solve("liquid volume", "5 gal", "length");
  if (!("value" in found)) throw new Error(found.stopped);
  // 1 US gal is 231 in³ (Handbook 44): 5 · 231 / (6 · 5) = 38.5 in.
  expect(found.value / inch).toBeCloseTo(38.5, 8);
  const relative = Math.hypot(0.1 / 1.96 / 6, 0.1 / 1.96 / 5);
  expect(found.standardUncertainty / inch).toBeCloseTo(38.5 * relative, 3);
  expect(found.widthFrom.map(({ source }) => source)).toEqual(["depth", "width"]);
  expect(found.text).toMatch(/^38\.5\s±1\.0\sin$/u);
});

test("solve works in the case asked for, and changes nothing", async () => {
  const lines = tank();
  const found = await lines.solve("liquid volume", "5 gal", "length", "wide");
  expect("value" in found && found.value / inch).toBeCloseTo((5 * 231) / (8 * 5), 8);
  expect(lines.text("length", "wide")).toBe("24 ±0.2 in");
  expect(lines.undoName()).toBeUndefined();
});

test.for<[string, string, RegExp]>([
  ["x * x + 1", "0", /none: over all that was tried, "y" goes from 1 to/u],
  ["(x - 3)^2 - 1", "0", /more than one: 2\s*exactly, 4/u],
  ["(x - 3)^2", "0", /^3$/u],
  ["1 / (x - 2)", "0.5", /^4$/u],
  ["5", "5", /does not depend on/u],
  ["sqrt(x - 4)", "2", /^8$/u],
  ["exp(x)", "10 lb", /plain number|number/u],
])("solve of %s for %s", async ([formula, wanted, says]) => {
  const lines = open({ x: given("1.5"), y: worked(formula) });
  const found = await lines.solve("y", wanted, "x");
  expect("value" in found ? String(Number(found.value.toPrecision(6))) : found.stopped).toMatch(says);
});

test("solve keeps to a given's limits and finds temperatures", async () => {
  const lines = open({
    target: given("292 °F", undefined, { exact: true, unit: "°F" }),
    room: given("70 °F", undefined, { exact: true, unit: "°F" }),
    rise: worked("target - room", "°F"),
  });
  const found = await lines.solve("rise", "200 °F", "target");
  expect("text" in found && found.text).toMatch(/^270/u);
  const bounded = open({ a: given("2", undefined, { atLeast: 1, atMost: 3 }), b: worked("a * 10") });
  expect(await bounded.solve("b", "25", "a")).toMatchObject({ value: 2.5 });
  expect(await bounded.solve("b", "40", "a")).toMatchObject({ stopped: expect.stringMatching(/none.*from 10 to 30/u) });
});

test("solve for a line that is stopped, a worked one, or itself says what to do", async () => {
  const lines = open({ a: given("2"), b: worked("a +"), c: worked("a * 3"), d: worked("c + 1") });
  expect(await lines.solve("b", "1", "a")).toMatchObject({
    stopped: expect.stringMatching(/can't be worked out: .*stops short/u),
  });
  expect(await lines.solve("d", "1", "c")).toMatchObject({ stopped: expect.stringMatching(/choose a given/u) });
  expect(await lines.solve("d", "one", "a")).toMatchObject({ stopped: expect.stringMatching(/"one"/u) });
});

test("sweep gives the line over a range in each case, with its width", async () => {
  const swept = await tank().sweep("liquid volume", "length", { from: "20 in", to: "40 in", points: 3 });
  expect(swept.map(({ inCase }) => inCase)).toEqual(["small", "wide"]);
  const gallons = swept.map(({ points }) => points.map(({ x, y }) => [x / inch, (y?.value ?? 0) / inch ** 3 / 231]));
  expect(gallons.flat(2).map((n) => Number(n.toFixed(6)))).toEqual(
    [20, 20 * 30, 30, 30 * 30, 40, 40 * 30, 20, 20 * 40, 30, 30 * 40, 40, 40 * 40].map((n, i) =>
      Number((i % 2 === 0 ? n : n / 231).toFixed(6)),
    ),
  );
  const [first] = swept[0]?.points ?? [];
  expect(first?.y && standardUncertainty(first.y) / first.y.value).toBeCloseTo(
    Math.hypot(0.1 / 1.96 / 6, 0.1 / 1.96 / 5),
    4,
  );
});

test("sweep shows where there is no number, and can be ended", async () => {
  const lines = open({ x: given("4"), y: worked("sqrt(x - 1)") });
  const [one] = await lines.sweep("y", "x", { from: "0", to: "2", points: 3 });
  expect(one?.points.map(({ y, says }) => y?.value ?? says)).toEqual([expect.stringMatching(/./u), 0, 1]);
  let told = 0;
  const [short] = await lines.sweep("y", "x", {
    from: 1,
    to: 2,
    points: 100,
    progress: (share) => ++told > 4 || share > 1,
  });
  expect(short?.points).toHaveLength(5);
  await expect(lines.sweep("y", "x", { from: "1", to: "1" })).rejects.toThrow(/two amounts that differ/u);
  await expect(lines.sweep("y", "x", { from: "1 lb", to: "2" })).rejects.toThrow(/number/u);
});

/** A sum of many terms, so that one point takes a while. */
const long = () =>
  open({
    x: given("4"),
    k: given("2"),
    y: worked(Array.from({ length: 100 }, (_, i) => `sqrt(x + ${i} * k)`).join(" + ")),
  });

test.each(["sweep", "solve"] as const)(
  "a long %s gives the thread back, and tells of the lines as they were when it began",
  async (what) => {
    const lines = long();
    await lines.settled();
    const ask = () =>
      what === "sweep" ? lines.sweep("y", "x", { from: 1, to: 9, points: 600 }) : lines.solve("y", "7000", "x");
    const still = await ask();
    let beats = 0;
    const beat = setInterval(() => {
      beats += 1;
    }, 1);
    const asked = ask();
    setTimeout(() => lines.set("k", { given: "3" }), 2);
    expect(await asked).toEqual(still);
    clearInterval(beat);
    // Work in one piece would let no timer through.
    expect(beats).toBeGreaterThan(0);
    lines.close();
  },
);
