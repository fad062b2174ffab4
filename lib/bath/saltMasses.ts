import type { Brine } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";

/**
 * kg of all salts together.
 *
 * @example saltMass({ sodiumHydroxide: 4, sodiumNitrate: 2 }) // 6 kg
 */
export function saltMass(salts: Brine): number {
  return kinds.reduce((sum, kind) => sum + (salts[kind] ?? 0), 0);
}

/**
 * So many times each salt.
 *
 * @example scaledSalts({ sodiumHydroxide: 4 }, 0.5).sodiumHydroxide // 2 kg
 */
export function scaledSalts(salts: Brine, by: number): Brine {
  const there = kinds.filter((kind) => salts[kind] !== undefined);
  return Object.fromEntries(there.map((kind) => [kind, (salts[kind] ?? 0) * by]));
}

/**
 * Two lots of salt together.
 *
 * @example addedSalts({ sodiumHydroxide: 4 }, { sodiumHydroxide: 1, sodiumNitrate: 2 }).sodiumHydroxide // 5 kg
 */
export function addedSalts(salts: Brine, more: Brine): Brine {
  const there = kinds.filter((kind) => salts[kind] !== undefined || more[kind] !== undefined);
  return Object.fromEntries(there.map((kind) => [kind, (salts[kind] ?? 0) + (more[kind] ?? 0)]));
}
