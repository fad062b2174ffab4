import { coverage95, standardUncertainty } from "../measure/standardUncertainty.ts";
import { normalChance } from "./chance.ts";
import { drawnLine } from "./drawnLine.ts";
import { isValue } from "./isValue.ts";
import { pauses } from "./pauses.ts";
import type { Off } from "./shifted.ts";
import type { World } from "./supposed.ts";
import type { TrialOptions } from "./Trial.ts";
import { toleranceOf } from "./tolerance.ts";
import { unitShown } from "./unitShown.ts";

/** Joint draws, each with its mirror image: what two sources do together is seen in no source alone. */
const JOINT = 16;
/** What the joint draws may be off by, in tolerances (root of the mean square): a bend along one source has twice that at its ends. */
const JOINT_SHARE = 1 / 3;
const ALONE_SHARE = 1 / 2;

/**
 * A cheap look whether the linear answer may fail a trial: the line is worked with each source alone at ±1.96 of its
 * standard uncertainties, and in 32 joint draws, and set against its slopes (JCGM 101:2008, 5.8.1 tells when these will
 * do). It is stricter than the trial: a line that it calls bent may still pass.
 * @param world The open notebook, settled.
 * @param inCase Id of the case.
 * @param asked Id of the line.
 * @param options As those of a trial.
 * @returns true also for a line that has no amount or no doubt, and for one that is read straight out of a thing with
 * parts (a fit): there is nothing to try.
 * @example await isStraight(world, "case 1", "line 3") // true
 */
export async function isStraight(
  world: World,
  inCase: string,
  asked: string,
  { digits, rest }: Pick<TrialOptions, "digits" | "rest"> = {},
): Promise<boolean> {
  const present = world.result(asked, inCase);
  if (present.state !== "settled" || !isValue(present.value)) return true;
  if (isReadOut(world, asked)) return true;
  const { value } = present;
  const { work, grain } = drawnLine(world, inCase, asked);
  const unit = unitShown(value.dimension, world.desk.kept.get(asked)?.line.unit);
  const sources = new Set<string>();
  const at = (off: Off): number => {
    const found = work(off);
    return found.state === "settled" && isValue(found.value) ? found.value.value : Number.NaN;
  };
  const miss = (off: Off): number => {
    let linear = value.value;
    for (const [source, component] of value.components) linear += component * off(source);
    return Math.abs(at(off) - linear);
  };
  at((source) => {
    sources.add(source);
    return 0;
  });
  if (sources.size === 0) return true;
  const wide = Math.max(toleranceOf(standardUncertainty(value), value.dimension, unit, digits), grain);
  const clock = pauses(rest);
  for (const one of sources)
    for (const far of [coverage95, -coverage95]) {
      if (!(miss((source) => (source === one ? far : 0)) <= ALONE_SHARE * wide)) return false;
      if (clock.due()) await clock.pause();
    }
  if (sources.size === 1) return true;
  const chance = normalChance("joint draws");
  let squares = 0;
  for (let i = 0; i < JOINT; i++) {
    const draw = new Map([...sources].map((source) => [source, chance()]));
    for (const side of [1, -1]) {
      squares += miss((source) => side * (draw.get(source) ?? 0)) ** 2;
      if (clock.due()) await clock.pause();
    }
  }
  return Math.sqrt(squares / (2 * JOINT)) <= JOINT_SHARE * wide;
}

/** Whether a line is a part of another line's thing: that is drawn as it stands, so a trial gives back what it was told. */
function isReadOut({ wiring }: World, asked: string): boolean {
  const read = wiring.formula(asked);
  return read !== undefined && "tree" in read && read.tree.kind === "part" && read.tree.of.kind === "line";
}
