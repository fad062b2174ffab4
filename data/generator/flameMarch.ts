/** An invented fire under an invented tank: hot gas that creeps along the floor, thins out, spills and cools. SI. */
export interface MarchedFlame {
  /** Times the air that the gas needs. */
  readonly air: number;
  /** Share of the heat that the flame itself throws onto a floor that takes all of its view. */
  readonly glow: number;
  /** m between burner and floor. */
  readonly clearance: number;
  /** W/(m² K) from the hot gas to the floor at a burner of 10 kW. */
  readonly touch: number;
  /** m along the floor in which all but 37 % of the gas has spilled over the edges. */
  readonly spill: number;
  /** m along the floor in which the gas has doubled by air that it draws in. */
  readonly draws: number;
  /** How much touch grows with the fire: a power of its W. */
  readonly grows: number;
  /** Share of the heat that flames 10 cm apart cost each other. */
  readonly choke: number;
}

export interface MarchedTank {
  readonly length: number;
  readonly width: number;
  readonly burners: number;
}

/** J/kg of propane, net, and J/(kg K) of its smoke for each kg of air that it needs. */
const fuel = { net: 46.35e6, gross: 50.3e6, air: 15.7, smoke: 1240 };
const steps = 16;

/**
 * Heat that enters the floor, W, from all burners together: each sends half of its smoke either way along its stretch of
 * the tank, cell by cell.
 *
 * @param gas kg/s of one burner
 * @param bath K
 */
export function marched(flame: MarchedFlame, tank: MarchedTank, gas: number, bath: number): number {
  const stretch = tank.length / tank.burners;
  const heat = gas * fuel.net;
  const view = tank.width / (tank.width + 2 * flame.clearance);
  const glow = heat * flame.glow * view * (1 - Math.exp(-stretch / (2 * flame.clearance)));
  const flow = (gas * (1 + fuel.air * flame.air) * fuel.smoke) / 2;
  let smoke = 295 + (heat * (1 - flame.glow)) / 2 / flow;
  let left = flow;
  let taken = 0;
  const dx = stretch / 2 / steps;
  const touch = flame.touch * (heat / 10_000) ** flame.grows;
  for (let i = 0; i < steps; i++) {
    const here = touch * tank.width * dx;
    const passed = (smoke - bath) * left * (1 - Math.exp(-here / left));
    taken += passed;
    smoke -= passed / left;
    // Air comes in cold, then some of it all leaves over the edges.
    const more = left * (dx / flame.draws);
    smoke = (smoke * left + 295 * more) / (left + more);
    left = (left + more) * Math.exp(-dx / flame.spill);
  }
  const apart = tank.burners > 1 ? flame.choke * Math.min(1.5, (0.1 / stretch) ** 1.5) : 0;
  return tank.burners * (glow + 2 * taken) * Math.max(0.3, 1 - apart);
}

/** Heat of the gas, W, as burners are rated. */
export const grossHeat = (gas: number) => gas * fuel.gross;
