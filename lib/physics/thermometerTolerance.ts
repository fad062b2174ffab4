import { zeroCelsius } from "./constants.ts";
import { needNumber } from "./needNumber.ts";
import type { ThermometerKind, ThermometerTolerance } from "./types.ts";

interface Limit {
  /** The tolerance is the greater of `least` (K) and `share` of the Celsius reading, or their sum where `added`. */
  readonly least: number;
  readonly share: number;
  readonly added?: true;
  readonly hottest: number;
  readonly source: string;
}

const e230 = "ASTM E230, new wire";
const limits: ReadonlyMap<ThermometerKind, Limit> = new Map<ThermometerKind, Limit>([
  ["type K", { least: 2.2, share: 0.0075, hottest: 1260, source: `${e230}, standard limits` }],
  ["type K special", { least: 1.1, share: 0.004, hottest: 1260, source: `${e230}, special limits` }],
  ["type N", { least: 2.2, share: 0.0075, hottest: 1260, source: `${e230}, standard limits` }],
  ["type N special", { least: 1.1, share: 0.004, hottest: 1260, source: `${e230}, special limits` }],
  ["type J", { least: 2.2, share: 0.0075, hottest: 760, source: `${e230}, standard limits` }],
  ["type J special", { least: 1.1, share: 0.004, hottest: 760, source: `${e230}, special limits` }],
  ["type T", { least: 1, share: 0.0075, hottest: 370, source: `${e230}, standard limits` }],
  ["type T special", { least: 0.5, share: 0.004, hottest: 370, source: `${e230}, special limits` }],
  ["type E", { least: 1.7, share: 0.005, hottest: 870, source: `${e230}, standard limits` }],
  ["type E special", { least: 1, share: 0.004, hottest: 870, source: `${e230}, special limits` }],
  ["type K class 1", { least: 1.5, share: 0.004, hottest: 1000, source: "IEC 60584, class 1" }],
  ["type K class 2", { least: 2.5, share: 0.0075, hottest: 1200, source: "IEC 60584, class 2" }],
  [
    "platinum class A",
    { least: 0.15, share: 0.002, added: true, hottest: 300, source: "IEC 60751, class A (from memory)" },
  ],
  [
    "platinum class B",
    { least: 0.3, share: 0.005, added: true, hottest: 500, source: "IEC 60751, class B (from memory)" },
  ],
  [
    "bimetal dial",
    { least: 500 / 180, share: 0, hottest: 287, source: "1 % of a 50 to 550 °F span; ASME B40.200 states accuracy so" },
  ],
]);

/** Kinds of thermometer that `thermometerTolerance` knows. */
export const thermometerKinds: readonly ThermometerKind[] = [...limits.keys()];

/**
 * How far a thermometer in good order may be off by its standard.
 *
 * @param kind one of `thermometerKinds`
 * @param T temperature, K; from 273.15 to the standard's end for that kind
 * @returns `limit`, K, the most it may be off either way, and `standardUncertainty`, K, of a thermometer that may be
 * anywhere within it (limit/√3, JCGM 100:2008, 4.3.7)
 * @throws RangeError for a kind that is not known or a temperature outside the range
 * Source: ASTM E230 and IEC 60584 tolerances of new wire, the greater of a fixed limit and a share of the Celsius
 * reading; for a dial 1 % of its span.
 * @example
 * thermometerTolerance("type K", 417.59).limit; // 2.2 K: 4 °F either way at 292 °F
 */
export function thermometerTolerance(kind: ThermometerKind, T: number): ThermometerTolerance {
  const found = limits.get(kind);
  if (found === undefined) throw new RangeError(`unknown thermometer: ${String(kind)}; ${thermometerKinds.join(", ")}`);
  needNumber("temperature", T, zeroCelsius, zeroCelsius + found.hottest, "K", `for ${kind}`);
  const grown = found.share * (T - zeroCelsius);
  const limit = found.added ? found.least + grown : Math.max(found.least, grown);
  return { limit, standardUncertainty: limit / Math.sqrt(3), source: found.source };
}
