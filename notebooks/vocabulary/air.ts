import type { FastFunc } from "../../lib/lines/index.ts";
import { measuredValue } from "../../lib/measure/index.ts";
import { airGasConstant, barometerToPressure, standardGravity, standardPressure } from "../../lib/physics/index.ts";

const pressure = { mass: 1, length: -1, time: -2 };

/** The air's pressure at a place, for a maker's own lines. */
export const air: readonly FastFunc[] = [
  {
    name: "air pressure at altitude",
    takes: [{ name: "altitude", kind: "length" }],
    gives: "pressure",
    says: "The standard atmosphere's pressure, -1,600 to 36,000 ft, give or take the weather's 1.6 kPa (a judgement). A barometer at the place is better.",
    source: "ISO 2533:1975, ICAO Doc 7488",
    besides: [measuredValue(0, 800, pressure, "weather at the place")],
    numbers: (altitude, weather = 0) => standardPressure(altitude) + weather,
    // dp/dh = -g p / (R T), with T falling 6.5 K each km from 288.15 K.
    partials: (altitude = 0) => [
      (-standardGravity * standardPressure(altitude)) / (airGasConstant * (288.15 - 0.0065 * altitude)),
      1,
    ],
  },
  {
    name: "air pressure from barometer",
    takes: [
      { name: "reading corrected to sea level", kind: "pressure" },
      { name: "altitude", kind: "length" },
    ],
    gives: "pressure",
    says: "The pressure where the tank stands, from a weather report's figure or a wall barometer set to it, 26.6 to 32.5 inHg, up to 16,400 ft. A barometer that shows its own place's pressure needs none of this.",
    source: "Altimeter setting of the US National Weather Service, with ISO 2533:1975",
    numbers: barometerToPressure,
  },
];
