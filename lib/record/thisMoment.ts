import { newId } from "./newId.ts";
import type { Moment } from "./types.ts";

/**
 * The present moment by the machine's clock, with random ids.
 *
 * @returns now in ISO 8601, UTC, and a source of ids.
 * @example
 * thisMoment().now.endsWith("Z"); // true
 */
export function thisMoment(): Moment {
  return { now: new Date().toISOString(), newId: () => newId() };
}
