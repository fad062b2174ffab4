import { barometerToPressure } from "./barometerToPressure.ts";
import { plain } from "./needNumber.ts";
import { saturationTemperature } from "./saturationTemperature.ts";
import { standardPressure } from "./standardPressure.ts";
import type { ThermometerCheck, ThermometerOffset } from "./types.ts";

/** Standard uncertainties where the caller states none: judgements, not published. */
const reading = 0.3;
const stationBarometer = 100;
const weatherBarometer = 200;
const altitudeAlone = 1000;
/** Share of the way from the check to the bath by which a thermometer's scale may be off, as a standard uncertainty. */
const scaleError = 0.0075 / Math.sqrt(3);
/** Furthest from the boiling point that is still taken for boiling plain water, K. */
const furthest = 20;

/**
 * What a thermometer read in boiling plain water says about it. The check holds where it was made: the further the
 * bath is above it, the less it says, which `at` adds (0.75 % of the way, the scale error that ASTM E230 allows type K).
 *
 * @param check `read`, K, and the air pressure as one of: `pressure`, Pa, at the place; `barometer`, Pa, corrected to
 * sea level, with `altitude`, m; `altitude` alone. Optional: `at`, K, where the thermometer will be used;
 * `readUncertainty`, K (0.3 where absent), and `pressureUncertainty`, Pa (100 for a pressure at the place, 200 for a
 * barometer corrected to sea level, 1000 for the altitude alone), standard uncertainties
 * @returns `offset`, K, to take off its readings; `standardUncertainty`, K; `boilingPoint`, K, what it should have read
 * @throws RangeError where no pressure is given or the reading is more than 20 K from the boiling point
 * Source: IAPWS R7-97(2012), region 4, for the boiling point; the default uncertainties are judgements.
 * @example
 * thermometerOffset({ read: 374.15, pressure: 101325 }).offset; // 1.03 K: reads 1.8 °F high
 */
export function thermometerOffset(check: ThermometerCheck): ThermometerOffset {
  const p = placePressure(check);
  const boils = saturationTemperature(p);
  const offset = check.read - boils;
  if (!(Math.abs(offset) <= furthest)) {
    throw new RangeError(
      `invalid reading in boiling water: ${plain(check.read)} K; within ${furthest} K of ${plain(boils)} K, where water boils at ${plain(p)} Pa`,
    );
  }
  const assumed =
    check.pressure !== undefined ? stationBarometer : check.barometer !== undefined ? weatherBarometer : altitudeAlone;
  const fromPressure = boilingSlope(p) * needUncertainty("pressure uncertainty", check.pressureUncertainty ?? assumed);
  const fromReading = needUncertainty("reading uncertainty", check.readUncertainty ?? reading);
  const fromScale = check.at === undefined ? 0 : scaleError * (check.at - boils);
  if (!Number.isFinite(fromScale))
    throw new RangeError(`invalid temperature: ${plain(check.at ?? Number.NaN)} K; a finite number`);
  return { offset, standardUncertainty: Math.hypot(fromReading, fromPressure, fromScale), boilingPoint: boils };
}

function placePressure(check: ThermometerCheck): number {
  if (check.pressure !== undefined) return check.pressure;
  if (check.barometer !== undefined) {
    if (check.altitude === undefined)
      throw new RangeError("missing altitude: a barometer corrected to sea level needs it");
    return barometerToPressure(check.barometer, check.altitude);
  }
  if (check.altitude !== undefined) return standardPressure(check.altitude);
  throw new RangeError("missing pressure: none; pressure, barometer with altitude, or altitude");
}

/** K per Pa. */
function boilingSlope(p: number): number {
  return (saturationTemperature(p * 1.001) - saturationTemperature(p * 0.999)) / (0.002 * p);
}

function needUncertainty(what: string, value: number): number {
  if (value >= 0 && Number.isFinite(value)) return value;
  throw new RangeError(`invalid ${what}: ${plain(value)}; 0 or more`);
}
