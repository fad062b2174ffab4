import type { Run } from "../log/types.ts";
import { boilingPoint } from "../physics/index.ts";
import { type Block, blockReadings, loggerWrote } from "./blockReadings.ts";
import { brineCurve } from "./brineCurve.ts";
import { doubtful } from "./doubtful.ts";
import { fireHistory } from "./fireHistory.ts";
import { type FirstBoil, firstBoil, median } from "./firstBoil.ts";
import { gathered } from "./gathered.ts";
import { type Jug, jugOf } from "./jugOf.ts";
import { likelyRise } from "./likelyRise.ts";
import { type LogFacts, logFacts, type Pour } from "./logFacts.ts";
import { middleOf, placed } from "./middleOf.ts";
import { needGivens } from "./needGivens.ts";
import { pourEffect } from "./pourEffect.ts";
import { pulledBy } from "./pulledBy.ts";
import { type SaltsInTank, saltsOf } from "./saltsOf.ts";
import { startWater } from "./startWater.ts";
import { stoodBelow } from "./stoodBelow.ts";
import type { BalanceGivens } from "./types.ts";
import type { LineGivens } from "./waterLine.ts";

export interface Prepared {
  readonly facts: LogFacts;
  readonly salts: SaltsInTank;
  readonly pressure: number;
  readonly boil: FirstBoil;
  readonly line: LineGivens;
  readonly thermometer: { readonly offset: number; readonly u: number };
  /** K² beside the noise, for each reading of the line. */
  readonly extra: readonly number[];
  /** What the feed jug lost in kg, from one time to another. */
  readonly jug: Jug | undefined;
  readonly thinned: readonly Block[];
  readonly remarks: readonly string[];
}

/** K (410 °F): no salt bath for blackening comes near it, so such a reading is a slip of the pen. */
export const hottestBath = 483;
const mostBlocks = 100;
/** Parts steal heat: J/(kg K) of steel, and about how much they warm up in the bath. */
const steel = 490;
/** J/(kg K) of a bath, and J to make a kilogram of steam of its water: about. */
const bathHeat = 2900;
const steamHeat = 2.6e6;

function fahrenheit(T: number): string {
  return `${Math.round(T * 1.8 - 459.67)} °F`;
}

/** Whole minutes on every pour: the times were read off a clock without seconds. */
function pourTimeDoubt(pours: readonly Pour[]): number {
  return pours.length > 0 && pours.every((pour) => Math.abs(pour.time / 60 - Math.round(pour.time / 60)) < 1e-6)
    ? 17
    : 3;
}

/** kg poured before the first boil, and the pours since; a drip that ran across it is cut there. */
function atBoil(pours: readonly Pour[], boil: number): { readonly early: number; readonly later: readonly Pour[] } {
  let early = 0;
  const later = pours.flatMap((pour) => {
    if (pour.time >= boil - 1e-9) return [pour];
    const share = pour.duration > 0 ? Math.min(1, (boil - pour.time) / pour.duration) : 1;
    early += share * pour.mass;
    return share < 1
      ? [{ ...pour, time: boil, mass: (1 - share) * pour.mass, duration: (1 - share) * pour.duration }]
      : [];
  });
  return { early, later };
}

/** Rates of rise between neighbours, K/s. */
function pairs(blocks: readonly Block[]): { readonly rate: number }[] {
  return blocks.slice(1).flatMap((block, i) => {
    const before = blocks[i] as Block;
    return block.time - before.time >= 20 ? [{ rate: (block.T - before.T) / (block.time - before.time) }] : [];
  });
}

/**
 * Brings a log and what is known of the bath into the shape that the line needs.
 *
 * @param run the log
 * @param givens salts, water, pressure …, as `waterBalance` takes them
 * @throws RangeError for a number out of range; Error, in the maker's words, where the log lacks what is essential
 * @example prepare(run, { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 }).boil.time
 */
export function prepare(run: Run, givens: BalanceGivens): Prepared {
  needGivens(givens);
  const facts = logFacts(run);
  const remarks: string[] = [];
  const pressure = doubtful("pressure", givens.pressure, 0.005);
  const plainWater = boilingPoint({}, pressure.value);
  if (facts.readings.length === 0) {
    throw new Error(
      "missing readings: the log has no temperature; write down at least two, some minutes apart, while the bath boils",
    );
  }
  const believed = facts.readings.filter((reading) => reading.T > 250 && reading.T < hottestBath);
  if (believed.length === 0) {
    throw new Error(
      "missing readings: no temperature of the log can be a bath's (0 to 410 °F); correct or strike out what was misread, or settle the unit",
    );
  }
  const temperatures = Float64Array.from(believed, ({ T }) => T);
  const hottest = temperatures.reduce((most, T) => Math.max(most, T), -Infinity);
  const lower = temperatures.length >> 1;
  placed(temperatures, lower);
  // What is no colder than the middle one now stands behind it.
  const upper = middleOf(temperatures.subarray(lower));
  const guess = saltsOf(givens.salts, pressure.value, upper);
  // A thermometer that reads high must not lend the bath a boil.
  const high = Math.max(0, givens.thermometer?.offset ?? 0);
  if (hottest - high < plainWater + 1) {
    const less = high > 0 ? ` less the ${(1.8 * high).toFixed(1)} °F that the thermometer reads high` : "";
    throw new Error(
      `missing boil: the hottest reading, ${fahrenheit(hottest)}${less}, is not above the boiling point of plain water here (${fahrenheit(plainWater)}); only readings of a boiling bath tell its water`,
    );
  }
  const thermometer = {
    offset: givens.thermometer?.offset ?? 0,
    u: doubtful("thermometer", { value: 0, standardUncertainty: givens.thermometer?.standardUncertainty ?? 1.1 }, 0).u,
  };
  const cup = { allNight: givens.cup?.allNight ?? 0.03, eachPour: givens.cup?.eachPour ?? 0.05 };
  const told = givens.water === undefined ? undefined : doubtful("water at the start", givens.water, 0.05);
  if (told && !(told.value > 0)) throw new RangeError(`invalid water at the start: ${told.value} kg; more than 0 kg`);

  const { curve, total } = guess;
  const span = Math.max(1, facts.end - (believed[0]?.time ?? 0));
  const waterGuess = total / Math.exp(curve.lnRatio(upper - thermometer.offset));
  const slope = curve.slope(curve.lnRatio(upper - thermometer.offset));
  const poured = facts.pours.reduce((sum, pour) => sum + pour.mass, 0);
  const cuts = facts.pours.length <= 40 ? facts.pours.map((pour) => pour.time) : [];
  const thinned = blockReadings(believed, cuts, mostBlocks);
  const rise = likelyRise(thinned, facts.pours, slope, poured / span / waterGuess);
  const ratio = Math.exp(curve.lnRatio(upper - thermometer.offset));
  const climbs = ((1 + ratio) * bathHeat * slope) / steamHeat;
  const begun = facts.pours[0]?.time ?? facts.end;
  const expected = {
    ...(told && {
      boils: {
        T: curve.boils(Math.log(total / told.value)) + thermometer.offset,
        u: Math.hypot((told.u / told.value) * slope, thermometer.u, 2.2),
      },
    }),
    ...(facts.pours.length >= 3 && facts.end > begun + 600
      ? { climbs: (slope * poured) / (facts.end - begun) / waterGuess }
      : {}),
  };
  const perKilogram = slope / waterGuess;
  const boil = firstBoil(
    facts,
    thinned,
    rise,
    plainWater + 2,
    believed[0]?.time ?? 0,
    climbs / (1 + climbs),
    expected,
    perKilogram,
  );
  const below = stoodBelow(
    thinned.filter(({ time, T }) => time >= boil.time - 1e-9 && T > plainWater),
    pulledBy(
      facts.pours.filter(({ time }) => time >= boil.time - 1e-9),
      perKilogram,
    ),
    [
      ...facts.fires.filter(({ time }) => time > boil.time),
      ...facts.parts.filter(({ goesIn, time }) => goesIn && time > boil.time),
    ].map(({ time }) => time),
    boil.time,
  );
  const fire = fireHistory(facts.fires, boil.time, facts.end, below);
  const lit = thinned.filter(
    (block) =>
      block.time >= boil.time - 1e-9 &&
      block.T > plainWater &&
      !fire.out.some(([from, to]) => block.time > from && block.time < to + 120),
  );
  if (lit.length === 0 || !Number.isFinite(boil.time)) {
    throw new Error(
      `missing boil: the readings only show the bath warming up, to ${fahrenheit(hottest)}; readings of the boiling bath are needed`,
    );
  }
  const { early, later } = atBoil(facts.pours, boil.time);
  const pours = gathered(later);
  const times = new Set(lit.map((block) => block.time));
  if (times.size < 2 && !(told && (lit[0]?.time ?? 0) > boil.time + 60)) {
    throw new Error(
      `missing readings: the log has ${lit.length === 1 ? "one reading" : "readings at one time only"} at the boil; water can only be seen leaving between two, some minutes apart`,
    );
  }
  const first = lit[0] as Block;
  const last = lit[lit.length - 1] as Block;
  const salts = guess.water ? saltsOf(givens.salts, pressure.value, first.T - thermometer.offset) : guess;
  const saltAt = (time: number) =>
    facts.salts.reduce((sum, salt) => (salt.time <= time ? sum + salt.mass : sum), salts.total);
  const waterAt = (block: Block) => saltAt(block.time) / Math.exp(salts.curve.lnRatio(block.T - thermometer.offset));
  const own = startWater(
    told && { value: told.value + early, u: told.u },
    salts.water,
    median(lit.slice(0, 3).map(waterAt)),
    slope,
    remarks,
  );
  const duration = Math.max(60, facts.end - boil.time);
  const pouredNow = pours.reduce((sum, pour) => sum + pour.mass, 0);
  const typical = (0.006 / 60) * own.value;
  const drift =
    (waterAt(first) - waterAt(last) + pours.reduce((sum, pour) => (pour.time < last.time ? sum + pour.mass : sum), 0)) /
    Math.max(60, last.time - boil.time);
  const rate = {
    // A start that boils the tank dry within a long log has no slope left to mend it by.
    value: Math.max(
      pouredNow > 0 ? drift : Math.min(typical, Math.max(drift, (0.1 * own.value) / duration)),
      (0.5 * pouredNow) / duration,
      Math.min(0.1 * typical, (0.1 * own.value) / duration),
    ),
    relative: 1.5,
  };
  const steepest = (median(pairs(lit).map(({ rate: r }) => r)) * 60) / slope;
  if (!told && pours.length === 0 && boil.from !== "remark" && steepest > 0.06) {
    throw new Error(
      `missing boil: the readings rise ${(steepest * slope * 1.8).toFixed(0)} °F a minute to the end, as fast as a bath warms up; readings of the boiling bath are needed`,
    );
  }
  const partHeat = 2.55e6;
  const parts = facts.parts
    .filter((part) => part.goesIn && part.time > boil.time)
    .map(({ time, mass }) => {
      const steam = mass === undefined ? 0.05 : (mass * steel * (upper - 293)) / partHeat;
      return { time, steam, u: mass === undefined ? 0.05 : 0.3 * steam };
    });
  const saltDoubts = salts.doubts.map(({ source, masses }) => ({
    source,
    curve: brineCurve(masses, pressure.value),
    lnMass: Math.log(Object.values(masses).reduce((sum, kg) => sum + kg, 0) / salts.total),
  }));
  // The whole boiling line moves with pressure nearly as plain water's does (Dühring's rule), a little more in K.
  const higher = pressure.value * 1.001;
  const pressureStep = ((boilingPoint({}, higher) - plainWater) / (0.001 * pressure.value)) * 1.1 * pressure.u;
  const extra = lit.map((block) => {
    // The thermometer lags behind a bath that has just warmed up. A logger's rows crowd there, and where among them the
    // heat-up ended is known to some minutes only.
    const [kelvin, fades] = loggerWrote(block) ? [3, 150] : [1.5, 45];
    let variance = (kelvin * Math.exp(-(block.time - boil.time) / fades)) ** 2;
    for (const pour of pours) {
      const after = block.time - pour.time;
      if (pour.duration === 0 && after >= -1e-6 && after < 300) {
        const share = (12 * pour.mass * Math.exp(-Math.max(after, 10) / 40)) / own.value;
        variance += Math.abs(after) < 1e-6 && block.order < pour.order ? (0.15 * share) ** 2 : share ** 2;
      }
    }
    for (const part of facts.parts) {
      const after = block.time - part.time;
      if (part.goesIn && after >= 0 && after < 300) variance += (2.5 * Math.exp(-after / 60)) ** 2;
    }
    return variance;
  });
  remarks.push(...salts.remarks);
  if (!told && !salts.water)
    remarks.push(
      "The water at the start is not given: it is taken from the first reading at the boil and the weight of the salts.",
    );
  if (pours.length === 0)
    remarks.push(
      "No water was written down while the bath boiled: the boil-off comes from the rise of the boiling point alone, and from the weight of the salts.",
    );
  return {
    facts,
    salts,
    pressure: pressure.value,
    boil,
    thermometer,
    extra,
    jug: jugOf(facts),
    thinned,
    remarks,
    line: {
      blocks: lit,
      pours,
      start: boil.time,
      end: Math.max(facts.end, last.time),
      curve: salts.curve,
      saltAt,
      saltDoubts,
      fire,
      parts,
      water: own,
      rate,
      thermometer,
      pressureStep,
      cup,
      pourEffect: pourEffect(salts.masses, own.value, salts.curve, pressure.value),
      pourTime: pourTimeDoubt(pours),
    },
  };
}
