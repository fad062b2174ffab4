import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inventLogForFit } from "../../../../data/generator/inventLogForFit.ts";
import { simulateBath, waterBalance } from "../../../../lib/bath/index.ts";
import { type FitGivens, type FittedRun, fitRun } from "../../../../lib/fit/index.ts";
import { readLog, strikeOut } from "../../../../lib/log/index.ts";
import type { Run } from "../../../../lib/log/types.ts";
import { standardPressure } from "../../../../lib/physics/index.ts";
import { entry, reading } from "../../bath/logs.ts";

const kelvin = (fahrenheit: number) => (fahrenheit + 459.67) / 1.8;
const givens: FitGivens = {
  salts: { sodiumHydroxide: 8, sodiumNitrate: 3 },
  pressure: 101_325,
  target: kelvin(292),
  band: 2 / 1.8,
};
const runOf = (text: string): Run => readLog(text).run;
const answersOf = (fit: FittedRun) => ({
  boilOff: fit.boilOff,
  water: fit.water,
  boilingPointOffset: fit.boilingPointOffset,
  makeUp: fit.makeUp,
  waterToTarget: fit.waterToTarget,
  untilOutOfBand: fit.untilOutOfBand,
  ...Object.fromEntries(fit.parameters.map(({ name, answer }) => [name, answer])),
});
const finite = (fit: FittedRun) => {
  for (const [name, { value, standardUncertainty, interval95 }] of Object.entries(answersOf(fit))) {
    expect([name, value, standardUncertainty, ...interval95].slice(1).every(Number.isFinite), name).toBe(true);
    expect(interval95[0], name).toBeLessThanOrEqual(value);
    expect(interval95[1], name).toBeGreaterThanOrEqual(value);
    expect(standardUncertainty, name).toBeGreaterThanOrEqual(0);
  }
};

/** Pours of 12 fl oz every 8 min into a bath that loses as much; one row may be changed. */
function steady(change: (row: string[], minute: number) => string[] = (row) => row): string {
  const rows = ["time (min),temp F,water (fl oz)"];
  for (let minute = 0; minute <= 64; minute += 2) {
    const since = minute % 8;
    const row = [String(minute), (290 + 0.25 * since).toFixed(1), since === 6 ? "12" : ""];
    rows.push(change(row, minute).join(","));
  }
  return rows.join("\n");
}

describe("what a maker hands in", () => {
  test.each([
    ["a perfectly steady hold", "min,F,fl oz\n0,292,4\n5,292,4\n10,292,4\n15,292,4\n20,292,4\n25,292,\n"],
    ["an all-blank water column", "min,F,water (fl oz)\n0,288,\n5,289,\n10,290,\n15,291,\n20,292,\n"],
    ["three readings", "min,F,water (fl oz)\n0,289,\n10,291,\n20,292,\n"],
    ["two readings", "min,F\n0,289\n10,291\n"],
    ["a heat-up and a hold", "min,F,fl oz\n0,80,\n10,150,\n20,220,\n30,285,\n32,290,\n40,292,8\n48,292,8\n56,292,\n"],
    ["a bath that goes nearly dry", "min,F\n0,290\n10,296\n20,305\n30,318\n40,335\n50,360\n"],
    [
      "a clock past midnight",
      "time,F,fl oz\n11:50 pm,290,\n11:58 pm,292,12\n12:06 am,290,\n12:14 am,292,12\n12:22 am,291,\n",
    ],
  ])("fitRun(run, givens) answers for %s, finite and as wide as it is", (_, text) => {
    const fit = fitRun(runOf(text), givens);
    finite(fit);
    expect(fit.boilOff.value).toBeGreaterThan(0);
    expect(fit.residuals.finding).not.toBe("");
  });

  test("fitRun(run, givens) says in words that a log without a pour tells little, and stays wide", () => {
    const fit = fitRun(runOf("min,F\n0,289\n10,291\n20,292\n"), givens);
    expect(fit.remarks.join(" ")).toContain("No water was written down");
    expect((fit.boilOff.interval95[1] - fit.boilOff.interval95[0]) / 2).toBeGreaterThan(0.15 * fit.boilOff.value);
  });

  test("fitRun(run, givens) at 3,000 m answers as at sea level but for the curve", () => {
    const fit = fitRun(runOf(steady()), { ...givens, pressure: standardPressure(3000), target: kelvin(291) });
    finite(fit);
    expect(fit.boilOff.value * 3600).toBeGreaterThan(1);
  });

  test("fitRun(run, givens) refuses a log that never boils, in the maker's words", () => {
    expect(() => fitRun(runOf("min,F\n0,80\n10,120\n20,160\n"), givens)).toThrow(/missing boil: the hottest reading/);
  });

  test("fitRun(run, givens) refuses a burner without heat", () => {
    expect(() => fitRun(runOf(steady()), { ...givens, burner: { power: 0 } })).toThrow(
      "invalid burner: 0 W; more than 0 W",
    );
  });

  test.each([
    [{ power: 15_000 }, 0.25, 0.4],
    [15_000, 0.25, 0.4],
    [{ power: 15_000, skirted: true }, 0.15, 0.3],
    [{ power: 15_000, efficiency: 0.35 }, 0.15, 0.28],
    [{ heat: 5000 }, 0.12, 0.25],
  ])("fitRun(run, { burner: %j }) takes it for what it tells, and no more", (burner, least, most) => {
    const heat = fitRun(runOf(steady()), { ...givens, burner }).parameters[0];
    expect(heat?.name).toBe("heat into the bath");
    const relative = (heat?.prior.standardUncertainty ?? 0) / (heat?.prior.value ?? 1);
    expect(relative).toBeGreaterThan(least);
    expect(relative).toBeLessThan(most);
  });

  test("fitRun(run, givens) stays finite whatever the readings are", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            step: fc.integer({ min: 1, max: 30 }),
            F: fc.integer({ min: 250, max: 330 }),
            pour: fc.constantFrom(0, 0, 8, 40),
          }),
          { minLength: 3, maxLength: 20 },
        ),
        (rows) => {
          let time = 0;
          const entries = rows.flatMap(({ step, F, pour }) => {
            time += 60 * step;
            return [reading(time, kelvin(F)), ...(pour > 0 ? [entry("addition", time + 20, pour * 0.0295)] : [])];
          });
          try {
            finite(fitRun({ entries }, givens));
          } catch (error) {
            expect(String(error)).toMatch(/^(Error: missing|RangeError: invalid)/);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("explanations of a log", () => {
  test("fitRun(run, givens) finds the pour that one row of a regular log lacks", () => {
    // 12 fl oz really went in at 30 min: the readings after it go on as before.
    const fit = fitRun(
      runOf(steady((row, minute) => (minute === 30 ? [row[0] ?? "", row[1] ?? "", ""] : row))),
      givens,
    );
    const [found] = fit.probablyUnwritten;
    expect(found?.probability).toBeGreaterThan(0.5);
    expect((found?.time ?? 0) / 60).toBeGreaterThan(22);
    expect((found?.time ?? 0) / 60).toBeLessThan(38);
    expect((found?.mass.value ?? 0) / 0.0295).toBeGreaterThan(7);
    expect((found?.mass.value ?? 0) / 0.0295).toBeLessThan(17);
    expect(found?.reason).toContain("no pour is written for 16 min");
    const all = fitRun(runOf(steady()), givens).boilOff;
    expect(Math.abs(fit.boilOff.value / all.value - 1)).toBeLessThan(0.05);
  });

  test("fitRun(run, givens) sets one misread reading apart, and striking it out changes little more", () => {
    const text = steady((row, minute) => (minute === 26 ? [row[0] ?? "", "280.5", row[2] ?? ""] : row));
    const run = runOf(text);
    const fit = fitRun(run, givens);
    const [slip] = fit.probablyMisread;
    expect(slip?.probability).toBeGreaterThan(0.9);
    expect(slip?.probability).toBeLessThanOrEqual(1);
    expect((slip?.off ?? 0) * 1.8).toBeLessThan(-7);
    const struck = fitRun(strikeOut(run, slip?.id ?? "", "misread"), givens);
    expect(struck.probablyMisread).toEqual([]);
    expect(Math.abs(struck.boilOff.value / fit.boilOff.value - 1)).toBeLessThan(0.03);
  });

  test("fitRun(run, givens) suspects nothing in a clean log", () => {
    const fit = fitRun(runOf(steady()), givens);
    expect(fit.probablyUnwritten).toEqual([]);
    expect(fit.probablyMisread).toEqual([]);
  });
});

describe("what it knows of its own doubt", () => {
  const log = inventLogForFit(70_003);
  const run = runOf(log.text);
  const { told } = log;
  const own: FitGivens = {
    salts: { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate },
    pressure: told.pressure,
    target: told.target,
    band: told.band,
  };
  const fit = fitRun(run, own);

  test("fitRun(run, givens).covariance has the parameters' uncertainties on its diagonal, and is symmetric", () => {
    const { names, matrix } = fit.covariance;
    expect(names).toEqual(fit.parameters.map(({ name }) => name));
    fit.parameters.forEach(({ name, standardUncertainty, value }, i) => {
      const variance = matrix[i]?.[i] ?? Number.NaN;
      const relative = name !== "boiling point offset" && name !== "boiling curve scale" && name !== "cup";
      expect(Math.sqrt(variance) / (standardUncertainty / (relative ? value : 1)), name).toBeCloseTo(1, 2);
      names.forEach((_, j) => {
        expect(matrix[i]?.[j]).toBeCloseTo(matrix[j]?.[i] ?? Number.NaN, 10);
        expect(Math.abs(matrix[i]?.[j] ?? 9)).toBeLessThanOrEqual(
          1.0001 * Math.sqrt(variance * (matrix[j]?.[j] ?? 0)) + 1e-12,
        );
      });
    });
  });

  test("fitRun(run, givens).parameters says what the log told beyond the prior", () => {
    for (const { name, told: word, standardUncertainty, prior } of fit.parameters) {
      expect(standardUncertainty, name).toBeLessThan(1.6 * prior.standardUncertainty);
      expect(word.share >= 0 && word.share <= 1).toBe(true);
    }
    const byName = new Map(fit.parameters.map((one) => [one.name, one.told.word]));
    expect(byName.get("heat into the bath")).toBe("much");
    expect(byName.get("cup")).toBe("nothing");
  });

  test("fitRun(run, givens).logNext is ranked, names widths that shrink, and a scale narrows the boil-off as it promised", () => {
    const gains = fit.logNext.map(({ gain }) => gain);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
    for (const { boilOff, waterToTarget } of fit.logNext) {
      expect(boilOff.after).toBeLessThanOrEqual(boilOff.now);
      expect(waterToTarget.after).toBeLessThanOrEqual(waterToTarget.now);
    }
    // A kitchen mug: of a cup that is known well, weighing it gains too little to be named.
    const mug = fitRun(run, { ...own, cup: { allNight: 0.1, eachPour: 0.05 } });
    const cup = mug.logNext.find(({ what }) => what === "Weigh one full cup");
    const weighed = fitRun(run, { ...own, cup: { allNight: 0.005, eachPour: 0.05 } }).boilOff;
    const half = (weighed.interval95[1] - weighed.interval95[0]) / 2 / weighed.value;
    expect(half / (cup?.boilOff.after ?? Number.NaN)).toBeGreaterThan(0.85);
    expect(half / (cup?.boilOff.after ?? Number.NaN)).toBeLessThan(1.15);
  });

  test("fitRun(run, givens) is never made surer by a worse cup", () => {
    const widths = [0.003, 0.015, 0.03, 0.06].map((allNight) => {
      const { interval95, value } = fitRun(run, { ...own, cup: { allNight, eachPour: 0.05 } }).boilOff;
      return (interval95[1] - interval95[0]) / value;
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  test("fitRun(run, givens) adds the heats up", () => {
    const { steam, makeUpWater, parts, bath, intoBath } = fit.heat;
    expect(intoBath.value).toBeCloseTo(steam.value + makeUpWater.value + parts.value + bath.value, 3);
    expect(fit.heat.wallsAndTop).toBeUndefined();
    const sized = fitRun(run, { ...own, tank: told.tank, burner: { power: 20_000 } }).heat;
    expect(sized.wallsAndTop?.value).toBeGreaterThan(0);
    expect(sized.gas?.value).toBeGreaterThan(0);
  });

  test("fitRun(run, givens).course goes through the readings at the boil", () => {
    const { course } = fit;
    const inside = run.entries.filter(({ kind, quantity, time }) => {
      if (kind !== "reading" || !quantity || time < fit.firstBoil) return false;
      const near = course.filter((moment) => Math.abs(moment.time - time) < 90);
      return near.some(({ low, high }) => quantity.si > low - 1.2 && quantity.si < high + 1.2);
    });
    const all = run.entries.filter(({ kind, time }) => kind === "reading" && time >= fit.firstBoil);
    expect(inside.length).toBeGreaterThan(0.85 * all.length);
  });
});

describe("against the simulated bath, which is worked out another way", () => {
  const tank = { length: 0.9, width: 0.2, depth: 0.2 };
  const ounce = 0.02952;
  /** One firing from 60 °F, read every 2 min to whole °F, without a fault. */
  function fired(heat: number, lag: number) {
    // Poured as fast as it boils, from some minutes after the boil.
    const every = 20 * Math.round((12 * ounce * 2.75e6) / heat / 20);
    const from = 120 * Math.round(((11 + 8.3) * 3000 * 120) / heat / 120) + 600;
    const pours = Array.from({ length: 8 }, (_, i) => from + every * i);
    const end = 120 * Math.round((from + 8 * every) / 120);
    const bath = simulateBath(
      { tank, burner: { heat }, losses: "none", thermometer: { lag } },
      { water: 8.3, salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, temperature: 298 },
      {
        end,
        events: pours.map((time) => ({ kind: "slug", time, water: 12 * ounce, temperature: 288.7 })),
      },
      { record: Array.from({ length: end / 120 + 1 }, (_, i) => 120 * i), mixing: 20 },
    );
    const entries = [
      ...bath.course.flatMap(({ time, shown }) =>
        time % 120 === 0 ? [reading(time, kelvin(Math.round(1.8 * shown - 459.67)))] : [],
      ),
      ...pours.map((time) => entry("addition", time, 12 * ounce)),
    ].sort((a, b) => a.time - b.time);
    const boiling = bath.course.filter(({ state }) => state === "boiling");
    const first = boiling[0]?.time ?? 0;
    const last = bath.course.at(-1);
    const start = bath.course.find(({ time }) => time === first);
    const poured = pours.filter((time) => time > first).length * 12 * ounce;
    const steam = (start?.water ?? 0) + poured - (last?.water ?? 0);
    return { run: { entries }, boilOff: steam / ((last?.time ?? 0) - first), first, stops: bath.stops };
  }

  test.each([
    [4000, 10],
    [5500, 20],
    [7000, 30],
  ])(
    "fitRun finds the heat of %i W and its boil-off within their 95 %% intervals, thermometer lag %i s",
    (heat, lag) => {
      const { run, boilOff, first, stops } = fired(heat, lag);
      expect(stops).toBeUndefined();
      const fit = fitRun(run, { ...givens, water: { value: 8.3, standardUncertainty: 0.2 } });
      expect(Math.abs(fit.firstBoil - first)).toBeLessThan(150);
      expect(fit.boilOff.interval95[0]).toBeLessThan(boilOff);
      expect(fit.boilOff.interval95[1]).toBeGreaterThan(boilOff);
      expect(Math.abs(fit.boilOff.value / boilOff - 1)).toBeLessThan(0.06);
      const found = fit.parameters.find(({ name }) => name === "heat into the bath");
      expect(found?.interval95[0]).toBeLessThan(heat);
      expect(found?.interval95[1]).toBeGreaterThan(heat);
    },
  );

  test("fitRun and waterBalance agree on it", () => {
    const { run } = fired(5500, 15);
    const fit = fitRun(run, givens).boilOff;
    const balance = waterBalance(run, givens).boilOff;
    const halves = Math.hypot(fit.interval95[1] - fit.interval95[0], balance.interval95[1] - balance.interval95[0]) / 2;
    expect(Math.abs(fit.value - balance.value)).toBeLessThan(halves);
  });
});
