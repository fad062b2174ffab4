import { expect, test } from "vitest";
import { given, type Line, openLines, worked } from "../../../lib/lines/index.ts";
import { ringsOf } from "../../../lib/lines/ringsOf.ts";

test("a line that needs itself stays stopped when something that it uses changes, and what uses it waits", async () => {
  const lines = openLines({
    asks: "?",
    lines: { salt: given("5 lb"), ring: worked("salt + ring"), after: worked("ring * 2") },
  });
  await lines.settled();
  lines.set("salt", { given: "6 lb" });
  await lines.settled();
  expect(lines.result("ring")).toEqual({ state: "stopped", says: "this needs itself to be worked out" });
  expect(lines.result("after")).toEqual({ state: "waits", for: "ring" });
});

test("each line of two rings that share one names its own way round, whichever edit closed them", async () => {
  const lines = openLines({ asks: "?", lines: { one: worked("two"), two: given("1 lb") } });
  await lines.settled();
  lines.set("two", { worked: "one + two" });
  await lines.settled();
  expect(lines.result("one")).toMatchObject({ says: expect.stringContaining('"one" needs "two" needs "one"') });
  expect(lines.result("two")).toMatchObject({ says: "this needs itself to be worked out" });
  lines.set("two", { given: "2 lb" });
  expect(await lines.value("one")).toMatchObject({ text: "2.00\u00a0±0.12\u00a0lb" });
});

test("a ring of 5,000 lines with 5,000 behind it opens soon, and says how many they are", async () => {
  const all: Record<string, Line> = {};
  for (let i = 0; i < 5000; i++) all[`ring ${i}`] = worked(`ring ${(i + 1) % 5000} + 1`);
  for (let i = 0; i < 5000; i++) all[`tail ${i}`] = worked(i === 0 ? "ring 0" : `tail ${i - 1} + 1`);
  const lines = openLines({ asks: "?", lines: all });
  await lines.settled();
  expect(lines.result("ring 7")).toMatchObject({ says: expect.stringContaining("by way of 4,960 more") });
  expect(lines.result("tail 4999")).toEqual({ state: "waits", for: "ring 0" });
  // The test's own time-out is the guard: work without bounds would not end.
}, 30_000);

test("ringsOf finds every ring once", () => {
  const uses: Record<string, string[]> = { a: ["b"], b: ["c"], c: ["a", "d"], d: ["d"], e: ["a"], f: [] };
  const rings = ringsOf(["e", "f", "a"], (line) => uses[line] ?? []);
  expect(rings.map((ring) => [...ring].sort().join(""))).toEqual(["d", "abc"]);
});
