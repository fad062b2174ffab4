import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  bathEnthalpy,
  boilingPoint,
  fitRun,
  readLog,
  type SimulationSchedule,
  saltCurvePrior,
  saturationPressure,
  simulateBath,
  steamEnthalpy,
  steelHeat,
  surfaceLoss,
  wallLoss,
  waterEnthalpy,
} from "../../lib/index.ts";
import type { Run } from "../../lib/log/types.ts";

const folder = mkdtempSync(join(tmpdir(), "bench-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** Writes what a script needs where it can read it; a command line cannot hold it. */
function handOver(name: string, what: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(what));
  return path;
}

const pressure = 101_325;
const air = 293.15;
const airVapour = 884;
const salts = { sodiumHydroxide: 5.3, sodiumNitrate: 2.65 };
const saltMass = salts.sodiumHydroxide + salts.sodiumNitrate;
const tank = { length: 0.965, width: 0.203, depth: 0.2 };
const steel = 8;
const minute = 60;

const even = (low: number, high: number, steps: number) =>
  Array.from({ length: steps + 1 }, (_, i) => low + ((high - low) * i) / steps);
const table = (low: number, high: number, steps: number, f: (x: number) => number) => ({
  low,
  step: (high - low) / steps,
  y: even(low, high, steps).map(f),
});
const boilsAt = (lnRatio: number) => {
  const scale = Math.exp(lnRatio) / saltMass;
  return boilingPoint(
    { sodiumHydroxide: salts.sodiumHydroxide * scale, sodiumNitrate: salts.sodiumNitrate * scale },
    pressure,
  );
};
const enthalpyOver = { water: even(4, 8.5, 90), T: even(285, 435, 60) };
const surface = (T: number, vapourPressure: number) =>
  surfaceLoss({
    surface: T,
    air,
    length: tank.length,
    width: tank.width,
    vapourPressure,
    airVapourPressure: airVapour,
    pressure,
  });
const area = tank.length * tank.width;
const sides = 2 * (tank.length + tank.width) * tank.depth;

const fire = 5000;
const slugs = Array.from({ length: 8 }, (_, i) => ({
  kind: "slug" as const,
  time: (32 + 7 * i) * minute,
  water: 0.45,
  temperature: 290,
}));
const schedule: SimulationSchedule = {
  end: 90 * minute,
  events: [...slugs, { kind: "burner", time: 57 * minute, share: 0.85 }],
};
const setup = { tank: { ...tank, wall: { steel } }, burner: { heat: fire } };
const cold = { water: 6.6, salts, temperature: 291 };

/** 90 min from cold: the heat-up, the boil, 8 slugs and one burner change, in steps of 10 s. */
export const ninetyMinutes = () => simulateBath(setup, cold, schedule, { step: 10 });

/** The same bath for Python, its physics as tables, and the course that ours takes. */
export function bathForPython(): string {
  const { course } = ninetyMinutes();
  if (course.length !== 541) throw new Error(`invalid run: ${course.length} points`);
  return handOver("bath.json", {
    end: schedule.end,
    every: 10,
    start: { water: cold.water, T: cold.temperature },
    slugs: slugs.map(({ time, water }) => ({ time, water, brings: waterEnthalpy(290) })),
    fire: [
      [0, fire],
      [57 * minute, 0.85 * fire],
    ],
    steel,
    salt: saltMass,
    boils: table(-1, 0.79, 179, boilsAt),
    enthalpy: {
      ...enthalpyOver,
      H: enthalpyOver.water.map((water) => enthalpyOver.T.map((T) => bathEnthalpy(salts, water, T))),
    },
    plain: table(285, 435, 150, waterEnthalpy),
    // Below water's boiling point saturated steam, above it superheated: the kink stands at a table's end.
    coolSteam: table(285, 373.124, 80, (T) => steamEnthalpy(T, saturationPressure(T))),
    hotSteam: table(373.125, 435, 60, (T) => steamEnthalpy(T, pressure)),
    steelHeat: table(285, 435, 150, (T) => steelHeat(1, 273.15, T)),
    lnVapour: table(285, 435, 150, (T) => Math.log(saturationPressure(T))),
    losses: table(285, 433, 74, (T) => {
      const { convection, radiation } = surface(T, 0);
      const wall = wallLoss({ wall: T, air, height: tank.depth, pressure });
      return sides * wall + area * (convection + radiation);
    }),
    evaporates: table(
      285,
      433,
      74,
      (T) => (area * (surface(T, 10_000).evaporated - surface(T, 0).evaporated)) / 10_000,
    ),
    pressure,
    airVapour,
    course: course.map(({ time, T }) => [time, T]),
  });
}

/** A log of a bath that climbs from 289 °F and is poured back every few rows, worn a little by hand. */
function logOf(rows: number, step: number, pourEvery: number): Run {
  const lines = ["time (s),temp F,water (fl oz)"];
  for (let i = 0; i < rows; i += 1) {
    const since = i % pourEvery;
    const shows = 289 + (2 * since) / pourEvery + 0.3 * Math.sin(37 * i);
    lines.push(`${i * step},${shows.toFixed(1)},${since === pourEvery - 1 ? 8 : ""}`);
  }
  return readLog(lines.join("\n")).run;
}

const inTank = { sodiumHydroxide: 8, sodiumNitrate: 3 };
const givens = { salts: inTank, pressure, target: 416.5, band: 1.1 };
const written = logOf(40, 90, 4);
const logged = logOf(7200, 1, 360);

/** Fits 40 rows by hand. */
export const fitWritten = () => fitRun(written, givens);
/** Fits 2 h at 1 Hz. */
export const fitLogged = () => fitRun(logged, givens);
/** The same with every part of the result read: course, what to log next, heats and all. */
export const fitWrittenWhole = () => structuredClone(fitWritten());
export const fitLoggedWhole = () => structuredClone(fitLogged());

/** A log with its boiling curve, for a fit in Python. */
function logForPython(name: string, run: Run): string {
  const of = (kind: string) =>
    run.entries.flatMap((entry) => (entry.kind === kind && entry.quantity ? [[entry.time, entry.quantity.si]] : []));
  const salt = inTank.sodiumHydroxide + inTank.sodiumNitrate;
  const boils = (lnRatio: number) => {
    const scale = Math.exp(lnRatio) / salt;
    return boilingPoint({ sodiumHydroxide: 8 * scale, sodiumNitrate: 3 * scale }, pressure);
  };
  const curve = table(-1, 0.7, 85, boils);
  return handOver(name, {
    readings: of("reading"),
    pours: of("addition"),
    salt,
    boils: { x: even(-1, 0.7, 85), y: curve.y },
    offset: [saltCurvePrior.offset.value, saltCurvePrior.offset.standardUncertainty],
    scale: saltCurvePrior.scale.standardUncertainty,
    pivot: saltCurvePrior.pivot,
    enthalpy: {
      water: even(4, 18, 70),
      T: even(400, 435, 14),
      H: even(4, 18, 70).map((water) => even(400, 435, 14).map((T) => bathEnthalpy(inTank, water, T))),
    },
    steam: table(400, 435, 14, (T) => steamEnthalpy(T, pressure)),
    brings: waterEnthalpy(air),
  });
}

export const writtenForPython = () => logForPython("written.json", written);
export const loggedForPython = () => logForPython("logged.json", logged);
