import { waterBalance } from "../lib/bath/index.ts";
import type { SaltsKnown, WaterBalance } from "../lib/bath/types.ts";
import type { FittedRun } from "../lib/fit/index.ts";
import type { Vocabulary } from "../lib/lines/index.ts";
import type { Run } from "../lib/log/types.ts";
import { measuredValue, standardUncertainty } from "../lib/measure/index.ts";
import type { Dimension, Value } from "../lib/measure/types.ts";
import {
  saturationTemperature,
  standardPressure,
  thermometerKinds,
  thermometerOffset,
  thermometerTolerance,
} from "../lib/physics/index.ts";
import { workedHere } from "./aside/asideFunction.ts";
import { fitOfRun } from "./aside/fitOfRun.ts";
import { balanceGivens, doubtful, number } from "./givensOf.ts";
import { partsOfThisLog } from "./ofThisLog.ts";
import { partsOfBalance } from "./partsOfBalance.ts";
import { whichToTrust } from "./twoWays.ts";
import { air } from "./vocabulary/air.ts";
import { amounts } from "./vocabulary/amounts.ts";
import { boiling } from "./vocabulary/boiling.ts";
import { fillings } from "./vocabulary/filling.ts";
import { firing } from "./vocabulary/firing.ts";
import { gas } from "./vocabulary/gas.ts";
import { heat } from "./vocabulary/heat.ts";
import { planning } from "./vocabulary/planning.ts";
import { scaling } from "./vocabulary/scaling.ts";
import { sizing } from "./vocabulary/sizing.ts";

const pressure: Dimension = { mass: 1, length: -1, time: -2 };
const difference: Dimension = { temperature: 1 };

/** Pa by which the weather moves the air pressure at one place: 1 sd, a judgement. */
const weather = 800;

function stationPressure(barometer: unknown, altitude: unknown): Value {
  const read = number("air pressure", barometer);
  if (read) return read;
  const height = number("altitude", altitude);
  if (!height) return measuredValue(101325, 3000, pressure, "air pressure");
  const p = standardPressure(height.value);
  const perMetre = (standardPressure(height.value + 1) - p) * standardUncertainty(height);
  return measuredValue(p, Math.hypot(weather, perMetre), pressure, "air pressure");
}

function thermometerError(kind: unknown, read: unknown, barometer: unknown, air: unknown): Value {
  const inWater = number("thermometer in boiling water", read);
  const here = number("air pressure", air);
  const then = number("barometer at that check", barometer) ?? here;
  // Far enough up for any bath: the limits grow slowly with temperature.
  const bathHeat = saturationTemperature(101325) + 45;
  if (inWater && then) {
    const check = thermometerOffset({
      read: inWater.value,
      pressure: then.value,
      at: bathHeat,
      pressureUncertainty: standardUncertainty(then),
    });
    return measuredValue(check.offset, check.standardUncertainty, difference, "thermometer");
  }
  const known = thermometerKinds.find((one) => one === kind);
  if (!known) throw new Error(`unknown thermometer: ${String(kind)}; one of ${thermometerKinds.join(", ")}`);
  return measuredValue(0, thermometerTolerance(known, bathHeat).standardUncertainty, difference, "thermometer");
}

/** The whole range of a label: anywhere within it is as likely, so its half-width is √3 standard uncertainties. */
const range = (given: unknown, what: string): readonly [number, number] | undefined => {
  const share = doubtful(given, what);
  if (!share) return undefined;
  const half = Math.sqrt(3) * share.standardUncertainty;
  return [Math.max(0, share.value - half), Math.min(1, share.value + half)];
};

function saltsOfBath(...given: readonly unknown[]): SaltsKnown {
  const [
    hydroxide,
    nitrate,
    nitrite,
    potassium,
    mix,
    hydroxideShare,
    nitrateShare,
    nitriteShare,
    depth,
    length,
    width,
  ] = given;
  const kinds = {
    sodiumHydroxide: doubtful(hydroxide, "sodium hydroxide"),
    sodiumNitrate: doubtful(nitrate, "sodium nitrate"),
    sodiumNitrite: doubtful(nitrite, "sodium nitrite"),
    potassiumNitrate: doubtful(potassium, "potassium nitrate"),
  };
  const weighed = Object.fromEntries(Object.entries(kinds).filter(([, kind]) => kind !== undefined));
  const mass = doubtful(mix, "ready-mixed salt");
  const shares = Object.fromEntries(
    Object.entries({
      sodiumHydroxide: range(hydroxideShare, "hydroxide in the mix"),
      sodiumNitrate: range(nitrateShare, "nitrate in the mix"),
      sodiumNitrite: range(nitriteShare, "nitrite in the mix"),
    }).filter(([, share]) => share !== undefined),
  );
  const stands = doubtful(depth, "liquid depth");
  const long = doubtful(length, "tank length");
  const wide = doubtful(width, "tank width");
  return {
    ...weighed,
    ...(mass ? { readyMix: { mass, ...(Object.keys(shares).length > 0 ? { shares } : {}) } } : {}),
    ...(stands && long && wide ? { seen: { depth: stands, length: long, width: wide } } : {}),
  };
}

function balanceOfRun(log: unknown, ...given: readonly unknown[]): ReadonlyMap<string, unknown> {
  return partsOfThisLog(partsOfBalance(waterBalance(log as Run, balanceGivens(given))), log as Run);
}

function whole<T>(thing: unknown, part: string): T {
  if (thing instanceof Map && thing.has(part)) return thing.get(part) as T;
  throw new Error(`missing ${part}; a fit or a balance of a run is needed`);
}

const optional = (...names: readonly string[]) => names.map((name) => ({ name, optional: true }));
const needed = (...names: readonly string[]) => names.map((name) => ({ name }));

/** What formulas can call: the library's functions under the trade's names. */
export const vocabulary: Vocabulary = {
  functions: [
    {
      name: "station pressure",
      takes: optional("barometer", "altitude"),
      says: "Air pressure at the tank: the barometer's reading, else the standard atmosphere at the altitude give or take the weather (0.8 kPa, 1 sd), else sea level with a wide doubt.",
      source: "ICAO standard atmosphere (ISO 2533:1975)",
      work: stationPressure,
    },
    {
      name: "thermometer error",
      takes: [...needed("kind"), ...optional("reading in boiling water", "barometer at that check", "air pressure")],
      says: "How much the thermometer reads high: from what it read in boiling plain water, else nothing with the width of its kind's tolerance.",
      source: "ASTM E230; IAPWS-IF97",
      work: thermometerError,
    },
    {
      name: "salts of bath",
      takes: optional(
        "sodium hydroxide",
        "sodium nitrate",
        "sodium nitrite",
        "potassium nitrate",
        "ready-mixed salt",
        "hydroxide share",
        "nitrate share",
        "nitrite share",
        "liquid depth",
        "tank length",
        "tank width",
      ),
      says: "What is known of the salts: weighed by kind, ready mixed, or only by depth and boil.",
      work: saltsOfBath,
    },
    {
      name: "balance of run",
      takes: [
        ...needed("log", "salts"),
        ...optional("water at the start", "air pressure", "target", "band", "thermometer error", "cup"),
      ],
      says: "Salt does not boil off, so each reading at the boil says how much water is in the tank; against time the water gone is nearly a straight line whose slope is the boil-off.",
      source: "Water balance over the boiling curve of the brine; uncertainty by JCGM 100:2008",
      work: balanceOfRun,
    },
    {
      name: "fit of run",
      takes: [
        ...needed("log", "salts"),
        ...optional(
          "water at the start",
          "air pressure",
          "target",
          "band",
          "thermometer error",
          "cup",
          "tank length",
          "tank width",
          "tank depth",
          "burner rate",
          "burner's skirt",
        ),
      ],
      says: "The bath behind the log: heat, water, boiling curve, thermometer, mixing and cup are moved until the bath would have given these readings, each held by what was believed of it before.",
      source: "Energy and water balance of a boiling brine, least squares with priors; uncertainty by JCGM 100:2008",
      work: workedHere(fitOfRun),
    },
    {
      name: "which way to trust",
      takes: needed("fitted bath", "water balance"),
      says: "Says which of the two ways of working to trust where their boil-offs differ by more than their half-widths together (root of the sum of squares); nothing where they agree.",
      work: (fitted, balance) =>
        whichToTrust(whole<FittedRun>(fitted, "whole fit"), whole<WaterBalance>(balance, "whole balance")),
    },
    ...boiling,
    ...air,
    ...amounts,
    ...heat,
    ...gas,
    ...planning,
    ...sizing,
    ...fillings,
    ...scaling,
    ...firing,
  ],
};
