import { latentHeat, ordinaryAir } from "../../lib/bath/bathLosses.ts";
import { simulateBath } from "../../lib/bath/index.ts";
import type { PlanGivens } from "../../lib/fit/index.ts";
import { planBath } from "../../lib/fit/plan/planBath.ts";

/** From lighting the burner to the reading at which the parts go in. */
export interface HeatUp {
  /** s; null where the fire does not bring it to the boil within twelve hours. */
  readonly toBoil: number | null;
  /** K at which it first boils: evaporation on the way there has strengthened it. */
  readonly boilsAt: number | null;
  /** s from the first boil until it has climbed to the start, unfed; 0 where it boils above it. */
  readonly toStart: number | null;
  /** kg to let in at the first boil where that lies above the start. */
  readonly tooStrongBy: number;
}

const never: HeatUp = { toBoil: null, boilsAt: null, toStart: null, tooStrongBy: 0 };
/** s that are looked at, shorter first: most heat-ups end there. */
const spans = [3 * 3600, 12 * 3600];
const step = 20;

/**
 * The heat-up of a charge, simulated from lighting on.
 *
 * @param givens of the plan; a fitted run's heat goes before the burner's
 * @param startsAt K, true, at which the parts go in
 * @param times of the fire's heat
 */
export function heatUp(givens: PlanGivens, startsAt: number, times = 1): HeatUp {
  const { setup, bath, fit, pressure } = givens;
  if (!bath) return never;
  const at = planBath(givens);
  const air = { ...ordinaryAir, ...setup.air, pressure };
  const area = setup.tank.length * setup.tank.width;
  // A fitted bath loses what the plan takes it to lose: its log showed that the fire brings it to the boil.
  const asFitted = {
    wall: at.losses / (at.target - air.temperature),
    evaporation: (at.quiet * latentHeat(at.target)) / (area * (pressure - air.vapourPressure)),
  };
  const around = {
    ...setup,
    burner: { heat: at.heat * times + at.losses },
    air,
    ...(fit ? { losses: asFitted } : {}),
  };
  const charge = { temperature: at.feedTemperature, ...bath, departure: at.departure };
  for (const end of spans) {
    const { course, stops } = simulateBath(around, charge, { end }, { step });
    const first = course.findIndex(({ state }) => state === "boiling");
    const boil = course[first];
    const later = course.findIndex(({ T }, i) => i >= first && T >= startsAt);
    if (!boil) {
      if (stops) return never;
      continue;
    }
    if (boil.T >= startsAt) {
      const tooStrongBy = boil.water * Math.expm1((boil.T - startsAt) / at.k);
      return { toBoil: boil.time, boilsAt: boil.T, toStart: 0, tooStrongBy };
    }
    const start = course[later];
    if (start) return { toBoil: boil.time, boilsAt: boil.T, toStart: start.time - boil.time, tooStrongBy: 0 };
    if (stops) return { toBoil: boil.time, boilsAt: boil.T, toStart: null, tooStrongBy: 0 };
  }
  return never;
}
