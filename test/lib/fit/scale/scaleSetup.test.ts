import fc from "fast-check";
import { expect, test } from "vitest";
import { cylinderGives } from "../../../../lib/fit/scale/cylinderGives.ts";
import { type FitToScale, oneMeasurement, plainProportion, scaleSetup } from "../../../../lib/fit/scale/index.ts";
import { normalOf, quasiRandom } from "../../../../lib/fit/scale/quasiRandom.ts";
import { half } from "./judgeTanks.ts";

const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
const fit: FitToScale = { boilOff: { value: 3e-3, standardUncertainty: 1.5e-4 } };
const options = { pressure: 101_325, draws: 500 };
const long = (times: number, count: number) => ({
  tank: { ...old.tank, length: 0.61 * times },
  burners: { ...burners, count },
});

test("the same setup again gives back what was fitted", () => {
  const { boilOff } = scaleSetup(fit, old, old, options);
  expect(Math.abs(boilOff.value / fit.boilOff.value - 1)).toBeLessThan(0.03);
  expect(half(boilOff)).toBeLessThan(0.16);
});

test("a longer tank on the same fire boils off less, and is slower; more burners bring more", () => {
  const one = scaleSetup(fit, old, long(2.5, 1), options);
  const near = scaleSetup(fit, old, long(1.25, 1), options);
  const three = scaleSetup(fit, old, long(2.5, 3), options);
  expect(one.boilOff.value).toBeLessThan(near.boilOff.value);
  expect(one.heatUp.value).toBeGreaterThan(near.heatUp.value);
  expect(one.heatUp.value).toBeGreaterThan(one.timeTo10Below.value);
  expect(three.boilOff.value).toBeGreaterThan(2 * one.boilOff.value);
  expect(three.gas.value / one.gas.value).toBeGreaterThan(2.7);
  expect(three.gas.value / one.gas.value).toBeLessThan(3);
});

test("the farther from what was measured, the wider; without a log widest of all", () => {
  const widths = [1, 2, 3, 4].map((times) => half(scaleSetup(fit, old, long(times, 1), options).boilOff));
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  const blind = scaleSetup(undefined, old, long(2, 1), options);
  expect(half(blind.boilOff)).toBeGreaterThan(1.3 * (widths[1] as number));
  expect(blind.remarks.join(" ")).toContain("Nothing was logged");
});

test("a fire that may stall has a heat-up without an upper end, and says how likely it boils", () => {
  const weak = { ...burners, jetDiameter: 0.0011 };
  const small = { boilOff: { value: 1.05e-3, standardUncertainty: 6e-5 } };
  const said = scaleSetup(small, { ...old, burners: weak }, { ...long(2, 1), burners: weak }, options);
  expect(said.boilsSteadily).toBeGreaterThan(0.02);
  expect(said.boilsSteadily).toBeLessThan(0.97);
  expect(said.heatUp.interval95[1]).toBe(Infinity);
  expect(said.remarks.join(" ")).toContain("probability");
});

test("a boil-off that the jets cannot have fed is called a contradiction", () => {
  const remark = "hardly agrees";
  expect(scaleSetup(fit, old, long(2, 2), options).remarks.join(" ")).not.toContain(remark);
  const wild = { boilOff: { value: 0.03, standardUncertainty: 0.0005 } };
  expect(scaleSetup(wild, old, long(2, 2), options).remarks.join(" ")).toContain(remark);
  const readings = [0, 300, 600].map((time) => ({ time, temperature: 290 + 0.004 * time }));
  const still = scaleSetup(fit, old, long(2, 2), { ...options, plainWaterLog: { water: 23, readings } });
  expect(still.remarks.join(" ")).toContain(remark);
});

test("few draws come near many, the same seed gives the same, another seed nearly the same", () => {
  const many = scaleSetup(fit, old, long(2, 2), { ...options, draws: 4000 });
  const few = scaleSetup(fit, old, long(2, 2), { ...options, draws: 200 });
  const other = scaleSetup(fit, old, long(2, 2), { ...options, seed: 7 });
  const width = many.boilOff.interval95[1] - many.boilOff.interval95[0];
  for (const { boilOff } of [few, other]) {
    boilOff.interval95.forEach((end, i) => {
      expect(Math.abs(end - (many.boilOff.interval95[i] as number)) / width).toBeLessThan(0.08);
    });
  }
  expect(scaleSetup(fit, old, long(2, 2), { ...options, seed: 7 })).toEqual(other);
  // Plain data: it goes to a worker and comes back.
  expect(structuredClone(other)).toEqual(other);
});

test("how the fit's heat and boiling curve go together is carried into the drift", () => {
  const parameters = [
    { name: "heat into the bath", value: 8100, standardUncertainty: 810 },
    { name: "boiling curve scale", value: 1, standardUncertainty: 0.2 },
  ] as const;
  const drift = (sign: number) =>
    scaleSetup(
      {
        ...fit,
        parameters,
        covariance: {
          names: ["heat into the bath", "boiling curve scale"],
          matrix: [
            [0.01, sign * 0.018],
            [sign * 0.018, 0.04],
          ],
        },
      },
      old,
      long(2, 2),
      options,
    ).driftUnfed;
  expect(half(drift(-1))).toBeLessThan(0.8 * half(drift(1)));
});

test("an unknown depth of liquid widens the heat-up and leaves the boil-off", () => {
  const { liquidDepth: _, ...tank } = long(2, 2).tank;
  const known = scaleSetup(fit, old, long(2, 2), options);
  const unknown = scaleSetup(fit, old, { ...long(2, 2), tank }, options);
  expect(half(unknown.heatUp)).toBeGreaterThan(half(known.heatUp));
  expect(unknown.boilOff).toEqual(known.boilOff);
});

test("plain water in the new tank is the measurement that helps most, and helps by about as much as was said", () => {
  const to = long(2, 2);
  const worth = oneMeasurement(fit, old, to, options);
  expect(worth[0]?.on).toBe("new tank");
  const gains = worth.map(({ gain }) => gain);
  expect(gains).toEqual([...gains].sort((a, b) => b - a));
  const ten = worth.find(({ what }) => what.startsWith("ten minutes"));
  // A log that says what the median world says: water that warms as its net heat has it.
  const { share, gas, losses } = scaleSetup(fit, old, to, options);
  const net = share.value * 1.1 * gas.value * 50.22e6 - losses.value * 0.3 - 600;
  const water = 20;
  const readings = Array.from({ length: 11 }, (_, i) => ({
    time: 60 * i,
    temperature: 290 + (60 * i * net) / (water * 4180 + 8000),
  })).filter(({ temperature }) => temperature < 371);
  const after = scaleSetup(fit, old, to, { ...options, plainWaterLog: { water, readings } });
  expect(Math.abs(half(after.boilOff) - (ten?.boilOff.after ?? 0))).toBeLessThan(0.03);
});

test("a log of plain water that warms faster says a hotter fire", () => {
  const said = (rate: number) => {
    const readings = [0, 60, 120, 180, 240, 300].map((time) => ({ time, temperature: 290 + rate * time }));
    return scaleSetup(fit, old, long(2, 2), { ...options, plainWaterLog: { water: 23, readings } }).boilOff.value;
  };
  expect(said(0.2)).toBeGreaterThan(1.1 * said(0.15));
});

test("proportion to length doubles what twice the length boils off; on the same fire it is far over", () => {
  const { byLength, byGas } = plainProportion(fit, old, long(2, 1), options);
  expect(byLength.boilOff).toBeCloseTo(6e-3, 12);
  expect(byLength.over.interval95[0]).toBeGreaterThan(0.3);
  expect(byGas.boilOff).toBeCloseTo(3e-3, 12);
});

// A cylinder of 100 lb by the published table; smaller ones by nothing but our reckoning, which must say so.
test("a small cylinder's draw is called unpublished, and a fire beyond it is warned of", () => {
  const small = cylinderGives({ size: 9.07, contents: 4.5 }, 288.7);
  expect(small.published).toBe(false);
  expect(cylinderGives({ size: 45.36, contents: 22.7 }, 288.7).published).toBe(true);
  const { remarks } = scaleSetup(fit, old, long(3, 4), { ...options, cylinder: { size: 9.07, contents: 4.5 } });
  expect(remarks.join(" ")).toContain("No published figure");
  expect(remarks.join(" ")).toContain("chills");
});

test("a cylinder gives less when colder or emptier, down to nothing", () => {
  const gives = (contents: number, air: number) => cylinderGives({ size: 45.36, contents }, air).value;
  expect(gives(20, 244)).toBeLessThan(0.8 * gives(20, 256));
  expect(gives(1, 288)).toBeLessThan(0.3 * gives(5, 288));
  expect(gives(20, 225)).toBe(0);
});

test("whatever setups are in range, the answers are in order and can be", () => {
  const setup = fc.record({
    tank: fc.record({
      length: fc.double({ min: 0.1, max: 5, noNaN: true }),
      width: fc.double({ min: 0.05, max: 2, noNaN: true }),
      depth: fc.double({ min: 0.05, max: 1, noNaN: true }),
    }),
    burners: fc.record({
      count: fc.integer({ min: 1, max: 20 }),
      jetDiameter: fc.double({ min: 0.0003, max: 0.005, noNaN: true }),
      pressure: fc.double({ min: 200, max: 350_000, noNaN: true }),
      skirted: fc.boolean(),
    }),
  });
  const boilOff = fc.double({ min: 1e-5, max: 0.1, noNaN: true });
  const pressure = fc.double({ min: 75_000, max: 105_000, noNaN: true });
  fc.assert(
    fc.property(setup, setup, boilOff, pressure, (from, to, value, air) => {
      const said = scaleSetup({ boilOff: { value, standardUncertainty: 0.05 * value } }, from, to, {
        pressure: air,
        draws: 50,
      });
      for (const name of ["boilOff", "heatUp", "timeTo10Below", "gas", "driftUnfed", "losses"] as const) {
        const [low, high] = said[name].interval95;
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low <= said[name].value && said[name].value <= high, name).toBe(true);
      }
      expect(said.boilsSteadily).toBeGreaterThanOrEqual(0);
      expect(said.boilsSteadily).toBeLessThanOrEqual(1);
      expect(Number.isFinite(said.boilOff.interval95[1])).toBe(true);
    }),
    { numRuns: 60 },
  );
});

const wrongs: [string, () => unknown][] = [
  ["invalid length of the new tank", () => scaleSetup(fit, old, long(20, 1), options)],
  ["invalid number of burners", () => scaleSetup(fit, old, long(2, 1.5), options)],
  ["missing old tank", () => scaleSetup(fit, null as never, old, options)],
  ["missing burners under the new tank", () => scaleSetup(fit, old, { tank: old.tank } as never, options)],
  ["invalid target: 370 K", () => scaleSetup(fit, old, old, { ...options, target: 370 })],
  ["invalid air pressure", () => scaleSetup(fit, old, old, { pressure: 1013 })],
  [
    "invalid boil-off of the fit",
    () => scaleSetup({ boilOff: { value: -1, standardUncertainty: 0 } }, old, old, options),
  ],
  ["invalid log of plain water", () => scaleSetup(fit, old, old, { ...options, plainWaterLog: { water: 9 } })],
  ["invalid number of draws", () => scaleSetup(fit, old, old, { ...options, draws: 3 })],
];

test.each(wrongs)("scaleSetup says %j", (message, work) => {
  expect(work).toThrow(message);
});

// Standard normal quantiles of any table (Abramowitz and Stegun, table 26.1; from memory).
test.each([
  [0.5, 0],
  [0.84134, 1],
  [0.975, 1.95996],
  [0.995, 2.57583],
  [0.0013499, -3],
])("normalOf(%f) is %f", (share, z) => {
  expect(Math.abs(normalOf(share) - z)).toBeLessThan(5e-4);
});

test("quasi-random points fill every part of every side evenly", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
      const point = quasiRandom(4, seed);
      [2, 3, 5, 7].forEach((base, j) => {
        const counts = new Array<number>(base * base).fill(0);
        for (let i = 0; i < base * base; i++) {
          const place = Math.floor(base * base * (point(i)[j] as number));
          counts[place] = (counts[place] ?? 0) + 1;
        }
        expect(counts.every((count) => count === 1)).toBe(true);
      });
    }),
    { numRuns: 20 },
  );
});
