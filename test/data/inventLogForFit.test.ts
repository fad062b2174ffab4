import { expect, test } from "vitest";
import { inventLogForFit, logsForFit } from "../../data/generator/inventLogForFit.ts";
import { inventLoggerLog } from "../../data/generator/inventLoggerLog.ts";
import { random } from "../../data/generator/random.ts";
import {
  type BathState,
  boilsAt,
  coldHeat,
  lossesAt,
  startBath,
  steamHeat,
  stepBath,
} from "../../data/generator/roughBath.ts";
import { roughRun } from "../../data/generator/roughRun.ts";
import { readLog } from "../../lib/log/index.ts";

const log = inventLogForFit(7);
const { tank } = log.scenario;

test("inventLogForFit(seed) gives the same log again, and another for another seed", () => {
  const [again, other] = [inventLogForFit(7), inventLogForFit(8)];
  expect(again.text).toBe(log.text);
  expect(JSON.stringify(again.truth)).toBe(JSON.stringify(log.truth));
  expect(other.text).not.toBe(log.text);
});

test("a change of the cup leaves tank, fire and clock of the same seed as they were", () => {
  const wilder = inventLogForFit(7, { cup: 0.06 });
  expect(wilder.scenario.tank).toEqual(tank);
  expect(wilder.run.firstBoil).toBe(log.run.firstBoil);
  expect(wilder.truth.cup).toBeCloseTo(2 * log.truth.cup, 12);
});

test("the water balance of every run closes: start + poured - vapour - carried out = end", () => {
  for (const { run } of logsForFit(101, 40)) {
    const { start, poured, vapour, carried, end } = run.waterAccount;
    expect(start + poured - vapour - carried - end).toBeCloseTo(0, 9);
    expect(run.poured.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(poured, 9);
    expect(end).toBe(run.waterAtEnd);
    const sinceBoil = run.poured.filter(({ time }) => time > run.firstBoil).reduce((sum, { mass }) => sum + mass, 0);
    // What parts and splashes carried out went after the first boil.
    expect(run.waterAtBoil + sinceBoil - run.vapourFromBoil - carried - end).toBeCloseTo(0, 9);
  }
});

test("the heat balance of every run closes: start + fire + poured - lost - vapour - parts - carried out = end", () => {
  for (const { run } of logsForFit(101, 40)) {
    const { start, fire, poured, lost, vapour, parts, carried, end } = run.heatAccount;
    expect((start + fire + poured - lost - vapour - parts - carried - end) / fire).toBeCloseTo(0, 10);
  }
});

test("cold water to steam at 292 °F takes what the steam tables say, within 0.5 %", () => {
  // IAPWS-IF97 tables: 2,764 kJ/kg for steam of 144 °C at 1 atm, 84 kJ/kg for water of 20 °C.
  expect(steamHeat(144.4) - coldHeat(20)).toBeGreaterThan(0.995 * 2.68e6);
  expect(steamHeat(144.4) - coldHeat(20)).toBeLessThan(1.005 * 2.68e6);
});

test("water boils out of the brine for 2.4 to 2.75 MJ/kg, as out of lye of 40 to 50 %", () => {
  // Olsson, Jernqvist and Aly 1997: 2,518 kJ/kg at 40 %, 2,636 at 50 % (their enthalpies, steam tables).
  for (const { scenario } of logsForFit(201, 40)) {
    const { hot, dilution } = scenario.tank;
    const latent = steamHeat(hot) - 4180 * (hot - 20) + dilution;
    expect(latent).toBeGreaterThan(2.4e6);
    expect(latent).toBeLessThan(2.75e6);
  }
});

test("losses rise with the bath's temperature, faster than it does", () => {
  const lossy = { ...tank, losses: 1000, hot: 143, air: 20 };
  expect(lossesAt(lossy, 20)).toBeCloseTo(0, 9);
  expect(lossesAt(lossy, 143)).toBeCloseTo(1000, 6);
  expect(lossesAt(lossy, 81.5)).toBeLessThan(500);
  expect(lossesAt(lossy, 81.5)).toBeGreaterThan(300);
});

test("vapour leaves below the boil, and more the nearer the boil", () => {
  const line = boilsAt(tank, startBath(tank, 20), tank.water);
  const vapour = [60, 30, 10, 2].map((below) => stepBath(tank, startBath(tank, line - below), 0, 0, 20).vapour);
  expect(vapour).toEqual([...vapour].sort((a, b) => a - b));
  expect(vapour[0]).toBeGreaterThan(0);
  expect(vapour[3]).toBeGreaterThan(0.9 * tank.topEvaporation);
  expect(vapour[3]).toBeLessThan(tank.topEvaporation);
});

test("the heat that `stepBath` is given over an hour of even boiling turns into steam at the bath's latent heat", () => {
  const still = { ...tank, losses: 0 };
  const state: BathState = startBath(still, boilsAt(still, startBath(still, 20), still.water));
  const before = { water: state.water, T: state.T };
  let vapour = 0;
  for (let s = 0; s < 600; s++) vapour += stepBath(still, state, 3000, 0, 20).vapour;
  expect(state.water).toBeCloseTo(before.water - vapour, 9);
  expect(state.T).toBeCloseTo(boilsAt(still, state, state.water), 4);
  const capacity = 4180 * before.water + 1950 * (still.hydroxide + still.nitrate) + still.steel;
  const latent = steamHeat(before.T) - 4180 * (before.T - 20) + still.dilution;
  expect(vapour * latent + capacity * (state.T - before.T)).toBeGreaterThan(0.98 * 600 * 3000);
  expect(vapour * latent + capacity * (state.T - before.T)).toBeLessThan(1.02 * 600 * 3000);
});

test("`makeUp` fed evenly holds the ratio of a bath on the same steady heat", () => {
  const { fire, starts, mixing, lag } = log.scenario;
  const none = { sd: 0, time: 200 };
  const even = { gusts: [none, none] as const, burner: [], fades: 0, carbonate: 0, holds: 3600, hottest: 200 };
  const calm = { tank, fire, starts, mixing, lag, ...even };
  const T = log.run.bath[log.run.firstBoil] ?? Number.NaN;
  const net = calm.fire - lossesAt(tank, T);
  const rate = net / (steamHeat(T) - coldHeat(tank.tap));
  const run = roughRun({ ...calm, pours: (_time, _shown, since) => (since >= 0 ? rate : 0) }, random(1));
  expect(run.waterAtEnd / run.waterAtBoil).toBeGreaterThan(0.99);
  expect(run.waterAtEnd / run.waterAtBoil).toBeLessThan(1.01);
});

test("`waterTo(target)` poured into the bath at its end makes it boil at the target", () => {
  for (const { run, scenario, truth } of logsForFit(301, 10)) {
    const target = truth.boilingPointAtEnd - 3;
    const kg = truth.waterTo(target);
    expect(kg).toBeGreaterThan(0);
    expect(boilsAt(scenario.tank, run.last, run.waterAtEnd + kg) + 273.15).toBeCloseTo(target, 6);
    expect(truth.waterTo(truth.boilingPointAtEnd)).toBeCloseTo(0, 6);
    expect(truth.waterTo(target + 6)).toBeLessThan(0);
  }
});

test("`untilOut(target, band)` grows with the band, and is 0 outside it", () => {
  for (const { truth } of logsForFit(301, 10)) {
    const here = truth.boilingPointAtEnd;
    const [narrow, wide] = [truth.untilOut(here, 0.5), truth.untilOut(here, 2)];
    expect(narrow).toBeGreaterThan(0);
    expect(wide).toBeGreaterThan(narrow);
    expect(truth.untilOut(here + 3, 2)).toBe(0);
  }
});

test("rows stand in the order of their times, begin at 0 and end with the end", () => {
  for (const { rows, text } of logsForFit(401, 60)) {
    const times = rows.map(({ time }) => time);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times[0]).toBe(0);
    expect(rows.at(-1)?.note).toBe("end");
    expect(text.trimEnd().split("\n")).toHaveLength(rows.length + 1);
  }
});

test("readLog(text) reads every row of the logs as it was meant", () => {
  for (const { rows, text, kind } of logsForFit(501, 60)) {
    const { run, problems } = readLog(text);
    expect(problems).toEqual([]);
    const count = (what: string) => run.entries.filter((entry) => entry.kind === what).length;
    expect(count("reading")).toBe(rows.filter(({ fahrenheit }) => fahrenheit !== undefined).length);
    if (kind.habit !== "drip") expect(count("addition")).toBe(kind.pours - kind.unwritten);
    expect(count("burner")).toBe(rows.filter(({ note }) => note?.startsWith("burner")).length);
  }
});

test("inventLoggerLog(seed) is two hours at 1 Hz that readLog reads, with the pours typed in", () => {
  const logger = inventLoggerLog(11);
  expect(inventLoggerLog(11).text).toBe(logger.text);
  const { run, problems } = readLog(logger.text);
  expect(problems).toEqual([]);
  expect(run.entries.filter(({ kind }) => kind === "reading")).toHaveLength(logger.truth.end + 1);
  expect(logger.truth.end).toBeGreaterThan(6900);
  expect(run.entries.filter(({ kind }) => kind === "addition")).toHaveLength(logger.truth.poured.length);
  expect(logger.truth.poured.length).toBeGreaterThan(2);
  expect(logger.truth.boilOff).toBeGreaterThan(0);
});

test("the logger's noise forgets itself after 20 s", () => {
  // Differences over 5 s: twice the variance less the part that is kept; the bath itself moves little in 5 s.
  const ratios = [21, 22, 23, 24, 25, 26].map((seed) => {
    const { text, truth } = inventLoggerLog(seed);
    const read = text
      .split("\n")
      .slice(1, -1)
      .map((line) => Number(line.split(",")[1]));
    const steps = read
      .slice(5)
      .map((T, i) => (T - (read[i] ?? T)) ** 2)
      .sort((a, b) => a - b);
    // The lower nine tenths of squares hold 0.556 of a normal's variance (chi-squared, from memory); pours are left out.
    const kept = steps.slice(0, Math.floor(0.9 * steps.length));
    const variance = kept.reduce((sum, x) => sum + x, 0) / steps.length / 0.556;
    return variance / (2 * truth.noise.sd ** 2 * (1 - Math.exp(-5 / 20)));
  });
  const mean = ratios.reduce((sum, x) => sum + x, 0) / ratios.length;
  expect(mean).toBeGreaterThan(0.8);
  expect(mean).toBeLessThan(1.3);
});
