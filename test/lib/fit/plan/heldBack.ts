import { type Random, random } from "../../../../data/generator/random.ts";
import {
  type Brine,
  departedSaltRatio,
  type FeedPlan,
  type PlanGivens,
  type ScheduledEvent,
  type SimulationCharge,
  type SimulationSetup,
  simulateBath,
} from "../../../../lib/index.ts";

/** A bath as its plan is told of it, and as it truly is: the fit's error is fixed for the bath. */
export interface HeldBackBath {
  readonly told: PlanGivens;
  /** W that its walls and top lose. */
  readonly losses: number;
  /** Factors on the heat into the bath, and on the slope of its curve. */
  readonly heat: number;
  readonly slope: number;
}

const fahrenheit = 5 / 9;
const tap = 291;

/** Van der Corput's sequence: baths' errors spread evenly, so that thirty say as much as many drawn at random. */
function spread(i: number, base: number): number {
  let [sum, part] = [0, 1];
  for (let n = i; n > 0; n = Math.floor(n / base)) {
    part /= base;
    sum += part * (n % base);
  }
  return sum;
}

/** An even number as a logistic one of mean 0 and standard deviation 1: tails a little longer than the plan draws. */
const bell = (p: number) => Math.log(p / (1 - p)) / 1.814;

/** A shop's bath of its own size, mix, fire, air and hold. */
export function inventBath(i: number, band?: number): HeldBackBath {
  const r = random(4000 + i);
  const salt = r.from(5, 20);
  const nitrate = r.pick([0, 0.25, 0.33, 0.4]);
  const target = (r.pick([285, 288, 290, 292, 295]) + 459.67) * fahrenheit;
  const pressure = r.from(84_000, 102_000);
  const scale = r.from(0.93, 1.07);
  const departure = { offset: r.from(-2, 1), scale };
  const salts = { sodiumHydroxide: salt * (1 - nitrate), sodiumNitrate: salt * nitrate };
  const water = salt / departedSaltRatio(target, pressure, salts, departure);
  // Room for the bath and as much again.
  const tank = { length: r.from(0.7, 1.1), width: 0.2, depth: 0.28, wall: { thickness: 0.002 } };
  const air = { pressure, temperature: tap };
  const bath = { water: 1.1 * water, salts, temperature: tap, departure: { ...departure, scaleUncertainty: 0.05 } };
  const { losses, quiet } = coolingOf({ tank, burner: { heat: 20_000 }, air }, { ...bath, water });
  // A boil-off of 0.6 to 1.4 % a minute, and enough of a fire that gusts do not stop the boil.
  const heat = Math.max((r.from(0.006, 0.014) * water * 2.65e6) / 60, 1.5 * quiet);
  const setup = { tank, burner: { heat: heat + losses }, air };
  const mass = r.chance(0.3) ? r.from(0.02, 0.25) * salt : 0;
  return {
    told: {
      setup: { ...setup, heatUncertainty: 0.05, thermometer: { lag: 15, rounding: fahrenheit } },
      bath,
      target,
      band: band ?? r.pick([1.5, 2, 3, 4]) * fahrenheit,
      hold: 60 * r.pick([20, 30, 30, 45]),
      ...(mass > 0 ? { parts: { mass } } : {}),
      pressure,
      pours: r.chance(0.3) ? { measure: 0.012 * water } : "steady",
    },
    losses,
    heat: 1 + 0.05 * bell(spread(i + 1, 2)),
    slope: 1 + 0.05 * bell(spread(i + 1, 3)),
  };
}

export type Policy = "nobody" | "table" | "full";

/** kg/s from and to, s. */
interface Flow {
  readonly from: number;
  readonly to: number;
  readonly rate: number;
}

const halfNormal = (r: Random, sd: number) => sd * Math.abs(r.normal());

/** Share of the night's fire over time: levels that jump at random times, 250 s apart on average. */
function gustsOf(r: Random): (time: number) => number {
  const levels: { until: number; level: number }[] = [];
  let end = -600;
  return (time) => {
    while (end <= time) {
      end -= 250 * Math.log(1 - r.even());
      levels.push({ until: end, level: Math.max(0, 1 + 0.09 * r.normal()) });
    }
    return levels.find(({ until }) => until > time)?.level ?? 1;
  };
}

/** What the thermometer reads too much, K: fixed, and three slow waves. */
function thermometerOf(r: Random): (time: number) => number {
  const fixed = 0.7 * fahrenheit * r.normal();
  const waves = [700, 1500, 3300].map((period) => ({
    high: 0.5 * fahrenheit * Math.sqrt(1 / 3) * Math.hypot(r.normal(), r.normal()),
    speed: (2 * Math.PI) / (period * r.from(0.8, 1.25)),
    phase: 2 * Math.PI * r.even(),
  }));
  return (time) => fixed + waves.reduce((sum, w) => sum + w.high * Math.cos(w.speed * time + w.phase), 0);
}

const whole = (T: number) => 273.15 + Math.round((T - 273.15) / fahrenheit) * fahrenheit;

/**
 * One hold of the true bath by the full simulation, with gusts, a thermometer and people of its own: the share of the
 * hold in the band.
 */
export function trueHold(held: HeldBackBath, plan: FeedPlan, policy: Policy, seed: number): number {
  const { told } = held;
  const { bath, setup, target, band, hold, pressure } = told;
  if (!bath) throw new Error("missing bath");
  const r = random(seed);
  const gust = gustsOf(r);
  const reads = thermometerOf(r);
  const cup = 1 + 0.03 * r.normal();
  const drip = told.pours === "steady" ? 1 + 0.03 * r.normal() : cup;
  const lateStart = halfNormal(r, 30);
  const lateFeed = halfNormal(r, 30);
  const pivotless = bath.departure ?? { offset: 0, scale: 1 };
  const departure = { offset: pivotless.offset, scale: pivotless.scale * held.slope };
  const burner = "heat" in setup.burner ? setup.burner.heat : 0;
  // Losses are known; what is beyond them is off by the bath's own share.
  const fire = held.losses + (burner - held.losses) * held.heat;

  // The hold starts where the climbing bath reads what the plan says, give or take what a reading is off.
  const first = reads(0) + 0.5 * fahrenheit * r.normal() + fahrenheit * (r.even() - 0.5);
  const startT = plan.startReading - first;
  const salts = bath.salts;
  let water = saltOf(salts) / departedSaltRatio(startT, pressure, salts, departure);
  let temperature: number | "boiling" = "boiling";
  const mass = told.parts?.mass ?? 0;
  const around = { ...setup, thermometer: {} };
  const run = (from: number, to: number, flows: readonly Flow[], parts?: number) => {
    const events: ScheduledEvent[] = [];
    for (let t = from; t < to; t += 20) events.push({ kind: "burner", time: t - from, share: gust(t) });
    for (const flow of flows) {
      const [a, b] = [Math.max(from, flow.from), Math.min(to, flow.to)];
      if (b - a > 1e-6) events.push({ kind: "feed", from: a - from, to: b - from, rate: flow.rate, temperature: tap });
    }
    // Parts that are in already are carried from piece to piece at the bath's own temperature.
    if (parts) events.push({ kind: "parts in", time: 0, mass, temperature: parts });
    const record = Array.from({ length: Math.floor((to - from) / 10) + 1 }, (_, i) => 10 * i);
    const done = simulateBath(
      { ...around, burner: { heat: fire } },
      { water, salts, temperature, departure },
      { end: to - from, events },
      { step: 10, record: [...new Set([...record, to - from])], partsWarming: parts === tap ? 40 : 0 },
    );
    water = done.end.water;
    temperature = done.end.T >= done.end.boilingPoint - 1e-5 ? "boiling" : done.end.T;
    return done;
  };
  if (lateStart > 1) run(-lateStart, 0, []);

  const flows: Flow[] = [];
  const steady = told.pours === "steady";
  // Planned feed on its own clock: a pause moves what is still to come.
  let planned = plan.additions.map(({ t, water: kg, duration }) => {
    const from = t + (steady ? lateFeed : halfNormal(r, 30));
    const factor = steady ? drip : drip * (1 + 0.05 * r.normal());
    return { from, to: from + Math.max(duration, 20), rate: (kg * factor) / Math.max(duration, 20) };
  });
  const { table } = plan;
  const rows = [...table.rows];
  const step = (rows.at(-1)?.off ?? 1) - (rows.at(-2)?.off ?? 0);
  let shown: number | undefined;
  let inside = 0;
  let counted = 0;
  const every = policy === "nobody" ? hold : 120;
  let now = tap;
  for (let from = 0; from < hold; from += every) {
    const to = Math.min(hold, from + every);
    const warm = from === 0 ? tap : now;
    const { course, end } = run(from, to, [...planned, ...flows], mass > 0 ? warm : undefined);
    now = end.T;
    for (const { time, T } of course) {
      shown = shown === undefined ? T : shown + (1 - Math.exp(-10 / 15)) * (T - shown);
      if (time === 0) continue;
      counted++;
      if (Math.abs(T - target) <= band) inside++;
    }
    if (policy === "nobody" || to < table.ignoreUntil || to >= hold) continue;
    const read = whole((shown ?? end.T) + reads(to) + 0.5 * fahrenheit * r.normal());
    const off = read - target;
    const row = rows.reduce((a, b) => (Math.abs(b.off - off) < Math.abs(a.off - off) ? b : a));
    const act = to + halfNormal(r, 30);
    const perKelvin = fullPerKelvin(plan, step);
    const pour = policy === "full" ? Math.max(0, off) * perKelvin : row.water;
    const pause = policy === "full" ? (Math.max(0, -off) * perKelvin) / plan.feed : row.pause;
    if (pour > 0) flows.push({ from: act, to: act + 20, rate: (pour * cup * (1 + 0.05 * r.normal())) / 20 });
    if (pause > 0) planned = planned.flatMap((flow) => put(flow, act, act + pause, steady));
  }
  return inside / counted;
}

/** A flow with a pause in it: a drip is cut, pours still to come are put off. */
function put(flow: Flow, from: number, to: number, steady: boolean): Flow[] {
  if (flow.to <= from) return [flow];
  if (!steady) return flow.from < from ? [flow] : [{ ...flow, from: flow.from + to - from, to: flow.to + to - from }];
  return [
    { ...flow, to: from },
    { ...flow, from: Math.max(flow.from, to) },
  ].filter((one) => one.to > one.from);
}

/** kg that move the boiling point by 1 K, as the table's own rows say. */
function fullPerKelvin({ table }: FeedPlan, step: number): number {
  const row = table.rows.find(({ off, moves }) => Math.abs(off - step) < 1e-9 && moves < 0);
  return row ? row.water / -row.moves : 0;
}

const saltOf = (salts: Brine) => Object.values(salts).reduce((sum: number, kg) => sum + (kg ?? 0), 0);

/** W that walls and top lose at the boil, and W that evaporates just below it: a hot bath without fire, by its tally. */
function coolingOf(setup: SimulationSetup, charge: SimulationCharge): { losses: number; quiet: number } {
  const unlit = { ...setup, burner: { heat: 0 } };
  const { course } = simulateBath(unlit, { ...charge, temperature: "boiling" }, { end: 2 }, { step: 1, tally: true });
  const { walls = 0, top = 0, steamEnthalpy = 0 } = course.at(-1)?.tally ?? {};
  return { losses: (walls + top) / 2, quiet: steamEnthalpy / 2 };
}
