import type { SaltsKnown } from "../../lib/bath/types.ts";
import type { FittedRun, PlanCharge, PlanGivens, PlanOptions } from "../../lib/fit/index.ts";
import { planBath } from "../../lib/fit/plan/planBath.ts";
import { slugLimit } from "../../lib/fit/plan/slugLimit.ts";
import { fromUnit, multiply, standardUncertainty } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { burnerEfficiencyPrior, departedSaltRatio, saltCurvePrior } from "../../lib/physics/index.ts";
import type { Brine } from "../../lib/physics/types.ts";
import { doubtful, number } from "../givensOf.ts";
import { saltsKilograms } from "./saltsKilograms.ts";

/** What is wanted of a hold: out of the maker's lines, SI. */
export interface HoldWanted {
  /** K, true bath temperature, and K each way. */
  readonly target: number;
  readonly band: number;
  /** s. */
  readonly hold: number;
  readonly parts?: { readonly mass: number; readonly temperature?: number };
  readonly pours: PlanGivens["pours"];
}

/** Tank, fire, thermometer, cup, air, and the bath's charge: out of the maker's lines. */
export interface SetupAndBath {
  readonly tank: { readonly length: number; readonly width: number; readonly depth: number };
  /** W of gas, gross, and the share of it that reaches the bath before a log has shown it. */
  readonly power?: Value;
  readonly efficiency: Value;
  readonly thermometer: { readonly offset: number; readonly standardUncertainty: number };
  readonly cup: { readonly allNight: number; readonly eachPour: number };
  /** K and Pa. */
  readonly air: number;
  readonly pressure: number;
  readonly salts: Brine;
  readonly readyMixed: boolean;
  /** kg; absent where nobody said. */
  readonly water?: Value;
  /** K. */
  readonly lit: number;
}

/** A plan as plain data, so that it can be worked off the page's thread. */
export interface PlanWork {
  readonly givens: PlanGivens;
  readonly options: PlanOptions;
  /** W into the bath beyond what walls and top lose, where it is fitted; what a fire without a log gives. */
  readonly heat: Value;
  readonly power?: Value;
  /** K that the thermometer reads too much. */
  readonly readsHighBy: number;
  readonly waterKnown: boolean;
  /** kg, what the fire warms in 20 s, before its safe end is taken. */
  readonly limit: number;
  /** Whether the salts come mixed in one bag. */
  readonly readyMixed: boolean;
}

/** K below the target at which a bath boils whose water nobody said. */
const boilsBelow = 3;
/** The seed of every plan: the same lines always give the same plan. */
const seed = 11;

const cups: ReadonlyMap<unknown, SetupAndBath["cup"]> = new Map([
  ["measuring cup", { allNight: 0.03, eachPour: 0.05 }],
  ["marked jug", { allNight: 0.015, eachPour: 0.025 }],
  ["scale", { allNight: 0.003, eachPour: 0.005 }],
]);

const needed = (what: string, given: unknown): number => {
  const value = number(what, given);
  if (!value) throw new Error(`missing ${what}`);
  return value.value;
};

/** What is wanted, out of the arguments of its formula. */
export function holdWanted(...given: readonly unknown[]): HoldWanted {
  const [target, band, hold, parts, temperature, feeding, measure] = given;
  const mass = number("weight of the parts", parts)?.value ?? 0;
  const warm = number("temperature of the parts", temperature)?.value;
  const steady = feeding !== "pours";
  const cup = number("measure", measure)?.value;
  if (!steady && cup === undefined) throw new Error("missing measure of one pour");
  return {
    target: needed("target", target),
    band: needed("band", band),
    hold: needed("hold time", hold),
    ...(mass > 0 ? { parts: { mass, ...(warm === undefined ? {} : { temperature: warm }) } } : {}),
    pours: steady || cup === undefined ? "steady" : { measure: cup },
  };
}

/** Setup and bath, out of the arguments of its formula. */
export function setupAndBath(...given: readonly unknown[]): SetupAndBath {
  const [length, width, depth, burner, flame, thermometer, cup, air, pressure, salts, water, lit, liquid] = given;
  const tank = {
    length: needed("tank length", length),
    width: needed("tank width", width),
    depth: needed("tank depth", depth),
  };
  const prior = burnerEfficiencyPrior({ skirted: flame === "skirted", basis: "gross" });
  const efficiency: Value = {
    value: prior.value,
    dimension: {},
    components: new Map([["burner efficiency", prior.standardUncertainty]]),
  };
  const power = number("burner rate", burner);
  const poured = number("water when lit", water);
  return {
    tank,
    ...(power ? { power } : {}),
    efficiency,
    thermometer: {
      offset: number("thermometer", thermometer)?.value ?? 0,
      standardUncertainty: doubtful(thermometer, "thermometer")?.standardUncertainty ?? 0.39,
    },
    cup: cups.get(cup) ?? { allNight: 0.03, eachPour: 0.05 },
    air: needed("air temperature", air),
    pressure: needed("air pressure", pressure),
    salts: saltsKilograms(
      salts as SaltsKnown,
      number("liquid depth", liquid)?.value,
      tank,
      needed("air pressure", pressure),
    ),
    readyMixed: (salts as SaltsKnown).readyMix !== undefined,
    ...(poured ? { water: poured } : {}),
    lit: needed("temperature when lit", lit),
  };
}

/** What a plan works on: what is wanted, on which setup, with the fitted run where there is one. */
export function planWork(given: readonly unknown[]): PlanWork {
  const [asked, told, fitted] = given;
  const wanted = asked as HoldWanted;
  const { tank, power, efficiency, thermometer, cup, air, pressure, salts, readyMixed, water, lit } =
    told as SetupAndBath;
  const fit = fitted instanceof Map ? (fitted.get("whole fit") as FittedRun) : undefined;
  const fittedHeat = fitted instanceof Map ? (fitted.get("heat into the bath") as Value) : undefined;
  if (!fittedHeat && !power)
    throw new Error("neither a fitted run nor a burner rate is there: log one run, or write the burner's rate");
  const departure = fit ? departureOf(fit) : asPrior;
  const ratio = departedSaltRatio(wanted.target - boilsBelow, pressure, salts, departure);
  const kg = Object.values(salts).reduce((sum, one) => sum + (one ?? 0), 0);
  const charge: PlanCharge = { water: water?.value ?? kg / ratio, salts, temperature: lit, departure };
  const offset = thermometer.offset;
  const fire = power ? multiply(power, efficiency) : undefined;
  const heat = fittedHeat ?? (fire as Value);
  const givens: PlanGivens = {
    setup: {
      tank,
      burner: fire && power ? { power: power.value, efficiency: efficiency.value } : { heat: heat.value },
      thermometer: { rounding: 5 / 9, roundingFrom: 273.15 - offset },
      air: { temperature: air, pressure },
      ...(fit ? {} : { heatUncertainty: standardUncertainty(heat) / heat.value }),
    },
    bath: charge,
    ...(fit ? { fit } : {}),
    ...wanted,
    pressure,
  };
  const limit = slugLimit(planBath(givens)).mass;
  return {
    givens,
    options: {
      seed,
      errors: {
        cupAllNight: cup.allNight,
        eachPour: cup.eachPour,
        thermometerFixed: thermometer.standardUncertainty,
      },
      mostAtOnce: wholeMeasures(limit * Math.exp(-1.96 * heatDoubtOf(givens))),
    },
    heat,
    ...(power ? { power } : {}),
    readsHighBy: offset,
    waterKnown: water !== undefined,
    limit,
    readyMixed,
  };
}

/** Half a fluid ounce of water, kg: what a maker measures by. */
const halfOunce = fromUnit(0.5, "fl oz", { mass: 1 });

/** Down to whole halves of a fluid ounce, where it is that much. */
const wholeMeasures = (kg: number): number => (kg >= halfOunce ? Math.floor(kg / halfOunce + 1e-9) * halfOunce : kg);

/** Standard uncertainty of the heat into the bath, as a share. */
export function heatDoubtOf({ setup, fit }: PlanGivens): number {
  const heat = fit?.parameters.find(({ name }) => name === "heat into the bath");
  return heat ? heat.standardUncertainty / heat.value : (setup.heatUncertainty ?? 0.05);
}

/** A bath that no log tells of: the published curve with its offset and the full doubt of both. */
const asPrior = {
  offset: saltCurvePrior.offset.value,
  scale: saltCurvePrior.scale.value,
  offsetUncertainty: saltCurvePrior.offset.standardUncertainty,
  scaleUncertainty: saltCurvePrior.scale.standardUncertainty,
};

function departureOf(fit: FittedRun) {
  const value = (name: string) => fit.parameters.find((one) => one.name === name);
  return {
    offset: value("boiling point offset")?.value ?? saltCurvePrior.offset.value,
    scale: value("boiling curve scale")?.value ?? 1,
    offsetUncertainty: value("boiling point offset")?.standardUncertainty ?? saltCurvePrior.offset.standardUncertainty,
    scaleUncertainty: value("boiling curve scale")?.standardUncertainty ?? saltCurvePrior.scale.standardUncertainty,
  };
}
