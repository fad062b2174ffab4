import { evaporationHeat } from "../../physics/index.ts";
import { answerOfDraws } from "./answerOfDraws.ts";
import { type Drawn, drawsOf } from "./drawsOf.ts";
import { shareAtFire, windOf } from "./flameShare.ts";
import { heatOfGas } from "./gasOf.ts";
import { leftAfter } from "./leftAfter.ts";
import type { Draw } from "./oneDraw.ts";
import { boilingWater, wateredHeating, waterPath } from "./plainWater.ts";
import type { FitToScale, MeasurementWorth, ScaleOptions, ScaleSetup } from "./types.ts";
import { powerAt } from "./warmingPath.ts";

/** What a measurement would read in a draw's world, ln, and how far one reading of it is off. */
interface Reading {
  readonly of: (draw: Draw) => number;
  readonly u: number;
}

interface Candidate {
  readonly what: string;
  readonly how: string;
  readonly on: "old tank" | "new tank";
  readonly readings: readonly Reading[];
}

const ln = (x: number) => Math.log(Math.max(1e-9, x));

/** Readings on the old tank, beyond what its fit has already told. */
function onOld({ scene }: Drawn): Record<"cylinder" | "heatUp" | "fire" | "wall", Reading> {
  const { from } = scene;
  const entering = (one: Draw) => one.oldShare * one.oldGas * heatOfGas;
  return {
    cylinder: { of: (one) => ln(one.oldGas), u: 0.025 },
    // What warms a bath half way to its boil; its own day's wind and the bath's weight blur it.
    heatUp: {
      of: (one) => ln(entering(one) * (1 + one.heating.coldShare / 2)),
      u: Math.hypot(0.05, windOf(from, 1)),
    },
    fire: {
      of: (one) => ln(entering(one) * 0.5 * shareAtFire(0.5, one.factors)),
      u: Math.hypot(0.05, windOf(from, 1)),
    },
    wall: { of: (one) => 0.42 * one.factors.wall, u: 0.2 },
  };
}

function candidates(drawn: Drawn): readonly Candidate[] {
  const { scene } = drawn;
  const old = onOld(drawn);
  const path = waterPath(scene, [330]);
  const into = boilingWater(scene);
  const latent = evaporationHeat({}, scene.pressure);
  const warming: Reading = { of: (one) => ln(powerAt(path, 0, wateredHeating(scene, one))), u: 0.045 };
  const boiling: Reading = { of: (one) => ln(into(one) / latent), u: 0.035 };
  const cylinder: Reading = { of: (one) => ln(one.gas), u: 0.025 };
  return [
    {
      what: "half an hour of boiling plain water in the new tank, with the cylinder weighed",
      how: "Fill the new tank with weighed plain water, warm it with a reading every minute, let it boil for half an hour, weigh the water that brings it back to its mark, and the cylinder before and after.",
      on: "new tank",
      readings: [warming, boiling, cylinder],
    },
    {
      what: "ten minutes of warming plain water in the new tank",
      how: "Fill the new tank with weighed plain water, light its burners and write the temperature down every minute for ten minutes.",
      on: "new tank",
      readings: [warming],
    },
    {
      what: "the cylinder weighed on the new tank",
      how: "Weigh the cylinder before and after half an hour of the new tank's fire.",
      on: "new tank",
      readings: [cylinder],
    },
    {
      what: "the cylinder weighed on the old tank",
      how: "Weigh the cylinder before and after the next run in the old tank.",
      on: "old tank",
      readings: [old.cylinder],
    },
    {
      what: "a heat-up of the old tank from cold",
      how: "Log the next heat-up from cold to the boil, a reading every two minutes.",
      on: "old tank",
      readings: [old.heatUp],
    },
    {
      what: "a second fire under the old tank",
      how: "Boil the old tank for half an hour at a quarter of the gauge's pressure, which halves the gas, and log it.",
      on: "old tank",
      readings: [old.fire],
    },
    {
      what: "the old tank's wall temperature",
      how: "Measure the long wall's outside between the flames and above them while the bath boils.",
      on: "old tank",
      readings: [old.wall],
    },
    {
      what: "all four on the old tank",
      how: "Heat-up, second fire, wall temperature and weighed cylinder on the old tank in one evening.",
      on: "old tank",
      readings: [old.cylinder, old.heatUp, old.fire, old.wall],
    },
  ];
}

/**
 * The single measurement, on the new tank or the old, that would narrow the new tank's boil-off most, and what each would
 * leave: worked from how each reading would go with the answer over the draws of `scaleSetup`.
 *
 * @param fit of the old setup, or undefined
 * @param from the old setup
 * @param to the new one
 * @param options as for `scaleSetup`
 * @returns the measurements, best first, with the half-width over the value of boil-off and gas, now and with each
 * @throws RangeError as `scaleSetup`
 * Source: linear regression on the draws; how well a maker measures (2 to 5 %) is a judgement. Plain water at its boil
 * scalds: gloves, face shield, nothing left unwatched.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const long = { tank: { ...old.tank, length: 1.22 }, burners: { ...burners, count: 2 } };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const [best] = oneMeasurement(fit, old, long, { pressure: 101_325, draws: 500 });
 * best.on // "new tank"
 * best.boilOff.after < 0.7 * best.boilOff.now // true
 */
export function oneMeasurement(
  fit: FitToScale | undefined,
  from: ScaleSetup,
  to: ScaleSetup,
  options: ScaleOptions,
): readonly MeasurementWorth[] {
  return measurementsOf(drawsOf(fit, from, to, options));
}

/**
 * The same from draws that are there already.
 *
 * @example measurementsOf(drawsOf(fit, from, to, options))[0].on // "new tank"
 */
export function measurementsOf(drawn: Drawn): readonly MeasurementWorth[] {
  const { draws, weights } = drawn;
  const width = (values: readonly number[]) => {
    const { value, interval95 } = answerOfDraws(values, weights);
    return (interval95[1] - interval95[0]) / 2 / value;
  };
  const boilOff = draws.map((one) => one.boilOff);
  const gas = draws.map((one) => one.gas);
  const now = { boilOff: width(boilOff), gas: width(gas) };
  return candidates(drawn)
    .map(({ what, how, on, readings }) => {
      const columns = readings.map(({ of }) => draws.map(of));
      const noises = readings.map(({ u }) => u);
      const after = (values: readonly number[]) => leftAfter(values, columns, noises, weights);
      const left = after(boilOff);
      return {
        what,
        how,
        on,
        boilOff: { now: now.boilOff, after: now.boilOff * left },
        gas: { now: now.gas, after: now.gas * after(gas) },
        gain: 1 - left,
      };
    })
    .sort((a, b) => b.gain - a.gain);
}
