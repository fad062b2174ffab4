import { expect, test } from "vitest";
import {
  addEntry,
  additions,
  correct,
  lastTime,
  putBack,
  readings,
  readLog,
  strikeOut,
} from "../../../lib/log/index.ts";

const { run } = readLog("7:40 pm 284 F boils\n7:46 219 F\n7:51 3 cups\n8:10 end\n");
const id = (index: number) => run.entries[index]?.id ?? "";

test("strikeOut keeps the entry in the run with its reason, and the run it was given as it was", () => {
  const struck = strikeOut(run, id(2), "misread");
  expect(struck.entries[2]).toEqual({ ...run.entries[2], struck: true, reason: "misread" });
  expect(run.entries[2]?.struck).toBe(false);
  expect(struck.entries.length).toBe(run.entries.length);
});

test("putBack undoes strikeOut", () => {
  expect(putBack(strikeOut(run, id(2), "misread"), id(2))).toEqual(run);
});

test("correct keeps what the entry said before, oldest first", () => {
  const once = correct(run, id(2), "291");
  const twice = "run" in once ? correct(once.run, id(2), "144 C") : once;
  expect("run" in twice && twice.run.entries[2]).toMatchObject({
    before: ["219 F", "291 °F"],
    quantity: { unit: "°C" },
  });
});

test("correct reads a bare number in the entry's own unit", () => {
  const corrected = correct(run, id(3), "2");
  expect("run" in corrected && corrected.run.entries[3]?.quantity?.text).toBe("2 cup");
});

test("correct leaves the run alone and says what was expected where the text is no amount", () => {
  const corrected = correct(run, id(2), "hot");
  expect("problem" in corrected && corrected.problem).toMatchObject({ line: 2, read: "hot" });
});

test("addEntry puts an entry in its place in time", () => {
  const added = addEntry(run, { time: 400, kind: "addition", text: "8 fl oz" });
  expect("run" in added && added.run.entries.map(({ time }) => time)).toEqual([0, 0, 360, 400, 660, 1800]);
});

test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("addEntry refuses the time %d", (time) => {
  expect(() => addEntry(run, { time, kind: "remark", text: "?" })).toThrow(`invalid time: ${time} s`);
});

test.each([strikeOut, putBack, correct])("%o of an unknown id says so", (edit) => {
  expect(() => edit(run, "nobody", "words")).toThrow("unknown entry: nobody");
});

test("lastTime counts a bare remark and leaves out what is struck", () => {
  expect(lastTime(run)).toBe(1800);
  expect(lastTime(strikeOut(run, id(4), ""))).toBe(660);
  expect(lastTime({ entries: [] })).toBe(0);
});

test("readings and additions leave out what is struck", () => {
  expect(readings(strikeOut(run, id(2), "")).map(({ id }) => id)).toEqual([id(0)]);
  expect(additions(run).map(({ quantity }) => quantity.text)).toEqual(["3 cups"]);
});
