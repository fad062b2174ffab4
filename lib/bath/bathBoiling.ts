import { boilingPoint } from "../physics/boilingPoint.ts";
import { plain } from "../physics/needNumber.ts";
import { saltCurvePrior } from "../physics/saltCurvePrior.ts";
import type { Brine, CurveDeparture } from "../physics/types.ts";
import { salts as kinds } from "../physics/types.ts";
import { at } from "./at.ts";
import { type BrineCurve, brineCurve } from "./brineCurve.ts";
import { saltMass } from "./saltMasses.ts";
import type { BoilingTable } from "./simulationTypes.ts";
import { UniformTable } from "./uniformTable.ts";

/** The boiling point of one bath against its water. */
export interface BathBoiling {
  /** K, of a bath with so many kg of water; `slope` then holds K per kg of water, not above 0. */
  at(water: number): number;
  slope: number;
  /** kg of water at which the boiling curve ends. */
  readonly least: number;
}

interface Line {
  readonly table: UniformTable;
  readonly low: number;
  readonly end: number;
  /** K, of plain water, which a thinner brine than `low` nears. */
  readonly water: number;
}

const step = 0.05;
const thinnest = -4;
const lines = new WeakMap<BrineCurve | BoilingTable, Line>();
let last: { readonly mix: string; readonly line: Line } | undefined;

/**
 * The boiling line of a bath, its departure in it.
 *
 * @param salts kg of each in the tank
 * @param p Pa
 * @param departure of this bath; plain water has none
 * @param curve of the mix, before the departure; worked out where absent, and kept for the last mix and pressure
 * @throws RangeError as `boilingPoint`, and for a table that does not rise
 * @example bathBoiling({ sodiumHydroxide: 4, sodiumNitrate: 2 }, 101_325).at(4.5) // 417.5 K
 */
export function bathBoiling(
  salts: Brine,
  p: number,
  departure: CurveDeparture = { offset: 0, scale: 1 },
  curve?: BrineCurve | BoilingTable,
): BathBoiling {
  const mass = saltMass(salts);
  if (mass === 0) {
    const T = boilingPoint({}, p);
    return { at: () => T, slope: 0, least: 0 };
  }
  const { table, low, end, water: thin } = curve ? lineOf(curve) : ownLine(salts, mass, p);
  const { offset, scale, pivot = saltCurvePrior.pivot } = departure;
  const shift = pivot + offset - scale * pivot;
  const lnMass = Math.log(mass);
  const atLow = table.at(low);
  return {
    slope: 0,
    least: mass / Math.exp(end),
    at(water: number): number {
      const lnRatio = lnMass - Math.log(water);
      if (lnRatio < low && !Number.isNaN(thin)) {
        // So thin a brine boils above water in proportion to its salt.
        const over = (atLow - thin) * Math.exp(lnRatio - low);
        this.slope = (-scale * over) / water;
        return shift + scale * (thin + over);
      }
      this.slope = (-scale * table.slope(lnRatio)) / water;
      return shift + scale * table.at(lnRatio);
    },
  };
}

function ownLine(salts: Brine, mass: number, p: number): Line {
  const mix = [p, ...kinds.map((kind) => ((salts[kind] ?? 0) / mass).toPrecision(12))].join(" ");
  if (last?.mix !== mix) last = { mix, line: lineOf(brineCurve(salts, p)) };
  return last.line;
}

function lineOf(curve: BrineCurve | BoilingTable): Line {
  const known = lines.get(curve);
  if (known) return known;
  const line = "boils" in curve ? ofFunction(curve) : ofTable(curve);
  lines.set(curve, line);
  return line;
}

function ofFunction(curve: BrineCurve): Line {
  const { lnRatio: end } = curve.end;
  const n = Math.max(3, Math.ceil((end - thinnest) / step - 1e-9));
  const x = Array.from({ length: n + 1 }, (_, i) => thinnest + i * step);
  const values = x.map((one) => curve.boils(one));
  const h = 1e-4;
  const slopes = x.map((one) => (curve.boils(one + h) - curve.boils(one - h)) / (2 * h));
  return { table: new UniformTable(thinnest, step, values, slopes), low: thinnest, end, water: curve.water };
}

/** A table's own cubic (slopes of the parabola through a row and its neighbours), spread over even steps. */
function ofTable({ lnRatio: x, T: y }: BoilingTable): Line {
  const n = x.length;
  const rises = (list: readonly number[]) =>
    list.every((one, i) => Number.isFinite(one) && (i === 0 || one > at(list, i - 1)));
  if (n < 4 || y.length !== n || !rises(x) || !rises(y)) {
    throw new RangeError(
      `invalid boiling curve: ${plain(n)} rows; at least four, ln of salt to water and K, both finite and rising`,
    );
  }
  const steep = (i: number) => (at(y, i + 1) - at(y, i)) / (at(x, i + 1) - at(x, i));
  const middle = (i: number): number => {
    const [before, after] = [at(x, i) - at(x, i - 1), at(x, i + 1) - at(x, i)];
    return (steep(i - 1) * after + steep(i) * before) / (before + after);
  };
  const rise = x.map((_, i) => {
    if (i === 0) return 2 * steep(0) - middle(1);
    return i === n - 1 ? 2 * steep(n - 2) - middle(n - 2) : middle(i);
  });
  const read = (one: number): [value: number, slope: number] => {
    let i = 0;
    while (i < n - 2 && one > at(x, i + 1)) i++;
    const h = at(x, i + 1) - at(x, i);
    const u = (one - at(x, i)) / h;
    const [a, b] = [h * at(rise, i), h * at(rise, i + 1)];
    const d = at(y, i + 1) - at(y, i);
    const [c2, c3] = [3 * d - 2 * a - b, a + b - 2 * d];
    return [at(y, i) + u * (a + u * (c2 + u * c3)), (a + u * (2 * c2 + 3 * u * c3)) / h];
  };
  const [low, end] = [at(x, 0), at(x, n - 1)];
  const even = (end - low) / Math.max(3, Math.ceil((end - low) / (step / 2)));
  const rows = Array.from({ length: Math.round((end - low) / even) + 1 }, (_, i) => read(low + i * even));
  const table = new UniformTable(
    low,
    even,
    rows.map(([value]) => value),
    rows.map(([, slope]) => slope),
  );
  return { table, low, end, water: Number.NaN };
}
