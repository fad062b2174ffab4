import { doubts, type Factors, spread } from "./factors.ts";
import { isSameBuild, mostShare, reachOf, shareRatio, windOf } from "./flameShare.ts";
import { gasOf, heatOfGas } from "./gasOf.ts";
import { coldWall, netHeat } from "./netHeat.ts";
import type { Scene } from "./scene.ts";
import type { Heating } from "./warmingPath.ts";

/** One possible world: both tanks in it. SI. */
export interface Draw {
  readonly factors: Factors;
  /** kg/s of gas, and the share of its heat that enters, of old and new tank; the new one's with the day's wind. */
  readonly oldGas: number;
  readonly oldShare: number;
  readonly gas: number;
  readonly share: number;
  /** The new tank's share on a day without a wind of its own. */
  readonly calmShare: number;
  /** W into the new bath, losses taken off, and W lost, at the target. */
  readonly net: number;
  readonly lost: number;
  readonly boilOff: number;
  /** How it warms the new bath; J/K of bath and steel together, and of the steel alone. */
  readonly heating: Heating;
  readonly capacity: number;
  readonly steel: number;
  readonly driftUnfed: number;
  /** How likely this world was by what is known of flames: a weight. */
  readonly weight: number;
}

/** Old tank: what its fit or else the handbook says of the share that enters. */
function oldTank(scene: Scene, factors: Factors, oldGas: number) {
  const { from, known } = scene;
  const prior = doubts.share[from.burners.skirted ? "skirted" : "bare"];
  if (!known) {
    const share = prior.value + prior.u * factors.fit;
    return { share: Math.min(mostShare, Math.max(0.05, share)), weight: 1 };
  }
  const heat = spread(known.heat, known.u, factors.fit);
  const area = coldWall(from, reachOf(from, factors));
  const lost =
    area * scene.oldWall * spread(1, doubts.wall, factors.wall) +
    from.tank.length * from.tank.width * scene.oldTop * spread(1, doubts.top, factors.top);
  const share = (heat + lost) / (oldGas * heatOfGas);
  const away = (share - prior.value) / prior.u;
  // Beyond what a flame can give the world is refused, but softly: a fit may be wrong, and then something must be left.
  const beyond = Math.max(0, share - mostShare) / 0.05;
  return { share, weight: Math.exp(-0.5 * Math.min(60, away ** 2 + beyond ** 2)) };
}

/**
 * Works one draw: from the old tank's net heat and losses to its flame's share, from that to the new tank's, and back to
 * net heat and what it does.
 *
 * @param scene of the scaling
 * @param factors of the draw
 * @example oneDraw(scene, factorDraws(1)(0)).boilOff // kg/s
 */
export function oneDraw(scene: Scene, factors: Factors): Draw {
  const { from, to, pressure, path } = scene;
  const { discharge, gauge, droop } = factors;
  const oldGas = gasOf(from.burners, pressure, { discharge, gauge, droop, jets: factors.oldJets });
  const gas = gasOf(to.burners, pressure, {
    discharge,
    gauge,
    droop,
    jets: isSameBuild(from, to) ? factors.oldJets : factors.newJets,
  });
  const old = oldTank(scene, factors, oldGas);
  const each = gas / to.burners.count / (oldGas / from.burners.count);
  const calmShare = Math.min(mostShare, old.share * shareRatio(from, to, each, factors));
  const share = Math.min(mostShare, calmShare * Math.exp(windOf(to, factors.wind)));
  const fire = share * gas * heatOfGas;
  const wall = { area: coldWall(to, reachOf(to, factors)) * spread(1, doubts.wall, factors.wall) };
  const top = { area: to.tank.length * to.tank.width * spread(1, doubts.top, factors.top) };
  const last = path.T.length - 1;
  const net = netHeat(fire, { ...wall, flux: path.wall[last] as number }, { ...top, flux: path.top[last] as number });
  const { fill, mass } = doubts;
  const deep = scene.depthKnown ? 1 : Math.min(1, Math.max(0.5, fill.value + fill.u * factors.fill));
  const bath = scene.bath * deep * spread(1, mass, factors.mass);
  const steel = scene.steel * spread(1, doubts.steel, factors.steel);
  const { scale = 1, scaleU = 0.07, together = 0 } = scene.known ?? {};
  const curve = scale + scaleU * (together * factors.fit + Math.sqrt(1 - together ** 2) * factors.curveScale);
  return {
    factors,
    oldGas,
    oldShare: old.share,
    gas,
    share,
    calmShare,
    net,
    lost: fire - net,
    boilOff: Math.max(0, net) / scene.fed,
    heating: {
      fire,
      coldShare: doubts.coldShare.value + doubts.coldShare.u * factors.coldShare,
      wall: wall.area,
      top: top.area,
      evaporation: to.tank.length * to.tank.width * spread(1, doubts.evaporation, factors.evaporation),
    },
    capacity: bath + steel,
    steel,
    driftUnfed: (Math.max(0, net) * scene.drift * Math.max(0.5, curve)) / scale / deep,
    weight: old.weight,
  };
}
