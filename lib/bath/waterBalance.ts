import type { Run } from "../log/types.ts";
import { answerOfLn, scaled, symmetric } from "./answer.ts";
import { waterAsked } from "./asked.ts";
import { boilOffOf, ratiosOf } from "./boilOffOf.ts";
import { courseOf } from "./courseOf.ts";
import { type FittedLine, fitLine } from "./fitLine.ts";
import { holdOf } from "./holdOf.ts";
import { inBandOf } from "./inBandOf.ts";
import { atBoil, pointsOf } from "./pointsOf.ts";
import { type Prepared, prepare } from "./prepare.ts";
import { readOff } from "./readOff.ts";
import type { BalanceGivens, WaterBalance } from "./types.ts";
import { fitUnsaid } from "./unsaidFire.ts";

/** The mixture of normals is a little too narrow at its ends; found on generated logs, not derived. */
const stretch = 1.04;

/**
 * The water balance of one run. Salt does not boil off, so each reading at the boil says how much water is in the tank;
 * water gone is what was there plus what was poured less what is there now, and against time it is nearly a straight
 * line whose slope is the boil-off. Cup, salts, curve, thermometer, air pressure, fire and pour times are doubts of the
 * one fit, pours that were not written down and misread readings are weighed as explanations of the log.
 *
 * @param run a log as `readLog` gives it; struck-out entries count for nothing
 * @param givens salts in kg, as weighed kinds, a ready mix, or seen by boiling point and depth; water at the first row in
 * kg if known; pressure in Pa, 65,000 to 105,000; target and band in K. A number alone counts 2 % for salts, 5 % for
 * water, 0.5 % for pressure (standard uncertainty); the thermometer 1.1 K, the cup 3 % all night and 5 % a pour.
 * @returns SI; `boilOff` is the mean from the first boil to the log's last row
 * @throws RangeError for a number out of range; Error, in the maker's words, where the log lacks what is essential:
 * two readings at the boil at different times
 * @example
 * const reading = (time, si) => ({ id: `r${time}`, time, kind: "reading", line: 1, struck: false,
 *   quantity: { text: "", si, dimension: {}, unit: "K", standardUncertainty: 0, known: "measured" } });
 * const run = { entries: [reading(0, 415), reading(600, 416), reading(1200, 417)] };
 * waterBalance(run, { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 }).boilOff.value // 0.0004
 */
export function waterBalance(run: Run, givens: BalanceGivens): WaterBalance {
  const { prepared, fitted } = fitUnsaid(prepare(run, givens), (own) => ({ fitted: fitLine(own) }));
  return readBalance(prepared, fitted, givens);
}

/**
 * Everything that a fitted line answers about a run's water.
 *
 * @param prepared the log
 * @param fitted the line that was fitted to it
 * @param givens as they were handed in
 * @param widen factor on the intervals
 * @example readBalance(prepared, fitLine(prepared), givens).boilOff.value
 */
export function readBalance(
  prepared: Prepared,
  fitted: FittedLine,
  givens: BalanceGivens,
  widen = stretch,
): WaterBalance {
  const { line, boil } = prepared;
  const { start, end } = line;
  // No tank holds thirty times what its first readings say.
  const water = [line.water.value / 30, 30 * line.water.value] as const;
  const waterAt = (time: number) =>
    answerOfLn(readOff(waterAsked(fitted, start, time), fitted.trial, fitted.line.doubts, widen), { mass: 1 }, water);
  const { points, misread } = pointsOf(fitted, prepared);
  const { boilOff, makeUp, poured, pouredRate, unwritten, remarks } = boilOffOf(
    prepared,
    fitted,
    atBoil(fitted, prepared),
    widen,
  );
  const hold = holdOf(prepared, givens);
  const { ratioStart, ratioEnd } = ratiosOf(prepared, fitted, hold, widen);
  const course = courseOf(fitted, prepared);
  const lnRatio = givens.target === undefined ? Math.log(ratioEnd.value) : prepared.salts.curve.lnRatio(givens.target);
  const perShare = prepared.salts.curve.slope(lnRatio) / (line.saltAt(end) / Math.exp(lnRatio));
  return {
    boilOff,
    drift: scaled(boilOff, perShare, { temperature: 1, time: -1 }),
    salts: symmetric(line.saltAt(end), { mass: 1 }, saltSources(prepared), 0),
    makeUp,
    waterStart: waterAt(start),
    waterEnd: waterAt(end),
    ratioStart,
    ratioEnd,
    ...(givens.target !== undefined && givens.band !== undefined
      ? inBandOf(prepared, fitted, course, givens.target, givens.band, hold, misread)
      : {}),
    hold,
    poured,
    pouredRate,
    ...(unwritten ? { unwritten } : {}),
    firstBoil: boil.time,
    points,
    course,
    remarks,
    misread,
  };
}

function saltSources({ salts }: Prepared): ReadonlyMap<string, number> {
  const squares = new Map<string, number>();
  for (const { source, masses } of salts.doubts) {
    const moved = Object.values(masses).reduce((sum, kg) => sum + kg, 0) - salts.total;
    squares.set(source, (squares.get(source) ?? 0) + moved * moved);
  }
  return new Map([...squares].map(([source, v]) => [source, Math.sqrt(v)]));
}
