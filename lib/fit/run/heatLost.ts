import { symmetric } from "../../bath/answer.ts";
import { doubtful } from "../../bath/doubtful.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { Answer } from "../../bath/types.ts";
import { surfaceLoss, wallLoss } from "../../physics/index.ts";
import { burnerOf } from "./burnerOf.ts";
import type { FitGivens } from "./types.ts";

const power = { mass: 1, length: 2, time: -3 } as const;

/** How well the published laws tell what an open tank over a flame loses, as a share (a judgement). */
const lossDoubt = 0.35;
/** m: depth of liquid where nobody read it. */
const usualDepth = 0.125;

/**
 * What walls and top of the tank lose at the boil, W: bare walls as high as the liquid stands, and the surface by
 * convection and radiation. What leaves as steam is not in it.
 *
 * @param prepared the log
 * @param givens for the tank, and the air's temperature (293 K where absent)
 * @returns undefined where the tank's size is not known, or lies beyond what the published laws hold for
 * @example wallsAndTop(prepared, {}) // undefined
 */
export function wallsAndTop(
  { facts, line, pressure, salts }: Prepared,
  { tank, air }: Pick<FitGivens, "tank" | "air">,
): Answer | undefined {
  if (!tank) return undefined;
  const length = doubtful("tank length", tank.length, 0.01).value;
  const width = doubtful("tank width", tank.width, 0.01).value;
  const depth = facts.depths[0]?.depth ?? usualDepth;
  const T = salts.curve.boils(Math.log(line.saltAt(line.start) / line.water.value));
  const around = air?.temperature ?? 293.15;
  try {
    const wall = wallLoss({ wall: T, air: around, height: Math.max(0.05, depth), pressure });
    const top = surfaceLoss({ surface: T, air: around, length, width, vapourPressure: pressure, pressure });
    const lost = wall * 2 * (length + width) * depth + (top.convection + top.radiation) * length * width;
    return symmetric(lost, power, new Map([["walls and top", lossDoubt * lost]]), 0);
  } catch (error) {
    // Beyond the laws' range nothing is claimed.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/**
 * Gas burnt while the bath boiled, W gross, as the burner's size and the log's burner rows say.
 *
 * @param prepared the log
 * @param givens for the burner
 * @returns undefined where the burner is not known
 * @example gasBurnt(prepared, {}) // undefined
 */
export function gasBurnt({ line, facts }: Prepared, { burner }: Pick<FitGivens, "burner">): Answer | undefined {
  if (!burner) return undefined;
  const full = burnerOf(burner).power;
  if (!full) return undefined;
  const first = facts.fires.filter(({ time, share }) => time <= line.start && share !== undefined).at(-1)?.share ?? 1;
  const burning = line.fire.done(
    line.end,
    line.fire.told.map(({ lnFactor }) => lnFactor),
  );
  const share = (first * burning) / Math.max(1, line.end - line.start);
  return symmetric(full.value * share, power, new Map([["burner", full.u * share]]), 0);
}
