import { chargeFor } from "../../lib/bath/plan/index.ts";
import type { Doubtful, SaltsKnown } from "../../lib/bath/types.ts";
import { type Brine, salts as kinds, type Salt } from "../../lib/physics/types.ts";

const kilograms = (one: Doubtful): number => (typeof one === "number" ? one : one.value);

/** Two parts of hydroxide to one of nitrate, where nobody said: common practice, no source. */
const usualMix: Brine = { sodiumHydroxide: 2, sodiumNitrate: 1 };
/** A bag without shares: 60 to 80 % hydroxide, the rest nitrate. */
const usualBag: Brine = { sodiumHydroxide: 0.7, sodiumNitrate: 0.3 };
/** K at which a depth is taken to stand, where no boil reading says. */
const usualBoil = 416.5;

/** kg of each salt in the middle of what is known: weighed, ready mixed, or by how deep the bath stands. */
export function saltsKilograms(
  known: SaltsKnown,
  depth: number | undefined,
  tank: { readonly length: number; readonly width: number },
  pressure: number,
): Brine {
  const kg: Partial<Record<Salt, number>> = {};
  for (const kind of kinds) {
    const one = known[kind];
    if (one !== undefined && kilograms(one) > 0) kg[kind] = kilograms(one);
  }
  const { readyMix } = known;
  if (readyMix) {
    const shares = sharesOf(readyMix.shares ?? {});
    for (const kind of kinds) {
      const share = shares[kind] ?? 0;
      if (share > 0) kg[kind] = (kg[kind] ?? 0) + share * kilograms(readyMix.mass);
    }
  }
  if (Object.values(kg).some((one) => (one ?? 0) > 0)) return kg;
  if (depth === undefined)
    throw new Error("missing salts: write their weights, or the liquid depth of the bath that stands in the tank");
  const liquid = tank.length * tank.width * depth;
  return chargeFor({ salts: usualMix, target: usualBoil, pressure, liquid }).salt;
}

/** The middle of each range of a bag's data sheet, together 1; what is not told is nitrate. */
function sharesOf(ranges: Readonly<Partial<Record<Salt, readonly [number, number]>>>): Brine {
  const middle = Object.fromEntries(
    Object.entries(ranges).map(([kind, [low, high]]) => [kind, (low + high) / 2]),
  ) as Partial<Record<Salt, number>>;
  const sum = Object.values(middle).reduce((all: number, one: number | undefined) => all + (one ?? 0), 0);
  if (!(sum > 0)) return usualBag;
  const onlyLye = Object.keys(middle).every((kind) => kind === "sodiumHydroxide");
  if (sum < 1 && onlyLye) return { ...middle, sodiumNitrate: 1 - sum };
  return Object.fromEntries(Object.entries(middle).map(([kind, share]) => [kind, (share ?? 0) / sum]));
}
