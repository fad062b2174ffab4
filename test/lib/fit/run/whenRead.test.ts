import { expect, test } from "vitest";
import { fitRun } from "../../../../lib/fit/index.ts";
import { whenRead } from "../../../../lib/fit/run/whenRead.ts";
import { readLog } from "../../../../lib/log/index.ts";

test("whenRead(now, later) works a part out once, when it is first read", () => {
  const done: string[] = [];
  const whole = whenRead<{ a: number }, { b: number }>(
    { a: 1 },
    {
      b: () => {
        done.push("b");
        return 2;
      },
    },
  );
  expect(done).toEqual([]);
  expect([whole.b, whole.b]).toEqual([2, 2]);
  expect(done).toEqual(["b"]);
});

test("whenRead(now, later) keeps an error for who reads the part, and works it out afresh", () => {
  let times = 0;
  const whole = whenRead<object, { b: number }>(
    {},
    {
      b: () => {
        times++;
        throw new RangeError("invalid b");
      },
    },
  );
  expect(() => whole.b).toThrow("invalid b");
  expect(() => structuredClone(whole)).toThrow("invalid b");
  expect(times).toBe(2);
});

test("a fitted run crosses to another thread whole, as plain data", () => {
  const { run } = readLog("min,F,fl oz\n0,289,\n8,292,12\n16,291,12\n24,292,12\n32,290,\n");
  const givens = { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325, target: 417.6, band: 1.1 };
  const across = structuredClone(fitRun(run, givens));
  const read = fitRun(run, givens);
  expect(across).toEqual(read);
  expect({ ...read }).toEqual(read);
  const { course, heat, logNext, residuals, untilOutOfBand, waterToTarget } = across;
  expect(course.length).toBeGreaterThan(100);
  expect(heat.steam.value).toBeGreaterThan(0);
  expect(Array.isArray(logNext)).toBe(true);
  expect(residuals.points).toHaveLength(5);
  expect(untilOutOfBand.value).toBeGreaterThanOrEqual(0);
  expect(Number.isFinite(waterToTarget.value)).toBe(true);
  for (const part of Object.getOwnPropertyNames(across))
    expect(Object.getOwnPropertyDescriptor(across, part)?.get, part).toBeUndefined();
});
