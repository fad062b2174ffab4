import { expect, test } from "vitest";
import { readQuantity } from "../../../lib/measure/index.ts";
import { readShareRange } from "../../../lib/measure/readShareRange.ts";

test.each([
  ["60-80 %", 0.7, 0.1],
  ["15 to 40 %", 0.275, 0.125],
  ["65–75%", 0.7, 0.05],
  ["60 % - 80 %", 0.7, 0.1],
  ["70-70 %", 0.7, 0],
])("readQuantity(%j) as a share is the middle of its range", (text, middle, half) => {
  const read = readQuantity(text, { kind: "share", unit: "%" });
  expect(read).toMatchObject({ text, unit: "%" });
  expect("si" in read ? [read.si, read.standardUncertainty * Math.sqrt(3)] : []).toEqual([
    expect.closeTo(middle, 12),
    expect.closeTo(half, 12),
  ]);
});

test.each(["80-60 %", "60-180 %", "60-80", "-5 %", "", "a-b %"])("readShareRange(%j) is no range", (text) => {
  expect(readShareRange(text)).toBeUndefined();
});
