import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { Asked } from "../../bath/readOff.ts";
import type { FireLine } from "./fireLine.ts";

interface Water {
  readonly kg: number;
  readonly by: Float64Array;
}

/** Water at which the bath would boil at T as the thermometer shows it, and how that hangs on the doubts. */
function waterBoilingAt(line: FireLine, z: ArrayLike<number>, time: number, T: number, from: number): Water {
  let kg = from;
  for (let turn = 0; turn < 40; turn++) {
    const { T: here, perKilogram } = line.boilsAt(z, time, kg);
    const next = kg * Math.exp(Math.min(0.7, Math.max(-0.7, (T - here) / (perKilogram * kg))));
    const done = Math.abs(next / kg - 1) < 1e-10;
    kg = next;
    if (done) break;
  }
  const { by, perKilogram } = line.boilsAt(z, time, kg);
  return { kg, by: by.map((x) => -x / perKilogram) };
}

/** kg that each suspect adds to the water at a time. */
function added({ trial, pourTimes }: FittedLine, time: number, per: number): readonly number[] {
  return trial.suspects.map((suspect, a) => {
    if (suspect.kind === "pour") return (pourTimes.get(a) ?? 0) <= time ? per : 0;
    return -per * (suspect.steam?.(time) ?? 0);
  });
}

/**
 * Water that brings the bath back to its target at the end of the log, kg; below 0 where too much is in it. The target
 * is meant as this thermometer shows it, less its known error: what it is off by beyond that is off at the target too.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @param target K
 * @example readOff(waterToTarget(prepared, fittedLine, line, 417.6), fittedLine.trial, line.doubts, 1).median
 */
export function waterToTarget(prepared: Prepared, fitted: FittedLine, line: FireLine, target: number): Asked {
  const { z } = fitted.straight;
  const { end, start } = prepared.line;
  const now = line.bathAt(z, end);
  const then = waterBoilingAt(line, z, end, target + prepared.thermometer.offset, now.water);
  const by = then.by.map((x, i) => x - at(now.waterBy, i));
  return {
    value: then.kg - now.water,
    by,
    gust: { by: fitted.straight.rate, time: end - start },
    direct: added(fitted, end, -1),
  };
}

/**
 * Time until the boiling point climbs out of the band when the bath is left alone on its last fire, s from the end of
 * the log; below 0 where it is out.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @param upper K, the band's upper limit as the thermometer shows it
 * @example readOff(untilOut(prepared, fittedLine, line, 418.7), fittedLine.trial, line.doubts, 1).median
 */
export function untilOut(prepared: Prepared, fitted: FittedLine, line: FireLine, upper: number): Asked {
  const { z } = fitted.straight;
  const { end, start, fire, rate } = prepared.line;
  const now = line.bathAt(z, end);
  const limit = waterBoilingAt(line, z, end, upper + prepared.thermometer.offset, now.water);
  const last = fire.told.length - 1;
  const factor =
    last < 0 ? 0 : (fire.told[last]?.lnFactor ?? 0) + (fire.told[last]?.u ?? 0) * at(z, at(line.index.fire, last));
  const perSecond = Math.max(1e-9, line.rate(z) * Math.exp(factor));
  const seconds = (now.water - limit.kg) / perSecond;
  const by = now.waterBy.map((x, i) => (x - at(limit.by, i)) / perSecond);
  by[line.index.rate] = at(by, line.index.rate) - seconds * rate.relative;
  if (last >= 0) {
    const k = at(line.index.fire, last);
    by[k] = at(by, k) - seconds * (fire.told[last]?.u ?? 0);
  }
  return {
    value: seconds,
    by,
    gust: { by: -fitted.straight.rate / perSecond, time: end - start },
    direct: added(fitted, end, 1 / perSecond).map((x, a) =>
      // A fire that was turned up without a word burns on.
      fitted.trial.suspects[a]?.kind === "burner" ? x - (seconds * line.rate(z)) / perSecond : x,
    ),
  };
}

/**
 * Water by which the bath is thinner than its band allows at the end of the log, kg; below 0 where it is not.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @param lower K, the band's lower limit as the thermometer shows it
 * @example readOff(tooThin(prepared, fittedLine, line, 416.4), fittedLine.trial, line.doubts, 1).median
 */
export function tooThin(prepared: Prepared, fitted: FittedLine, line: FireLine, lower: number): Asked {
  const less = waterToTarget(prepared, fitted, line, lower);
  return {
    value: -less.value,
    by: less.by.map((x) => -x),
    gust: { ...less.gust, by: -less.gust.by },
    direct: less.direct.map((x) => -x),
  };
}

/**
 * One doubt of the line, as a question to the fit.
 *
 * @param fitted the fit
 * @param doubt its number
 * @param value what it stands for where the doubt is 0
 * @param u what one of it stands for
 * @example readOff(doubtAsked(fittedLine, 3, 0, 1), fittedLine.trial, line.doubts, 1).median
 */
export function doubtAsked({ straight, trial }: FittedLine, doubt: number, value: number, u: number): Asked {
  const by = new Float64Array(straight.z.length);
  by[doubt] = u;
  return {
    value: value + u * at(straight.z, doubt),
    by,
    gust: { by: 0, time: 0 },
    direct: trial.suspects.map(() => 0),
  };
}
