import fc from "fast-check";
import { expect, test } from "vitest";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type { ScheduledEvent, SimulationSetup } from "../../../../lib/bath/simulationTypes.ts";
import { charges, happenings, minutes, setups } from "./baths.ts";

const record = minutes(2400);
const few = { numRuns: 40 };
const withHeat = (setup: SimulationSetup, by: number): SimulationSetup => ({
  ...setup,
  burner:
    "heat" in setup.burner ? { heat: by * setup.burner.heat } : { ...setup.burner, power: by * setup.burner.power },
});
/** Without salt put in, which a stopped run may never get to. */
const calm = happenings.map((events) => events.filter(({ kind }) => kind !== "salt in"));

test("more fire never boils less off", () => {
  fc.assert(
    fc.property(setups, charges, calm, fc.double({ min: 1, max: 1.8, noNaN: true }), (setup, charge, events, by) => {
      const less = simulateBath(setup, charge, { end: 2400, events });
      const more = simulateBath(withHeat(setup, by), charge, { end: 2400, events });
      // Up to where the hotter one stopped, if it did.
      const until = more.stops
        ? simulateBath(setup, charge, {
            end: more.end.time,
            events: events.filter((e) => (e.kind === "feed" ? e.from : e.time) <= more.end.time),
          })
        : less;
      expect(more.totals.steam).toBeGreaterThanOrEqual(until.totals.steam - 2e-4);
    }),
    few,
  );
});

test("less air pressure never boils hotter", () => {
  fc.assert(
    fc.property(setups, charges, fc.double({ min: 0, max: 8000, noNaN: true }), (setup, charge, drop) => {
      const pressure = setup.air?.pressure ?? 101_325;
      const higher = { ...setup, air: { ...setup.air, pressure: pressure - Math.min(drop, pressure - 66_000) } };
      const [low, high] = [setup, higher].map((one) =>
        simulateBath(one, { ...charge, temperature: "boiling" }, { end: 0 }),
      );
      expect(high?.end.T).toBeLessThanOrEqual((low?.end.T ?? 0) + 1e-9);
    }),
    few,
  );
});

test("two half slugs at one instant are one slug", () => {
  fc.assert(
    fc.property(setups, charges, calm, fc.constantFrom(0, 30), (setup, charge, events, mixing) => {
      const halves = events.flatMap((event): ScheduledEvent[] =>
        event.kind === "slug"
          ? [
              { ...event, water: event.water / 2 },
              { ...event, water: event.water / 2 },
            ]
          : [event],
      );
      const whole = simulateBath(setup, charge, { end: 2400, events }, { record, mixing });
      const split = simulateBath(setup, charge, { end: 2400, events: halves }, { record, mixing });
      expect(split.course.length).toBe(whole.course.length);
      split.course.forEach(({ T, water }, i) => {
        expect(Math.abs(T - (whole.course[i]?.T ?? Number.NaN))).toBeLessThan(1e-8);
        expect(Math.abs(water - (whole.course[i]?.water ?? Number.NaN))).toBeLessThan(1e-9);
      });
    }),
    few,
  );
});

test("with more water at the start a boiling bath is never hotter at the same time", () => {
  fc.assert(
    fc.property(setups, charges, fc.double({ min: 0, max: 2, noNaN: true }), (setup, charge, more) => {
      const boiling = { ...charge, temperature: "boiling" as const };
      const less = simulateBath(setup, boiling, { end: 2400 }, { record });
      const wetter = simulateBath(setup, { ...boiling, water: charge.water + more }, { end: 2400 }, { record });
      wetter.course.forEach((point, i) => {
        const there = less.course[i];
        if (!there || there.time !== point.time || point.state !== "boiling" || there.state !== "boiling") return;
        expect(point.T).toBeLessThanOrEqual(there.T + 1e-6);
      });
    }),
    few,
  );
});

test("a bath left alone long enough under a good fire goes dry, and never has negative water", () => {
  fc.assert(
    fc.property(setups, charges, fc.constantFrom(5, 30, 200), (setup, charge, step) => {
      const run = simulateBath({ ...setup, burner: { heat: 12_000 } }, charge, { end: 40_000 }, { step });
      expect(run.stops?.state).toBe("dry");
      for (const { water, T } of run.course) {
        expect(water).toBeGreaterThan(0);
        expect(T).toBeGreaterThan(250);
      }
    }),
    few,
  );
});

test("the thermometer touches what is shown and nothing else", () => {
  const thermometers = fc.record({
    offset: fc.double({ min: -5, max: 5, noNaN: true }),
    lag: fc.double({ min: 0, max: 90, noNaN: true }),
    rounding: fc.constantFrom(0, 5 / 9, 1, 2),
  });
  fc.assert(
    fc.property(setups, charges, happenings, thermometers, (setup, charge, events, thermometer) => {
      const bare = simulateBath(setup, charge, { end: 2400, events }, { record });
      const read = simulateBath({ ...setup, thermometer }, charge, { end: 2400, events }, { record });
      const blind = <T extends { shown: number }>(point: T) => ({ ...point, shown: 0 });
      expect(read.course.map(blind)).toEqual(bare.course.map(blind));
      expect(read.totals).toEqual(bare.totals);
      for (const { shown, T } of bare.course) expect(shown).toBe(T);
    }),
    few,
  );
});

test("the course is at most at its boil, its salts only fall by drag-out, and the totals agree with it", () => {
  fc.assert(
    fc.property(setups, charges, calm, (setup, charge, events) => {
      const run = simulateBath(setup, charge, { end: 2400, events });
      const salt = run.course.map(({ salts }) => Object.values(salts).reduce((sum, kg) => sum + kg, 0));
      run.course.forEach(({ T, boilingPoint, boilOff }, i) => {
        expect(T).toBeLessThanOrEqual(boilingPoint + 1e-9);
        expect(boilOff).toBeGreaterThanOrEqual(0);
        expect(salt[i] ?? 0).toBeLessThanOrEqual((salt[i - 1] ?? Number.POSITIVE_INFINITY) + 1e-12);
      });
      const [start, end] = [charge.water + (salt[0] ?? 0), run.end.water + (salt.at(-1) ?? 0)];
      const first = run.course[0];
      const dragged = events.some((event) => event.kind === "parts out" && event.time === 0)
        ? start
        : charge.water + Object.values(charge.salts).reduce((a, b) => a + b, 0);
      expect(first?.time).toBe(0);
      expect(Math.abs(dragged + run.totals.water - run.totals.steam - run.totals.dragOut - end)).toBeLessThan(1e-8);
    }),
    few,
  );
});

test("events come in the order of time, inside the run", () => {
  fc.assert(
    fc.property(setups, charges, happenings, (setup, charge, events) => {
      const run = simulateBath(setup, charge, { end: 2400, events });
      run.events.forEach(({ time }, i) => {
        expect(time).toBeGreaterThanOrEqual(run.events[i - 1]?.time ?? 0);
        expect(time).toBeLessThanOrEqual(run.end.time + 1e-9);
      });
    }),
    few,
  );
});
