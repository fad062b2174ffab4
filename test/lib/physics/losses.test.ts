import fc from "fast-check";
import { expect, test } from "vitest";
import { boilingPoint } from "../../../lib/physics/boilingPoint.ts";
import { brineVapourPressure } from "../../../lib/physics/brineVapourPressure.ts";
import { freeConvection, hotPlateUp, verticalPlate } from "../../../lib/physics/freeConvection.ts";
import { saturationPressure } from "../../../lib/physics/saturationPressure.ts";
import { steelHeat } from "../../../lib/physics/steelHeat.ts";
import { surfaceLoss } from "../../../lib/physics/surfaceLoss.ts";
import { wallLoss } from "../../../lib/physics/wallLoss.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = between(260, 320);
const step = between(0.01, 40);
const height = between(0.05, 3);

test("wallLoss: a hotter wall never loses less, colder air never takes less", () => {
  fc.assert(
    fc.property(between(260, 500), step, air, step, height, (wall, more, around, less, high) => {
      const loss = wallLoss({ wall, air: around, height: high });
      expect(wallLoss({ wall: wall + more, air: around, height: high })).toBeGreaterThan(loss);
      expect(wallLoss({ wall, air: Math.max(around - less, 234), height: high })).toBeGreaterThan(
        loss * (1 - 1e-12) - 1e-9,
      );
    }),
  );
});

test("wallLoss has the sign of the difference, is nothing without one and does not jump", () => {
  expect(wallLoss({ wall: 300, air: 300, height: 0.2 })).toBe(0);
  expect(wallLoss({ wall: 300, air: 300, height: 0.2, insulation: { thickness: 0.01, conductivity: 0.04 } })).toBe(0);
  expect(wallLoss({ wall: 290, air: 300, height: 0.2 })).toBeLessThan(0);
  for (const high of [0.1, 0.8, 1, 3]) {
    const at = (wall: number) => wallLoss({ wall, air: 300, height: high });
    // Second differences: a jump of 1 % in the convection would be 3 W/m² and more.
    for (let wall = 310; wall < 500; wall += 0.25) {
      expect(Math.abs(at(wall + 0.25) - 2 * at(wall) + at(wall - 0.25))).toBeLessThan(0.3);
    }
  }
});

test("wallLoss: insulation never loses more, thicker less, and thin insulation is next to none", () => {
  fc.assert(
    fc.property(
      between(330, 500),
      air,
      height,
      between(0.001, 0.15),
      between(0.02, 1),
      (wall, around, high, thick, k) => {
        const bare = wallLoss({ wall, air: around, height: high });
        const loss = (thickness: number) =>
          wallLoss({ wall, air: around, height: high, insulation: { thickness, conductivity: k } });
        expect(loss(thick)).toBeLessThan(bare);
        expect(loss(thick * 2)).toBeLessThan(loss(thick));
        expect(loss(thick)).toBeGreaterThan(0);
        // What the face gives off came through the insulation: never more than all of the difference would drive.
        expect(loss(thick)).toBeLessThan((k / thick) * (wall - around));
      },
    ),
  );
  const thin = wallLoss({ wall: 400, air: 300, height: 0.2, insulation: { thickness: 0.001, conductivity: 5 } });
  expect(thin / wallLoss({ wall: 400, air: 300, height: 0.2 })).toBeGreaterThan(0.99);
});

test("wallLoss through insulation balances: conduction equals what the face gives off", () => {
  const [thickness, conductivity] = [0.02, 0.06];
  const loss = wallLoss({ wall: 420, air: 295, height: 0.3, insulation: { thickness, conductivity } });
  const face = 420 - (loss * thickness) / conductivity;
  expect(wallLoss({ wall: face, air: 295, height: 0.3 }) / loss).toBeCloseTo(1, 8);
});

test("wallLoss convects less in thin air", () => {
  const at = (pressure: number) => wallLoss({ wall: 400, air: 295, height: 0.2, emissivity: 0, pressure });
  expect(at(80_000) / at(101_325)).toBeCloseTo(Math.sqrt(80_000 / 101_325), 6);
});

test.each([
  [{ wall: 600, air: 300, height: 0.2 }, /invalid wall temperature: 600 K; 233.15 to 573.15 K/],
  [{ wall: 400, air: 400, height: 0.2 }, /invalid air temperature/],
  [{ wall: 400, air: 300, height: 8 }, /invalid height of the wall: 8 m; 0.05 to 3 m/],
  [{ wall: 400, air: 300, height: Number.NaN }, /invalid height/],
  [{ wall: 400, air: 300, height: 1, emissivity: 1.1 }, /invalid emissivity/],
  [{ wall: 400, air: 300, height: 1, pressure: 14.7 }, /invalid pressure/],
  [
    { wall: 400, air: 300, height: 1, insulation: { thickness: 25, conductivity: 0.04 } },
    /invalid insulation thickness/,
  ],
  [{ wall: 400, air: 300, height: 1, insulation: { thickness: 0.1, conductivity: 0 } }, /insulation conductivity/],
])("wallLoss refuses %j", (givens, message) => {
  expect(() => wallLoss(givens)).toThrow(RangeError);
  expect(() => wallLoss(givens)).toThrow(message);
});

test("freeConvection stops at the end of its law", () => {
  const inCold = (height: number) => freeConvection(verticalPlate, 500, 250, height, 101_325);
  expect(inCold(8)).toBeGreaterThan(0);
  expect(() => inCold(12)).toThrow(/invalid Rayleigh number: \d.\d+e\+13; at most 1e\+13/);
});

test("freeConvection of a level plate stops at the end of its law too", () => {
  const inCold = (L: number) => freeConvection(hotPlateUp, 500, 250, L, 101_325);
  expect(inCold(1.5)).toBeGreaterThan(0);
  expect(() => inCold(3)).toThrow(/invalid Rayleigh number: \d.\d+e\+11; at most 1e\+11/);
});

const bath = { surface: 380, air: 295, length: 1, width: 0.2, vapourPressure: 40_000, pressure: 101_325 };

test("surfaceLoss: a hotter surface or a greater vapour pressure never loses less", () => {
  fc.assert(
    fc.property(
      between(275, 390),
      step,
      air,
      between(0, 80_000),
      between(0, 20_000),
      (surface, more, around, p, wetter) => {
        const givens = { ...bath, surface, air: around, vapourPressure: p };
        const loss = surfaceLoss(givens);
        const hotter = surfaceLoss({ ...givens, surface: surface + more });
        expect(hotter.convection).toBeGreaterThanOrEqual(loss.convection);
        expect(hotter.radiation).toBeGreaterThan(loss.radiation);
        const wet = surfaceLoss({ ...givens, vapourPressure: p + wetter });
        expect(wet.evaporated).toBeGreaterThanOrEqual(loss.evaporated);
        expect(surfaceLoss({ ...givens, airVapourPressure: 884 + wetter / 2 }).evaporated).toBeLessThanOrEqual(
          loss.evaporated,
        );
      },
    ),
  );
});

test("surfaceLoss of a bath like the air: nothing but what the vapour carries, and damp air condenses on a cold bath", () => {
  const same = surfaceLoss({ ...bath, surface: 295, vapourPressure: 1000, airVapourPressure: 1000 });
  expect(same).toMatchObject({ convection: 0, radiation: 0, evaporation: 0, evaporated: 0, tabled: false });
  const cold = surfaceLoss({ ...bath, surface: 280, vapourPressure: 990, airVapourPressure: 2000 });
  expect(cold.convection).toBeLessThan(0);
  expect(cold.radiation).toBeLessThan(0);
  expect(cold.evaporated).toBeLessThan(0);
});

test("surfaceLoss convects twice as weakly onto a cold surface as from a hot one", () => {
  const hot = surfaceLoss({ ...bath, surface: 305, air: 295 }).convection;
  const cold = surfaceLoss({ ...bath, surface: 295, air: 305 }).convection;
  expect(-cold / hot).toBeCloseTo(0.5, 6);
});

test("surfaceLoss radiates as water does, 0.96 of a black body", () => {
  const black = 5.670374e-8 * (380 ** 4 - 295 ** 4);
  expect(surfaceLoss(bath).radiation / black).toBeCloseTo(0.96, 6);
});

test("surfaceLoss says whether the table reaches", () => {
  const tabled = (vapourPressure: number) => surfaceLoss({ ...bath, vapourPressure }).tabled;
  expect([11_600, 11_700, 97_300, 97_400].map(tabled)).toEqual([false, true, true, false]);
  expect(surfaceLoss({ ...bath, vapourPressure: 101_325 }).tabled).toBe(false);
});

test.each([
  [
    { vapourPressure: 101_326 },
    /invalid vapour pressure: 101,326 Pa; 0 to the air's 101,325 Pa, above which the bath boils/,
  ],
  [{ vapourPressure: -1 }, /invalid vapour pressure/],
  [{ vapourPressure: Number.NaN }, /invalid vapour pressure/],
  [{ surface: 500 }, /invalid surface temperature/],
  [{ length: 38 }, /invalid length/],
  [{ width: 0 }, /invalid width/],
  [{ airVapourPressure: 25_000 }, /invalid vapour pressure in the air/],
  [
    { length: 5, width: 5, surface: 273.15, air: 333.15, pressure: 110_000 },
    /invalid Rayleigh number: 1.\d+e\+10; at most 1e\+10/,
  ],
])("surfaceLoss refuses %j", (wrong, message) => {
  expect(() => surfaceLoss({ ...bath, ...wrong })).toThrow(RangeError);
  expect(() => surfaceLoss({ ...bath, ...wrong })).toThrow(message);
});

test("brineVapourPressure undoes boilingPoint where both reach", () => {
  const brine = fc.record({
    sodiumHydroxide: between(0, 0.9),
    sodiumNitrate: between(0, 0.4),
    sodiumNitrite: between(0, 0.2),
    potassiumNitrate: between(0, 0.2),
  });
  fc.assert(
    fc.property(brine, between(65_000, 104_900), (salts, p) => {
      expect(brineVapourPressure(salts, boilingPoint(salts, p)) / p).toBeCloseTo(1, 8);
    }),
  );
  for (const p of [5_001, 20_000, 80_000]) {
    expect(brineVapourPressure({ sodiumHydroxide: 0.8 }, boilingPoint({ sodiumHydroxide: 0.8 }, p)) / p).toBeCloseTo(
      1,
      8,
    );
  }
});

test("brineVapourPressure ends where boilingPoint does, at 105,000 Pa", () => {
  const brine = { sodiumHydroxide: 0.5 };
  const end = boilingPoint(brine, 105_000);
  expect(brineVapourPressure(brine, end - 0.1)).toBeGreaterThan(104_000);
  expect(() => brineVapourPressure(brine, end + 0.1)).toThrow(/at most 105,000 Pa/);
});

test("brineVapourPressure rises with heat, falls with salt, and is water's without any", () => {
  fc.assert(
    fc.property(between(0.01, 0.5), between(0, 0.2), between(340, 372), between(0.1, 5), (soda, nitrate, T, more) => {
      const brine = { sodiumHydroxide: soda, sodiumNitrate: nitrate };
      const p = brineVapourPressure(brine, T);
      expect(p).toBeLessThan(saturationPressure(T));
      expect(brineVapourPressure(brine, T + more * 0.1)).toBeGreaterThan(p);
      expect(brineVapourPressure({ ...brine, sodiumHydroxide: soda + more * 0.02 }, T)).toBeLessThan(p);
      expect(brineVapourPressure({ ...brine, sodiumNitrate: nitrate + more * 0.02 }, T)).toBeLessThan(p);
    }),
  );
  expect(brineVapourPressure({}, 350)).toBe(saturationPressure(350));
  expect(brineVapourPressure({ sodiumHydroxide: 1e-9 }, 350) / saturationPressure(350)).toBeCloseTo(1, 6);
});

test.each([
  [{ sodiumHydroxide: 0.5 }, 420, /invalid brine: .* at 420 K; brines with a vapour pressure of at most 105,000 Pa/],
  [{ sodiumHydroxide: 1 }, 280, /strength of at most 41.8 wt% sodium hydroxide/],
  [{ sodiumHydroxide: 0.9, sodiumNitrate: 0.4 }, 290, /water activity of at least 0.1/],
  [{ sodiumHydroxide: 50 }, 400, /weaker brines/],
  [{ sodiumHydroxide: 0.5, sodiumNitrate: 0.1 }, 440, /invalid temperature: 440 K; 273.15 to 438.15 K/],
  [{ sodiumHydroxide: -1 }, 400, /invalid sodium hydroxide/],
])("brineVapourPressure refuses %j at %f K", (brine, T, message) => {
  expect(() => brineVapourPressure(brine, T)).toThrow(RangeError);
  expect(() => brineVapourPressure(brine, T)).toThrow(message);
});

test("steelHeat is nothing for no change, adds up, gives back what it took", () => {
  fc.assert(
    fc.property(
      between(273.15, 873.15),
      between(273.15, 873.15),
      between(273.15, 873.15),
      between(0, 100),
      (a, b, c, m) => {
        expect(steelHeat(m, a, a)).toBe(0);
        expect(steelHeat(m, a, b)).toBeCloseTo(-steelHeat(m, b, a), 4);
        expect(Math.abs(steelHeat(m, a, b) + steelHeat(m, b, c) - steelHeat(m, a, c))).toBeLessThan(1e-4);
        if (b > a + 1e-6 && m > 1e-6) expect(steelHeat(m, a, b)).toBeGreaterThan(0);
      },
    ),
  );
  expect(() => steelHeat(-1, 300, 400)).toThrow(/invalid mass of steel: -1 kg; 0 to 1,000,000 kg/);
  expect(() => steelHeat(1, 272, 400)).toThrow(/invalid temperature: 272 K/);
  expect(() => steelHeat(1, 300, 900)).toThrow(/invalid temperature: 900 K/);
});
