import type { FeedPlan } from "../../lib/fit/index.ts";
import { exact, interval95, measuredValue, scale, standardUncertainty } from "../../lib/measure/index.ts";
import type { Dimension, Value } from "../../lib/measure/types.ts";
import { propane } from "../../lib/physics/index.ts";
import type { PlanFound } from "./found.ts";
import type { HeatUp } from "./heatUp.ts";
import { heatDoubtOf, type PlanWork } from "./planWork.ts";

const mass: Dimension = { mass: 1 };
const time: Dimension = { time: 1 };
const flow: Dimension = { mass: 1, time: -1 };
const reading: Dimension = { temperature: 1, point: true };
const difference: Dimension = { temperature: 1 };
const climb: Dimension = { temperature: 1, time: -1 };

/** A reading as it can be read: to the whole °F. */
export const wholeDegree = (kelvin: number): number => 273.15 + Math.round((kelvin - 273.15) * 1.8) / 1.8;

type Part = readonly [string, unknown];

/** Shares of holds, as so many in a hundred; their doubt is that of the number of simulated holds alone. */
const holdsIn100 = (share: number, u: number, what: string): Value =>
  measuredValue(100 * share, 100 * u, {}, `simulated holds, ${what}`, [
    Math.max(0, Math.min(100 * share, 100 * (share - 1.96 * u))),
    Math.min(100, Math.max(100 * share, 100 * (share + 1.96 * u))),
  ]);

/** Half of the time lost differs from hold to hold: a judgement of its spread, for the number of holds that it is a mean of. */
function lostOf(what: string, lost: number, share: number, u: number): readonly Part[] {
  if (lost === 0) return [];
  const holds = (share * (1 - share)) / u ** 2;
  const out = Math.max(1, (1 - share) * holds);
  return [[what, measuredValue(lost, (0.5 * lost) / Math.sqrt(out), time, `simulated holds, ${what}`)]];
}

/** The heat's own sources of doubt, carried over to what goes with the heat. */
function withHeat(value: number, dimension: Dimension, { heat, givens }: PlanWork, power = 1): Value {
  const share = standardUncertainty(heat) / heat.value;
  const { components } = scale(heat, (power * value) / heat.value);
  const doubt = heatDoubtOf(givens);
  const grows = share > 0 ? doubt / share : 1;
  const own = new Map([...components].map(([source, u]) => [source, u * grows]));
  const half = 1.96 * Math.abs(power) * doubt;
  return { value, dimension, components: own, interval95: [value * Math.exp(-half), value * Math.exp(half)] };
}

/** What the first holds say: the promises alone, as so far. */
export function partsOfFirst(plan: FeedPlan): ReadonlyMap<string, unknown> {
  const { inBand, inBandCorrected, inBandUncertainty: u } = plan;
  return new Map<string, unknown>([
    ["holds left alone", holdsIn100(inBand, u.nobody, "first, nobody correcting")],
    ["holds with the table", holdsIn100(inBandCorrected, u.corrected, "first, table followed")],
    ["whole plan", plan],
  ]);
}

/** A plan under the names that formulas call its parts by; only what is known is there. */
export function partsOfPlan(found: PlanFound, work: PlanWork): ReadonlyMap<string, unknown> {
  const { plan } = found;
  const { inBandUncertainty: u, timeLost } = plan;
  const steady = work.givens.pours === "steady";
  const [first] = plan.additions;
  const pours: readonly Part[] = steady
    ? [["drip", withHeat(plan.feed, flow, work)]]
    : [
        ["pour", exact(first?.water ?? 0, mass)],
        ["time between pours", withHeat((first?.water ?? 0) / plan.feed, time, work, -1)],
        ["number of pours", exact(plan.additions.length)],
      ];
  return new Map<string, unknown>([
    ["reading to start at", exact(wholeDegree(plan.startReading + work.readsHighBy), reading)],
    ...timesOf(found, work),
    ...pours,
    ["feed", withHeat(plan.feed, flow, work)],
    ["feed from", exact(steady ? (first?.t ?? 0) : 0, time)],
    ["water in all", withHeat(plan.waterTotal, mass, work)],
    ["holds left alone", holdsIn100(plan.inBand, u.nobody, "nobody correcting")],
    ["holds with the table", holdsIn100(plan.inBandCorrected, u.corrected, "table followed")],
    ...lostOf("lost left alone", timeLost.nobody, plan.inBand, u.nobody),
    ...lostOf("lost with the table", timeLost.corrected, plan.inBandCorrected, u.corrected),
    ["drift", withHeat(plan.drift, climb, work)],
    ["band lasts", withHeat(plan.bandLasts, time, work, -1)],
    ["slug limit", withHeat(work.limit, mass, work)],
    ...(plan.dip > 0
      ? ([
          ["dip", withHeat(plan.dip, difference, work, -1)],
          ["recovery", withHeat(plan.recovery, time, work, -1)],
        ] as const)
      : []),
    ["whole plan", plan],
    ["whole spread", found.spread],
    ["work", work],
  ]);
}

/** Minutes to the boil and on to the start, each with what a cooler and a hotter fire would make of it. */
function timesOf({ plan, heating }: PlanFound, work: PlanWork): readonly Part[] {
  const { middle, cool, hot, shares } = heating;
  const between = (what: string, of: (one: HeatUp) => number | null): readonly Part[] => {
    const here = of(middle);
    if (here === null) return [];
    // Where the cool fire never boils in the model, time goes as one over heat: the bath may have boiled on that fire before.
    const late = Math.max(here, of(cool) ?? here / shares[0]);
    const early = Math.min(here, of(hot) ?? here);
    const u = (late - early) / 3.92;
    const whole = withHeat(Math.max(1, here), time, work, -1);
    const grows = standardUncertainty(whole) > 0 ? u / standardUncertainty(whole) : 0;
    const components = new Map([...whole.components].map(([source, one]) => [source, one * grows]));
    return [[what, { value: here, dimension: time, components, interval95: [early, late] } satisfies Value]];
  };
  const boil = between("time to the boil", ({ toBoil }) => toBoil);
  const start = middle.tooStrongBy > 0 ? [] : between("time from boil to start", ({ toStart }) => toStart);
  const climbs = start.map((part) => withBoilDoubt(part, plan.drift, work));
  return [...boil, ...climbs, ...firstBoilOf(middle, plan.startReading, work), ...gasOf(boil, climbs, work)];
}

/** Where it first boils is not known well, and the climb from there is slow: that doubt, as time. */
function withBoilDoubt([name, thing]: Part, drift: number, { givens }: PlanWork): Part {
  const value = thing as Value;
  const { offsetUncertainty = 1.7 } = givens.bath?.departure ?? {};
  const u = offsetUncertainty / drift;
  const [low, high] = interval95(value);
  const components = new Map([...value.components, ["where a bath boils", -u] as const]);
  const early = Math.max(0, value.value - Math.hypot(value.value - low, 1.96 * u));
  return [name, { ...value, components, interval95: [early, value.value + Math.hypot(high - value.value, 1.96 * u)] }];
}

/** Where it first boils, on this thermometer, and the water that it lacks there, if any. */
function firstBoilOf(
  { boilsAt, tooStrongBy }: HeatUp,
  startsAt: number,
  { givens, readsHighBy }: PlanWork,
): readonly Part[] {
  if (boilsAt === null) return [];
  const { offsetUncertainty = 1.7 } = givens.bath?.departure ?? {};
  const source = "where a bath boils";
  const boil: Part = ["first boil", measuredValue(boilsAt + readsHighBy, offsetUncertainty, reading, source)];
  if (tooStrongBy <= 0) return [boil];
  const u = (offsetUncertainty * tooStrongBy) / Math.max(0.1, boilsAt - startsAt);
  const interval = [Math.max(0, tooStrongBy - 1.96 * u), tooStrongBy + 1.96 * u] as const;
  return [boil, ["water first", measuredValue(tooStrongBy, u, mass, source, interval)]];
}

/** Gas from lighting to parts out, where the burner's rate is known. */
function gasOf(boil: readonly Part[], start: readonly Part[], { power, givens }: PlanWork): readonly Part[] {
  const [toBoil, toStart] = [boil[0]?.[1] as Value | undefined, start[0]?.[1] as Value | undefined];
  if (!power || !toBoil) return [];
  const lit = toBoil.value + (toStart?.value ?? 0) + givens.hold;
  const perSecond = power.value / propane.grossHeatingValue.value;
  const value = perSecond * lit;
  const components = new Map<string, number>();
  const put = (from: ReadonlyMap<string, number>, times: number) => {
    for (const [source, u] of from) components.set(source, (components.get(source) ?? 0) + times * u);
  };
  put(power.components, value / power.value);
  put(toBoil.components, perSecond);
  if (toStart) put(toStart.components, perSecond);
  const times = [toBoil, ...(toStart ? [toStart] : [])];
  const late = times.reduce((sum, one) => sum + interval95(one)[1] - one.value, 0);
  const early = times.reduce((sum, one) => sum + one.value - interval95(one)[0], 0);
  const own = 1.96 * standardUncertainty(power) * (lit / propane.grossHeatingValue.value);
  const interval: readonly [number, number] = [
    Math.max(0, value - Math.hypot(own, perSecond * early)),
    value + Math.hypot(own, perSecond * late),
  ];
  return [["gas in all", { value, dimension: mass, components, interval95: interval } satisfies Value]];
}
