import type { BalanceGivens, Doubtful, SaltsKnown } from "../lib/bath/types.ts";
import type { FitGivens } from "../lib/fit/index.ts";
import type { Run } from "../lib/log/types.ts";
import { standardUncertainty } from "../lib/measure/index.ts";
import type { Value } from "../lib/measure/types.ts";

/** A given as a number; undefined where it is not known. */
export function number(what: string, given: unknown): Value | undefined {
  if (given === undefined) return undefined;
  if (typeof given === "object" && given !== null && "components" in given) return given as Value;
  throw new Error(`${what} is not a number`);
}

/** A given's SI value with its standard uncertainty; undefined where it is not known. */
export function doubtful(
  given: unknown,
  what: string,
): { readonly value: number; readonly standardUncertainty: number } | undefined {
  const value = number(what, given);
  return value && { value: value.value, standardUncertainty: standardUncertainty(value) };
}

const cups: ReadonlyMap<unknown, { readonly allNight: number; readonly eachPour: number }> = new Map([
  ["measuring cup", { allNight: 0.03, eachPour: 0.05 }],
  ["marked jug", { allNight: 0.015, eachPour: 0.025 }],
  ["scale", { allNight: 0.003, eachPour: 0.005 }],
]);

/** What a balance of the water goes by, out of the arguments of its formula. */
export function balanceGivens(given: readonly unknown[]): BalanceGivens {
  const [salts, water, air, target, band, thermometer, cup] = given;
  const atStart = doubtful(water, "water at the start");
  const aim = number("target", target);
  const half = number("band", band);
  const error = doubtful(thermometer, "thermometer reads high by");
  const measure = cups.get(cup);
  return {
    salts: salts as SaltsKnown,
    ...(atStart ? { water: atStart } : {}),
    pressure: doubtful(air, "air pressure") ?? 101325,
    ...(aim ? { target: aim.value } : {}),
    ...(half ? { band: half.value } : {}),
    ...(error ? { thermometer: { offset: error.value, standardUncertainty: error.standardUncertainty } } : {}),
    ...(measure ? { cup: measure } : {}),
  };
}

/** A fit as plain data, so that it can be done off the page's thread. */
export interface FitWork {
  readonly run: Run;
  readonly givens: FitGivens;
  /** Whether the maker gave a target and a band: without them nothing is said of what brings the bath back. */
  readonly aims: boolean;
}

/** K: stands in where no target is given; what hangs on it is left out then. */
const someTarget = { target: 417.6, band: 1.1 };

/** What a fit of a run goes by, out of the arguments of its formula. */
export function fitWork(given: readonly unknown[]): FitWork {
  const [log, salts, water, air, target, band, thermometer, cup, length, width, depth, burner, skirt] = given;
  const known = balanceGivens([salts, water, air, target, band, thermometer, cup]);
  const long = doubtful(length, "tank length");
  const wide = doubtful(width, "tank width");
  const deep: Doubtful | undefined = doubtful(depth, "tank depth");
  const power = doubtful(burner, "burner rate");
  return {
    run: log as Run,
    givens: {
      ...someTarget,
      ...known,
      ...(long && wide ? { tank: { length: long, width: wide, ...(deep ? { depth: deep } : {}) } } : {}),
      ...(power ? { burner: { power, skirted: skirt === "skirted" } } : {}),
    },
    aims: known.target !== undefined && known.band !== undefined,
  };
}
