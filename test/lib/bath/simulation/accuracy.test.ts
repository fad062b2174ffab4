import { expect, test } from "vitest";
import { brineCurve } from "../../../../lib/bath/brineCurve.ts";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type { SimulationSetup } from "../../../../lib/bath/simulationTypes.ts";
import {
  boilingPoint,
  brineHeatCapacity,
  steamEnthalpy,
  waterEnthalpy,
  waterInBrineEnthalpy,
} from "../../../../lib/physics/index.ts";
import { apart, busy, cold, minutes, run90, salts, setup } from "./baths.ts";

test("halving the step moves no temperature of 90 min by 0.01 °F, and steps of 10 s are within 0.005 °F of 0.5 s", () => {
  const fine = run90(0.5);
  const ten = run90(10);
  expect(apart(ten, run90(5))).toBeLessThan(0.01);
  expect(apart(run90(20), fine)).toBeLessThan(0.02);
  expect(apart(ten, fine)).toBeLessThan(0.005);
  expect(apart(run90(30), fine)).toBeLessThan(0.04);
  expect(fine.course.filter(({ state }) => state === "boiling").length).toBeGreaterThan(20);
});

test("the error falls with the square of the step", () => {
  const fine = run90(0.5);
  const ratio = apart(run90(20), fine) / apart(run90(5), fine);
  expect(ratio).toBeGreaterThan(12);
});

const fitted = {
  ...setup,
  tank: { length: 0.965, width: 0.203, depth: 0.2 },
  burner: { heat: 6400 },
  losses: { wall: 14, top: 5 },
} satisfies SimulationSetup;

/**
 * The same bath as differential equations in W and T, by Runge and Kutta's fourth order with steps of 4 s, from heat
 * capacity, partial enthalpy and boiling point: no energy is summed, nothing is flashed.
 */
function byEquations(end: number, fire: (t: number) => number, feed: (t: number) => number): number[] {
  const air = 293.15;
  const p = 101_325;
  const mass = salts.sodiumHydroxide + salts.sodiumNitrate;
  const brine = (W: number) => ({ sodiumHydroxide: salts.sodiumHydroxide / W, sodiumNitrate: salts.sodiumNitrate / W });
  const boils = (W: number) => boilingPoint(brine(W), p);
  const brings = waterEnthalpy(290);
  const warming = (t: number, W: number, T: number): [number, number] => {
    const h = waterInBrineEnthalpy(brine(W), T);
    const capacity = (W + mass) * brineHeatCapacity(brine(W), T);
    return [feed(t), (fire(t) - 19 * (T - air) + feed(t) * (brings - h)) / capacity];
  };
  const boilOff = (t: number, W: number): number => {
    const T = boils(W);
    const slope = (boils(W * 1.0005) - boils(W * 0.9995)) / (0.001 * W);
    const h = waterInBrineEnthalpy(brine(W), T);
    const follow = (W + mass) * brineHeatCapacity(brine(W), T) * slope;
    const heat = fire(t) - 19 * (T - air) + feed(t) * (brings - h - follow);
    return heat / (steamEnthalpy(T, p) - h - follow);
  };
  const rates =
    (boiling: boolean) =>
    (t: number, W: number, T: number): [number, number] =>
      boiling ? [feed(t) - boilOff(t, W), 0] : warming(t, W, T);
  const move = (boiling: boolean, t: number, W: number, T: number, h: number): [number, number] => {
    const f = rates(boiling);
    const [a, b] = f(t, W, T);
    const [c, d] = f(t + h / 2, W + (h / 2) * a, T + (h / 2) * b);
    const [e, g] = f(t + h / 2, W + (h / 2) * c, T + (h / 2) * d);
    const [k, l] = f(t + h - 1e-9, W + h * e, T + h * g);
    const water = W + (h / 6) * (a + 2 * c + 2 * e + k);
    return [water, boiling ? boils(water) : T + (h / 6) * (b + 2 * d + 2 * g + l)];
  };
  const step = 4;
  let [W, T] = [cold.water, cold.temperature];
  let boiling = false;
  const course = [T];
  for (let t = 0; t < end; t += step) {
    if (boiling && boilOff(t, W) < 0) boiling = false;
    let [water, next] = move(boiling, t, W, T, step);
    if (!boiling && next > boils(water)) {
      // The boil begins in this step: find where, and go on from there.
      let [low, high] = [0, step];
      for (let i = 0; i < 50; i++) {
        const middle = (low + high) / 2;
        const [there, warm] = move(false, t, W, T, middle);
        if (warm > boils(there)) high = middle;
        else low = middle;
      }
      const [there] = move(false, t, W, T, low);
      boiling = true;
      [water, next] = move(true, t + low, there, boils(there), step - low);
    }
    [W, T] = [water, next];
    if ((t + step) % 60 === 0) course.push(T);
  }
  return course;
}

test("the course is that of the differential equations, solved another way, within 0.005 °F", () => {
  const share = (t: number) => (t < 2400 ? 1 : t < 3600 ? 0.7 : t < 4200 ? 0 : 1.1);
  const feed = (t: number) => (t >= 1800 && t < 3000 ? 0.0014 : 0) + (t >= 4320 && t < 4380 ? 0.01 : 0);
  const equations = byEquations(5400, (t) => 6400 * share(t), feed);
  const run = simulateBath(
    fitted,
    cold,
    {
      end: 5400,
      events: [
        { kind: "feed", from: 1800, to: 3000, rate: 0.0014, temperature: 290 },
        { kind: "slug", time: 4320, water: 0.6, temperature: 290 },
        { kind: "burner", time: 2400, share: 0.7 },
        { kind: "burner", time: 3600, share: 0 },
        { kind: "burner", time: 4200, share: 1.1 },
      ],
    },
    { record: minutes(5400), mixing: 60 },
  );
  const states = run.course.map(({ state }) => state);
  expect(states.filter((state) => state === "boiling").length).toBeGreaterThan(30);
  expect(states.filter((state) => state === "warming").length).toBeGreaterThan(20);
  const misses = run.course.map(({ T }, i) => 1.8 * Math.abs(T - (equations[i] ?? Number.NaN)));
  expect(misses.length).toBe(equations.length);
  expect(Math.max(...misses)).toBeLessThan(0.005);
});

test("a curve handed over, as a table or as it is worked out, gives the same course", () => {
  const curve = brineCurve(salts, 101_325);
  const lnRatio = Array.from({ length: 471 }, (_, i) => -4 + i * 0.01);
  const table = { lnRatio, T: lnRatio.map((one) => curve.boils(one)) };
  const schedule = { end: 5400, events: busy };
  const own = simulateBath(setup, cold, schedule, {});
  expect(apart(simulateBath(setup, cold, schedule, { curve }), own)).toBe(0);
  expect(apart(simulateBath(setup, cold, schedule, { curve: table }), own)).toBeLessThan(1e-4);
});

test.each(["power", "water", "departure", "loss"] as const)("it is smooth under tiny moves of the %s", (what) => {
  const end = (by: number): number => {
    const one = 1 + by;
    const burner = { heat: what === "power" ? 6400 * one : 6400 };
    const losses = { wall: what === "loss" ? 14 * one : 14, top: 5, evaporation: 0.1 };
    const departure = { offset: what === "departure" ? by : 0, scale: 1 };
    const charge = { ...cold, water: what === "water" ? 6.6 * one : 6.6, departure };
    return simulateBath({ ...fitted, burner, losses }, charge, { end: 3500, events: busy.slice(0, 6) }).end.T;
  };
  const slope = (h: number) => (end(h) - end(-h)) / (2 * h);
  const [wide, narrow] = [slope(1e-4), slope(1e-7)];
  expect(Math.abs(wide)).toBeGreaterThan(0.1);
  expect(Math.abs(narrow / wide - 1)).toBeLessThan(1e-3);
});
