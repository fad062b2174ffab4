import type { Run } from "../log/types.ts";
import { answerOfLn, scaled, symmetric } from "./answer.ts";
import { ratioAsked, steamAsked, waterAsked } from "./asked.ts";
import { asWideAsUnknown, contradiction, withinUsual } from "./contradiction.ts";
import { courseOf } from "./courseOf.ts";
import { type FittedLine, fitLine } from "./fitLine.ts";
import { holdOf } from "./holdOf.ts";
import { inBandOf } from "./inBandOf.ts";
import { makeUpOf } from "./makeUpOf.ts";
import { pointsOf } from "./pointsOf.ts";
import { pouredOf, unwrittenOf } from "./pouredOf.ts";
import { type Prepared, prepare } from "./prepare.ts";
import { type Asked, readOff } from "./readOff.ts";
import type { BalanceGivens, WaterBalance } from "./types.ts";

/** The mixture of normals is a little too narrow at its ends; found on generated logs, not derived. */
const stretch = 1.04;
const flow = { mass: 1, time: -1 } as const;

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
 * waterBalance(run, { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 }).boilOff.value // 0.00039
 */
export function waterBalance(run: Run, givens: BalanceGivens): WaterBalance {
  const prepared = prepare(run, givens);
  return readBalance(prepared, fitLine(prepared), givens);
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
  const { line, facts, boil } = prepared;
  const { start, end } = line;
  const duration = end - start;
  const ask = (asked: Asked) => readOff(asked, fitted.trial, fitted.line.doubts, widen);

  // No more can boil off than was there and was poured, and no tank holds thirty times what its first readings say.
  const most = 30 * line.water.value;
  const inAll = line.pours.reduce((sum, pour) => sum + pour.mass, 3 * line.water.value);
  const water = [line.water.value / 30, most] as const;
  const rates = [1e-9 * line.water.value, (2 * inAll) / Math.max(60, duration)] as const;
  const { points, misread } = pointsOf(fitted, prepared);
  const against = contradiction(points, boil.time, line.water.value);
  const asked = ask(steamAsked(fitted, start, end));
  const read = withinUsual(answerOfLn(asked, flow, rates), asked.u, line.water.value);
  const boilOff = against === undefined ? read : asWideAsUnknown(read, line.water.value);
  const waterStart = answerOfLn(ask(waterAsked(fitted, start, start)), { mass: 1 }, water);
  const waterEnd = answerOfLn(ask(waterAsked(fitted, start, end)), { mass: 1 }, water);
  const ratios = [line.saltAt(start) / most, (30 * line.saltAt(end)) / line.water.value] as const;
  const hold = holdOf(prepared, givens);
  const ratioStart = answerOfLn(
    ask(ratioAsked(fitted, start, facts.parts.length > 0 ? hold.start : start)),
    {},
    ratios,
  );
  const ratioEnd = answerOfLn(ask(ratioAsked(fitted, start, facts.parts.length > 0 ? hold.end : end)), {}, ratios);
  const poured = pouredOf(prepared);
  const pouredRate = scaled(poured, 1 / Math.max(1, duration), flow);
  const course = courseOf(fitted, prepared);
  const remarks = [...(against === undefined ? [] : [against]), ...prepared.remarks];
  if (misread.length > 0) {
    remarks.push(
      misread.length === 1
        ? "One reading does not fit the others and hardly counts."
        : `${misread.length} readings do not fit the others and hardly count.`,
    );
  }
  const unwritten = unwrittenOf(prepared, remarks);
  const half = (boilOff.interval95[1] - boilOff.interval95[0]) / 2;
  if (half > 0.5 * boilOff.value) {
    remarks.push(
      "The log says little about the boil-off: more readings, further apart, and every pour written down would make it narrower.",
    );
  }
  const lnRatio = givens.target === undefined ? Math.log(ratioEnd.value) : prepared.salts.curve.lnRatio(givens.target);
  const perShare = prepared.salts.curve.slope(lnRatio) / (line.saltAt(end) / Math.exp(lnRatio));
  return {
    boilOff,
    drift: scaled(boilOff, perShare, { temperature: 1, time: -1 }),
    salts: symmetric(line.saltAt(end), { mass: 1 }, saltSources(prepared), 0),
    makeUp: makeUpOf(boilOff, pouredRate, fitted, prepared),
    waterStart,
    waterEnd,
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
