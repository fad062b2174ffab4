import type { FittedLine } from "./fitLine.ts";
import type { Asked } from "./readOff.ts";

function directly(
  fitted: FittedLine,
  effect: (pourTime: number) => number,
  time: number,
  perSteam: number,
): readonly number[] {
  return fitted.trial.suspects.map((suspect, a) =>
    suspect.kind === "pour" ? effect(fitted.pourTimes.get(a) ?? 0) : perSteam * (suspect.steam?.(time) ?? 0),
  );
}

/**
 * ln of the mean boil-off, as a question to the fit.
 *
 * @param fitted the fitted line
 * @param start s, first boil
 * @param end s, last row
 * @example readOff(steamAsked(fittedLine, 0, 3600), fittedLine.trial, fittedLine.line.doubts, 1).median
 */
export function steamAsked({ line, straight, ...rest }: FittedLine, start: number, end: number): Asked {
  const { z, rate } = straight;
  if (!(end > start)) {
    const by = new Float64Array(z.length);
    by[1] = 1e-4;
    const up = line.rate(by) / line.rate(new Float64Array(z.length));
    by[1] = Math.log(up) / 1e-4;
    return { value: Math.log(rate), by, gust: { by: 0, time: 0 }, direct: [] };
  }
  const { steam: found, steamBy } = line.bathAt(z, end);
  // Where next to nothing left, its ln would run away with any doubt: it is asked about a quarter of what the fire makes.
  const steam = Math.max(found, 0.25 * rate * (end - start));
  return {
    value: Math.log(steam / (end - start)) + (found - steam) / steam,
    by: steamBy.map((x) => x / steam),
    gust: { by: rate / steam, time: end - start },
    direct: directly({ line, straight, ...rest }, () => line.steamOfPour / steam, end, 1 / steam),
  };
}

/**
 * ln of the water in the tank, kg, as a question to the fit.
 *
 * @param fitted the fitted line
 * @param start s, first boil
 * @param time s
 * @example readOff(waterAsked(fittedLine, 0, 3600), fittedLine.trial, fittedLine.line.doubts, 1).median
 */
export function waterAsked(fitted: FittedLine, start: number, time: number): Asked {
  const { z, rate } = fitted.straight;
  const { water, waterBy } = fitted.line.bathAt(z, time);
  return {
    value: Math.log(water),
    by: waterBy.map((x) => x / water),
    gust: { by: -rate / water, time: time - start },
    direct: directly(fitted, (poured) => (poured <= time ? 1 / water : 0), time, -1 / water),
  };
}

/**
 * ln of salt over water, kg per kg, as a question to the fit.
 *
 * @param fitted the fitted line
 * @param start s, first boil
 * @param time s
 * @example readOff(ratioAsked(fittedLine, 0, 3600), fittedLine.trial, fittedLine.line.doubts, 1).median
 */
export function ratioAsked(fitted: FittedLine, start: number, time: number): Asked {
  const { value, by } = fitted.line.lnRatioAt(fitted.straight.z, time);
  const water = waterAsked(fitted, start, time);
  return { value, by, gust: { by: -water.gust.by, time: time - start }, direct: water.direct.map((x) => -x) };
}
