import type { FitToScale, ScaleBurners, ScaleSetup, ScaleTank } from "../../lib/fit/index.ts";
import { propane } from "../../lib/physics/index.ts";
import { jetFlowHighPressure } from "../../lib/physics/jetFlowHighPressure.ts";
import { number } from "../givensOf.ts";

/** A tank and its fire as a formula tells them: what was not said is not there. SI. */
export interface TankAndFire {
  readonly tank: ScaleTank;
  readonly burners?: number;
  readonly jet?: number;
  readonly pressure?: number;
  readonly skirted?: boolean;
}

/** What a formula gives `tank and fire`, in its order. */
export const tankAndFireTakes = [
  { name: "length" },
  { name: "width" },
  { name: "depth" },
  { name: "depth of the liquid", optional: true },
  { name: "plate", optional: true },
  { name: "burners", optional: true },
  { name: "jet", optional: true },
  { name: "regulator pressure", optional: true },
  { name: "flame", optional: true },
] as const;

/** Reads a tank and its fire out of the arguments of a formula. */
export function tankAndFire(...given: readonly unknown[]): TankAndFire {
  const of = (place: number): number | undefined =>
    number(tankAndFireTakes[place]?.name ?? "argument", given[place])?.value;
  const [length = 0, width = 0, depth = 0, liquid, plate, burners, jet, pressure] = [0, 1, 2, 3, 4, 5, 6, 7].map(of);
  const flame = given[8];
  return {
    tank: {
      length,
      width,
      depth,
      // Above the brim no liquid stands.
      ...(liquid === undefined ? {} : { liquidDepth: Math.min(liquid, depth) }),
      ...(plate === undefined ? {} : { plate }),
    },
    ...(burners === undefined ? {} : { burners }),
    ...(jet === undefined ? {} : { jet }),
    ...(pressure === undefined ? {} : { pressure }),
    ...(flame === undefined ? {} : { skirted: flame === "skirted" }),
  };
}

/** Pa (5 psi): what a regulator is taken to be set to where neither jet nor pressure was said. */
const usualPressure = 34_474;

/**
 * The jet that would burn the gas of which the usual share enters an old tank: stands in where nobody measured the jet.
 * What hangs on the gas itself is left out then.
 */
function likelyJet(fit: FitToScale, count: number, skirted: boolean, airPressure: number): number {
  const net = fit.parameters?.find(({ name }) => name === "heat into the bath")?.value ?? fit.boilOff.value * 2.7e6;
  const gas = (1.25 * net) / (skirted ? 0.5 : 0.35) / propane.grossHeatingValue.value / count;
  const one = jetFlowHighPressure({ diameter: 0.001, pressure: usualPressure, airPressure, coefficient: 0.85 });
  return Math.min(0.005, Math.max(0.0003, 0.001 * Math.sqrt(gas / one)));
}

export interface BothSetups {
  readonly from: ScaleSetup;
  readonly to: ScaleSetup;
  /** Whether the gas is known at all: the old jet and the pressure were said. */
  readonly gasKnown: boolean;
}

/**
 * Old and new setup as the scaling takes them: what was not said of the new fire is the old one's.
 *
 * @throws Error where neither a log nor a jet tells anything of the fire
 */
export function bothSetups(
  fit: FitToScale | undefined,
  old: TankAndFire,
  next: TankAndFire,
  airPressure: number,
): BothSetups {
  const count = old.burners ?? 1;
  const skirted = old.skirted ?? false;
  const gasKnown = old.jet !== undefined && old.pressure !== undefined;
  if (!gasKnown && !fit)
    throw new Error(
      "missing jet and regulator pressure: where nothing was logged they alone say how much gas the fire burns",
    );
  const jetDiameter = gasKnown ? (old.jet ?? 0) : likelyJet(fit as FitToScale, count, skirted, airPressure);
  const pressure = gasKnown ? (old.pressure ?? 0) : usualPressure;
  const burners: ScaleBurners = { count, jetDiameter, pressure, skirted };
  return {
    from: { tank: old.tank, burners },
    to: {
      tank: next.tank,
      burners: {
        count: next.burners ?? count,
        jetDiameter: gasKnown ? (next.jet ?? jetDiameter) : jetDiameter,
        pressure: gasKnown ? (next.pressure ?? pressure) : pressure,
        skirted: next.skirted ?? skirted,
      },
    },
    gasKnown,
  };
}
