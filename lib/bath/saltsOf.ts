import { boilingPoint, brineDensity } from "../physics/index.ts";
import type { Brine, Salt } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";
import { type BrineCurve, brineCurve } from "./brineCurve.ts";
import { doubtful } from "./doubtful.ts";
import type { SaltsKnown } from "./types.ts";

/** One independent doubt about the salts: what a step of one standard uncertainty does to the mix. */
export interface SaltDoubt {
  readonly source: string;
  /** The masses, kg, one standard uncertainty away. */
  readonly masses: Readonly<Record<Salt, number>>;
}

export interface SaltsInTank {
  /** kg of each kind. */
  readonly masses: Readonly<Record<Salt, number>>;
  /** kg together. */
  readonly total: number;
  readonly curve: BrineCurve;
  readonly doubts: readonly SaltDoubt[];
  /** kg of water that the depth in the tank tells, where that is how the salts are known; at the reading it belongs to. */
  readonly water?: { readonly value: number; readonly u: number };
  readonly remarks: readonly string[];
}

const usualMix: Brine = { sodiumHydroxide: 2, sodiumNitrate: 1 };
const usualShares: Readonly<Partial<Record<Salt, readonly [number, number]>>> = { sodiumHydroxide: [0.6, 0.8] };

function none(): Record<Salt, number> {
  return { sodiumHydroxide: 0, sodiumNitrate: 0, sodiumNitrite: 0, potassiumNitrate: 0 };
}

/** Shares of a ready mix, each in the middle of its range, with the half-widths; what is missing is taken as nitrate. */
function sharesOf(ranges: Readonly<Partial<Record<Salt, readonly [number, number]>>>) {
  const middle = none();
  const half = none();
  for (const salt of kinds) {
    const range = ranges[salt];
    if (range === undefined) continue;
    const [low, high] = range;
    if (!(low >= 0 && high >= low && high <= 1)) {
      throw new RangeError(`invalid share of ${salt}: ${low} to ${high}; two shares from 0 to 1, the lower first`);
    }
    middle[salt] = (low + high) / 2;
    half[salt] = (high - low) / 2;
  }
  const sum = kinds.reduce((s, salt) => s + middle[salt], 0);
  if (!(sum > 0)) throw new RangeError("missing shares: the ready mix has no share above 0");
  if (sum > 1) for (const salt of kinds) middle[salt] /= sum;
  else if (
    ranges.sodiumNitrate === undefined &&
    ranges.sodiumNitrite === undefined &&
    ranges.potassiumNitrate === undefined
  ) {
    middle.sodiumNitrate = 1 - sum;
  }
  return { middle, half };
}

function total(masses: Readonly<Record<Salt, number>>): number {
  return kinds.reduce((sum, salt) => sum + masses[salt], 0);
}

/**
 * What the maker knows of the salts, as kilograms of each kind with independent doubts. Weighed kinds count 2 % where
 * no doubt is given; a ready mix 2 % of its weight and the even spread of its share ranges (60 to 80 % hydroxide, the
 * rest nitrate, where no range is known); salts that are not known come from how the bath boils and how deep it stands.
 *
 * @param known the salts
 * @param pressure Pa
 * @param boil K, a reading at the boil, for salts that are not known
 * @throws RangeError where a number is out of range or nothing is known
 * @example saltsOf({ sodiumHydroxide: 8, sodiumNitrate: 3 }, 101_325, undefined).total // 11
 */
export function saltsOf(known: SaltsKnown, pressure: number, boil: number | undefined): SaltsInTank {
  const masses = none();
  const steps: { source: string; step: Record<Salt, number> }[] = [];
  const remarks: string[] = [];
  for (const salt of kinds) {
    const given = known[salt];
    if (given === undefined) continue;
    const { value, u } = doubtful(salt, given, 0.02);
    if (value < 0) throw new RangeError(`invalid ${salt}: ${value} kg; 0 kg or more`);
    if (value === 0) continue;
    masses[salt] += value;
    steps.push({ source: "salt weights", step: { ...none(), [salt]: u } });
  }
  if (known.readyMix) {
    const { value, u } = doubtful("ready mix", known.readyMix.mass, 0.02);
    if (!(value > 0)) throw new RangeError(`invalid ready mix: ${value} kg; more than 0 kg`);
    const { middle, half } = sharesOf(known.readyMix.shares ?? usualShares);
    for (const salt of kinds) masses[salt] += value * middle[salt];
    const weight = none();
    for (const salt of kinds) weight[salt] = u * middle[salt];
    steps.push({ source: "salt weights", step: weight });
    const widest = kinds.reduce((best, salt) => (half[salt] > half[best] ? salt : best), "sodiumHydroxide" as Salt);
    if (half[widest] > 0) {
      // What one salt has more, the others have less: the bag's weight stays.
      const shift = none();
      const others = 1 - middle[widest];
      for (const salt of kinds) {
        const share = (half[widest] / Math.sqrt(3)) * value;
        shift[salt] = salt === widest ? share : others > 0 ? (-share * middle[salt]) / others : 0;
      }
      steps.push({ source: "salt shares", step: shift });
    }
    remarks.push(
      known.readyMix.shares
        ? "The salt is a ready mix: the ranges of its safety data sheet make the answer wider than weighed salts would."
        : "The salt is a ready mix without shares: 60 to 80 % hydroxide, the rest nitrate, is taken; its safety data sheet would make the answer narrower.",
    );
  }
  if (total(masses) > 0) {
    const curve = brineCurve(masses, pressure);
    return { masses, total: total(masses), curve, doubts: doubtsOf(masses, steps), remarks };
  }
  if (!known.seen) {
    throw new RangeError(
      "missing salts: no weight is given; weigh the salts, or give the boiling point, the depth and the tank's length and width",
    );
  }
  return fromDepth(known.seen, pressure, boil);
}

function doubtsOf(
  masses: Record<Salt, number>,
  steps: readonly { source: string; step: Record<Salt, number> }[],
): SaltDoubt[] {
  return steps
    .filter(({ step }) => kinds.some((salt) => step[salt] !== 0))
    .map(({ source, step }) => {
      const moved = none();
      for (const salt of kinds) moved[salt] = Math.max(0, masses[salt] + step[salt]);
      return { source, masses: moved };
    });
}

function fromDepth(seen: NonNullable<SaltsKnown["seen"]>, pressure: number, boil: number | undefined): SaltsInTank {
  const T = seen.boil === undefined ? boil : doubtful("boiling point", seen.boil, 0).value;
  if (T === undefined)
    throw new RangeError("missing boiling point: salts that are not known need one reading at the boil");
  const plainWater = boilingPoint({}, pressure);
  if (seen.boil !== undefined && !(T > plainWater)) {
    throw new RangeError(
      `invalid boiling point: ${T} K; above ${plainWater.toFixed(1)} K, where plain water boils here`,
    );
  }
  let volume = 1;
  let relative = 0.03 ** 2;
  for (const [what, given] of [
    ["depth", seen.depth],
    ["tank length", seen.length],
    ["tank width", seen.width],
  ] as const) {
    const { value, u } = doubtful(what, given, what === "depth" ? 0.04 : 0.01);
    if (!(value > 0)) throw new RangeError(`invalid ${what}: ${value} m; more than 0 m`);
    volume *= value;
    relative += (u / value) ** 2;
  }
  const waterOf = (mix: Brine) => {
    const curve = brineCurve(mix, pressure);
    const ratio = Math.exp(curve.lnRatio(T));
    const scale = ratio / kinds.reduce((sum, salt) => sum + (mix[salt] ?? 0), 0);
    const brine = Object.fromEntries(kinds.map((salt) => [salt, (mix[salt] ?? 0) * scale])) as Brine;
    return { curve, ratio, water: (volume * brineDensity(brine, T)) / (1 + ratio) };
  };
  const likely = waterOf(usualMix);
  const strong = waterOf({ sodiumHydroxide: 5, sodiumNitrate: 1 });
  const mixture = Math.log(strong.water / likely.water);
  const u = Math.sqrt(relative + mixture ** 2) * likely.water;
  const salt = likely.water * likely.ratio;
  const masses = { ...none(), sodiumHydroxide: (salt * 2) / 3, sodiumNitrate: salt / 3 };
  return {
    masses,
    total: salt,
    curve: likely.curve,
    // Tank size is in the water already; how the mix itself is unknown moves the ratio at one boiling point.
    doubts: doubtsOf(masses, [
      {
        source: "salt weights",
        step: { ...none(), sodiumHydroxide: masses.sodiumHydroxide * 0.3, sodiumNitrate: masses.sodiumNitrate * 0.3 },
      },
    ]),
    water: { value: likely.water, u },
    remarks: [
      "The salts are not known: two parts hydroxide to one of nitrate is taken, and the tank's size and the depth give the kilograms. Weighed salts would make the answer narrower.",
    ],
  };
}
