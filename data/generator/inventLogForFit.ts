import type { InventedRow } from "./inventLog.ts";
import { random as seeded } from "./random.ts";
import type { Habit } from "./roughMaker.ts";
import { type RoughRun, type RoughScenario, roughRun } from "./roughRun.ts";
import { type RoughScrap, roughScrap, type TrueMisread, type TruePour } from "./roughScrap.ts";
import { type Fault, type RoughOptions, type RoughShop, roughShop } from "./roughShop.ts";
import { type TrueAnswers, trueAnswers } from "./roughTruth.ts";

/** What happened and what a fit is asked. SI, K; times in s from the log's first row. */
export interface TruthForFit extends TrueAnswers {
  readonly firstBoil: number;
  readonly end: number;
  readonly waterAtFirstRow: number;
  /** For the told target and band as the maker's own thermometer shows them at the end. */
  readonly waterToTarget: number;
  readonly untilOutOfBand: number;
  readonly lag: number;
  /** s, the median over the pours. */
  readonly mixing: number;
  /** K: of one reading by itself with its rounding, and of the slow wander (480 s) beside it. */
  readonly noise: { readonly sd: number; readonly wander: number };
  /** Share of full fire at each second from the first row on: gusts, wind, fading and burner in one. */
  readonly fire: readonly number[];
  /** ln-standard deviation of the gaps between pours where the maker pours by the clock; absent where not. */
  readonly regular?: number;
  /** Share by which the cup is wrong all night. */
  readonly cup: number;
  /** K by which the thermometer reads high at the end, and its part that came with moving the tip. */
  readonly thermometer: { readonly high: number; readonly moved: number };
  readonly departure: { readonly offset: number; readonly scale: number };
  /** kg truly in the tank at the first row. */
  readonly hydroxide: number;
  readonly nitrate: number;
  readonly pressure: number;
  /** True shares of the burner changes that were written. */
  readonly burner: readonly number[];
  readonly poured: readonly TruePour[];
  readonly misread: readonly TrueMisread[];
}

/** What sort of log it is, for tables by kind. */
export interface LogKind {
  readonly habit: Habit;
  /** Pours made from the first boil on, written down or not. */
  readonly pours: number;
  readonly unwritten: number;
  readonly misread: number;
  readonly readings: number;
  readonly warmUp: RoughScrap["warmUp"];
  readonly waterTold: boolean;
  readonly wholeMinutes: boolean;
  /** Share of the time from the first boil to the end in which the bath stood below its boil. */
  readonly offBoil: number;
  readonly faults: readonly Fault[];
}

export interface LogForFit {
  readonly seed: number;
  readonly rows: readonly InventedRow[];
  readonly text: string;
  readonly told: RoughShop["told"] & {
    /** K, of a thermometer that may be anywhere within its kind's tolerance. */
    readonly thermometer: { readonly kind: string; readonly standardUncertainty: number };
    /** K. */
    readonly target: number;
    readonly band: number;
  };
  readonly truth: TruthForFit;
  readonly kind: LogKind;
  /** All of it, for the tests of the generator. */
  readonly run: RoughRun;
  readonly scenario: RoughScenario;
  readonly scrap: RoughScrap;
}

/** A stream of numbers of its own for each part of a log, so that a change in one leaves the others as they were. */
const stream = (seed: number, part: number) => seeded((seed ^ Math.imul(part, 0x9e3779b9)) >>> 0);

/**
 * An invented run, richer than any fit of it: a warm-up with losses and vapour below the boil, a tank of steel, gusts,
 * wind, a maker with a habit, a scrap of paper with slips, and faults that no fit knows of.
 */
export function inventLogForFit(seed: number, options: RoughOptions = {}): LogForFit {
  const shop = roughShop(stream(seed, 1), options);
  const { scenario, told, thermometer, habit, faults } = shop;
  const run = roughRun(scenario, stream(seed, 2));
  const scrap = roughScrap(shop, run, stream(seed, 3), options);
  const answers = trueAnswers(run, scenario);
  const { zero } = scrap;
  const moved = scenario.tip?.kelvin ?? 0;
  const high = thermometer.high + moved;
  const r = stream(seed, 4);
  const target = targetOf(run, high, r.chance(0.5), r.from(-1, 1));
  const band = r.pick([2, 2, 3, 4]) / 1.8;
  const { sd, wander, rounding } = scrap.noise;
  return {
    seed,
    rows: scrap.rows,
    text: scrap.text,
    told: {
      ...told,
      thermometer: { kind: thermometer.kind, standardUncertainty: thermometer.tolerance / Math.sqrt(3) },
      target,
      band,
    },
    truth: {
      ...answers,
      firstBoil: run.firstBoil - zero,
      end: run.end - zero,
      waterAtFirstRow: run.water[Math.max(0, Math.round(zero))] ?? run.waterAtBoil,
      waterToTarget: answers.waterTo(target - high),
      untilOutOfBand: answers.untilOut(target - high, band),
      lag: scenario.lag,
      mixing: scenario.mixing,
      noise: { sd: Math.hypot(sd, rounding / Math.sqrt(12)) / 1.8, wander: wander / 1.8 },
      fire: run.fire.slice(Math.max(0, Math.round(zero))).map((W) => W / scenario.fire),
      ...(habit === "steady" ? { regular: shop.unsteady } : {}),
      cup: shop.cup,
      thermometer: { high, moved },
      departure: scenario.tank.departure,
      hydroxide: scenario.tank.hydroxide,
      nitrate: scenario.tank.nitrate,
      pressure: scenario.tank.pressure,
      burner: scenario.burner.map(({ share }) => share),
      poured: scrap.poured,
      misread: scrap.misread,
    },
    kind: {
      habit,
      pours: scrap.poured.length,
      unwritten: scrap.poured.filter((pour) => pour.fault === "unwritten").length,
      misread: scrap.misread.filter(({ by }) => Math.abs(by) >= 4).length,
      readings: scrap.readings,
      warmUp: scrap.warmUp,
      waterTold: told.water !== undefined,
      wholeMinutes: scrap.wholeMinutes,
      offBoil: run.offBoil / (run.end - run.firstBoil),
      faults: [...faults],
    },
    run,
    scenario,
    scrap,
  };
}

/** A whole °F near where the maker's thermometer stood: over the hold, or in its last ten minutes. */
function targetOf(run: RoughRun, high: number, late: boolean, off: number): number {
  const shown = run.shown.slice(late ? Math.max(run.firstBoil, run.end - 600) : run.firstBoil);
  const mean = shown.reduce((sum, T) => sum + T, 0) / shown.length + high;
  return (Math.round(mean * 1.8 + 32 + off) + 459.67) / 1.8;
}

/** Logs of seeds first, first + 1 ..., made one by one as they are asked for: a second-by-second truth is large. */
export function* logsForFit(first: number, count: number, options: RoughOptions = {}): Generator<LogForFit> {
  for (let i = 0; i < count; i++) yield inventLogForFit(first + i, options);
}
