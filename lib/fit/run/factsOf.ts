import { at } from "../../bath/at.ts";
import { doubtful } from "../../bath/doubtful.ts";
import type { Suspect } from "../../bath/explanations.ts";
import type { Fact, Row, Straight } from "../../bath/gaussianLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { brineDensity } from "../../physics/index.ts";
import type { Brine } from "../../physics/types.ts";
import { burnerOf } from "./burnerOf.ts";
import type { FireLine } from "./fireLine.ts";
import type { FitGivens } from "./types.ts";

/** Doubt of tank size, density and the swell of a boiling bath together, as a share (a judgement). */
const tankDoubt = 0.03;
/** m: how well a stick tells the depth of a boiling liquid, at best. */
const stick = 0.003;
/** What walls and top lose of it, and how well that is known: of a hot open tank a tenth (a judgement). */
const lost = { value: 0.1, u: 0.1 };

/** Readings of the heat-up as rows of the fit. */
export function warmRows({ warming }: FireLine): readonly Row[] {
  return warming.blocks.map(({ time, order, T }, i) => ({
    kind: "reading",
    time,
    order,
    y: T,
    extra: at(warming.extra, i),
  }));
}

/**
 * What the burner's size says of the boil-off: little, an open flame under a tank gives it a quarter to a half of its
 * heat.
 *
 * @param prepared the log
 * @param line its line
 * @param givens for the burner
 * @returns one fact, or none
 * @example burnerFact(prepared, line, { burner: { power: 17_600 } }).length // 1
 */
export function burnerFact(prepared: Prepared, line: FireLine, { burner }: Pick<FitGivens, "burner">): readonly Fact[] {
  if (!burner) return [];
  const { heat } = burnerOf(burner);
  const shares = prepared.facts.fires.filter(({ time, share }) => time <= prepared.boil.time && share !== undefined);
  const share = shares.at(-1)?.share ?? 1;
  if (!(share > 0)) return [];
  const { evaporation, climbing } = line.heats;
  const expected = (heat.value * share * (1 - lost.value)) / (evaporation * (1 + climbing));
  const k = line.index.rate;
  return [
    {
      kind: "fact",
      source: "burner",
      time: prepared.line.start,
      order: 0,
      y: Math.log(expected),
      extra: (heat.u / heat.value) ** 2 + lost.u ** 2,
      predict: (z) => {
        const by = new Float64Array(z.length);
        by[k] = prepared.line.rate.relative;
        return { value: Math.log(line.rate(z)), by };
      },
      perPour: () => 0,
    },
  ];
}

/**
 * Depths that were read while the bath boiled: water and salts fill the tank to it.
 *
 * @param prepared the log
 * @param line its line
 * @param givens for the tank's length and width
 * @returns one fact for each depth; none without the tank's size, or where the depth is how the salts are known
 * @example depthFacts(prepared, line, { tank: { length: 1, width: 0.2 } }).length
 */
export function depthFacts(prepared: Prepared, line: FireLine, { tank }: Pick<FitGivens, "tank">): readonly Fact[] {
  const { facts, line: g, salts, pressure } = prepared;
  if (!tank || salts.water) return [];
  const length = doubtful("tank length", tank.length, 0.01);
  const width = doubtful("tank width", tank.width, 0.01);
  const area = length.value * width.value;
  const share = Math.hypot(tankDoubt, length.u / length.value, width.u / width.value);
  const volume = (water: number, salt: number): number => {
    const ratio = salt / water;
    const brine = Object.fromEntries(
      Object.entries(salts.masses).map(([kind, kg]) => [kind, (kg / salts.total) * ratio]),
    ) as Brine;
    return (water + salt) / brineDensity(brine, salts.curve.boils(Math.log(ratio)));
  };
  return facts.depths
    .filter(({ time }) => time >= g.start - 1e-9 && pressure > 0)
    .flatMap(({ time, depth, u }): Fact[] => {
      const predict = (z: Float64Array) => {
        const { water, waterBy } = line.bathAt(z, time);
        const salt = g.saltAt(time);
        const factor = (1 + share * at(z, line.own.tank)) / area;
        const here = volume(water, salt);
        const perWater = (volume(water * 1.001, salt) - here) / (0.001 * water);
        const by = Float64Array.from(waterBy, (x) => x * perWater * factor);
        by[line.own.tank] = (here * share) / area;
        return { value: here * factor, by };
      };
      try {
        predict(new Float64Array(line.doubts.length));
      } catch (error) {
        // Beyond the range of the published densities a depth says nothing that can be stood by.
        if (error instanceof RangeError) return [];
        throw error;
      }
      const perPour = (poured: number) => (poured <= time ? 1 / 1000 / area : 0);
      return [
        {
          kind: "fact",
          source: "depths",
          time,
          order: 0,
          y: depth,
          extra: Math.max(stick, u) ** 2,
          predict,
          perPour,
        },
      ];
    });
}

/** How likely a maker turns the fire down at the boil without a word, and by how much in ln (judgements). */
const turnedDown = { share: 0.2, mean: 0.25, u: 0.4 };

/**
 * Another fire before the boil than after it, as a suspect: its heat-up would say nothing of the boil-off then.
 *
 * @param line its line
 * @returns what `fitLine` takes as more suspects
 * @example fitLine(prepared, { line, suspects: fireSuspect(line) })
 */
export function fireSuspect(line: FireLine): (straight: Straight) => readonly Suspect[] {
  return (straight) => {
    if (line.warming.blocks.length === 0) return [];
    const start = straight.start;
    const column = Float64Array.from(straight.rows, (row, i) =>
      row.kind === "reading" && row.time < start - 1e-9
        ? at(straight.slopes[i] ?? [], line.own.fire) / line.heatDoubt
        : 0,
    );
    return [
      {
        kind: "fire",
        index: 0,
        column,
        mean: turnedDown.mean,
        u: turnedDown.u,
        count: 0,
        lnOdds: Math.log(turnedDown.share / (1 - turnedDown.share)),
      },
    ];
  };
}
