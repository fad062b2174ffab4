import { at } from "../../bath/at.ts";
import { belowBoil, fold } from "../../bath/belowBoil.ts";
import type { Block } from "../../bath/blockReadings.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { before, type ReadingAt, type WaterLine, waterLine } from "../../bath/waterLine.ts";
import { brineHeatCapacity, evaporationHeat } from "../../physics/index.ts";
import type { Brine } from "../../physics/types.ts";

/** Heats of one bath where it first boils. */
export interface Heats {
  /** J for each kg boiled off. */
  readonly evaporation: number;
  /** J/K of bath and tank steel. */
  readonly capacity: number;
  /** J/K for each kg of water more. */
  readonly perWater: number;
  /** Heat that goes into warming the bath as its boiling point climbs, over the heat that goes into steam. */
  readonly climbing: number;
}

/** What the heat-up is doubted by, before the log speaks (judgements). */
export const warmUpBefore = {
  /** ln of the fire's heat while warming over that at the boil: heats of the brine, tank steel and flame together. */
  fire: 0.1,
  /** Share of the heat that evaporates just below the boil. */
  evaporates: { value: 0.25, u: 0.15 },
  /** Share by which the bath warms faster 100 K below the boil. */
  faster: { value: 0.1, u: 0.08 },
  /** s, when it first boiled. */
  boil: 90,
} as const;

export interface FireLine extends WaterLine {
  readonly warming: { readonly blocks: readonly Block[]; readonly extra: readonly number[] };
  readonly heats: Heats;
  /** ln: standard uncertainty of the fire's heat while warming. */
  readonly heatDoubt: number;
  /** Numbers of the doubts about the heat-up, and of the one about the tank's size. */
  readonly own: Readonly<Record<"fire" | "evaporates" | "faster" | "boil" | "tank", number>>;
}

/** Heats of the bath at the first boil. */
export function heatsAt({ salts, line, pressure }: Prepared): Heats {
  const { curve } = salts;
  const lnRatio = Math.min(curve.end.lnRatio, Math.log(line.saltAt(line.start) / line.water.value));
  const brine = Object.fromEntries(
    Object.entries(salts.masses).map(([salt, kg]) => [salt, (kg / salts.total) * Math.exp(lnRatio)]),
  ) as Brine;
  const T = curve.boils(lnRatio);
  const evaporation = evaporationHeat(brine, pressure);
  // The tank's own steel: some 5 % of the bath's capacity in sheet of 2 to 3 mm.
  const capacity = 1.05 * brineHeatCapacity(brine, T) * (line.water.value + line.saltAt(line.start));
  return {
    evaporation,
    capacity,
    perWater: 4000,
    climbing: (capacity * curve.slope(lnRatio)) / (line.water.value * evaporation),
  };
}

/**
 * The same log with the water that left before the boil taken off what was told at the first row: a surface steams
 * below the boil too, a share of the fire's heat that falls e-fold for each 30 K.
 *
 * @param prepared the log
 * @param told whether the water was told
 * @returns the log, and the kg that left
 * @example afterWarmUp(prepared, true).prepared.line.water.value // kg at the first boil
 */
export function afterWarmUp(prepared: Prepared, told: boolean): { readonly prepared: Prepared; readonly left: number } {
  const { line, boil, thinned, salts: known } = prepared;
  const first = thinned[0];
  if (!told || known.water || !first || !(first.time < boil.time - 60)) return { prepared, left: 0 };
  const { evaporation, capacity, climbing } = heatsAt(prepared);
  const share = warmUpBefore.evaporates.value;
  const whole = (share * fold * capacity) / (evaporation * (1 + climbing) * (1 - share / 2));
  const away = Math.max(0, salts(prepared) - first.T);
  const left = whole * (1 - Math.exp(-away / fold));
  const value = Math.max(0.8 * line.water.value, line.water.value - left);
  const relative = Math.hypot(line.water.relative, (0.7 * left) / value);
  return { prepared: { ...prepared, line: { ...line, water: { value, relative } } }, left };
}

/** Readings of the heat-up that one fire made: after the last thing that was changed before the boil. */
function warmBlocks({ thinned, facts, boil, salts }: Prepared): readonly Block[] {
  if (boil.from === "first reading") return [];
  const changed = [...facts.fires, ...facts.parts, ...facts.salts, ...facts.pours]
    .map(({ time }) => time)
    .filter((time) => time <= boil.time + 1);
  // What is done in the last minutes is done because it boils, or nearly: it ends the heat-up, it does not begin one.
  const late = (time: number) => time > boil.time - 300;
  const from = Math.max(-Infinity, ...changed.filter((time) => !late(time)));
  const to = Math.min(boil.time - 1e-9, ...changed.filter(late));
  const found = thinned.filter((block) => block.time < to && block.time >= from && block.T > 280);
  const hottest = Math.max(...found.map(({ T }) => T), 0);
  // One reading above all later ones cannot belong to a heat-up.
  return found.filter(({ T }) => T <= Math.max(hottest, salts.curve.water)).slice(-30);
}

/**
 * The water line with the fire behind it: below the boil the same heat warms the bath, so a heat-up that was logged
 * says how much heat there is, from the weight of the bath and not from the cup.
 *
 * @param prepared the log
 * @example fireLine(prepare(run, givens)).warming.blocks.length
 */
export function fireLine(prepared: Prepared): FireLine {
  const g = prepared.line;
  const others = [
    { source: "heat-up" },
    { source: "heat-up" },
    { source: "heat-up" },
    { source: "heat-up" },
    { source: "tank size" },
  ];
  const base = waterLine(g, others);
  const size = base.doubts.length - others.length;
  const own = { fire: size, evaporates: size + 1, faster: size + 2, boil: size + 3, tank: size + 4 };
  const heats = heatsAt(prepared);
  const below = (z: ArrayLike<number>, time: number): number => {
    const water = g.water.value * Math.exp(g.water.relative * at(z, base.index.water));
    const capacity = heats.capacity + heats.perWater * (water - g.water.value);
    const heat =
      base.rate(z) * heats.evaporation * (1 + heats.climbing) * Math.exp(warmUpBefore.fire * at(z, own.fire));
    const lag = before.lag.value * Math.exp(before.lag.u * at(z, base.index.lag));
    const share = warmUpBefore.evaporates.value + warmUpBefore.evaporates.u * at(z, own.evaporates);
    return belowBoil(g.start + warmUpBefore.boil * at(z, own.boil) - (time - lag), {
      rate: heat / Math.max(0.2 * heats.capacity, capacity),
      evaporates: Math.min(0.8, Math.max(0, share)),
      faster: warmUpBefore.faster.value + warmUpBefore.faster.u * at(z, own.faster),
    });
  };
  const moving = [base.index.water, base.index.rate, base.index.lag, own.fire, own.evaporates, own.faster, own.boil];
  const readingAt = (z: ArrayLike<number>, time: number, order = Infinity): ReadingAt => {
    if (time >= g.start - 1e-9) return base.readingAt(z, time, order);
    const boils = base.readingAt(z, g.start, -1);
    const { by } = boils;
    const here = below(z, time);
    const moved = Float64Array.from(z);
    for (const k of moving) {
      moved[k] = at(z, k) + 1e-3;
      by[k] = at(by, k) - (below(moved, time) - here) / 1e-3;
      moved[k] = at(z, k);
    }
    // A gust before the boil leaves the bath as much colder as it warms in its time.
    return { T: boils.T - here, by, perKilogram: -here / Math.max(1, g.start - time) / base.rate(z) };
  };
  const blocks = warmBlocks(prepared);
  const boils = salts(prepared);
  return {
    ...base,
    heats,
    heatDoubt: warmUpBefore.fire,
    own,
    readingAt,
    glanceAt: (z, time, order) => {
      const glance = base.glanceAt(z, time, order);
      if (time >= g.start - 1e-9) return glance;
      const { T, perKilogram } = readingAt(z, time, order);
      return { ...glance, T, perKilogram };
    },
    warming: {
      blocks,
      // Near the boil the bath boils at its hot bottom first; far below it the closed form is only so good.
      extra: blocks.map(({ time, T }) => {
        const away = boils - T;
        return 1.5 ** 2 * Math.exp(-(g.start - time) / 60) + (0.015 * away) ** 2;
      }),
    },
  };
}

function salts({ salts: { curve }, line }: Prepared): number {
  return curve.boils(Math.log(line.saltAt(line.start) / line.water.value));
}
