import {
  type FitToScale,
  type FittedRun,
  type PlainWaterLog,
  type ScaledTogether,
  type ScaleOptions,
  type ScaleSetup,
  scaleTogether,
} from "../../lib/fit/index.ts";
import type { Brine } from "../../lib/physics/index.ts";
import { number } from "../givensOf.ts";
import { partsOfNewTank } from "../newTank/partsOfNewTank.ts";
import { asideFunction } from "./asideFunction.ts";
import { bothSetups, type TankAndFire } from "./setupToScale.ts";

/** A scaling as plain data, so that it can be worked off the page's thread. */
export interface ScaleWork {
  readonly fit?: FitToScale;
  readonly from: ScaleSetup;
  readonly to: ScaleSetup;
  readonly options: ScaleOptions;
  readonly gasKnown: boolean;
}

/** What a fit has to say to a scaling, without what hangs on it. */
function fitToScale(bath: unknown): FitToScale | undefined {
  const fit = bath instanceof Map ? (bath.get("whole fit") as FittedRun | "handbook") : undefined;
  if (fit === undefined) throw new Error("missing fitted bath; a fit of a run, or the handbook's, is needed");
  if (fit === "handbook") return undefined;
  const { value, standardUncertainty } = fit.boilOff;
  return {
    boilOff: { value, standardUncertainty },
    parameters: fit.parameters.map((one) => ({
      name: one.name,
      value: one.value,
      standardUncertainty: one.standardUncertainty,
    })),
    covariance: fit.covariance,
  };
}

/** What both functions take, in their order. */
export const scaleTakes = [
  { name: "fitted bath" },
  { name: "old tank and fire" },
  { name: "new tank and fire" },
  { name: "air pressure" },
  { name: "salt shares" },
  { name: "target" },
  { name: "air temperature", optional: true },
] as const;

/** Reads what both functions take. */
export function scaleWork(given: readonly unknown[]): ScaleWork {
  const [bath, old, next, air, shares, target, temperature] = given;
  const pressure = number("air pressure", air)?.value ?? 101_325;
  const fit = fitToScale(bath);
  const aim = number("target", target)?.value;
  const around = number("air temperature", temperature)?.value;
  return {
    ...(fit ? { fit } : {}),
    ...bothSetups(fit, old as TankAndFire, next as TankAndFire, pressure),
    options: {
      pressure,
      salts: (shares as Map<string, unknown>).get("brine") as Brine,
      ...(aim === undefined ? {} : { target: aim }),
      ...(around === undefined ? {} : { air: around }),
    },
  };
}

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What the new tank will do, what would narrow it, how wrong proportion is. */
export const newTankByScaling = asideFunction<ScaleWork, ScaledTogether>({
  name: "new tank by scaling",
  waits: "waiting to be worked over to the new tank",
  work(given) {
    const { options, ...rest } = scaleWork(given);
    const [size, contents, log] = given.slice(scaleTakes.length);
    const full = number("size of the cylinder", size)?.value;
    const held = number("propane in the cylinder", contents)?.value ?? full;
    return {
      ...rest,
      options: {
        ...options,
        ...(full === undefined || held === undefined ? {} : { cylinder: { size: full, contents: held } }),
        ...(log === undefined || log === "nothing" ? {} : { plainWaterLog: log as PlainWaterLog }),
      },
    };
  },
  does({ fit, from, to, options }, says) {
    says(`working the fire over to a tank of ${to.tank.length.toFixed(2)} m`);
    return scaleTogether(fit, from, to, options);
  },
  parts: (found, work) => partsOfNewTank(found, work),
  same: alike,
});
