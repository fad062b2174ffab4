import { doubts, type Factors, spread } from "./factors.ts";
import type { ScaleSetup } from "./types.ts";

const kindOf = ({ burners }: ScaleSetup): "bare" | "skirted" => (burners.skirted ? "skirted" : "bare");

/** m along the tank over which one flame of a setup gives off its heat. */
export function reachOf(setup: ScaleSetup, { reach }: Factors): number {
  return spread(doubts.reach[kindOf(setup)], doubts.reach.u, reach);
}

/** Whether nothing was built: the same tank over the same burners, on another pressure at the most. */
export function isSameBuild(from: ScaleSetup, to: ScaleSetup): boolean {
  const sizes = ({ tank, burners }: ScaleSetup) => [
    tank.length,
    tank.width,
    tank.depth,
    burners.count,
    burners.jetDiameter,
    kindOf({ tank, burners }),
  ];
  const old = sizes(from);
  return sizes(to).every((size, i) => size === old[i]);
}

/** How much of the tank's length one flame finds for its heat, m: its reach at most. */
const found = (reach: number, length: number) => reach * (1 - Math.exp(-length / reach));

const crowd = ({ tank, burners }: ScaleSetup) =>
  (1 - 1 / burners.count) * Math.exp(-tank.length / burners.count / doubts.crowding.within);

/**
 * Transfer units of the new flames: the more floor each finds the more, the more gas it burns the fewer.
 *
 * @param from the old setup
 * @param to the new one
 * @param gas of one burner, new over old
 * @param factors of a draw
 * @returns old and new
 */
function unitsOf(from: ScaleSetup, to: ScaleSetup, gas: number, factors: Factors): readonly [number, number] {
  const { saturation, widthPower, gasPower } = doubts;
  const old = spread(saturation.value, saturation.u, factors.saturation);
  const each = (setup: ScaleSetup) => found(reachOf(setup, factors), setup.tank.length / setup.burners.count);
  const width = (to.tank.width / from.tank.width) ** (widthPower.value + widthPower.u * factors.widthPower);
  const power = gasPower.value + gasPower.u * factors.gasPower;
  return [old, old * width * (each(to) / each(from)) * gas ** -power];
}

/**
 * The share of the gas's heat that enters the new tank, over that of the old one, on a day without a wind of its own:
 * it saturates with the floor that each flame finds, flames that stand close take from each other, and a new build is
 * its own.
 *
 * @param from the old setup
 * @param to the new one
 * @param gas of one burner, new over old
 * @param factors of a draw
 * @example shareRatio(setup, setup, 1, factorDraws(1)(0)) // 1
 */
export function shareRatio(from: ScaleSetup, to: ScaleSetup, gas: number, factors: Factors): number {
  const { crowding, build, share } = doubts;
  const [old, now] = unitsOf(from, to, gas, factors);
  const kind = kindOf(to);
  const skirt =
    kind === kindOf(from) ? 0 : Math.log(share[kind].value / share[kindOf(from)].value) + 0.2 * factors.skirt;
  const kappa = crowding.value + crowding.u * factors.crowding;
  const made = isSameBuild(from, to) ? 0 : build[kind].value + build[kind].u * factors.build;
  const log = skirt - kappa * (crowd(to) - crowd(from)) + made;
  return ((1 - Math.exp(-now)) / (1 - Math.exp(-old))) * Math.exp(log);
}

/** The old tank's share, over that at its usual fire, when one burner takes so many times the gas. */
export function shareAtFire(gas: number, factors: Factors): number {
  const units = spread(doubts.saturation.value, doubts.saturation.u, factors.saturation);
  const power = doubts.gasPower.value + doubts.gasPower.u * factors.gasPower;
  return (1 - Math.exp(-units * gas ** -power)) / (1 - Math.exp(-units));
}

/** ln: the wind of one day as a flame of this kind feels it. */
export function windOf(setup: ScaleSetup, z: number): number {
  return doubts.wind[kindOf(setup)] * z;
}

/** No flame gives a bath more than the net heat of its gas, the last of it in the flue. */
export const mostShare = 0.9;
