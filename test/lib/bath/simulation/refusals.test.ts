import { expect, test } from "vitest";
import { simulateBath } from "../../../../lib/bath/index.ts";
import type {
  ScheduledEvent,
  SimulationCharge,
  SimulationOptions,
  SimulationSetup,
} from "../../../../lib/bath/simulationTypes.ts";
import { cold, hot, setup } from "./baths.ts";

const withSetup = (more: object) => () => simulateBath({ ...setup, ...more } as SimulationSetup, cold, { end: 60 });
const withCharge = (more: object) => () => simulateBath(setup, { ...cold, ...more } as SimulationCharge, { end: 60 });
const withEvent =
  (event: object, options: SimulationOptions = {}) =>
  () =>
    simulateBath(setup, hot, { end: 60, events: [event as ScheduledEvent] }, options);
const withOptions = (options: SimulationOptions) => () => simulateBath(setup, cold, { end: 60 }, options);

test.each([
  [withSetup({ tank: { length: 0, width: 0.2, depth: 0.2 } }), "invalid tank length: 0 m; 0.05 to 5 m"],
  [withSetup({ tank: { ...setup.tank, depth: Number.NaN } }), "invalid tank depth: NaN m"],
  [withSetup({ tank: { ...setup.tank, wall: { steel: -1 } } }), "invalid steel of the tank: -1 kg"],
  [withSetup({ burner: { power: -1, efficiency: 0.4 } }), "invalid burner power: -1 W"],
  [withSetup({ burner: { power: 9000, efficiency: 1.4 } }), "invalid efficiency: 1.4; 0 to 1"],
  [withSetup({ burner: { heat: -5 } }), "invalid heat into the bath: -5 W"],
  [withSetup({ losses: "some" }), 'invalid losses: some; "computed", "none" or fitted ones'],
  [withSetup({ losses: { wall: 5000 } }), "invalid wall loss: 5,000 W/K"],
  [withSetup({ air: { pressure: 60_000 } }), "invalid pressure: 60,000 Pa"],
  [withSetup({ air: { temperature: 20 } }), "invalid air temperature: 20 K"],
  [withSetup({ thermometer: { lag: -1 } }), "invalid lag of the thermometer: -1 s"],
  [withSetup({ thermometer: { rounding: Number.POSITIVE_INFINITY } }), "invalid rounding of the thermometer"],
  [withCharge({ water: 0 }), "invalid water: 0 kg; 0.05 to 10,000 kg"],
  [withCharge({ water: 2 }), "invalid water: 2 kg; more than 3.9479 kg, with which the bath counts as dry"],
  [withCharge({ temperature: 430 }), "invalid temperature: 430 K; at most 413.5648 K, where this bath boils"],
  [withCharge({ temperature: 200 }), "invalid temperature: 200 K; 273.15 to 473.15 K"],
  [withCharge({ salts: { tableSalt: 1 } }), "unknown salt: tableSalt"],
  [withCharge({ salts: { sodiumHydroxide: -1 } }), "invalid salt: -1 kg"],
  [withCharge({ departure: { offset: 0, scale: 0 } }), "invalid scale: 0; 0.5 to 2"],
  [withEvent({ kind: "slug", time: 70, water: 1, temperature: 290 }), "invalid time: 70 s; 0 to 60 s"],
  [withEvent({ kind: "slug", time: 7, water: -1, temperature: 290 }), "invalid water put in: -1 kg"],
  [withEvent({ kind: "slug", time: 7, water: 1, temperature: 380 }), "invalid temperature of the water: 380 K"],
  [
    withEvent({ kind: "feed", from: 10, to: 10, rate: 1, temperature: 290 }),
    "invalid end of the feed: 10 s; after its start",
  ],
  [withEvent({ kind: "feed", from: 0, to: 10, rate: -1, temperature: 290 }), "invalid feed: -1 kg/s"],
  [withEvent({ kind: "burner", time: 0, share: -0.1 }), "invalid share of full fire: -0.1"],
  [withEvent({ kind: "parts in", time: 0, mass: Number.NaN, temperature: 290 }), "invalid parts: NaN kg"],
  [
    withEvent({ kind: "parts out", time: 0, dragOut: 9 }),
    "invalid drag-out: 9 kg; at most half of the bath's 14.15 kg",
  ],
  [withEvent({ kind: "salt in", time: 0, salts: { salt: 1 } }), "unknown salt: salt"],
  [withEvent({ kind: "stir", time: 0 }), "unknown event: stir; slug, feed, burner, parts in, parts out, salt in"],
  [
    withEvent({ kind: "salt in", time: 0, salts: { sodiumNitrate: 1 } }, { curve: { lnRatio: [], T: [] } }),
    "invalid curve: a curve handed over; none where salt goes in",
  ],
  [withOptions({ step: 0 }), "invalid step: 0 s"],
  [withOptions({ mixing: -1 }), "invalid mixing time: -1 s"],
  [withOptions({ record: [0, 20, 20] }), "invalid time to record: 20 s; rising times"],
  [withOptions({ record: [90] }), "invalid time to record: 90 s; 0 to 60 s"],
  [
    withOptions({ curve: { lnRatio: [0, 1, 2, 3], T: [400, 410, 405, 420] } }),
    "invalid boiling curve: 4 rows; at least four",
  ],
  [withOptions({ curve: { lnRatio: [0, 1], T: [400, 410] } }), "invalid boiling curve: 2 rows; at least four"],
])("simulateBath refuses what it cannot take: %#", (work, message) => {
  expect(work).toThrow(RangeError);
  expect(work).toThrow(message);
});
