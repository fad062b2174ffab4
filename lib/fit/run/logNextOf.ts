import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Solved } from "../../bath/gaussianLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { type Asked, doubtUnder, readOff } from "../../bath/readOff.ts";
import type { FireLine } from "./fireLine.ts";
import { warmUpBefore } from "./fireLine.ts";
import { stretch } from "./stretch.ts";
import { type Supposed, supposedVariances } from "./supposed.ts";
import type { FitGivens, LogNext } from "./types.ts";

interface Proposal extends Supposed {
  readonly what: string;
  readonly how: string;
  /** It would also settle which pours went in. */
  readonly settlesPours?: boolean;
}

/** How well each would be known then, as standard uncertainties: judgements of careful work. */
const careful = {
  cup: 0.005,
  pourTime: 2,
  salt: 0.005,
  thermometer: 0.4,
  water: 0.02,
  depth: 0.003,
  bigPour: 0.1,
} as const;

function proposals(prepared: Prepared, fitted: FittedLine, line: FireLine, givens: FitGivens): readonly Proposal[] {
  const { z, straight } = fitted;
  const { line: g, thermometer } = prepared;
  const { index } = line;
  const size = line.doubts.length;
  const one = (doubts: readonly number[], factor: number) => new Map(doubts.map((k) => [k, factor] as const));
  const found: Proposal[] = [];
  if (g.cup.allNight > 2 * careful.cup && g.pours.length > 0) {
    found.push({
      what: "Weigh one full cup",
      how: "Fill it as you always do, weigh it full and empty, and write down both: every pour is then known as well as the scale is.",
      shrinks: one([index.cup], careful.cup / g.cup.allNight),
    });
  }
  if (g.pourTime > 2 * careful.pourTime && g.pours.length > 0) {
    found.push({
      what: "Write pour times to the second",
      how: "And whether a reading beside a pour was taken before it or after it.",
      shrinks: one(index.times, careful.pourTime / g.pourTime),
    });
  }
  const largest = Math.max(0, ...g.pours.map(({ mass }) => mass));
  const now = line.bathAt(z, g.end);
  const kg = careful.bigPour * now.water;
  if (largest < 0.7 * kg) {
    const { perKilogram } = line.boilsAt(z, g.end, now.water);
    const sigma = fitted.trial.solved[fitted.trial.explanations[0]?.noise ?? 0]?.sigma ?? 0.33;
    // How far a pour of known weight lowers the boil: by slope over water, each seen by some three readings on both sides.
    const by = new Float64Array(size);
    by[index.scale] = 0.07;
    by[index.cup] = g.cup.allNight;
    now.waterBy.forEach((x, i) => {
      by[i] = at(by, i) - x / now.water;
    });
    const variance = ((sigma * Math.sqrt(2 / 3)) / (perKilogram * kg)) ** 2 + g.cup.eachPour ** 2;
    found.push({
      what: "Let it climb, then pour back in two larger, slow pours",
      how: "Each about a tenth of the water in the tank, fed in a thin stream over some minutes, with readings before and after: a hold that stands perfectly still shows almost nothing of the curve.",
      sees: [
        { by, variance },
        { by, variance },
      ],
    });
  }
  if (line.warming.blocks.length < 3) {
    const by = new Float64Array(size);
    by[index.rate] = g.rate.relative;
    by[index.water] = -0.6 * g.water.relative;
    const variance = warmUpBefore.fire ** 2 + 0.04 ** 2;
    found.push({
      what: "Log the heat-up from cold",
      how: "A reading every 2 or 3 minutes from lighting the burner to the first boil: the same fire warms a bath of known weight.",
      sees: [{ by, variance }],
    });
  }
  if (!fitted.straight.rows.some((row) => row.kind === "fact" && row.source === "depths")) {
    const first = line.bathAt(z, g.start);
    const ln = (bath: { readonly water: number; readonly waterBy: Float64Array }) =>
      Float64Array.from(bath.waterBy, (x) => x / bath.water);
    const a = ln(first);
    const b = ln(now);
    // 3 mm in some 130 mm of depth; of a bath some two thirds of the volume hang on the water.
    const stick = careful.depth / 0.13 / 0.6;
    found.push({
      what: "Read the depth at the first boil and at the end",
      how: "With a clean steel rod at the same spot, the burner low for a moment, with the tank's length and width given.",
      sees: [
        { by: a, variance: 0.05 ** 2 },
        { by: b.map((x, i) => x - at(a, i)), variance: 2 * stick ** 2 },
      ],
    });
  }
  const widest = Math.max(0, ...g.saltDoubts.map(({ lnMass }) => Math.abs(lnMass)));
  if (widest > 2 * careful.salt) {
    found.push({
      what: "Weigh the salts",
      how: "Each kind by itself, before they go into the cold bath.",
      shrinks: one(index.salts, careful.salt / widest),
    });
  }
  if (thermometer.u > 1.3 * careful.thermometer) {
    found.push({
      what: "Check the thermometer in boiling water",
      how: "In plain boiling water, with the barometer read at the tank: it says how far the thermometer is off there.",
      shrinks: one([index.thermometer], careful.thermometer / thermometer.u),
    });
  }
  if (givens.water === undefined) {
    const by = new Float64Array(size);
    by[index.water] = g.water.relative;
    found.push({
      what: "Measure the water that goes in at the start",
      how: "Count it into the tank by a marked jug, or weigh it.",
      sees: [{ by, variance: careful.water ** 2 }],
    });
  }
  if (straight.rows.length < 12) {
    found.push({
      what: "Read the thermometer more often",
      how: "Every 2 or 3 minutes, twice as many readings as in this log.",
      sees: straight.rows.flatMap((row, i) =>
        row.kind === "reading" && row.time >= g.start
          ? [{ by: straight.slopes[i] as Float64Array, variance: 0.4 ** 2 + row.extra }]
          : [],
      ),
    });
  }
  if (fitted.trial.suspects.some(({ kind }) => kind === "pour")) {
    found.push({
      what: "Tick off every pour as it goes in",
      how: "A mark on the paper is enough; or weigh the feed jug before and after.",
      settlesPours: true,
    });
  }
  return found;
}

interface Width {
  readonly now: number;
  readonly base: number;
}

function widthNow(asked: Asked, fitted: FittedLine, line: FireLine, solved: Solved): Width {
  const read = readOff(asked, fitted.trial, line.doubts, stretch);
  return { now: (read.high - read.low) / 2, base: 1.96 * doubtUnder(asked, solved) };
}

/** Half-width then: what the proposal leaves of the line's own doubt, and the doubt about what was not written. */
function widthThen(variance: number, width: Width, proposal: Proposal): number {
  const half = 1.96 * Math.sqrt(variance);
  const unwritten = proposal.settlesPours ? 0 : Math.sqrt(Math.max(0, width.now ** 2 - width.base ** 2));
  return Math.min(width.now, Math.hypot(half, unwritten));
}

/**
 * What to log next time, by how much it would narrow the boil-off or the water to come back to target.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @param givens of the run
 * @param asked ln of the boil-off, and the water to target in kg
 * @returns ranked by gain; what gains less than 2 % is left out
 * @example logNextOf(prepared, fitted, line, givens, asked)[0]?.what
 */
export function logNextOf(
  prepared: Prepared,
  fitted: FittedLine,
  line: FireLine,
  givens: FitGivens,
  asked: { readonly lnBoilOff: Asked; readonly waterToTarget: Asked },
): readonly LogNext[] {
  const solved = fitted.trial.solved[fitted.trial.explanations[0]?.noise ?? 0];
  if (!solved) return [];
  const boilOff = widthNow(asked.lnBoilOff, fitted, line, solved);
  const water = widthNow(asked.waterToTarget, fitted, line, solved);
  return proposals(prepared, fitted, line, givens)
    .map((proposal) => {
      const [ofBoilOff = 0, ofWater = 0] = supposedVariances([asked.lnBoilOff, asked.waterToTarget], solved, proposal);
      const thenBoilOff = widthThen(ofBoilOff, boilOff, proposal);
      const thenWater = widthThen(ofWater, water, proposal);
      return {
        what: proposal.what,
        how: proposal.how,
        boilOff: { now: boilOff.now, after: thenBoilOff },
        waterToTarget: { now: water.now, after: thenWater },
        gain: Math.max(1 - thenBoilOff / boilOff.now, 1 - thenWater / water.now),
      };
    })
    .filter(({ gain }) => gain > 0.02)
    .sort((a, b) => b.gain - a.gain);
}
