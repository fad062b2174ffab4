import { coverage95, interval95, standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { Draws } from "./Draws.ts";
import { drawnLine } from "./drawnLine.ts";
import { quantile, shortest95 } from "./drawStatistics.ts";
import { type Figures, Gathered } from "./Gathered.ts";
import { isValue } from "./isValue.ts";
import { pauses } from "./pauses.ts";
import { Shares } from "./Shares.ts";
import type { World } from "./supposed.ts";
import type { Trial, TrialOptions, Tried } from "./Trial.ts";
import { toleranceOf } from "./tolerance.ts";
import { trialInWords } from "./trialInWords.ts";
import type { Result } from "./types.ts";
import { unitShown } from "./unitShown.ts";

/** JCGM 101:2008, 7.9.4 b has blocks of 100/(1 - p) draws or more: for 95 % that is 2,000. */
const BLOCK = 2000;
/** So many blocks at least: the scatter of two says little of how sure their mean is. */
const LEAST_BLOCKS = 5;
const LEAST_DRAWS = 100;
const MOST_DRAWS = 2_000_000;
/** Share of the time that is worked before it is decided whether there is time for the least: first draws are slow. */
const TIMED = 1 / 20;

/** One time in a hundred a line may come to nothing before its interval, and the linear one, is no longer believed. */
const MOST_WITHOUT = 0.01;

/**
 * Tries a line by drawing: every independent source of doubt is drawn as a standard normal number, alike wherever it
 * enters, the line is worked anew for each draw, and the spread of what it comes to is set against the linear answer
 * (JCGM 101:2008, clauses 7 and 8). As many draws as it takes (7.9), in blocks smaller than its 10,000.
 * @param world The open notebook, settled.
 * @param inCase Id of the case.
 * @param asked Id of the line.
 * @param options How many draws at most, from which seed, for how long.
 * @returns The trial; or in words why there is none.
 * @throws RangeError for draws that are no number from 100 to 2,000,000.
 * @example (await trialOf(world, "case 1", "line 3")).goodEnough // true
 */
export async function trialOf(world: World, inCase: string, asked: string, options: TrialOptions = {}): Promise<Tried> {
  const { draws: most = 200_000, seed = 1, seconds = 20 } = options;
  if (!(most >= LEAST_DRAWS && most <= MOST_DRAWS))
    throw new RangeError(`invalid draws: ${most}; ${LEAST_DRAWS} to ${MOST_DRAWS} are allowed`);
  const kept = world.desk.kept.get(asked);
  const present = world.result(asked, inCase);
  if (!kept || present.state !== "settled" || !isValue(present.value))
    return { stopped: "there is no amount to try: the line has none" };
  const { value } = present;
  const unit = unitShown(value.dimension, kept.line.unit);
  const { work, rests, grain } = drawnLine(world, inCase, asked);
  const judged = judgedBy(value, unit, grain, options.digits);
  const before = rests.map((id) => world.result(id, inCase));
  const unchanged = () => rests.every((id, i) => world.result(id, inCase) === before[i]);

  const size = Math.min(BLOCK, Math.floor(most / LEAST_BLOCKS));
  const draws = new Draws(seed, size);
  const gathered = new Gathered(value.value, standardUncertainty(value));
  const shares = new Shares(value);
  const clock = pauses(options.rest);
  let without = 0;
  let reason: string | undefined;

  for (let made = 0; made + size <= most; ) {
    const [found, linear]: [number[], number[]] = [[], []];
    const used: number[] = [];
    for (let i = 0; i < size; i++) {
      draws.at = i;
      const result = work(draws.of);
      if (result.state === "settled" && isValue(result.value)) {
        found.push(result.value.value);
        linear.push(linearly(value, draws.of));
        used.push(i);
      } else {
        without += 1;
        reason ??= whyNone(result);
      }
      if (!clock.due()) continue;
      const worked = clock.worked();
      if (worked > TIMED * seconds && (worked * LEAST_BLOCKS * size) / (made + i + 1) > seconds)
        return { stopped: "it takes too long to be worked as often as a trial needs" };
      options.progress?.(Math.min(0.99, (made + i) / most));
      await clock.pause();
      if (options.stop?.aborted) return { stopped: "stopped by you" };
      if (!unchanged()) return { stopped: "something that it rests on was changed meanwhile" };
    }
    made += size;
    // What a block comes to takes a slice of its own.
    await clock.pause();
    if (found.length < size / 2) return { stopped: `in most draws there is no number: ${reason}` };
    gathered.add(found, linear);
    shares.add(draws.rows(), used, found, linear);
    draws.nextBlock();
    if (gathered.blocks < LEAST_BLOCKS) continue;
    if (isSure(gathered.figures(), value, judged) || clock.worked() > seconds) break;
  }
  options.progress?.(1);
  await clock.pause();
  return concluded({ value, gathered, shares, without, reason, judged, name: kept.name, unit });
}

function whyNone(result: Result): string {
  if (result.state === "stopped") return result.says;
  return result.state === "waits" ? `"${result.for}" has none` : "it has no number";
}

/** What slopes alone say that it is off by. */
function linearly(value: Value, off: (source: string) => number): number {
  let sum = 0;
  for (const [source, component] of value.components) sum += component * off(source);
  return sum;
}

/** What figures are judged by: how far ends may differ, and how sure figures must be. */
type Judged = (figures: Figures) => { readonly wide: number; readonly enough: number };

/**
 * The tolerance is that of the linear uncertainty (JCGM 101:2008, 8.1), or of half the trial's interval where slopes see
 * no doubt. 7.9.4 wants the trial's own figures as sure as the tolerance. Where no digits are asked for, a 20th of the
 * uncertainty will do: that is a 40th of the half-width shown, and less would ask millions of draws of a long tail.
 */
function judgedBy(value: Value, unit: string, grain: number, digits: number | undefined): Judged {
  return ({ low, high }) => {
    const spread = (high.figure - low.figure) / 2 / coverage95;
    const wide = Math.max(grain, toleranceOf(standardUncertainty(value) || spread, value.dimension, unit, digits));
    return { wide, enough: digits === undefined ? Math.max(wide, spread / 20) : wide };
  };
}

/** Whether the figures have settled, and the ends lie clearly within the tolerance of the linear ones or beyond it. */
function isSure(figures: Figures, value: Value, judged: Judged): boolean {
  const { wide, enough } = judged(figures);
  if (!hasSettled(figures, enough)) return false;
  const [low, high] = interval95(value);
  const apart = [figures.low.figure - low, figures.high.figure - high].map(Math.abs);
  const errors = [2 * figures.low.error, 2 * figures.high.error];
  const beyond = apart.some((gap, i) => gap - (errors[i] ?? 0) > wide);
  // A fifth of the tolerance is what JCGM 101:2008, 8.2 asks of draws that judge.
  return beyond || apart.every((gap, i) => gap + (errors[i] ?? 0) <= wide || (errors[i] ?? 0) <= wide / 5);
}

const hasSettled = (figures: Figures, enough: number): boolean =>
  Object.values(figures).every(({ error }) => 2 * error <= enough);

interface Ended {
  readonly value: Value;
  readonly gathered: Gathered;
  readonly shares: Shares;
  readonly without: number;
  readonly reason: string | undefined;
  readonly judged: Judged;
  readonly name: string;
  readonly unit: string;
}

function concluded({ value, gathered, shares, without, reason, judged, name, unit }: Ended): Trial {
  const figures = gathered.figures();
  const sorted = gathered.sorted();
  const linear95 = interval95(value);
  const trial95 = [figures.low.figure, figures.high.figure] as const;
  const { wide, enough } = judged(figures);
  const lost = without / (gathered.count + without) > MOST_WITHOUT;
  const near = Math.abs(trial95[0] - linear95[0]) <= wide && Math.abs(trial95[1] - linear95[1]) <= wide;
  const settled = hasSettled(figures, enough);
  const found = {
    goodEnough: near && !lost,
    linear95,
    trial95,
    shortest95: shortest95(sorted),
    mean: figures.mean.figure,
    median: quantile(sorted, 0.5),
    standardUncertainty: figures.deviation.figure,
    tolerance: wide,
    draws: gathered.count + without,
    without,
    settled,
  };
  const shown = found.goodEnough ? value : shares.valueOf(found, `bend of ${name}`);
  return { ...found, value: shown, says: trialInWords(found, value, unit, reason) };
}
