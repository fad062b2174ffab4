import { salts as kinds } from "../physics/types.ts";
import type { BalanceGivens } from "./types.ts";

const known: ReadonlySet<string> = new Set([...kinds, "readyMix", "seen"]);

function need(what: string, given: number | undefined, least: number, allowed: string): void {
  if (given === undefined || (Number.isFinite(given) && given >= least)) return;
  throw new RangeError(`invalid ${what}: ${given}; ${allowed}`);
}

/**
 * Refuses what no part of the balance could work with: numbers that are none, doubts below 0, salts of another name.
 *
 * @param givens as `waterBalance` takes them
 * @throws RangeError with the name of what is wrong and what is allowed
 * @example needGivens({ salts: { sodiumHydroxide: 8 }, pressure: 101_325, target: 416, band: 1.7 })
 */
export function needGivens({ salts, target, band, thermometer, cup }: BalanceGivens): void {
  for (const name of Object.keys(salts)) {
    if (!known.has(name)) throw new RangeError(`unknown salt: ${name}; ${[...known].join(", ")}`);
  }
  need("target", target, 0, "a temperature in K");
  need("band", band, 0, "0 K or more");
  need("thermometer offset", thermometer?.offset, -Infinity, "a number of K");
  need("doubt of the cup all night", cup?.allNight, 0, "a share, 0 or more");
  need("doubt of each pour", cup?.eachPour, 0, "a share, 0 or more");
}
