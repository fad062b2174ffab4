import fc from "fast-check";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type {
  ScheduledEvent,
  SimulatedBath,
  SimulationCharge,
  SimulationSchedule,
  SimulationSetup,
} from "../../../../lib/bath/simulationTypes.ts";

/** A shop's long tank on a middling burner. */
export const setup = {
  tank: { length: 0.965, width: 0.203, depth: 0.2, wall: { thickness: 0.002 } },
  burner: { power: 17_600, efficiency: 0.4 },
} satisfies SimulationSetup;

/** Hydroxide to nitrate 2:1 at bath strength. */
export const salts = { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 };
export const cold = { water: 6.6, salts, temperature: 291 } satisfies SimulationCharge;
export const hot = { water: 6.2, salts, temperature: "boiling" } satisfies SimulationCharge;

/** Heat-up, hold with slugs, parts, feed, burner changes: everything that a schedule knows but salt. */
export const busy: readonly ScheduledEvent[] = [
  { kind: "slug", time: 1500, water: 0.24, temperature: 290 },
  { kind: "slug", time: 1817, water: 0.24, temperature: 288 },
  { kind: "burner", time: 1900, share: 0.8 },
  { kind: "parts in", time: 2000, mass: 3, temperature: 293 },
  { kind: "feed", from: 2100, to: 3303, rate: 0.0016, temperature: 290 },
  { kind: "slug", time: 2405, water: 0.5, temperature: 290 },
  { kind: "parts out", time: 3800, dragOut: 0.06 },
  { kind: "burner", time: 4000, share: 0 },
  { kind: "slug", time: 4400, water: 1, temperature: 290 },
  { kind: "burner", time: 4900, share: 1.1 },
];

/** Every whole minute up to `end`, s. */
export const minutes = (end: number): number[] => Array.from({ length: Math.floor(end / 60) + 1 }, (_, i) => 60 * i);

/** 90 min of all that. */
export const run90 = (step: number, more: Partial<SimulationSchedule> = {}): SimulatedBath =>
  simulateBath(setup, cold, { end: 5400, events: busy, ...more }, { step, record: minutes(5400) });

/** The largest difference of bath temperatures, °F, of two courses of the same times. */
export function apart(a: SimulatedBath, b: SimulatedBath): number {
  return 1.8 * Math.max(...a.course.map(({ T }, i) => Math.abs(T - (b.course[i]?.T ?? Number.NaN))));
}

/** Burners, tanks and airs of all kinds. */
export const setups: fc.Arbitrary<SimulationSetup> = fc.record({
  tank: fc.record({
    length: fc.double({ min: 0.4, max: 1.2, noNaN: true }),
    width: fc.double({ min: 0.12, max: 0.25, noNaN: true }),
    depth: fc.constant(0.3),
    wall: fc.record({ thickness: fc.double({ min: 0, max: 0.004, noNaN: true }) }),
  }),
  burner: fc.record({
    power: fc.double({ min: 5000, max: 30_000, noNaN: true }),
    efficiency: fc.double({ min: 0.25, max: 0.6, noNaN: true }),
  }),
  losses: fc.constantFrom("computed" as const, "none" as const, { wall: 9, top: 4 }, { wall: -1, evaporation: 0.1 }),
  air: fc.record({
    temperature: fc.double({ min: 265, max: 310, noNaN: true }),
    pressure: fc.double({ min: 72_000, max: 104_000, noNaN: true }),
  }),
});

/** Mixes that are still well short of their curve's end. */
export const charges: fc.Arbitrary<SimulationCharge> = fc
  .record({
    water: fc.double({ min: 4, max: 9, noNaN: true }),
    hydroxide: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    nitrate: fc.double({ min: 0, max: 0.4, noNaN: true }),
    nitrite: fc.double({ min: 0, max: 0.1, noNaN: true }),
    temperature: fc.option(fc.double({ min: 280, max: 370, noNaN: true }), { nil: "boiling" as const }),
  })
  .map(({ water, hydroxide, nitrate, nitrite, temperature }) => ({
    water,
    salts: {
      sodiumHydroxide: hydroxide * water,
      sodiumNitrate: (nitrate + 0.05) * water,
      sodiumNitrite: nitrite * water,
    },
    temperature,
  }));

const times = fc.double({ min: 0, max: 2400, noNaN: true });

/** Water, fire and parts at any time of 40 min. */
export const happenings: fc.Arbitrary<ScheduledEvent[]> = fc.array(
  fc.oneof(
    fc.record({
      kind: fc.constant("slug" as const),
      time: times,
      water: fc.double({ min: 0.01, max: 1, noNaN: true }),
      temperature: fc.double({ min: 275, max: 370, noNaN: true }),
    }),
    fc.record({
      kind: fc.constant("burner" as const),
      time: times,
      share: fc.double({ min: 0, max: 1.2, noNaN: true }),
    }),
    fc.record({
      kind: fc.constant("parts in" as const),
      time: times,
      mass: fc.double({ min: 0.1, max: 6, noNaN: true }),
      temperature: fc.double({ min: 270, max: 320, noNaN: true }),
    }),
    fc.record({
      kind: fc.constant("parts out" as const),
      time: times,
      dragOut: fc.double({ min: 0, max: 0.3, noNaN: true }),
    }),
    fc
      .record({
        kind: fc.constant("feed" as const),
        from: times,
        long: fc.double({ min: 1, max: 1200, noNaN: true }),
        rate: fc.double({ min: 0, max: 0.003, noNaN: true }),
        temperature: fc.double({ min: 275, max: 360, noNaN: true }),
      })
      .map(({ long, ...feed }) => ({ ...feed, to: feed.from + long })),
    fc.record({
      kind: fc.constant("salt in" as const),
      time: times,
      salts: fc.record({ sodiumHydroxide: fc.constant(0.2), sodiumNitrate: fc.constant(0.1) }),
    }),
  ),
  { maxLength: 7 },
);
