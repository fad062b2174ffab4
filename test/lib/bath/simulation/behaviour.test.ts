import { describe, expect, test } from "vitest";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type { ScheduledEvent, SimulatedBath } from "../../../../lib/bath/simulationTypes.ts";
import {
  boilingPoint,
  departedBoilingPoint,
  saturationTemperature,
  solubility,
} from "../../../../lib/physics/index.ts";
import { cold, hot, salts, setup } from "./baths.ts";

const says = ({ events }: SimulatedBath): string[] => events.map((event) => event.says);
const strong = { ...setup, burner: { heat: 9000 } };

test("a cold bath warms, boils where its brine boils, and follows the boiling point up as its water goes", () => {
  const run = simulateBath(setup, cold, { end: 2000 });
  const kelvin = run.course.map(({ T }) => T);
  expect(run.course[0]).toMatchObject({ state: "warming", T: 291, water: 6.6, boilOff: 0 });
  expect(says(run)).toEqual(["the bath boils"]);
  expect(run.end.state).toBe("boiling");
  for (const { T, boilingPoint: at, water, state } of run.course) {
    const published = boilingPoint({ sodiumHydroxide: 5.3 / water, sodiumNitrate: 2.65 / water }, 101_325);
    expect(at).toBeCloseTo(published, 2);
    if (state === "boiling") expect(T).toBe(at);
    else expect(T).toBeLessThan(at);
  }
  expect(kelvin.every((T, i) => i === 0 || T > (kelvin[i - 1] ?? 0))).toBe(true);
  expect(run.end.volume).toBeGreaterThan(0.006);
});

test("a bath with a departure boils where departedBoilingPoint says", () => {
  const departure = { offset: -2, scale: 1.05 };
  const { end } = simulateBath(setup, { ...hot, departure }, { end: 300 });
  const brine = { sodiumHydroxide: 5.3 / end.water, sodiumNitrate: 2.65 / end.water };
  expect(end.T).toBeCloseTo(departedBoilingPoint(brine, 101_325, departure), 2);
});

test("plain water boils at its own boiling point whatever the departure, and is dry when it is gone", () => {
  const water = { water: 1, salts: {}, temperature: 330, departure: { offset: 3, scale: 1 } };
  const run = simulateBath(strong, water, { end: 7200 });
  const boiling = run.course.filter(({ state }) => state === "boiling");
  expect(boiling.length).toBeGreaterThan(5);
  for (const { T } of boiling) expect(T).toBeCloseTo(saturationTemperature(101_325), 6);
  expect(run.stops).toMatchObject({ state: "dry", reason: "the water is gone" });
  expect(run.end.water).toBeCloseTo(0.1 * 0.965 * 0.203, 6);
});

describe("where it ends early", () => {
  test("a bath left alone goes dry where its curve ends, and the last point says so", () => {
    const run = simulateBath(strong, hot, { end: 36_000 });
    expect(run.stops?.state).toBe("dry");
    expect(run.stops?.reason).toMatch(/kg of water is left and the bath is at \d+ K, where the boiling curve ends/);
    expect(run.course.at(-1)).toMatchObject({ state: "dry", time: run.stops?.time });
    expect(run.end.time).toBeLessThan(36_000);
    expect(run.end.water).toBeCloseTo(7.95 / Math.exp(0.7), 6);
    // The time of drying does not hang on the step.
    expect(simulateBath(strong, hot, { end: 36_000 }, { step: 1 }).end.time).toBeCloseTo(run.end.time, 1);
  });

  test("too much water overflows", () => {
    const events: ScheduledEvent[] = [{ kind: "feed", from: 0, to: 6000, rate: 0.01, temperature: 290 }];
    const run = simulateBath(setup, hot, { end: 6000, events });
    expect(run.stops?.state).toBe("overflowing");
    const capacity = 0.965 * 0.203 * 0.2;
    expect(run.end.volume).toBeGreaterThan(capacity);
    expect(run.end.volume).toBeLessThan(1.01 * capacity);
    expect(run.stops?.reason).toBe("the bath is more than the 39.2 L that the tank holds");
  });

  test("parts push the bath over the brim as well", () => {
    const shallow = { ...setup, tank: { length: 0.4, width: 0.15, depth: 0.16 } };
    const volume = simulateBath(shallow, hot, { end: 0 }).end.volume;
    expect(volume).toBeLessThan(0.4 * 0.15 * 0.16);
    const events: ScheduledEvent[] = [{ kind: "parts in", time: 60, mass: 5, temperature: 293 }];
    const deep = { ...shallow, tank: { ...shallow.tank, depth: Math.max(0.05, (volume + 0.0003) / (0.4 * 0.15)) } };
    expect(simulateBath(deep, hot, { end: 120, events }).stops).toMatchObject({ state: "overflowing", time: 60 });
    expect(simulateBath(deep, hot, { end: 120 }).stops).toBeUndefined();
  });

  test("one salt alone comes out as a bath cools, where its published solubility is passed", () => {
    const nitrate = { water: 4, salts: { sodiumNitrate: 5 }, temperature: 360 };
    const off: ScheduledEvent[] = [{ kind: "burner", time: 0, share: 0 }];
    const run = simulateBath(setup, nitrate, { end: 36_000, events: off });
    expect(run.stops?.state).toBe("salt coming out");
    const dissolves = solubility({ sodiumNitrate: 1 }, run.end.T);
    const ratio = dissolves.state === "published" ? dissolves.ratio : Number.NaN;
    expect(5 / run.end.water).toBeGreaterThan(ratio);
    expect(5 / run.end.water).toBeLessThan(1.01 * ratio);
    // With nitrite nobody published where: it cools on.
    const mix = { ...nitrate, salts: { sodiumNitrate: 5, sodiumNitrite: 0.1 } };
    expect(simulateBath(setup, mix, { end: 36_000, events: off }).stops).toBeUndefined();
  });

  test("salt that is not yet dissolved at the start stops nothing: the bath warms until it is", () => {
    const run = simulateBath(setup, { water: 4, salts: { sodiumNitrate: 5 }, temperature: 290 }, { end: 1200 });
    expect(run.course[0]?.state).toBe("salt coming out");
    expect(says(run).slice(0, 2)).toEqual(["not all the salt is dissolved", "all the salt is dissolved"]);
    expect(run.stops).toBeUndefined();
    expect(run.course.at(-1)?.state).not.toBe("salt coming out");
  });
});

test("burner off: it cools towards the air and does not boil", () => {
  const run = simulateBath(setup, hot, { end: 20_000, events: [{ kind: "burner", time: 0, share: 0 }] });
  expect(run.course.slice(1).every(({ state }) => state === "warming")).toBe(true);
  expect(run.course.every(({ T }, i) => i === 0 || T < (run.course[i - 1]?.T ?? 0))).toBe(true);
  expect(run.end.T).toBeLessThan(330);
  expect(run.end.T).toBeGreaterThan(293.15);
  expect(run.totals.heat.fire).toBe(0);
});

describe("water put in", () => {
  const weak = { water: 8, salts: { sodiumNitrate: 3 }, temperature: "boiling" } as const;

  test("a cold slug stops a boil, says for how long, and the larger the longer", () => {
    const stopped = (water: number) =>
      simulateBath(
        setup,
        weak,
        { end: 1800, events: [{ kind: "slug", time: 300, water, temperature: 288.7 }] },
        { step: 5 },
      );
    const [small, large] = [stopped(0.3), stopped(0.6)];
    expect(small.slugs[0]).toMatchObject({ stoppedBoil: true, time: 300, water: 0.3, flashes: 0 });
    const [a, b] = [small.slugs[0]?.stoppedFor ?? Number.NaN, large.slugs[0]?.stoppedFor ?? Number.NaN];
    expect(b / a).toBeGreaterThan(1.8);
    expect(b / a).toBeLessThan(2.4);
    // Warming 0.3 kg by 85 K at the heat that is left of 7 kW after losses and evaporation of some 3 kW.
    expect(a).toBeGreaterThan((0.3 * 4200 * 85) / 7000);
    expect(a).toBeLessThan((0.3 * 4200 * 85) / 2500);
    const back = small.course.findIndex(({ time, state }) => time > 300 && state === "boiling");
    expect(Math.abs((small.course[back]?.time ?? 0) - 300 - a)).toBeLessThanOrEqual(5);
    expect(says(small)).toContain("the water put in stops the boil");
  });

  test("mixing over some time stops the boil less long, and no boil is stopped where there was none", () => {
    const events: ScheduledEvent[] = [{ kind: "slug", time: 300, water: 0.3, temperature: 288.7 }];
    const atOnce = simulateBath(setup, weak, { end: 1800, events });
    const mixed = simulateBath(setup, weak, { end: 1800, events }, { mixing: 10 });
    expect(mixed.slugs[0]?.stoppedBoil).toBe(true);
    expect(mixed.totals.water).toBeCloseTo(0.3, 12);
    expect(mixed.slugs[0]?.stoppedFor ?? 0).toBeLessThanOrEqual((atOnce.slugs[0]?.stoppedFor ?? 0) + 5);
    expect(simulateBath(setup, cold, { end: 600, events }).slugs[0]).toMatchObject({ stoppedBoil: false });
  });

  test("into a strong bath the heat of dilution outweighs the cold, and part of a mixed slug flashes", () => {
    const run = simulateBath(setup, hot, {
      end: 60,
      events: [{ kind: "slug", time: 30, water: 0.24, temperature: 290 }],
    });
    const flashes = run.slugs[0]?.flashes ?? Number.NaN;
    expect(run.slugs[0]?.stoppedBoil).toBe(false);
    expect(flashes).toBeGreaterThan(0);
    expect(flashes).toBeLessThan(0.2 * 0.24);
  });

  test("a slug can flash no more than itself, nor more than the bath's heat allows", () => {
    const into = (water: number) =>
      simulateBath(setup, hot, { end: 60, events: [{ kind: "slug", time: 30, water, temperature: 290 }] }).slugs[0];
    expect(into(0.2)?.couldFlash.mass).toBe(0.2);
    const much = into(3)?.couldFlash.mass ?? Number.NaN;
    expect(much).toBeGreaterThan(0.3);
    expect(much).toBeLessThan(1.5);
    const chilly = simulateBath(setup, cold, {
      end: 60,
      events: [{ kind: "slug", time: 0, water: 1, temperature: 290 }],
    });
    expect(chilly.slugs[0]?.couldFlash).toEqual({ mass: 0, volume: 0 });
  });
});

describe("parts", () => {
  test("parts cool the bath by their heat over its own, the less the slower they take it up", () => {
    const events: ScheduledEvent[] = [{ kind: "parts in", time: 600, mass: 3, temperature: 293.15 }];
    const lowest = (partsWarming: number) => {
      const run = simulateBath(setup, hot, { end: 1200, events }, { partsWarming });
      return Math.min(...run.course.filter(({ time }) => time >= 600).map(({ T }) => T));
    };
    const before = simulateBath(setup, hot, { end: 600 }).end.T;
    const [atOnce, slowly] = [before - lowest(0), before - lowest(60)];
    // 3 kg of 500 J/(kg K) from 20 °C into 14 kg of bath of 2.9 kJ/(kg K) with 6.7 kg of tank: some 44 kJ/K.
    expect(atOnce).toBeGreaterThan(3.5);
    expect(atOnce).toBeLessThan(5.5);
    expect(slowly).toBeLessThan(0.8 * atOnce);
  });

  test("drag-out takes water and salt in the bath's own ratio, and leaves its temperature", () => {
    const out: ScheduledEvent[] = [{ kind: "parts out", time: 0, dragOut: 0.5 }];
    const { course, totals } = simulateBath(setup, hot, { end: 0, events: out }, { tally: true });
    const [point] = course;
    const share = 1 - 0.5 / (6.2 + 7.95);
    expect(point?.water).toBeCloseTo(6.2 * share, 12);
    expect(point?.salts.sodiumHydroxide).toBeCloseTo(5.3 * share, 12);
    expect(point?.salts.sodiumNitrate).toBeCloseTo(2.65 * share, 12);
    expect(point?.T).toBe(simulateBath(setup, hot, { end: 0 }).end.T);
    expect(point?.boilingPoint).toBeCloseTo(point?.T ?? 0, 9);
    expect(totals.dragOut).toBe(0.5);
  });
});

test("dry hydroxide warms a bath, dry nitrate cools it", () => {
  const after = (more: object) =>
    simulateBath(setup, cold, { end: 0, events: [{ kind: "salt in", time: 0, salts: more, temperature: 291 }] }).end;
  expect(after({ sodiumHydroxide: 0.2 }).T).toBeGreaterThan(291.5);
  expect(after({ sodiumNitrate: 0.2 }).T).toBeLessThan(290.5);
  expect(after({ potassiumNitrate: 0.2 }).T).toBeLessThan(after({ sodiumNitrate: 0.2 }).T);
  expect(after({ sodiumHydroxide: 0.2 }).salts).toEqual({ ...salts, sodiumHydroxide: 5.5 });
});

describe("the thermometer", () => {
  const shown = (thermometer: object, step = 10) =>
    simulateBath({ ...setup, thermometer }, cold, { end: 900 }, { step }).course;

  test("offset and rounding: what stands on the dial", () => {
    for (const { shown: read, T } of shown({ offset: 1.3, rounding: 5 / 9 })) {
      const fahrenheit = (read - 459.67 / 1.8) * 1.8;
      expect(Math.abs(fahrenheit - Math.round(fahrenheit))).toBeLessThan(1e-9);
      expect(Math.abs(read - T - 1.3)).toBeLessThanOrEqual(5 / 18 + 1e-9);
    }
  });

  test("a lag trails a steady rise by itself times the rise, whatever the step", () => {
    const points = shown({ lag: 30 });
    const late = points.at(-20);
    const next = points.at(-19);
    const rise = ((next?.T ?? 0) - (late?.T ?? 0)) / 10;
    expect((late?.T ?? 0) - (late?.shown ?? 0)).toBeCloseTo(30 * rise, 0);
    const fine = shown({ lag: 30 }, 1);
    expect(points.at(-1)?.shown).toBeCloseTo(fine.at(-1)?.shown ?? 0, 2);
  });
});

test("recorded times are kept exactly, and do not move the course by more than steps do", () => {
  const record = [0, 17.5, 600, 1234.5, 2000];
  const run = simulateBath(setup, cold, { end: 2000 }, { record });
  expect(run.course.map(({ time }) => time)).toEqual(record);
  expect(run.end.T).toBeCloseTo(simulateBath(setup, cold, { end: 2000 }).end.T, 2);
});
