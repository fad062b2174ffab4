import { answerOfLn, scaled } from "./answer.ts";
import { ratioAsked, steamAsked } from "./asked.ts";
import { asWideAsUnknown, contradiction, withinUsual } from "./contradiction.ts";
import type { FittedLine } from "./fitLine.ts";
import { makeUpOf } from "./makeUpOf.ts";
import type { AtBoil } from "./pointsOf.ts";
import { pouredOf, unwrittenOf } from "./pouredOf.ts";
import type { Prepared } from "./prepare.ts";
import { readOff } from "./readOff.ts";
import type { Answer, WaterBalance } from "./types.ts";

const flow = { mass: 1, time: -1 } as const;

type Said = Pick<WaterBalance, "boilOff" | "makeUp" | "poured" | "pouredRate" | "unwritten" | "remarks">;

/**
 * The boil-off of a run, what would have made up for it, and what a maker should hear about both.
 *
 * @param prepared the log
 * @param fitted the line that was fitted to it
 * @param readings what those from the first boil on say of the water
 * @param widen factor on the intervals
 * @example boilOffOf(prepared, fittedLine, atBoil(fittedLine, prepared), 1).boilOff.value
 */
export function boilOffOf(prepared: Prepared, fitted: FittedLine, readings: AtBoil, widen: number): Said {
  const { line } = prepared;
  const { start, end } = line;
  const duration = end - start;
  // No more can boil off than was there and was poured.
  const inAll = line.pours.reduce((sum, pour) => sum + pour.mass, 3 * line.water.value);
  const rates = [1e-9 * line.water.value, (2 * inAll) / Math.max(60, duration)] as const;
  const against = contradiction(readings, line.water.value);
  const asked = readOff(steamAsked(fitted, start, end), fitted.trial, fitted.line.doubts, widen);
  const read = withinUsual(answerOfLn(asked, flow, rates), asked.u, line.water.value);
  const boilOff = against === undefined ? read : asWideAsUnknown(read, line.water.value);
  const poured = pouredOf(prepared);
  const pouredRate = scaled(poured, 1 / Math.max(1, duration), flow);
  const remarks = [...(against === undefined ? [] : [against]), ...prepared.remarks];
  const { misread } = readings;
  if (misread > 0) {
    remarks.push(
      misread === 1
        ? "One reading does not fit the others and hardly counts."
        : `${misread} readings do not fit the others and hardly count.`,
    );
  }
  const unwritten = unwrittenOf(prepared, remarks);
  if ((boilOff.interval95[1] - boilOff.interval95[0]) / 2 > 0.5 * boilOff.value) {
    remarks.push(
      "The log says little about the boil-off: more readings, further apart, and every pour written down would make it narrower.",
    );
  }
  const makeUp = makeUpOf(boilOff, pouredRate, fitted, prepared);
  return { boilOff, makeUp, poured, pouredRate, ...(unwritten ? { unwritten } : {}), remarks };
}

/**
 * Salt over water at the start and at the end; of the hold where parts went in.
 *
 * @param prepared the log
 * @param fitted the line that was fitted to it
 * @param hold s, from and to
 * @param widen factor on the intervals
 * @example ratiosOf(prepared, fittedLine, { start: 0, end: 3600 }, 1).ratioEnd.value
 */
export function ratiosOf(
  { line, facts }: Prepared,
  fitted: FittedLine,
  hold: { readonly start: number; readonly end: number },
  widen: number,
): Pick<WaterBalance, "ratioStart" | "ratioEnd"> {
  const { start, end } = facts.parts.length > 0 ? hold : line;
  // No tank holds thirty times what its first readings say.
  const limits = [
    line.saltAt(line.start) / (30 * line.water.value),
    (30 * line.saltAt(line.end)) / line.water.value,
  ] as const;
  const ask = (time: number): Answer =>
    answerOfLn(readOff(ratioAsked(fitted, line.start, time), fitted.trial, fitted.line.doubts, widen), {}, limits);
  return { ratioStart: ask(start), ratioEnd: ask(end) };
}
