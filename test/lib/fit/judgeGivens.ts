import type { LogForFit } from "../../../data/generator/inventLogForFit.ts";
import type { Known } from "../../../lib/fit/run/knownOf.ts";
import type { FitGivens } from "../../../lib/fit/run/types.ts";
import type { Entry, Run } from "../../../lib/log/types.ts";
import { entry } from "../bath/logs.ts";

const flOz = 0.0295735295625 * 0.9982;

/** What the invented maker believes of bath and setup, as a fit takes it. */
export function givesForFit({ told }: LogForFit): FitGivens {
  return {
    salts: { sodiumHydroxide: told.hydroxide, sodiumNitrate: told.nitrate },
    pressure: told.pressure,
    ...(told.water === undefined
      ? {}
      : { water: { value: told.water.value, standardUncertainty: told.water.share * told.water.value } }),
    thermometer: { standardUncertainty: told.thermometer.standardUncertainty },
    target: told.target,
    band: told.band,
    tank: { length: told.tank.length, width: told.tank.width, depth: told.tank.depth },
    ...(told.burner === undefined
      ? {}
      : { burner: { power: { value: told.burner, standardUncertainty: 0.1 * told.burner } } }),
  };
}

/** What an oracle may be told: each is truth that no log knows, handed over through givens or a corrected log. */
export interface Oracle {
  /** Salts, water at the first row, air pressure and the thermometer's error, as they truly are. */
  readonly givens?: boolean;
  /** Each pour with its true kilograms. */
  readonly cup?: boolean;
  /** Pours that were not written stand in the log. */
  readonly unwritten?: boolean;
  /** Pours stand at their true times. */
  readonly times?: boolean;
  /** Misread readings are struck out. */
  readonly misread?: boolean;
}

/** Givens with the truth in them; a standard uncertainty of 0.1 % stays. */
export function oracleGivens(log: LogForFit, oracle: Oracle): FitGivens {
  const gives = givesForFit(log);
  const { truth } = log;
  const sure = (value: number) => ({ value, standardUncertainty: 0.001 * value });
  return {
    ...gives,
    ...(oracle.givens
      ? {
          salts: { sodiumHydroxide: sure(truth.hydroxide), sodiumNitrate: sure(truth.nitrate) },
          water: sure(truth.waterAtFirstRow),
          pressure: { value: truth.pressure, standardUncertainty: 20 },
          thermometer: { offset: truth.thermometer.high, standardUncertainty: 0.05 },
        }
      : {}),
    ...(oracle.cup ? { cup: { allNight: 0.001, eachPour: 0.001 } } : {}),
  };
}

/** The log as an oracle would have written it. */
export function oracleRun({ truth, kind }: LogForFit, run: Run, oracle: Oracle): Run {
  if (kind.habit === "drip") {
    const drips = [...truth.poured];
    const entries = run.entries.map((row) => {
      if (row.kind !== "addition" || !oracle.cup) return row;
      const drip = drips.shift();
      return drip ? withMass(row, drip.mass) : row;
    });
    return { ...run, entries };
  }
  const kept: Entry[] = [];
  const pours = truth.poured.filter((pour) => pour.written !== undefined);
  for (const row of run.entries) {
    if (row.kind === "addition") {
      const at = pours.findIndex(
        (pour) => pour.written === row.time && Math.abs(pour.ounces * flOz - (row.quantity?.si ?? 0)) < 0.01,
      );
      const [pour] = at < 0 ? [] : pours.splice(at, 1);
      const weighed = pour && oracle.cup ? withMass(row, pour.mass) : row;
      kept.push(pour && oracle.times ? { ...weighed, time: pour.time } : weighed);
    } else if (row.kind === "reading" && oracle.misread && isMisread(row)) kept.push({ ...row, struck: true });
    else kept.push(row);
  }
  function isMisread(row: Entry): boolean {
    return truth.misread.some(({ time, by }) => time === row.time && Math.abs(by) >= 2);
  }
  if (oracle.unwritten) {
    for (const pour of truth.poured)
      if (pour.written === undefined)
        kept.push(entry("addition", pour.time, oracle.cup ? pour.mass : pour.ounces * flOz));
  }
  return { ...run, entries: kept.sort((a, b) => a.time - b.time) };
}

function withMass(row: Entry, mass: number): Entry {
  return row.quantity ? { ...row, quantity: { ...row.quantity, si: mass } } : row;
}

/** Lag, mixing, noise, fire and pouring habit as they truly were. */
export function knownOf({ truth }: LogForFit): Known {
  const { fire } = truth;
  return {
    lag: truth.lag,
    mixing: truth.mixing,
    noise: truth.noise.sd,
    fire: (time) => fire[Math.min(fire.length - 1, Math.max(0, Math.round(time)))] ?? 0,
    rhythm: truth.regular ?? "irregular",
  };
}
