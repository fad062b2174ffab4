import type { HoldDraw } from "./holdDraws.ts";
import { type Planning, tried } from "./planning.ts";
import type { Promised } from "./promiseOf.ts";
import { type Correcting, type HoldSchedule, nothingHeld, simulateHold } from "./simulateHold.ts";

/** Shares of the full correction that are tried, as parts of the most that the lags allow. */
const parts = [0.15, 0.25, 0.4, 0.6, 0.85, 1];
/** A gain above this part of (time between readings) / (all lags) swings to and fro: never gone beyond. */
const steadyPart = 0.45;
/** So many readings' worth of trust in the gain of all rows, against what one row's own readings say. */
const trust = 60;

/** A correction table as the search found it. */
export interface FoundTable {
  readonly correcting: Correcting;
  readonly gain: number;
  readonly promised: Promised;
}

/** K between rows: what the thermometer is read to, but no finer than 0.25 K and no coarser than half a band. */
export function rowStep({ bath: { rounding, band } }: Planning): number {
  const finest = Math.max(rounding, 0.25);
  return finest <= 1.2 * band ? finest : band;
}

/** How many rows each way: to three times the band, 4 to 24. */
export function rowsEachWay(plan: Planning): number {
  return Math.min(24, Math.max(4, Math.ceil((3 * plan.bath.band) / rowStep(plan))));
}

/** kg that move the boiling point by 1 K once mixed in. */
export function waterPerKelvin({ bath, dip }: Planning): number {
  const slope = bath.k / bath.water;
  const boils = bath.evaporation + (bath.capacity + dip.capacity) * slope;
  return boils / (slope * (bath.evaporation + bath.warming));
}

/** The most of the full correction that lag, mixing and lateness leave steady. */
export function steadiestGain({ bath, errors, readEvery }: Planning): number {
  const late = errors.late * Math.sqrt(2 / Math.PI);
  return Math.min(1, (steadyPart * readEvery) / Math.max(1, bath.lag + bath.mixing + late));
}

/** A table that makes one share of the full correction in all rows, each pour at most the limit, kg. */
export function evenTable(
  plan: Planning,
  gain: number | ((row: number, high: boolean) => number),
  limit = plan.limit.mass,
): Correcting {
  const step = rowStep(plan);
  const perKelvin = waterPerKelvin(plan);
  const share = typeof gain === "number" ? () => gain : gain;
  const row = (high: boolean) => (_: unknown, j: number) => Math.min(share(j, high) * j * step * perKelvin, limit);
  const length = rowsEachWay(plan) + 1;
  return {
    every: plan.readEvery,
    from: plan.ignoreUntil,
    step,
    above: Float64Array.from({ length }, row(true)),
    below: Float64Array.from({ length }, row(false)),
  };
}

/** The full correction at every reading, as if nothing limited a pour: what the table is held against. */
export function fullTable(plan: Planning): Correcting {
  return evenTable(plan, 1, Number.POSITIVE_INFINITY);
}

/**
 * The correction table of a schedule, by simulation: first the share of the full correction with which most holds stay
 * in the band; then each row by itself, from how far the bath truly was off in the simulated holds when that was read.
 * The rows stand only where they hold as many holds as one share for all.
 *
 * @param plan what is planned
 * @param does its schedule
 * @param draws what goes otherwise
 * @example searchTable(plan, schedule, draws).gain // 0.31
 */
export function searchTable(plan: Planning, does: HoldSchedule, draws: readonly HoldDraw[]): FoundTable {
  const most = steadiestGain(plan);
  let best: FoundTable | undefined;
  for (const part of parts) {
    const correcting = evenTable(plan, part * most);
    const promised = tried(plan, does, draws, correcting);
    if (!best || promised.score > best.promised.score) best = { correcting, gain: part * most, promised };
  }
  const found = best as FoundTable;
  const own = rowGains(plan, does, draws, found);
  const correcting = evenTable(plan, own);
  const promised = tried(plan, does, draws, correcting);
  return promised.score >= found.promised.score - 0.005 ? { ...found, correcting, promised } : found;
}

/** For each row, what part of what was read was true. */
function rowGains(
  plan: Planning,
  does: HoldSchedule,
  draws: readonly HoldDraw[],
  { correcting, gain }: FoundTable,
): (row: number, high: boolean) => number {
  const length = rowsEachWay(plan) + 1;
  const sums = { high: new Float64Array(length), low: new Float64Array(length) };
  const squares = { high: new Float64Array(length), low: new Float64Array(length) };
  const out = nothingHeld();
  plan.simulated += draws.length;
  for (const draw of draws) {
    simulateHold(plan.bath, does, draw, correcting, out, (shown, truly) => {
      const row = Math.min(Math.round(Math.abs(shown) / correcting.step), length - 1);
      const side = shown > 0 ? "high" : "low";
      sums[side][row] = (sums[side][row] ?? 0) + shown * truly;
      squares[side][row] = (squares[side][row] ?? 0) + shown * shown;
    });
  }
  const most = steadiestGain(plan);
  const weight = trust * correcting.step ** 2;
  return (row, high) => {
    const side = high ? "high" : "low";
    const [sum, square] = [sums[side][row] ?? 0, squares[side][row] ?? 0];
    // Rows a step off carry more weight a reading; the trust is in readings a step off.
    const own = (sum + gain * weight) / (square + weight);
    return Math.min(most, Math.max(0.5 * gain, Math.min(1.6 * gain, own)));
  };
}
