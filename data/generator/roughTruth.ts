import { boilsAt, coldHeat, type RoughTank, steamHeat, stepBath } from "./roughBath.ts";
import { meanHeat, type RoughRun, type RoughScenario } from "./roughRun.ts";

/** The true answers to what a maker asks. SI, K; a target is meant as the bath itself has it, without thermometer. */
export interface TrueAnswers {
  /** kg/s: vapour that left from the first boil to the end of the log, over that time. */
  readonly boilOff: number;
  /** W of the fire less losses of walls and top, mean over the same time. */
  readonly heat: number;
  /**
   * kg/s of cold water which that heat would have turned to steam at an even ratio: W over J/kg from tap water to
   * steam at the mean heat of the bath. What parts took is not taken off: the fire gave it all the same.
   */
  readonly makeUp: number;
  readonly waterAtBoil: number;
  readonly waterAtEnd: number;
  readonly saltsAtEnd: number;
  /** K. */
  readonly boilingPointAtEnd: number;
  /** kg of water which, poured at the end, lets the bath boil at a target: below 0 where so much has to boil off. */
  readonly waterTo: (target: number) => number;
  /**
   * s from the end until the boiling point leaves target ± band when nobody touches the bath and the fire stays as it
   * was on average in the last five minutes, or since the burner was last changed; 0 where it is out already, Infinity
   * where it is not out within eight hours.
   */
  readonly untilOut: (target: number, band: number) => number;
}

const kelvin = 273.15;

export function trueAnswers(run: RoughRun, scenario: RoughScenario): TrueAnswers {
  const { tank } = scenario;
  const { firstBoil, end, last } = run;
  const heat = meanHeat(run, firstBoil + 1, end);
  const boiling = run.bath.slice(firstBoil);
  const mean = boiling.reduce((sum, T) => sum + T, 0) / boiling.length;
  return {
    boilOff: run.vapourFromBoil / (end - firstBoil),
    heat,
    makeUp: heat / (steamHeat(mean) - coldHeat(tank.tap)),
    waterAtBoil: run.waterAtBoil,
    waterAtEnd: run.waterAtEnd,
    saltsAtEnd: last.hydroxide + last.nitrate,
    boilingPointAtEnd: boilsAt(tank, last, run.waterAtEnd) + kelvin,
    waterTo: (target) => waterThatBoilsAt(tank, run, target - kelvin) - run.waterAtEnd,
    untilOut: (target, band) => untilOut(run, scenario, target - kelvin, band),
  };
}

/** kg, by halving: the boiling point falls as water goes in. */
function waterThatBoilsAt(tank: RoughTank, { last, waterAtEnd }: RoughRun, target: number): number {
  let low = 0.2 * waterAtEnd;
  let high = 5 * waterAtEnd;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (boilsAt(tank, last, middle) > target) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function untilOut(run: RoughRun, scenario: RoughScenario, target: number, band: number): number {
  const { tank, burner } = scenario;
  const changed = run.firstBoil + (burner.findLast(({ since }) => run.firstBoil + since <= run.end)?.since ?? 0);
  const from = Math.min(run.end - 30, Math.max(run.end - 300, changed));
  const recent = run.fire.slice(Math.max(0, from), run.end + 1);
  const fire = recent.reduce((sum, W) => sum + W, 0) / recent.length;
  const state = { ...run.last };
  for (let time = 0; time < 8 * 3600; time++) {
    if (Math.abs(boilsAt(tank, state, state.water + state.waiting) - target) > band) return time;
    stepBath(tank, state, fire, 0, scenario.mixing);
  }
  return Infinity;
}
