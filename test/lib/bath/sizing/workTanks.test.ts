import { expect, test } from "vitest";
import { askFirst, longestPart, madeOf, neverOf, simulateBath, waterHeatUp, workTanks } from "../../../../lib/index.ts";

const tank = { length: 0.9, width: 0.2, depth: 0.12 };
const fire = { tank, power: 17_600, efficiency: 0.4, from: 290 };

// 1 BTU warms 1 lb of water by 1 °F: 21.56 kg through 82.2 K at 4.187 kJ/(kg K) are 7.4 MJ, 1,055 s of 7,040 W, without losses.
test("water takes longer than its bare heat, by what evaporates and the walls lose", () => {
  const up = waterHeatUp({ ...fire, to: 372.2 });
  const bare = (0.9 * 0.2 * 0.12 * 998.8 * 4187 * 82.2) / (17_600 * 0.4);
  if (up.state !== "gets there") throw new Error(up.state);
  expect(up.time).toBeGreaterThan(bare);
  expect(up.time).toBeLessThan(1.5 * bare);
  expect(up.heat).toBeCloseTo(17_600 * up.time, 6);
  // 21,548 to 21,591 BTU/lb gross (property tables of propane, read).
  expect(up.gas).toBeCloseTo((17_600 * up.time) / (21_570 * 2326), 2);
});

// Not outside evidence: two ways of stepping one balance must agree.
test("stepping by temperature and the simulation that steps by time agree", () => {
  const up = waterHeatUp({ ...fire, to: 370 });
  if (up.state !== "gets there") throw new Error(up.state);
  const charge = { water: 0.9 * 0.2 * 0.12 * 998.8, salts: {}, temperature: 290 };
  // A wall 1 cm higher: the simulation minds that warm water takes more room.
  const higher = { ...tank, depth: 0.13 };
  const run = simulateBath({ tank: higher, burner: { power: 17_600, efficiency: 0.4 } }, charge, { end: up.time });
  expect(run.end.T).toBeCloseTo(370, 0);
  expect(charge.water - run.end.water).toBeCloseTo(up.evaporated, 1);
});

test("steel makes it longer, a small fire stalls and says where", () => {
  const time = (steel: number) => {
    const up = waterHeatUp({ ...fire, steel });
    return up.state === "gets there" ? up.time : Number.POSITIVE_INFINITY;
  };
  expect(time(20)).toBeGreaterThan(time(0));
  const stalled = waterHeatUp({ ...fire, power: 3000 });
  if (stalled.state !== "never gets there") throw new Error(stalled.state);
  expect(stalled.stallsAt).toBeGreaterThan(320);
  expect(stalled.stallsAt).toBeLessThan(370);
});

test("to where it is takes no time", () => {
  expect(waterHeatUp({ ...fire, to: 290 })).toMatchObject({ state: "gets there", time: 0, gas: 0 });
});

test.each([
  [{ power: 0 }, "invalid power: 0 W"],
  [{ efficiency: 1.2 }, "invalid efficiency: 1.2"],
  [{ from: Number.NaN }, "invalid temperature at the start: NaN K"],
  [{ from: 300, to: 290 }, "invalid temperature at the start: 300 K; at most 290 K"],
  [{ to: 400 }, "invalid temperature to reach: 400 K"],
  [{ tank: { ...tank, depth: -1 } }, "invalid working depth: -1 m"],
])("%j is refused", (other, message) => {
  expect(() => waterHeatUp({ ...fire, ...other })).toThrow(message);
});

test("the other tanks take the part straight, in the order of the work", () => {
  const part = { length: 0.9, width: 0.06, thickness: 0.02 };
  const tanks = workTanks(part, { clearance: 0.03, freeboard: 0.08 });
  expect(tanks.map(({ name }) => name)).toEqual(["clean", "rinse", "boiling rinse", "oil"]);
  for (const one of tanks) {
    expect(longestPart(one, part, 0.03 - 1e-12).straight).toBeGreaterThanOrEqual(0.9);
    expect(one.volume).toBeCloseTo(one.length * one.width * one.depth, 12);
    expect(one.freeboard).toBe(0.08);
  }
});

test.each([
  [{ length: -1, width: 0, thickness: 0 }, {}, "invalid length of the part: -1 m"],
  [{ length: 1, width: 0, thickness: 0 }, { leastWidth: Number.NaN }, "invalid least width: NaN m"],
  [{ length: 0.1, width: 0.5, thickness: 0 }, {}, "invalid part: it is wider or thicker than long"],
])("workTanks(%j, %j) throws", (part, options, message) => {
  expect(() => workTanks(part, options)).toThrow(message);
});

// Sodium hydroxide "is corrosive to aluminium, zinc, tin …": safety data sheets of caustic soda (from memory).
test.each(["luminium", "alvanised", "Tin", "Brass"])("%s is among what a tank must never be of", (metal) => {
  expect(neverOf.some(({ what }) => what.includes(metal))).toBe(true);
});

test("every caution says where it comes from", () => {
  for (const { what, source } of [...neverOf, ...madeOf, ...askFirst]) {
    expect(what.length).toBeGreaterThan(20);
    expect(source).not.toBe("");
  }
});
