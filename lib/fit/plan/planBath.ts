import { BathHeat, plainWater } from "../../bath/bathEnthalpy.ts";
import { bathLosses, ordinaryAir } from "../../bath/bathLosses.ts";
import { steelTable, tankSteel } from "../../bath/bathModel.ts";
import { saltMass, scaledSalts } from "../../bath/saltMasses.ts";
import { steamHeat } from "../../bath/steamHeat.ts";
import { boilingPointSlope } from "../../physics/boilingPointSlope.ts";
import { departedSaltRatio } from "../../physics/departedBoilingPoint.ts";
import { needNumber, plain } from "../../physics/needNumber.ts";
import { needBrine } from "../../physics/readBrine.ts";
import { saltCurvePrior } from "../../physics/saltCurvePrior.ts";
import type { Brine, CurveDeparture } from "../../physics/types.ts";
import type { FittedRun, ParameterName } from "../run/types.ts";
import type { PlanGivens } from "./types.ts";

/** A boiling bath near its target as a plan sees it: a few numbers, from which a hold is quickly simulated. */
export interface PlanBath {
  /** K and K. */
  readonly target: number;
  readonly band: number;
  /** Pa. */
  readonly pressure: number;
  /** kg of water and of each salt at the target. */
  readonly water: number;
  readonly salts: Brine;
  readonly departure: CurveDeparture;
  /** K by which the boiling point falls for each unit of ln water. */
  readonly k: number;
  /** W into the bath beyond what walls and top lose, and its standard uncertainty as a share. */
  readonly heat: number;
  readonly heatDoubt: number;
  /** Standard uncertainty of k over water, as a share. */
  readonly slopeDoubt: number;
  /** W that walls and surface lose by convection and radiation. */
  readonly losses: number;
  /** J/K of bath and tank, without parts. */
  readonly capacity: number;
  /** J/kg to boil water out; J/kg that cold water takes to become bath at the target. */
  readonly evaporation: number;
  readonly warming: number;
  /** kg/s that evaporate from the bath where it stands just below its boil. */
  readonly quiet: number;
  /** The same as published correlations alone have it. */
  readonly quietPublished: number;
  /** K, of the water fed. */
  readonly feedTemperature: number;
  /** s. */
  readonly lag: number;
  readonly mixing: number;
  /** K, what the thermometer is read to, and a temperature that it can show. */
  readonly rounding: number;
  readonly roundingFrom: number;
}

/** What nobody said: the middle of what a fit starts from (15 and 20 s, see `waterLine`), whole °F, 5 % as a fit leaves the heat. */
const usual = { lag: 15, mixing: 20, rounding: 5 / 9, heatDoubt: 0.05 };
/** A bath that boiled on its fire evaporates less than that below its boil: a quarter of the heat, as the fit of a run takes it. */
const boiled = 0.25;
/** The mix taken where a fitted run comes without its salts: 2 to 1 by weight, common practice, no source. */
const usualMix: Brine = { sodiumHydroxide: 2, sodiumNitrate: 1 };

/**
 * The bath of a plan at its target.
 *
 * @param givens as `planFeed` takes them
 * @throws RangeError for a number out of range, for neither bath nor fit, for a fire that does not keep it boiling
 * @example planBath(givens).heat // 5,500 W
 */
export function planBath(givens: PlanGivens): PlanBath {
  const { setup, bath, fit, target, band, pressure } = givens;
  needSetup(setup);
  needNumber("band", band, 1e-3, 50, "K");
  needNumber("target", target, 273.15, 473.15, "K");
  needNumber("pressure", pressure, 5000, 105_000, "Pa");
  if (!bath && !fit) throw new RangeError("missing bath: neither its charge nor a fitted run is given; one of them");
  if (bath) {
    needNumber("water", bath.water, 0.05, 10_000, "kg");
    needBrine(bath.salts);
    for (const [kind, mass] of Object.entries(bath.salts)) needNumber(`weight of ${kind}`, mass, 0, 10_000, "kg");
  }
  const air = { ...ordinaryAir, ...setup.air, pressure };
  const feedTemperature = needNumber(
    "temperature of the water fed",
    givens.feedTemperature ?? air.temperature,
    273.15,
    373.15,
    "K",
  );
  const told = fit ? ofFit(fit, target, pressure, bath?.salts ?? usualMix) : undefined;
  const departure = told?.departure ?? bath?.departure ?? { offset: 0, scale: 1 };
  const mix = bath?.salts ?? usualMix;
  const kg = saltMass(mix);
  if (!(kg > 0)) throw new RangeError("missing salts: no weight is given; at least one salt above 0");
  const ratio = departedSaltRatio(target, pressure, mix, departure);
  const water = told?.water ?? kg / ratio;
  const salts = told ? scaledSalts(mix, (ratio * water) / kg) : mix;
  const k = departure.scale * boilingPointSlope(scaledSalts(salts, 1 / water), pressure);
  const loses = bathLosses({ ...setup, air });
  const losses = loses.walls(target) + loses.top(target);
  const { burner } = setup;
  const fire = "heat" in burner ? burner.heat : burner.power * burner.efficiency;
  const heat = told?.heat ?? fire - losses;
  if (!(heat > 0)) {
    throw new RangeError(
      `invalid burner: ${plain(fire)} W into the bath; more than the ${plain(losses)} W that walls and surface lose at the target`,
    );
  }
  const enthalpy = new BathHeat(salts);
  enthalpy.at(water, target);
  const evaporation = steamHeat(pressure)(target) - enthalpy.byWater;
  const quiet = loses.quiet ? loses.evaporates(target) * Math.max(0, pressure - loses.airVapour) : 0;
  const { thermometer = {} } = setup;
  const mixing = fit ? (parameter(fit, "mixing time")?.value ?? usual.mixing) : usual.mixing;
  const lag = thermometer.lag ?? (fit ? parameter(fit, "thermometer lag")?.value : undefined) ?? usual.lag;
  return {
    target,
    band,
    pressure,
    water,
    salts,
    departure,
    k,
    heat,
    heatDoubt: setup.heatUncertainty ?? told?.heatDoubt ?? usual.heatDoubt,
    slopeDoubt: told?.slopeDoubt ?? chargeSlopeDoubt(bath),
    losses,
    capacity: enthalpy.byT + tankSteel(setup.tank) * steelTable().slope(target),
    evaporation,
    warming: enthalpy.byWater - plainWater(feedTemperature),
    quiet: told ? Math.min(quiet, (boiled * heat) / evaporation) : quiet,
    quietPublished: quiet,
    feedTemperature,
    lag,
    mixing,
    rounding: thermometer.rounding ?? usual.rounding,
    roundingFrom: thermometer.roundingFrom ?? 273.15,
  };
}

/** Whether there is a tank and a burner at all: what comes from a record may lack them. */
function needSetup(setup: Partial<PlanGivens["setup"]> | undefined): void {
  if (!setup?.tank) throw new RangeError("missing tank: its inside length, width and depth, m");
  if (!setup.burner) throw new RangeError("missing burner: its power and efficiency, or its heat, W");
}

function chargeSlopeDoubt(bath: PlanGivens["bath"]): number {
  const { departure } = bath ?? {};
  return departure?.scaleUncertainty ?? (departure ? 0 : saltCurvePrior.scale.standardUncertainty);
}

const parameter = (fit: FittedRun, name: ParameterName) => fit.parameters.find((one) => one.name === name);

/** What a fitted run says of the bath at its target. */
function ofFit(fit: FittedRun, target: number, pressure: number, mix: Brine) {
  const heat = parameter(fit, "heat into the bath");
  const offset = parameter(fit, "boiling point offset")?.value ?? saltCurvePrior.offset.value;
  const scale = parameter(fit, "boiling curve scale")?.value ?? 1;
  if (!heat) throw new RangeError("missing heat: the fitted run has no heat into the bath; a run that boiled");
  const departure = { offset, scale };
  const boiling = fit.course.filter(({ boils }) => boils);
  const moments = boiling.length > 0 ? boiling : fit.course;
  const [first] = moments;
  if (!first) throw new RangeError("missing course: the fitted run has no moment; a run with readings");
  // The moment nearest to the target, and from there along the curve.
  const near = moments.reduce(
    (best, one) => (Math.abs(one.boilingPoint - target) < Math.abs(best.boilingPoint - target) ? one : best),
    first,
  );
  const there = departedSaltRatio(near.boilingPoint, pressure, mix, departure);
  const wanted = departedSaltRatio(target, pressure, mix, departure);
  return {
    departure,
    heat: heat.value,
    heatDoubt: heat.standardUncertainty / heat.value,
    water: (near.water * there) / wanted,
    slopeDoubt: doubtOfSlope(fit),
  };
}

/** Of the slope, from where the log stood to the target, with the mix as told: found on invented logs. */
const curveDoubt = 0.07;

/** Water and scale are nearly one in a log: what is left of both in k over water. */
function doubtOfSlope({ covariance: { names, matrix } }: FittedRun): number {
  const w = names.indexOf("water at the start");
  const s = names.indexOf("boiling curve scale");
  const entry = (i: number, j: number) => matrix[i]?.[j] ?? 0;
  if (w < 0 || s < 0) return saltCurvePrior.scale.standardUncertainty;
  return Math.hypot(curveDoubt, Math.sqrt(Math.max(0, entry(w, w) + entry(s, s) - 2 * entry(w, s))));
}
