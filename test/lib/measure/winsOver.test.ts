import fc from "fast-check";
import { expect, test } from "vitest";
import { random } from "../../../data/generator/random.ts";
import { exact, measuredValue, type Value, winsOver } from "../../../lib/measure/index.ts";

const mass = { mass: 1 };

// Table of the standard normal distribution, any statistics handbook (from memory): 1 sd 0.8413, 1.645 sd 0.95.
test.each([
  [1, 0.8413],
  [1.645, 0.95],
  [-1, 0.1587],
  [0, 0.5],
])("a lead of %d standard uncertainties wins with the table's probability", (lead, expected) => {
  expect(winsOver(measuredValue(5 + lead, 0.6, mass, "a"), measuredValue(5, 0.8, mass, "b"))).toBeCloseTo(expected, 4);
});

test("what two cases share cancels", () => {
  const shared: Value = { value: 5, dimension: mass, components: new Map([["thermometer", 3]]) };
  const more: Value = { value: 5.1, dimension: mass, components: new Map([["thermometer", 3]]) };
  expect(winsOver(more, shared)).toBe(1);
  expect(winsOver(more, shared, "least")).toBe(0);
  expect(winsOver(shared, shared)).toBe(0.5);
  expect(() => winsOver(exact(1, mass), exact(1))).toThrow(TypeError);
});

test("either wins: the two probabilities make 1, and leads only help", () => {
  const values = fc.tuple(fc.double({ min: -9, max: 9, noNaN: true }), fc.double({ min: 0.01, max: 5, noNaN: true }));
  fc.assert(
    fc.property(values, values, ([x, u], [y, v]) => {
      const a = measuredValue(x, u, mass, "a");
      const b = measuredValue(y, v, mass, "b");
      expect(winsOver(a, b) + winsOver(b, a)).toBeCloseTo(1, 6);
      expect(winsOver(a, b) > 0.5).toBe(winsOver(a, b) !== 0.5 && x > y);
    }),
  );
});

/** Of pairs drawn with shared and own errors, the shares said and come true where 80 to 90 % was said. */
test("of 200 pairs, those said to win with 80 to 90 % do win in 72 to 96 %", () => {
  const chance = random(20_261);
  let said = 0;
  let won = 0;
  let all = 0;
  for (let i = 0; i < 200; i += 1) {
    const [shared, own, other] = [chance.from(0, 2), chance.from(0.3, 1.5), chance.from(0.3, 1.5)];
    const components = (u: number, name: string) =>
      new Map([
        ["fire", shared],
        [name, u],
      ]);
    // The truth first, then what is measured of it: off together by the fire, and each by its own.
    const [trueA, trueB] = [chance.from(8, 12), chance.from(8, 12)];
    const fire = shared * chance.normal();
    const a: Value = { value: trueA + fire + own * chance.normal(), dimension: mass, components: components(own, "a") };
    const b: Value = {
      value: trueB + fire + other * chance.normal(),
      dimension: mass,
      components: components(other, "b"),
    };
    const p = winsOver(a, b);
    const [sure, right] = p > 0.5 ? [p, trueA > trueB] : [1 - p, trueB > trueA];
    all += 1;
    if (sure < 0.8 || sure > 0.9) continue;
    said += 1;
    won += Number(right);
  }
  expect(all).toBe(200);
  expect(said).toBeGreaterThan(15);
  expect(won / said).toBeGreaterThan(0.72);
  expect(won / said).toBeLessThan(0.96);
});
