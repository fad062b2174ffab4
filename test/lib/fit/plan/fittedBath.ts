import { inventLogForFit } from "../../../../data/generator/inventLogForFit.ts";
import { type FeedPlan, fitRun, type PlanOptions, planFeed, readLog, simulateBath } from "../../../../lib/index.ts";
import { givesForFit } from "../judgeGivens.ts";
import type { HeldBackBath } from "./heldBack.ts";

/**
 * A bath known by one invented log alone: the plan made from its fit, and the bath as it truly is, by the generator's own
 * truth. What the thermometer reads too much all the time is taken off the plan's start, as its target is by the maker.
 */
export function fittedBath(
  seed: number,
  options: PlanOptions,
): { readonly bath: HeldBackBath; readonly plan: FeedPlan } {
  const log = inventLogForFit(seed);
  const { told, truth } = log;
  const { tank, pressure } = told;
  const band = ([1.5, 2, 3, 4][seed % 4] ?? 2) / 1.8;
  const asked = { target: told.target, band, hold: 1800, pressure, pours: "steady" as const };
  const fit = fitRun(readLog(log.text).run, givesForFit(log));
  const salts = { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate };
  const charge = { water: truth.waterAtFirstRow, salts, temperature: 291 };
  const plan = planFeed({ ...asked, fit, bath: charge, setup: { tank, burner: { heat: 10_000 } } }, options);

  const bath = {
    water: truth.waterAtFirstRow,
    salts: { sodiumHydroxide: truth.hydroxide, sodiumNitrate: truth.nitrate },
    temperature: "boiling" as const,
    departure: truth.departure,
  };
  const air = { pressure: truth.pressure, temperature: 291 };
  const target = told.target - truth.thermometer.high;
  const unlit = { tank, burner: { heat: 0 }, air };
  const { walls = 0, top = 0 } = simulateBath(unlit, bath, { end: 1 }, { tally: true }).course.at(-1)?.tally ?? {};
  const losses = walls + top;
  // The log says that it boiled on this fire: what evaporates below the boil is a third of it, more than the plan takes.
  const evaporation = (0.35 * truth.heat) / (tank.length * tank.width * (truth.pressure - 884));
  const setup = {
    tank,
    air,
    burner: { heat: truth.heat + losses },
    losses: { wall: losses / (target - 291), evaporation },
  };
  return {
    bath: { told: { ...asked, target, pressure: truth.pressure, setup, bath }, losses, heat: 1, slope: 1 },
    plan: { ...plan, startReading: plan.startReading - truth.thermometer.high },
  };
}
