import { BathRun } from "./bathRun.ts";
import { bathVolume } from "./bathVolume.ts";
import { checkSimulation } from "./checkSimulation.ts";
import { type Inflow, planOf } from "./schedulePlan.ts";
import type {
  CoursePoint,
  HeatTotals,
  SimulatedBath,
  SimulationCharge,
  SimulationOptions,
  SimulationSchedule,
  SimulationSetup,
} from "./simulationTypes.ts";

/**
 * A boiling bath through a schedule of water, parts, salt and fire: it warms, boils, and gets hotter as its water boils
 * off. Water, salt and energy balance at every step, since one enthalpy of water, salts and temperature (see
 * `bathEnthalpy`) does all of it: heat capacity, latent heat and heat of dilution derive from it. A step takes its rates
 * at its middle and flashes water down to the boiling line where it ends above it; it is split wherever something
 * changes. Steps of 10 s are within 0.005 °F of very short ones, of 30 s within 0.04.
 *
 * A quiet bath below its boil evaporates by its vapour pressure. A bath boils where it gets more heat than that takes.
 * It ends early, and says so in `stops`, where it is dry (the published boiling curve ends, or plain water is gone),
 * overflows, or salt comes out that was dissolved (known for one salt alone; salt that is not yet dissolved at the start
 * or after it was put in is only said, as state). From cold: where strong hydroxide has no published enthalpy the
 * equation is carried on.
 *
 * @param setup tank, m inside; burner, W; losses; thermometer; air, K and Pa (65,000 to 105,000 with salts)
 * @param charge water and salts, kg; temperature, K; departure from the published boiling curve
 * @param schedule s and what happens when
 * @param options step, s; when to record; how long water takes to mix in and parts to warm; a boiling curve handed over
 * @returns the course, what happened in words, what each slug did, totals, where and why it ended; SI
 * @throws RangeError for a number out of range, a bath that is dry or hotter than its boil from the start, more drag-out
 * than half of the bath
 * Source: `boilingPoint`, `brineEnthalpy`, `steamEnthalpy`, `wallLoss`, `surfaceLoss`, `steelHeat` for the physics.
 * @example
 * const setup = { tank: { length: 0.965, width: 0.203, depth: 0.2 }, burner: { power: 17_600, efficiency: 0.4 } };
 * const charge = { water: 6, salts: { sodiumHydroxide: 5.3, sodiumNitrate: 2.6 }, temperature: "boiling" };
 * const fed = simulateBath(setup, charge, { end: 1800, events: [{ kind: "feed", from: 0, to: 1800, rate: 0.001, temperature: 290 }] });
 * fed.end.state; // "boiling"
 * fed.end.T; // 431 K
 * fed.totals.steam; // 3.53 kg
 */
export function simulateBath(
  setup: SimulationSetup,
  charge: SimulationCharge,
  schedule: SimulationSchedule,
  options: SimulationOptions = {},
): SimulatedBath {
  checkSimulation(setup, charge, schedule, options);
  const { step = 10, record } = options;
  const plan = planOf(schedule, options);
  const run = new BathRun(setup, charge, options);
  const wanted = record && new Set(record);
  const course: CoursePoint[] = [];
  const { burner } = setup;
  const full = "heat" in burner ? burner.heat : burner.power * burner.efficiency;
  const liquidBefore = run.model.heat.at(run.stand.water, run.stand.T);
  const start = run.stand.T;
  let share = 1;
  let burnt = 0;

  const { breaks } = plan;
  for (let i = 0; i < breaks.length && !run.stops; i++) {
    const from = breaks[i] as number;
    const instant = plan.instants.get(from);
    if (instant) {
      run.meet(instant);
      if (instant.share !== undefined) {
        share = instant.share;
        run.events.push({ time: from, says: `the burner goes to ${Math.round(100 * share)} %` });
      }
    }
    const to = breaks[i + 1];
    if (!wanted || wanted.has(from)) course.push(run.point());
    if (to === undefined || run.stops) break;
    flowIn(run, plan.water, plan.parts, from);
    run.flows.fire = share * full;
    const n = Math.ceil((to - from) / step - 1e-9);
    const dt = (to - from) / n;
    for (let k = 1; k <= n && !run.stops; k++) {
      run.advance(k === n ? to : from + k * dt, dt);
      if (k < n && !wanted && !run.stops) course.push(run.point());
    }
    burnt += share * (run.time - from);
  }

  const end = run.point();
  if (run.stops && course.at(-1)?.time !== end.time) course.push(end);
  const { tally, stand } = run;
  return {
    course,
    events: run.events.sort((a, b) => a.time - b.time),
    slugs: run.watch.slugs,
    totals: {
      steam: tally.steam,
      water: tally.water,
      dragOut: tally.dragOut,
      ...("heat" in burner ? {} : { gas: burnt * burner.power }),
      heat: heatOf(run, liquidBefore, start),
    },
    end: { ...end, volume: bathVolume(run.salts, stand.water, stand.T, tally.parts) },
    ...(run.stops ? { stops: run.stops } : {}),
  };
}

/** Sets what flows in from `time` on, until the next break. */
function flowIn({ flows }: BathRun, water: readonly Inflow[], parts: readonly Inflow[], time: number): void {
  flows.feed = 0;
  flows.feedHeat = 0;
  flows.steel = 0;
  flows.steelHeat = 0;
  for (const { from, to, rate, heat } of water) {
    if (time < from || time >= to) continue;
    flows.feed += rate;
    flows.feedHeat += heat;
  }
  for (const { from, to, rate, heat } of parts) {
    if (time < from || time >= to) continue;
    flows.steel += rate;
    flows.steelHeat += heat;
  }
}

/** Where the fire's heat went: each part from what it is made of, none as what the others leave. */
function heatOf(run: BathRun, liquidBefore: number, start: number): HeatTotals {
  const { tally, stand, model, waterAtBath, steamAtBath, saltAtBath } = run;
  const liquid = model.heat.at(stand.water, stand.T) - liquidBefore + tally.dragOutEnthalpy;
  const { steel } = model;
  return {
    fire: tally.fire,
    steam: tally.steamEnthalpy - steamAtBath,
    makeUpWater: waterAtBath - tally.waterEnthalpy,
    walls: tally.walls,
    top: tally.top,
    parts: tally.parts * steel.at(stand.T) - tally.partsEnthalpy,
    tank: (stand.steel - tally.parts) * (steel.at(stand.T) - steel.at(start)),
    salt: saltAtBath - tally.saltEnthalpy,
    bath: liquid - waterAtBath + steamAtBath - saltAtBath,
  };
}
