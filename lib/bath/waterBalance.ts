import type { Run } from "../log/types.ts";
import { brineHeatCapacity, evaporationHeat, steamEnthalpy, waterEnthalpy } from "../physics/index.ts";
import type { Brine } from "../physics/types.ts";
import { answerOf, answerOfLn } from "./answer.ts";
import { at } from "./at.ts";
import { bandTime } from "./bandTime.ts";
import { type FittedLine, fitLine } from "./fitLine.ts";
import { holdOf } from "./holdOf.ts";
import { pointsOf } from "./pointsOf.ts";
import { type Prepared, prepare } from "./prepare.ts";
import { type Asked, readOff } from "./readOff.ts";
import type { Answer, BalanceGivens, WaterBalance } from "./types.ts";

/** The mixture of normals is a little too narrow at its ends; found on generated logs, not derived. */
const stretch = 1.03;
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
 * waterBalance(run, { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 }).boilOff.value // about 2e-4 kg/s
 */
export function waterBalance(run: Run, givens: BalanceGivens): WaterBalance {
  const prepared = prepare(run, givens);
  const fitted = fitLine(prepared);
  const { line, facts, boil } = prepared;
  const { start, end } = line;
  const duration = end - start;
  const ask = (asked: Asked) => readOff(asked, fitted.trial, fitted.line.doubts, stretch);

  // No more can boil off than was there and was poured, and no tank holds thirty times what its first readings say.
  const most = 30 * line.water.value;
  const inAll = line.pours.reduce((sum, pour) => sum + pour.mass, 3 * line.water.value);
  const water = [line.water.value / 30, most] as const;
  const rates = [1e-9 * line.water.value, (2 * inAll) / Math.max(60, duration)] as const;
  const boilOff = answerOfLn(ask(steamAsked(fitted, start, end)), flow, rates);
  const waterStart = answerOfLn(ask(waterAsked(fitted, start, start)), { mass: 1 }, water);
  const waterEnd = answerOfLn(ask(waterAsked(fitted, start, end)), { mass: 1 }, water);
  const ratios = [line.saltAt(start) / most, (30 * line.saltAt(end)) / line.water.value] as const;
  const hold = holdOf(prepared, givens);
  const ratioStart = answerOfLn(
    ask(ratioAsked(fitted, start, facts.parts.length > 0 ? hold.start : start)),
    {},
    ratios,
  );
  const ratioEnd = answerOfLn(ask(ratioAsked(fitted, start, end)), {}, ratios);
  const poured = pouredOf(prepared);
  const pouredRate = scaled(poured, 1 / Math.max(1, duration), flow);
  const course = courseOf(fitted, prepared);
  const { points, misread } = pointsOf(fitted, prepared);
  const remarks = [...prepared.remarks];
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
  return {
    boilOff,
    makeUp: makeUpOf(boilOff, pouredRate, fitted, prepared),
    waterStart,
    waterEnd,
    ratioStart,
    ratioEnd,
    ...(givens.target !== undefined && givens.band !== undefined
      ? { inBand: inBandOf(prepared, fitted, course, givens.target, givens.band, hold, misread) }
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

function directly(fitted: FittedLine, effect: (pourTime: number) => number): readonly number[] {
  return fitted.trial.suspects.map((suspect, a) =>
    suspect.kind === "pour" ? effect(fitted.pourTimes.get(a) ?? 0) : 0,
  );
}

/** ln of the mean boil-off. */
function steamAsked({ line, straight, ...rest }: FittedLine, start: number, end: number): Asked {
  const { z, rate } = straight;
  if (!(end > start)) {
    const by = new Float64Array(z.length);
    by[1] = 1e-4;
    const up = line.rate(by) / line.rate(new Float64Array(z.length));
    by[1] = Math.log(up) / 1e-4;
    return { value: Math.log(rate), by, gust: { by: 0, time: 0 }, direct: [] };
  }
  const { steam, steamBy } = line.bathAt(z, end);
  return {
    value: Math.log(steam / (end - start)),
    by: steamBy.map((x) => x / steam),
    gust: { by: rate / steam, time: end - start },
    direct: directly({ line, straight, ...rest }, () => line.steamOfPour / steam),
  };
}

function waterAsked(fitted: FittedLine, start: number, time: number): Asked {
  const { z, rate } = fitted.straight;
  const { water, waterBy } = fitted.line.bathAt(z, time);
  return {
    value: Math.log(water),
    by: waterBy.map((x) => x / water),
    gust: { by: -rate / water, time: time - start },
    direct: directly(fitted, (poured) => (poured <= time ? 1 / water : 0)),
  };
}

function ratioAsked(fitted: FittedLine, start: number, time: number): Asked {
  const { value, by } = fitted.line.lnRatioAt(fitted.straight.z, time);
  const water = waterAsked(fitted, start, time);
  return { value, by, gust: { by: -water.gust.by, time: time - start }, direct: water.direct.map((x) => -x) };
}

function scaled(answer: Answer, factor: number, dimension: Answer["measured"]["dimension"]): Answer {
  return answerOf(
    answer.value * factor,
    [answer.interval95[0] * factor, answer.interval95[1] * factor],
    dimension,
    new Map([...answer.measured.components].map(([source, u]) => [source, u * factor])),
  );
}

function symmetric(
  value: number,
  dimension: Answer["measured"]["dimension"],
  components: ReadonlyMap<string, number>,
  least = -Infinity,
): Answer {
  const u = Math.sqrt([...components.values()].reduce((sum, x) => sum + x * x, 0));
  return answerOf(value, [Math.max(least, value - 1.96 * u), value + 1.96 * u], dimension, components);
}

function pouredOf({ line }: Prepared): Answer {
  const value = line.pours.reduce((sum, pour) => sum + pour.mass, 0);
  const each = line.cup.eachPour * Math.sqrt(line.pours.reduce((sum, pour) => sum + pour.mass ** 2, 0));
  return symmetric(
    value,
    { mass: 1 },
    new Map([
      ["cup", line.cup.allNight * value],
      ["each pour", each],
    ]),
    0,
  );
}

function unwrittenOf({ jug, facts, line }: Prepared, remarks: string[]): Answer | undefined {
  if (!jug) return undefined;
  const inside = facts.pours.filter((pour) => pour.time >= jug.from && pour.time <= jug.to);
  const written = inside.reduce((sum, pour) => sum + pour.mass, 0);
  const each = line.cup.eachPour * Math.sqrt(inside.reduce((sum, pour) => sum + pour.mass ** 2, 0));
  const answer = symmetric(
    jug.value - written,
    { mass: 1 },
    new Map([
      ["feed jug", jug.u],
      ["cup", line.cup.allNight * written],
      ["each pour", each],
    ]),
  );
  if (answer.interval95[0] > 0)
    remarks.push("The jug lost more water than the log has written down: some pours are probably missing.");
  if (answer.interval95[1] < 0)
    remarks.push(
      "The log has more water written down than the jug lost: a pour may be written twice, or the jug was filled up.",
    );
  return answer;
}

/**
 * Cold water that would have held the ratio, from the heat that the log shows. The fire's heat into the brine is what
 * left as steam (b λ), what warmed and thinned the poured water (h - λ for each kg, h from cold water to steam) and
 * what warmed the bath (C dT/dt). A steady feed at an even ratio takes h for each kg.
 */
function makeUpOf(
  boilOff: Answer,
  pouredRate: Answer,
  fitted: FittedLine,
  { pressure, salts, line }: Prepared,
): Answer {
  const { z } = fitted;
  const from = fitted.line.lnRatioAt(z, line.start).value;
  const to = fitted.line.lnRatioAt(z, line.end).value;
  const highest = salts.curve.end.lnRatio;
  const middle = Math.min(highest, (from + to) / 2);
  const brine = Object.fromEntries(
    Object.entries(salts.masses).map(([salt, kg]) => [salt, (kg / salts.total) * Math.exp(middle)]),
  ) as Brine;
  const T = salts.curve.boils(middle);
  const lambda = evaporationHeat(brine, pressure);
  const whole = steamEnthalpy(T, pressure) - waterEnthalpy(288.15);
  const water = fitted.line.bathAt(z, line.end).water;
  const capacity = brineHeatCapacity(brine, T) * (water + line.saltAt(line.end));
  const duration = Math.max(60, line.end - line.start);
  const warming = salts.curve.boils(Math.min(highest, to)) - salts.curve.boils(Math.min(highest, from));
  const share = lambda / whole;
  const value = boilOff.value * share + pouredRate.value * (1 - share) + (capacity * warming) / duration / whole;
  const components = new Map([...boilOff.measured.components].map(([source, u]) => [source, u * share]));
  components.set("cup", (components.get("cup") ?? 0) + (pouredRate.measured.components.get("cup") ?? 0) * (1 - share));
  components.set("heats of the brine", 0.02 * boilOff.value);
  components.set("warming of the bath", (capacity * 0.4) / duration / whole);
  let variance = 0;
  for (const u of components.values()) variance += u * u;
  const widen = Math.sqrt(variance) / Math.max(1e-12, boilOff.standardUncertainty);
  return answerOf(
    Math.max(1e-9, value),
    [
      Math.max(0, value - (boilOff.value - boilOff.interval95[0]) * widen),
      Math.max(1e-9, value) + (boilOff.interval95[1] - boilOff.value) * widen,
    ],
    flow,
    components,
  );
}

type Course = WaterBalance["course"];

function courseOf(fitted: FittedLine, { line, thermometer }: Prepared): Course {
  const { z, trial } = fitted;
  const likely = trial.explanations[0];
  const solved = trial.solved[likely?.noise ?? 0];
  const times = new Set<number>();
  const steps = 90;
  for (let i = 0; i <= steps; i++) times.add(line.start + ((line.end - line.start) * i) / steps);
  for (const pour of line.pours)
    for (const time of [pour.time - 0.5, pour.time + pour.duration])
      if (time >= line.start && time <= line.end) times.add(time);
  const extra = (time: number) =>
    (likely?.guilty ?? []).reduce((sum, a, i) => {
      const poured = fitted.pourTimes.get(a);
      return poured !== undefined && poured <= time ? sum + at(likely?.amounts ?? [], i) : sum;
    }, 0);
  return [...times]
    .sort((a, b) => a - b)
    .map((time) => {
      const added = extra(time);
      const bath = fitted.line.bathAt(z, time);
      const water = bath.water + added;
      const ratio = Math.exp(fitted.line.lnRatioAt(z, time).value) * (bath.water / water);
      const reading = fitted.line.readingAt(z, time);
      const boilingPoint = reading.T + reading.perKilogram * added - thermometer.offset;
      return {
        time,
        water,
        ratio,
        boilingPoint,
        standardUncertainty: solved ? courseDoubt(fitted, reading.by, reading.perKilogram, time) : 0,
      };
    });
}

function courseDoubt(fitted: FittedLine, by: Float64Array, perKilogram: number, time: number): number {
  const { straight } = fitted;
  const read = readOff(
    { value: 0, by, gust: { by: -perKilogram * straight.rate, time: time - straight.start }, direct: [] },
    {
      ...fitted.trial,
      explanations: [
        {
          ...(fitted.trial.explanations[0] as FittedLine["trial"]["explanations"][number]),
          guilty: [],
          amounts: new Float64Array(0),
          covariance: new Float64Array(0),
        },
      ],
    },
    fitted.line.doubts,
    1,
  );
  return Math.min(20, read.u);
}

function inBandOf(
  { thermometer, thinned, boil }: Prepared,
  fitted: FittedLine,
  course: Course,
  target: number,
  band: number,
  hold: WaterBalance["hold"],
  misread: WaterBalance["misread"],
): Answer {
  const bad = new Set(misread.map(({ id }) => id));
  const readings = thinned
    .filter((block) => !bad.has(block.id) && block.time >= boil.time - 1e-9)
    .map(({ time, T }) => ({ time, T: T - thermometer.offset }));
  const likely = fitted.trial.explanations[0];
  const sigma = fitted.trial.solved[likely?.noise ?? 0]?.sigma ?? 0.33;
  const shape = course.map(({ time, boilingPoint }) => ({ time, T: boilingPoint }));
  const between = (time: number) => shapeAt(shape, time);
  const { value, u, low, high } = bandTime(
    readings,
    between,
    shape.map(({ time }) => time),
    [target - band, target + band],
    [hold.start, hold.end],
    { fixed: thermometer.u, reading: sigma },
  );
  return answerOf(value, [low, high], { time: 1 }, new Map([["thermometer", u]]));
}

function shapeAt(shape: readonly { readonly time: number; readonly T: number }[], time: number): number {
  let low = 0;
  let high = shape.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((shape[middle]?.time ?? 0) <= time) low = middle;
    else high = middle;
  }
  const a = shape[low];
  const b = shape[high];
  if (!a || !b) return 0;
  if (b.time <= a.time) return b.T;
  const share = Math.min(1, Math.max(0, (time - a.time) / (b.time - a.time)));
  return a.T + share * (b.T - a.T);
}
