import { expect, test } from "vitest";
import { handRow, isHandWritten, timeFromNumberPad, withRow } from "../../notebooks/page/handWriting.ts";

test.each([
  ["746", "7:46"],
  ["1530", "15:30"],
  ["74612", "7:46:12"],
  ["8.05", "8:05"],
  ["8,05", "8:05"],
  ["815 pm", "8:15 pm"],
  ["7:46 p.m.", "7:46 pm"],
  ["12", "12"],
  ["7:46", "7:46"],
  ["", ""],
  ["later", "later"],
])("timeFromNumberPad(%j) is %j", (typed, time) => {
  expect(timeFromNumberPad(typed)).toBe(time);
});

test("handRow(row) gives a bare amount of water the unit beside it", () => {
  const row = { time: "751", temperature: "", water: "1 1/2", waterUnit: "cups", remark: "slowly\tin" };
  expect(handRow(row)).toBe("7:51\t\t1 1/2 cups\tslowly in");
  expect(handRow({ ...row, water: "700 ml" })).toContain("\t700 ml\t");
});

test("withRow(source, row) stays a hand-written log", () => {
  const source = withRow("time\t°F\twater\tremark\n", {
    time: "0",
    temperature: "290",
    water: "",
    waterUnit: "fl oz",
    remark: "",
  });
  expect(source).toBe("time\t°F\twater\tremark\n0\t290\t\t\n");
  expect(isHandWritten(source)).toBe(true);
  expect(isHandWritten("time,temp\n0,290")).toBe(false);
});
