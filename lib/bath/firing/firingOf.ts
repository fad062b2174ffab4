import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber, plain } from "../../physics/needNumber.ts";
import { saltCurvePrior } from "../../physics/saltCurvePrior.ts";
import type { Brine } from "../../physics/types.ts";
import { ordinaryAir } from "../bathLosses.ts";
import { simulateBath } from "../simulateBath.ts";
import type { ScheduledEvent, SimulatedBath, SimulationSetup } from "../simulationTypes.ts";
import type { Firing, FiringGivens } from "./types.ts";

/** s between the times of a hold's course. */
const apart = 60;
/** s in which parts take up their heat: bars and blades, a judgement. */
const warmingOfParts = 30;
/** W/(m² Pa): 235 BTU/(h ft² psi), of a handbook's table of open tanks: see `surfaceLoss`. */
export const quietEvaporation = (235 * 3.154591) / 6894.757;
/** s: a bath that takes longer is said not to boil. */
const longest = 12 * 3600;
/** s over which drift and boil-off at the target are looked at. */
const glance = 120;

/** s from parts in at which a hold's course is told. */
export function holdTimes(hold: number): readonly number[] {
  const count = Math.max(1, Math.ceil(hold / apart - 1e-9));
  return Array.from({ length: count + 1 }, (_, i) => (i === count ? hold : i * apart));
}

interface Scene {
  readonly setup: SimulationSetup;
  readonly salts: Brine;
  readonly departure: { readonly offset: number; readonly scale: number; readonly pivot: number };
  /** kg at the target. */
  readonly water: number;
  readonly givens: FiringGivens;
}

function sceneOf(givens: FiringGivens): Scene {
  const { fire, wall, top, length, width, depth, plate = 0.003, hydroxide, salt, target, pressure, cold } = givens;
  needNumber("heat of the fire", fire, 0, 1e6, "W");
  needNumber("salt", salt, 0.01, 10_000, "kg");
  needNumber("band", givens.band, 0.005, 30, "K");
  needNumber("hold", givens.hold, 60, 24 * 3600, "s");
  const salts = { sodiumHydroxide: salt * hydroxide, sodiumNitrate: salt * (1 - hydroxide) };
  const departure = { offset: givens.offset, scale: givens.scale, pivot: saltCurvePrior.pivot };
  const over = target - cold;
  if (!(over > 20))
    throw new RangeError(`invalid target: ${plain(target)} K; well above the cold bath's ${plain(cold)} K`);
  return {
    setup: {
      tank: { length, width, depth, wall: { thickness: plate } },
      burner: { heat: fire },
      losses: { wall: wall / over, top: top / over, evaporation: givens.evaporation ?? quietEvaporation },
      air: { temperature: cold, pressure },
    },
    salts,
    departure,
    water: salt / departedSaltRatio(target, pressure, salts, departure),
    givens,
  };
}

function run(scene: Scene, end: number, events: readonly ScheduledEvent[], record?: readonly number[]): SimulatedBath {
  const { setup, salts, departure, water } = scene;
  return simulateBath(
    setup,
    { water, salts, temperature: "boiling", departure },
    { end, events },
    { partsWarming: warmingOfParts, ...(record && { record }) },
  );
}

const boilsAt = ({ events }: SimulatedBath): number | undefined =>
  events.find(({ says }) => says.startsWith("the bath boils"))?.time;

/** s and kg: the heat-up of a bath that comes to its boil just at the target. */
function heatUp({ setup, salts, departure, water, givens }: Scene): {
  readonly toBoil: number;
  readonly waterCold: number;
} {
  const { cold, fire, warming = 1 } = givens;
  let charge = water;
  let toBoil = Number.NaN;
  // What leaves while it warms hangs but little on how much is in: a few turns settle it.
  for (let turn = 0; turn < 5; turn++) {
    const way = simulateBath(
      { ...setup, burner: { heat: fire * warming } },
      { water: charge, salts, temperature: cold, departure },
      { end: longest },
      { step: 20 },
    );
    const boils = boilsAt(way);
    const at = way.course.find(({ state }) => state === "boiling");
    if (boils === undefined || !at) {
      throw new RangeError(
        way.stops?.state === "overflowing"
          ? "the bath runs over before it boils: so much salt and water does not fit this tank"
          : "this fire does not bring the bath to its boil: walls, surface and steam take all of it",
      );
    }
    toBoil = boils;
    const left = at.water + at.boilOff * Math.max(0, at.time - boils);
    charge += water - left;
  }
  return { toBoil, waterCold: charge };
}

/** Boiling point of the bath at the end of a short while, K, and the mean boil-off, kg/s, fed at a rate. */
function glanceAt(scene: Scene, rate: number): { readonly climb: number; readonly boilOff: number } {
  const { cold } = scene.givens;
  const events: ScheduledEvent[] = rate > 0 ? [{ kind: "feed", from: 0, to: glance, rate, temperature: cold }] : [];
  const { course, totals, end } = run(scene, glance, events, [0]);
  return {
    climb: (end.boilingPoint - (course[0]?.boilingPoint ?? end.boilingPoint)) / glance,
    boilOff: totals.steam / glance,
  };
}

/** kg/s that hold the boiling point: the climb falls in a straight line with the feed, nearly. */
function steady(scene: Scene): { readonly drift: number; readonly makeUp: number; readonly boilOff: number } {
  const unfed = glanceAt(scene, 0);
  if (!(unfed.boilOff > 0)) throw new RangeError("this fire does not keep the bath boiling: its losses take all of it");
  let [low, climbLow] = [0, unfed.climb];
  let rate = unfed.boilOff;
  let there = glanceAt(scene, rate);
  for (let turn = 0; turn < 4 && Math.abs(there.climb) > 1e-9; turn++) {
    const next = rate - (there.climb * (rate - low)) / (there.climb - climbLow);
    [low, climbLow] = [rate, there.climb];
    rate = next;
    there = glanceAt(scene, rate);
  }
  return { drift: unfed.climb, makeUp: rate, boilOff: there.boilOff };
}

/** s unfed from the target until the boiling point is so many K over it. */
function timeToClimb(scene: Scene, drift: number): number {
  const { target, band } = scene.givens;
  const end = Math.min(longest, (4 * band) / drift);
  const { course, stops } = run(scene, end, []);
  const i = course.findIndex(({ boilingPoint }) => boilingPoint >= target + band);
  const [before, after] = [course[i - 1], course[i]];
  if (!before || !after) {
    throw new RangeError(
      `invalid band: ${plain(band)} K; ${stops?.reason ?? "a bath that is left alone does not leave it"}`,
    );
  }
  const share = (target + band - before.boilingPoint) / (after.boilingPoint - before.boilingPoint);
  return before.time + share * (after.time - before.time);
}

/** What the parts do, and the hold's course, at a feed that rests until the bath boils again. */
function heldAt(scene: Scene, rate: number, back: number): readonly number[] {
  const { target, hold, parts, cold } = scene.givens;
  const times = holdTimes(hold);
  const events: ScheduledEvent[] = [];
  if (parts > 0) events.push({ kind: "parts in", time: 0, mass: parts, temperature: cold });
  if (rate > 0 && back < hold) events.push({ kind: "feed", from: back, to: hold, rate, temperature: cold });
  const { course } = run(scene, hold, events, times);
  const last = course.at(-1);
  return times.map((_, i) => (course[i] ?? last ?? { T: target }).T - target);
}

/** K and s. */
function dipOf(scene: Scene): { readonly dip: number; readonly back: number } {
  const { parts, cold, target } = scene.givens;
  if (parts === 0) return { dip: 0, back: 0 };
  const way = run(scene, 3 * 3600, [{ kind: "parts in", time: 0, mass: parts, temperature: cold }]);
  const lowest = Math.min(...way.course.map(({ T }) => T));
  const stopped = way.events.some(({ says }) => says === "the boil stops");
  const back = stopped ? boilsAt(way) : 0;
  if (back === undefined) throw new RangeError("the parts stop the boil, and this fire does not bring it back");
  return { dip: Math.max(0, target - lowest), back };
}

/**
 * One firing of a bath: from cold to the boil at its target, at the target fed and unfed, and with parts in. Fed with
 * cold water throughout; the feed rests while the parts have stopped the boil.
 *
 * @param givens fire and losses, W; tank, m; salt, kg; target and band, K; air, K and Pa; parts, kg; hold, s
 * @returns what it does; SI
 * @throws RangeError where the fire does not boil the bath, the bath does not fit, and as `simulateBath` and `saltRatio`
 * Source: `simulateBath`; that parts take 30 s to warm is a judgement.
 * @example
 * const long = firingOf({
 *   fire: 3700, wall: 800, top: 250, length: 0.864, width: 0.178, depth: 0.165, salt: 12.9, hydroxide: 0.7,
 *   target: 415.9, band: 1.7, pressure: 93_200, offset: 0, scale: 1, cold: 288.7, parts: 1.8, hold: 1800,
 * });
 * long.boilOff; // 0.00098 kg/s
 * long.drift; // 0.0037 K/s
 */
export function firingOf(givens: FiringGivens): Firing {
  return worked(givens, (part) => part()) as Firing;
}

/**
 * The same as far as it goes: what such a bath does not do (it never boils, or does not come back) is left out.
 *
 * @param givens as for `firingOf`
 * @returns the parts that there are; SI
 * @throws RangeError for a bath that cannot be
 * @example
 * const weak = firingAsFarAsItGoes({
 *   fire: 900, wall: 800, top: 250, length: 0.864, width: 0.178, depth: 0.165, salt: 12.9, hydroxide: 0.7,
 *   target: 415.9, band: 1.7, pressure: 93_200, offset: 0, scale: 1, cold: 288.7, parts: 1.8, hold: 1800,
 * });
 * weak.toBoil; // undefined
 * weak.water; // 9.826 kg
 */
export function firingAsFarAsItGoes(givens: FiringGivens): Partial<Firing> {
  return worked(givens, (part) => {
    try {
      return part();
    } catch {
      return {};
    }
  });
}

type Part = Partial<Firing>;

function worked(givens: FiringGivens, attempt: (part: () => Part) => Part): Part {
  const { fire, wall, top, length, width, pressure, evaporation = quietEvaporation, feed } = givens;
  const scene = sceneOf(givens);
  const still = {
    spare: fire - wall - top - evaporation * length * width * (pressure - ordinaryAir.vapourPressure),
    water: scene.water,
  };
  const held = (): Part => {
    const { drift, makeUp, boilOff } = steady(scene);
    const { dip, back } = dipOf(scene);
    return {
      drift,
      makeUp,
      boilOff,
      dip,
      back,
      late: timeToClimb(scene, drift),
      unfed: heldAt(scene, 0, back),
      fed: heldAt(scene, feed ?? makeUp, back),
    };
  };
  return { ...still, ...attempt(() => heatUp(scene)), ...attempt(held) };
}
