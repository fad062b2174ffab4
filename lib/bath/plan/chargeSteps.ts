import { needNumber } from "../../physics/needNumber.ts";
import { type Brine, salts as kinds, type Salt } from "../../physics/types.ts";
import { BathHeat } from "../bathEnthalpy.ts";
import { drySaltEnthalpy } from "../drySalt.ts";
import { addedSalts, saltMass, scaledSalts } from "../saltMasses.ts";
import type { ChargeStep } from "./types.ts";

/** K by which one lot may warm the bath. A judgement: a cold tank stays below hand heat if it cools after each lot. */
const mostWarming = 10;
/** Lots of a salt that cools the water: so that it does not cake on the bottom. A judgement. */
const coolLots = 4;
const room = 298.15;

const names: Readonly<Record<Salt, string>> = {
  sodiumHydroxide: "Sodium hydroxide (lye)",
  sodiumNitrate: "Sodium nitrate",
  sodiumNitrite: "Sodium nitrite",
  potassiumNitrate: "Potassium nitrate",
};

/**
 * The order and the lots in which a bath is made up cold: water first; hydroxide into it in lots small enough that each
 * warms the bath by 10 K at the most; then the salts that cool it. Ready-mixed salt goes in as it comes, in lots as
 * small as its hydroxide asks for.
 *
 * @param before kg of water and salts that are in the tank already
 * @param water kg to put in first; 0 for none
 * @param salts kg of each to put in
 * @param readyMixed whether the salts come mixed
 * @throws RangeError for water not above 0 in all
 * Source: water first, small lots, cold: common practice and every data sheet of sodium hydroxide; heats of solution
 * as `drySaltEnthalpy` (from memory); 10 K and four lots: judgements.
 * @example
 * const steps = chargeSteps({ water: 0, salts: {} }, 6, { sodiumHydroxide: 4, sodiumNitrate: 2 }, false);
 * steps.map(({ put }) => put); // ["water", "sodiumHydroxide", "sodiumNitrate"]
 * steps[1].lots; // 18
 */
export function chargeSteps(
  before: { readonly water: number; readonly salts: Brine },
  water: number,
  salts: Brine,
  readyMixed: boolean,
): readonly ChargeStep[] {
  const inTank = before.water + water;
  needNumber("water", inTank, 1e-6, 100_000, "kg");
  const steps: ChargeStep[] = [];
  if (water > 0) {
    const says =
      before.water > 0
        ? "Cold water into the cold bath, fire off, before the salt."
        : "Cold water into the cold, clean tank first, fire off. Never water onto dry lye: it can boil up and throw caustic.";
    steps.push({ put: "water", mass: water, lots: 1, lot: water, warms: 0, says });
  }
  if (readyMixed) {
    if (saltMass(salts) > 0) steps.push(stepOf(before.salts, inTank, salts, "ready-mixed salt"));
    return steps;
  }
  let there = before.salts;
  for (const kind of kinds) {
    const mass = salts[kind] ?? 0;
    if (mass === 0) continue;
    steps.push(stepOf(there, inTank, { [kind]: mass }, kind));
    there = addedSalts(there, { [kind]: mass });
  }
  return steps;
}

function stepOf(there: Brine, water: number, salts: Brine, put: Exclude<ChargeStep["put"], "water">): ChargeStep {
  const mass = saltMass(salts);
  // The first lot warms most: later ones meet a stronger, heavier bath.
  const small = scaledSalts(salts, 1e-3);
  const heat = new BathHeat(there);
  const held = heat.at(water, room);
  const capacity = heat.byT;
  const gives = drySaltEnthalpy(small, room) - (new BathHeat(addedSalts(there, small)).at(water, room) - held);
  const whole = (1000 * gives) / capacity;
  const lots = Math.max(whole > 0 ? Math.ceil(whole / mostWarming) : 0, coolLots);
  const says =
    whole > 0
      ? `A lot at a time into the cold tank, stirring until it is dissolved; let the tank come back below hand heat before the next. Nobody leaves it, and nothing but salt and cold water goes in.`
      : `A lot at a time, stirring: it cools the bath and settles, and what does not dissolve cold dissolves as the bath warms.`;
  const what = put === "ready-mixed salt" ? "Ready-mixed salt" : names[put];
  return { put, mass, lots, lot: mass / lots, warms: whole / lots, says: `${what}: ${says}` };
}
