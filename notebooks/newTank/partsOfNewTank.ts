import type { MeasurementWorth, PlainWaterLog, ScaledAnswer, ScaledTogether } from "../../lib/fit/index.ts";
import { exact, measuredValue } from "../../lib/measure/index.ts";
import type { Dimension, Value } from "../../lib/measure/types.ts";
import type { ScaleWork } from "../aside/newTank.ts";

/** What the maker reads where a width is taken apart. */
const words: Readonly<Record<string, string>> = {
  build: "a new build",
  reach: "how far a flame reaches",
  saturation: "how much a flame has left to give",
  gasPower: "share against gas",
  wall: "losses of the walls",
  wind: "wind",
  widthPower: "share against width",
  crowding: "flames that stand close",
  discharge: "coefficient of the jets",
  coldShare: "share into a cold bath",
  top: "losses of the surface",
  evaporation: "evaporation below the boil",
  mass: "weight of the bath",
  gauge: "the regulator's gauge",
  droop: "the regulator's droop",
  oldJets: "the old jets",
  newJets: "the new jets",
  steel: "the tank's steel",
  windOfLog: "wind when plain water boiled",
  skirt: "the skirt",
  curveScale: "boiling curve",
  fill: "depth of the liquid",
};

/**
 * A doubt by a name that is the same where it is the same doubt: how far a flame reaches is one thing for all tanks, but
 * each fit, each new tank and each log of plain water has its own.
 */
function sourceNames({ fit, to, options }: ScaleWork): (factor: string) => string {
  const after = options.plainWaterLog ? `, after plain water (${markOf([options.plainWaterLog, to])})` : "";
  const each: Readonly<Record<string, string>> = {
    fit: fit ? `the old tank's fit (${(fit.boilOff.value * 3600).toPrecision(4)} kg/h)` : "the handbook's fire",
    rest: `what bends (${to.tank.length.toFixed(3)} m, burners ${to.burners.count}, ${markOf(to)})`,
  };
  return (factor) => `${each[factor] ?? words[factor]}${after}`;
}

/** A short mark that is the same for the same things and else another (FNV-1a). */
function markOf(thing: unknown): string {
  let hash = 0x811c9dc5;
  for (const sign of JSON.stringify(thing) ?? "") hash = Math.imul(hash ^ sign.charCodeAt(0), 0x01000193) >>> 0;
  return hash.toString(36).slice(0, 4);
}

/** What is still to be measured once plain water was boiled: the same again would tell little that is new. */
function measurementsLeft(
  all: readonly MeasurementWorth[],
  log: PlainWaterLog | undefined,
): readonly MeasurementWorth[] {
  if (!log) return all;
  const told = (what: string) =>
    what.includes("plain water") || (log.cylinder !== undefined && what === "the cylinder weighed on the new tank");
  return all.filter(({ what }) => !told(what));
}

const endless = "in some of the worlds that fit what is known it never gets there, so it has no upper end";
const noJet = "give the jet and the regulator pressure: without them nothing can be said of gas";

/** Why a part may not be known, in the maker's words. */
const whyNot: Readonly<Record<string, string>> = {
  "time to the boil": endless,
  "time to 10 below": endless,
  gas: noJet,
  "cylinder draw": noJet,
  "by gas": noJet,
  "by gas over": noJet,
  "cylinder gives": "give the cylinder's size",
};

/** In whole per cent, and never said to be sure: the worlds that were drawn are our own. */
const likely = (share: number): number => Math.min(0.99, Math.max(0.01, Math.round(100 * share) / 100));

/** kg/s, W, s. */
const flow: Dimension = { mass: 1, time: -1 };
const power: Dimension = { mass: 1, length: 2, time: -3 };
const time: Dimension = { time: 1 };

/**
 * A scaling under the names that formulas call its parts by. Cases that share the old tank's fit share what both are not
 * sure of, so that it cancels between them; what a log of plain water told belongs to its own tank.
 */
export function partsOfNewTank(
  { scaled, sources, measurements, proportion }: ScaledTogether,
  work: ScaleWork,
): ReadonlyMap<string, unknown> {
  const { options, gasKnown } = work;
  const named = sourceNames(work);
  const of = (answer: ScaledAnswer, name: keyof typeof sources, dimension: Dimension): Value | undefined => {
    if (!Number.isFinite(answer.value) || !answer.interval95.every(Number.isFinite)) return undefined;
    const components = new Map<string, number>();
    for (const [factor, part] of sources[name]) {
      if (part !== 0) components.set(named(factor), part);
    }
    return { value: answer.value, dimension, components, interval95: answer.interval95 };
  };
  const gas = (answer: ScaledAnswer, name: keyof typeof sources, dimension: Dimension) =>
    gasKnown ? of(answer, name, dimension) : undefined;
  const over = (share: ScaledAnswer): Value | undefined =>
    share.interval95.every(Number.isFinite)
      ? {
          value: share.value,
          dimension: {},
          components: new Map([[named("rest"), share.standardUncertainty]]),
          interval95: share.interval95,
        }
      : undefined;
  /** As sure as the old tank's boil-off is. */
  const inProportion = (boilOff: number): Value => {
    const { value, standardUncertainty } = work.fit?.boilOff ?? { value: 1, standardUncertainty: 0 };
    return measuredValue(boilOff, (boilOff / value) * standardUncertainty, flow, named("fit"));
  };
  const left = measurementsLeft(measurements, options.plainWaterLog);
  const [best] = left;
  const { cylinderGives } = scaled;
  const [earliest] = scaled.heatUp.interval95;
  return new Map<string, unknown>([
    ["boil-off", of(scaled.boilOff, "boilOff", flow)],
    ["time to the boil", of(scaled.heatUp, "heatUp", time)],
    ["time to the boil at least", Number.isFinite(earliest) ? exact(60 * Math.floor(earliest / 60), time) : undefined],
    ["time to 10 below", of(scaled.timeTo10Below, "timeTo10Below", time)],
    ["gas", gas(scaled.gas, "gas", flow)],
    ["gas to the boil", gas(scaled.gasToBoil, "gasToBoil", { mass: 1 })],
    ["cylinder draw", gas(scaled.cylinderDraw, "cylinderDraw", power)],
    [
      "cylinder gives",
      cylinderGives && {
        value: cylinderGives.value,
        dimension: power,
        components: new Map([["what a cylinder gives", cylinderGives.standardUncertainty]]),
      },
    ],
    ["drift unfed", of(scaled.driftUnfed, "driftUnfed", { temperature: 1, time: -1 })],
    ["heat into the bath", of(scaled.heatIntoBath, "heatIntoBath", power)],
    ["share of the fire", gas(scaled.share, "share", {})],
    ["losses", of(scaled.losses, "losses", power)],
    ["boils steadily", exact(likely(scaled.boilsSteadily), {})],
    ["by length", proportion && inProportion(proportion.byLength.boilOff)],
    ["by length over", proportion && over(proportion.byLength.over)],
    ["by gas", proportion && gasKnown ? inProportion(proportion.byGas.boilOff) : undefined],
    ["by gas over", proportion && gasKnown ? over(proportion.byGas.over) : undefined],
    ["best measurement", best?.what],
    ["doubt it takes off", best && exact(Math.round(100 * best.gain) / 100, {})],
    ["measurements", left],
    ["remarks", scaled.remarks],
    ["why not", { ...whyNot, "gas to the boil": gasKnown ? endless : noJet }],
    ["gas is known", gasKnown],
    ["plain water was logged", options.plainWaterLog !== undefined],
  ]);
}
