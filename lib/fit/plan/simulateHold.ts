import type { HoldDraw } from "./holdDraws.ts";
import type { PlanBath } from "./planBath.ts";

// Of this file, not of at.ts: only so do all engines work it in, and a plan asks for it millions of times.
const at = (list: Float64Array, i: number): number => list[i] as number;

/** The steps of a simulated hold, s. */
export const holdStep = 10;
/** s in which parts give 63 % of their cold to the bath. A judgement. */
export const partsTime = 12;

/** What is done in a hold. Times are s from parts in. */
export interface HoldSchedule {
  readonly hold: number;
  /** K that the first reading is above the target. */
  readonly start: number;
  /** A steady feed, kg/s, from a time on. */
  readonly rate: number;
  readonly from: number;
  /** Pours instead: kg each, one every so many s, the first half of that after `from`. */
  readonly slug: number;
  readonly every: number;
  /** J that parts take up, and J/K that they add. */
  readonly parts: number;
  readonly partsCapacity: number;
}

/** What is done at a reading: kg for each K of `step` above and below, straight between; undefined for nobody correcting. */
export interface Correcting {
  readonly every: number;
  readonly from: number;
  /** K between rows. */
  readonly step: number;
  /** kg to pour at row 0, 1, 2 … above; kg to leave out below. */
  readonly above: Float64Array;
  readonly below: Float64Array;
}

/** How a hold went; filled anew each time. */
export interface HoldOutcome {
  /** s in the band, and s after the bath was first in it again after the parts; s from then to the end. */
  inside: number;
  insideOnceBack: number;
  onceBack: number;
  /** kg fed. */
  water: number;
  /** K over the target: at the end, and the lowest. */
  last: number;
  lowest: number;
}

/** Hears each reading that is acted on: K shown and K true over the target. */
export type Listener = (shown: number, truly: number) => void;

/**
 * One hold of a bath near its target, in steps of 10 s: the boiling point climbs by what boils off, less what is fed;
 * a bath that is short of its boil warms first. Fast: no enthalpy is worked out, its slopes at the target stand for it.
 *
 * @param bath at its target
 * @param does the schedule
 * @param draw what goes otherwise
 * @param correcting what is done at readings
 * @param out filled
 * @param hears readings
 * @example simulateHold(bath, schedule, draw, undefined, nothingHeld()).inside // 1,720 s
 */
export function simulateHold(
  bath: PlanBath,
  does: HoldSchedule,
  draw: HoldDraw,
  correcting: Correcting | undefined,
  out: HoldOutcome,
  hears?: Listener,
): HoldOutcome {
  const { band, k, evaporation, warming, quiet } = bath;
  const { gusts } = draw;
  const perWater = (k / bath.water) * draw.slope;
  const capacity = bath.capacity + does.partsCapacity;
  const heat = bath.heat * draw.heat * holdStep;
  const boilsOff = quiet * holdStep;
  const mixes = bath.mixing > 0 ? 1 - Math.exp(-holdStep / bath.mixing) : 1;
  const follows = bath.lag > 0 ? 1 - Math.exp(-holdStep / bath.lag) : 1;
  const keeps = Math.exp(-holdStep / partsTime);
  const steady = does.slug === 0;
  const drips = does.rate * draw.feed * holdStep;
  const steps = Math.round(does.hold / holdStep);
  const readSteps = correcting ? Math.round(correcting.every / holdStep) : 0;
  const drift = (perWater * bath.heat * draw.heat) / (evaporation + capacity * perWater);

  // K over the target of the boiling point; J that the bath is short of it; kg not yet mixed in.
  let over = does.start - draw.fixed - draw.first + drift * draw.startLate;
  let short = 0;
  let pool = 0;
  let takes = does.parts * (1 - keeps);
  let held = over;
  let fed = 0;
  let inside = 0;
  let back = does.parts === 0 ? 0 : -1;
  let insideOnceBack = 0;
  let lowest = over;
  // The feed's own clock stands still while it is paused.
  let clock = -does.from - (steady ? draw.feedLate : 0);
  let next = 0;
  let pausedUntil = 0;
  let act = Number.POSITIVE_INFINITY;
  let pour = 0;
  let pause = 0;
  let reading = 0;

  for (let i = 0; i < steps; i++) {
    const time = i * holdStep;
    if (time >= act) {
      pool += pour;
      fed += pour;
      if (pause > 0) pausedUntil = time + pause;
      act = Number.POSITIVE_INFINITY;
    }
    let drops = 0;
    if (time >= pausedUntil) {
      clock += holdStep;
      if (steady) {
        if (clock > 0) {
          // The first step may hold only a part of the feed.
          drops = clock < holdStep ? (drips * clock) / holdStep : drips;
          fed += drops;
        }
      } else if (clock >= (next + 0.5) * does.every + at(draw.slugLate, next)) {
        const slug = does.slug * draw.cup * at(draw.slug, next);
        pool += slug;
        fed += slug;
        next++;
      }
    }
    const mixed = pool * mixes;
    pool -= mixed;
    // A thin stream mixes as it falls in; a pour takes its time.
    const wets = mixed + drops;
    const slope = perWater * (1 + over / k);
    const boils = evaporation + capacity * slope;
    // What evaporates below the boil is part of what boils off above it: it only matters where the heat falls short.
    short += wets * (warming - capacity * slope) + boilsOff * boils + takes - heat * at(gusts, i);
    over += slope * (boilsOff - wets);
    takes *= keeps;
    if (short < 0) {
      over -= (slope * short) / boils;
      short = 0;
    }
    const truly = over - short / capacity;
    held += follows * (truly - held);
    if (truly < lowest) lowest = truly;
    const within = truly <= band && truly >= -band;
    if (within) inside += holdStep;
    if (back < 0 && within && short < 1e-3 * capacity) back = time;
    if (back >= 0 && within) insideOnceBack += holdStep;
    if (!correcting || (i + 1) % readSteps !== 0) continue;
    const now = time + holdStep;
    if (now >= correcting.from && now < does.hold) {
      const raw = held + draw.fixed + at(draw.noise, reading);
      const shown = bath.rounding > 0 ? rounded(bath, raw) : raw;
      hears?.(shown, truly);
      const rows = shown > 0 ? correcting.above : correcting.below;
      const place = Math.min(Math.abs(shown) / correcting.step, rows.length - 1);
      const low = Math.min(Math.floor(place), rows.length - 2);
      const water = at(rows, low) + (place - low) * (at(rows, low + 1) - at(rows, low));
      pour = shown > 0 ? water * draw.cup * at(draw.pour, reading) : 0;
      pause = shown > 0 || does.rate === 0 ? 0 : water / does.rate;
      act = now + at(draw.late, reading);
    }
    reading++;
  }
  out.inside = inside;
  out.insideOnceBack = insideOnceBack;
  out.onceBack = back < 0 ? does.hold : does.hold - back;
  out.water = fed;
  out.last = over - short / capacity;
  out.lowest = lowest;
  return out;
}

/** What a thermometer that is read to a step shows, K over the target. */
function rounded({ rounding, roundingFrom, target }: PlanBath, over: number): number {
  return roundingFrom + Math.round((target + over - roundingFrom) / rounding) * rounding - target;
}

/** An outcome to fill. */
export function nothingHeld(): HoldOutcome {
  return { inside: 0, insideOnceBack: 0, onceBack: 0, water: 0, last: 0, lowest: 0 };
}
