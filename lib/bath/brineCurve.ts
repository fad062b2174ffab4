import { boilingPoint } from "../physics/index.ts";
import type { Brine } from "../physics/types.ts";
import { salts } from "../physics/types.ts";
import { at } from "./at.ts";
import { remembered } from "./remembered.ts";

/** The boiling line of one mix of salts under one pressure, against ln of kg of salt per kg of water. */
export interface BrineCurve {
  /** K at ln ratio; carried on as a straight line beyond the strong end of the published curve. */
  boils(lnRatio: number): number;
  /** K per unit of ln ratio: what the boiling point gains as the water shrinks e-fold. Above 0. */
  slope(lnRatio: number): number;
  /** ln ratio of the brine that boils at T, K. */
  lnRatio(T: number): number;
  /** ln ratio and K where the published curve ends. */
  readonly end: { readonly lnRatio: number; readonly T: number };
  readonly water: number;
}

/** Three curves a bath, for some baths. */
const curves = remembered<BrineCurve>(24);
const step = 0.1;
const lowest = -4;
const highest = 1.6;

/**
 * Tabulates the boiling line of a mix, since a fit asks for it thousands of times, and remembers it for the next fit.
 *
 * @param proportions of the salts, any scale
 * @param p Pa, a pressure that `boilingPoint` takes
 * @throws RangeError as `boilingPoint` does
 * @example brineCurve({ sodiumHydroxide: 2, sodiumNitrate: 1 }, 101_325).boils(Math.log(1.335)) // about 417.6 K
 */
export function brineCurve(proportions: Brine, p: number): BrineCurve {
  const key = [p, ...salts.map((salt) => proportions[salt] ?? 0)].join();
  return curves(key, () => tabulated(proportions, p));
}

function tabulated(proportions: Brine, p: number): BrineCurve {
  const total = salts.reduce((sum, salt) => sum + (proportions[salt] ?? 0), 0);
  if (!(total > 0)) throw new RangeError(`invalid salts: ${total} kg; more than 0 kg of salt is needed`);
  const water = boilingPoint({}, p);
  const x: number[] = [];
  const y: number[] = [];
  for (let i = 0; ; i++) {
    const lnRatio = lowest + i * step;
    if (lnRatio > highest) break;
    const scale = Math.exp(lnRatio) / total;
    const brine = Object.fromEntries(salts.map((salt) => [salt, (proportions[salt] ?? 0) * scale])) as Brine;
    try {
      y.push(boilingPoint(brine, p));
      x.push(lnRatio);
    } catch (error) {
      // The curve's own limit ends the table; a bad pressure would already have failed on plain water.
      if (error instanceof RangeError && x.length > 20) break;
      throw error;
    }
  }
  const last = x.length - 1;
  const slopes = y.map(
    (_, i) =>
      (at(y, Math.min(last, i + 1)) - at(y, Math.max(0, i - 1))) /
      ((Math.min(last, i + 1) - Math.max(0, i - 1)) * step),
  );
  const place = (lnRatio: number) => Math.min(last - 1, Math.max(0, Math.floor((lnRatio - lowest) / step)));
  const boils = (lnRatio: number): number => {
    // So thin a brine boils above water in proportion to its salt: the line never falls below water's boiling point.
    if (lnRatio <= lowest) return water + (at(y, 0) - water) * Math.exp(lnRatio - lowest);
    if (lnRatio >= at(x, last)) return at(y, last) + at(slopes, last) * (lnRatio - at(x, last));
    const i = place(lnRatio);
    const u = (lnRatio - at(x, i)) / step;
    const v = 1 - u;
    return (
      v * v * (1 + 2 * u) * at(y, i) +
      u * u * (1 + 2 * v) * at(y, i + 1) +
      step * u * v * (v * at(slopes, i) - u * at(slopes, i + 1))
    );
  };
  const slope = (lnRatio: number): number => {
    const h = 1e-4;
    return Math.max(1e-3, (boils(lnRatio + h) - boils(lnRatio - h)) / (2 * h));
  };
  const lnRatio = (T: number): number => {
    let low = -12;
    let high = 4;
    if (T <= boils(low)) return low;
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (boils(middle) < T) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return { boils, slope, lnRatio, end: { lnRatio: at(x, last), T: at(y, last) }, water };
}
