import type { Block } from "./blockReadings.ts";
import type { BrineCurve } from "./brineCurve.ts";
import type { FireHistory } from "./fireHistory.ts";
import type { Pour } from "./logFacts.ts";
import { pourShown, shareShown } from "./pourShown.ts";
import { stepResponse } from "./stepResponse.ts";

// Of this file, not of at.ts: only so do all engines work it in where a fit spends its time.
const at = (list: ArrayLike<number>, i: number): number => list[i] as number;

/** What can be wrong, in standard units: each is 0 give or take 1, and belongs to a source that has a plain name. */
export interface Doubt {
  readonly source: string;
}

export interface LineGivens {
  /** Readings at the boil. */
  readonly blocks: readonly Block[];
  /** Pours from the first boil on. */
  readonly pours: readonly Pour[];
  readonly start: number;
  readonly end: number;
  readonly curve: BrineCurve;
  /** kg of salt at a time, s. */
  readonly saltAt: (time: number) => number;
  /** For each doubt about the salts: its source, the curve and the ln of the salt's mass one step away. */
  readonly saltDoubts: readonly { readonly source: string; readonly curve: BrineCurve; readonly lnMass: number }[];
  readonly fire: FireHistory;
  readonly parts: readonly { readonly time: number; readonly steam: number; readonly u: number }[];
  /** kg at the first boil, and its relative doubt. */
  readonly water: { readonly value: number; readonly relative: number };
  /** kg/s to start from, and the doubt of its ln. */
  readonly rate: { readonly value: number; readonly relative: number };
  /** K. */
  readonly thermometer: { readonly offset: number; readonly u: number };
  /** K: what the doubt of the air pressure does to the boiling point. */
  readonly pressureStep: number;
  readonly cup: { readonly allNight: number; readonly eachPour: number };
  /** kg of water more at the boil for each kilogram poured in cold. */
  readonly pourEffect: { readonly value: number; readonly u: number };
  /** s: how well the time of a pour was written down. */
  readonly pourTime: number;
}

/** The bath at one time: its water, what has boiled off, and how both hang on the doubts. */
export interface BathAt {
  readonly water: number;
  readonly steam: number;
  readonly waterBy: Float64Array;
  readonly steamBy: Float64Array;
}

export interface ReadingAt {
  readonly T: number;
  readonly by: Float64Array;
  /** K for each kg of water more in the tank. */
  readonly perKilogram: number;
}

/** The straight line "water gone against time" with every fault a log can have as a doubt of standard size. */
export interface WaterLine {
  readonly doubts: readonly Doubt[];
  readonly bathAt: (z: ArrayLike<number>, time: number, order?: number) => BathAt;
  readonly readingAt: (z: ArrayLike<number>, time: number, order?: number) => ReadingAt;
  /** Water and steam of the bath and what a reading would show, for quick looks that need no slopes. */
  readonly glanceAt: (
    z: ArrayLike<number>,
    time: number,
    order?: number,
  ) => Pick<BathAt, "water" | "steam"> & Pick<ReadingAt, "T" | "perKilogram">;
  /** kg/s at the first fire. */
  readonly rate: (z: ArrayLike<number>) => number;
  /** ln of salt over water and how it hangs on the doubts. */
  readonly lnRatioAt: (z: ArrayLike<number>, time: number) => { readonly value: number; readonly by: Float64Array };
  /** What a kilogram poured at a time does to the water that a reading sees, kg. */
  readonly seen: (z: ArrayLike<number>, poured: number, read: number) => number;
  /** kg that a kilogram poured adds to the steam (below 0: cold water takes heat). */
  readonly steamOfPour: number;
  /** What the thermometer would show, lag and noise apart, if `water` kg were in the boiling bath; `by` at that water. */
  readonly boilsAt: (z: ArrayLike<number>, time: number, water: number) => ReadingAt;
  /** Numbers of single doubts; `firstPour` is that of the first pour's amount, the others follow. */
  readonly index: Readonly<
    Record<"water" | "rate" | "cup" | "mixing" | "lag" | "scale" | "offset" | "thermometer" | "firstPour", number>
  > & { readonly fire: readonly number[]; readonly times: readonly number[]; readonly salts: readonly number[] };
}

/** Before the log speaks: mixing and lag in s with the doubt of their ln, the departure of the boiling curve (a judgement, stated with the curve). */
export const before = {
  mixing: { value: 20, u: 0.6 },
  lag: { value: 15, u: 0.6 },
  curveOffset: { value: -0.5, u: 1.7 },
  curveScale: 0.07,
} as const;
const { mixing, lag, curveOffset, curveScale } = before;
const fireTrend = 0.08;

/**
 * Sets up the line for one log.
 *
 * @param g what is given, with its doubts
 * @param others doubts of whoever builds on the line: they come last, and nothing here hangs on them
 * @example waterLine(givens).bathAt(new Float64Array(40), 600).water
 */
export function waterLine(g: LineGivens, others: readonly Doubt[] = []): WaterLine {
  const doubts: Doubt[] = [];
  const add = (source: string) => doubts.push({ source }) - 1;
  const iWater = add("water at the start");
  const iRate = add("boil-off");
  const iCup = add("cup");
  const iMixing = add("each pour");
  const iLag = add("each pour");
  const iScale = add("boiling curve");
  const iOffset = add("boiling curve");
  const iThermometer = add("thermometer");
  const iPressure = add("air pressure");
  const iPour = add("each pour");
  const iTrend = add("fire");
  const iSalt = g.saltDoubts.map(({ source }) => add(source));
  const iFire = g.fire.told.map(() => add("fire"));
  const iParts = g.parts.map(() => add("parts"));
  const iEach = g.pours.map(() => add("each pour"));
  const iTime = g.pours.map(() => add("pour times"));
  doubts.push(...others);
  const size = doubts.length;
  const pourEffect = g.pourEffect;
  const full = Math.max(1, g.end - g.start);
  const pivot = g.blocks.reduce((sum, block) => sum + block.T, 0) / Math.max(1, g.blocks.length);

  const rate = (z: ArrayLike<number>) => g.rate.value * Math.exp(g.rate.relative * at(z, iRate));
  const lnFire = (z: ArrayLike<number>) => g.fire.told.map(({ lnFactor, u }, i) => lnFactor + u * at(z, at(iFire, i)));

  const bathAt = (z: ArrayLike<number>, time: number, order = Infinity): BathAt => {
    const waterBy = new Float64Array(size);
    const steamBy = new Float64Array(size);
    const h = rate(z);
    const factors = lnFire(z);
    const done = g.fire.done(time, factors);
    const whole = Math.max(1e-9, g.fire.done(g.start + full, factors));
    const bend = (done * done) / whole - done;
    const bent = done + fireTrend * at(z, iTrend) * bend;
    let steam = h * bent;
    steamBy[iRate] = h * bent * g.rate.relative;
    steamBy[iTrend] = h * fireTrend * bend;
    for (let i = 0; i < factors.length; i++) {
      const u = g.fire.told[i]?.u ?? 0;
      const moved = factors.map((factor, k) => (k === i ? factor + 1e-4 : factor));
      steamBy[at(iFire, i)] = (h * u * (g.fire.done(time, moved) - done)) / 1e-4;
    }
    g.parts.forEach((part, i) => {
      if (time < part.time) return;
      steam -= part.steam + part.u * at(z, at(iParts, i));
      steamBy[at(iParts, i)] = -part.u;
    });
    const tMix = mixing.value * Math.exp(mixing.u * at(z, iMixing));
    const tLag = lag.value * Math.exp(lag.u * at(z, iLag));
    const effect = pourEffect.value + pourEffect.u * at(z, iPour);
    const cup = 1 + g.cup.allNight * at(z, iCup);
    const own = g.water.value * Math.exp(g.water.relative * at(z, iWater));
    // Asked of the bath at the start itself, nothing is poured yet: what is on the first row counts as poured since.
    const unpoured = !Number.isFinite(order) && time <= g.start + 1e-6;
    let poured = 0;
    if (!unpoured)
      g.pours.forEach((pour, i) => {
        const each = 1 + g.cup.eachPour * at(z, at(iEach, i));
        const shift = g.pourTime * at(z, at(iTime, i));
        const kg = pour.mass * cup * each;
        const { share: shown, rate: rateShown, byMixing, byLag } = pourShown(pour, time, order, shift, tMix, tLag);
        if (shown === 0) return;
        poured += kg * shown;
        const perKilogram = effect * shown;
        waterBy[iCup] = at(waterBy, iCup) + pour.mass * each * g.cup.allNight * perKilogram;
        waterBy[at(iEach, i)] = pour.mass * cup * g.cup.eachPour * perKilogram;
        waterBy[at(iTime, i)] = -kg * effect * rateShown * g.pourTime;
        waterBy[iMixing] = at(waterBy, iMixing) + kg * effect * byMixing * mixing.u;
        waterBy[iLag] = at(waterBy, iLag) + kg * effect * byLag * lag.u;
        steamBy[iCup] = at(steamBy, iCup) - (effect - 1) * pour.mass * each * g.cup.allNight * shown;
        steamBy[at(iEach, i)] = -(effect - 1) * pour.mass * cup * g.cup.eachPour * shown;
      });
    waterBy[iWater] = own * g.water.relative;
    waterBy[iPour] = pourEffect.u * poured;
    for (const i of [iRate, iTrend, ...iFire, ...iParts]) waterBy[i] = -at(steamBy, i);
    // Water cannot run below a tenth of what was there: the bath would have set long before.
    const water = Math.max(0.1 * own, own + effect * poured - steam);
    steamBy[iPour] = -pourEffect.u * poured;
    return { water, steam: Math.max(1e-9, steam - (effect - 1) * poured), waterBy, steamBy };
  };

  const boilsAt = (z: ArrayLike<number>, time: number, water: number): ReadingAt => {
    const lnSalt = Math.log(g.saltAt(time));
    const lnWater = Math.log(water);
    const lnRatio = lnSalt - lnWater;
    const own = g.curve.boils(lnRatio);
    let published = 0;
    const moved = g.saltDoubts.map(({ curve, lnMass }, i) => {
      const step = curve.boils(lnRatio + lnMass) - own;
      published += step * at(z, at(iSalt, i));
      return step;
    });
    const plain = own + published;
    const scale = 1 + curveScale * at(z, iScale);
    const by = new Float64Array(size);
    by[iScale] = curveScale * (plain - pivot);
    by[iOffset] = curveOffset.u;
    by[iThermometer] = g.thermometer.u;
    by[iPressure] = g.pressureStep;
    moved.forEach((step, i) => {
      by[at(iSalt, i)] = scale * step;
    });
    const T =
      pivot +
      scale * (plain - pivot) +
      curveOffset.value +
      curveOffset.u * at(z, iOffset) +
      g.thermometer.offset +
      g.thermometer.u * at(z, iThermometer) +
      g.pressureStep * at(z, iPressure);
    return { T, by, perKilogram: (-scale * g.curve.slope(lnRatio)) / water };
  };

  const readingAt = (z: ArrayLike<number>, time: number, order = Infinity): ReadingAt => {
    const { water, waterBy } = bathAt(z, time, order);
    const { T, by, perKilogram } = boilsAt(z, time, water);
    for (let i = 0; i < size; i++) by[i] = at(by, i) + perKilogram * at(waterBy, i);
    return { T, by, perKilogram };
  };

  const glanceAt = (z: ArrayLike<number>, time: number, order = Infinity) => {
    const factors = lnFire(z);
    const done = g.fire.done(time, factors);
    const bend = (done * done) / Math.max(1e-9, g.fire.done(g.start + full, factors)) - done;
    let steam = rate(z) * (done + fireTrend * at(z, iTrend) * bend);
    g.parts.forEach((part, i) => {
      if (time >= part.time) steam -= part.steam + part.u * at(z, at(iParts, i));
    });
    const effect = pourEffect.value + pourEffect.u * at(z, iPour);
    const cup = 1 + g.cup.allNight * at(z, iCup);
    const own = g.water.value * Math.exp(g.water.relative * at(z, iWater));
    const tMix = mixing.value * Math.exp(mixing.u * at(z, iMixing));
    const tLag = lag.value * Math.exp(lag.u * at(z, iLag));
    let into = 0;
    let shown = 0;
    g.pours.forEach((pour, i) => {
      const kg = pour.mass * cup * (1 + g.cup.eachPour * at(z, at(iEach, i)));
      if (time > g.start + 1e-6) into += kg * shareShown(pour, time, Infinity, 0, tMix, tLag);
      shown += kg * shareShown(pour, time, order, g.pourTime * at(z, at(iTime, i)), tMix, tLag);
    });
    const within = (poured: number) => Math.max(0.1 * own, own + effect * poured - steam);
    const { T, perKilogram } = boilsAt(z, time, within(Number.isFinite(order) ? shown : into));
    return { water: within(into), steam: Math.max(1e-9, steam - (effect - 1) * into), T, perKilogram };
  };

  const lnRatioAt = (z: ArrayLike<number>, time: number) => {
    const { water, waterBy } = bathAt(z, time);
    const by = new Float64Array(size);
    for (let i = 0; i < size; i++) by[i] = -at(waterBy, i) / water;
    let value = Math.log(g.saltAt(time)) - Math.log(water);
    g.saltDoubts.forEach(({ lnMass }, i) => {
      value += lnMass * at(z, at(iSalt, i));
      by[at(iSalt, i)] = lnMass;
    });
    return { value, by };
  };

  const seen = (z: ArrayLike<number>, poured: number, read: number) =>
    (pourEffect.value + pourEffect.u * at(z, iPour)) *
    stepResponse(
      read - poured,
      mixing.value * Math.exp(mixing.u * at(z, iMixing)),
      lag.value * Math.exp(lag.u * at(z, iLag)),
    );

  return {
    doubts,
    bathAt,
    readingAt,
    glanceAt,
    rate,
    lnRatioAt,
    seen,
    steamOfPour: 1 - pourEffect.value,
    boilsAt,
    index: {
      water: iWater,
      rate: iRate,
      cup: iCup,
      mixing: iMixing,
      lag: iLag,
      scale: iScale,
      offset: iOffset,
      thermometer: iThermometer,
      firstPour: iEach[0] ?? size,
      fire: iFire,
      times: iTime,
      salts: iSalt,
    },
  };
}
