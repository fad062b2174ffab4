import {
  type FireTradeOffData,
  fireTradeOff,
  holdsWords,
  type PlannedHoldData,
  plannedHold,
} from "../../lib/figure/index.ts";
import type { HoldMoment, TurnedDown } from "../../lib/fit/index.ts";
import { formatQuantity } from "../../lib/measure/index.ts";
import type { Beside } from "../page/drawings.ts";
import type { BookFigureInput, BookFigureMaker } from "../page/tool/types.ts";
import { wholeDegree } from "./partsOfPlan.ts";
import { bestFire } from "./partsOfTurnDown.ts";
import { type ShownPlan, shownFires, shownLimits, shownPlan } from "./shownPlan.ts";

/** The course of many holds as figures take it. */
const courseOf = (moments: readonly HoldMoment[]) =>
  moments.map(({ time, middle, low, high }) => ({ time, value: middle, low, high }));

/** What the figure of a planned hold draws. */
export function plannedHoldData({ plan, spread, work }: ShownPlan, system: "US" | "metric"): PlannedHoldData {
  const { target, band, hold, pours } = work.givens;
  const first = spread.corrected[0]?.time ?? 0;
  const feed = formatQuantity(plan.feed, system === "US" ? "fl oz/min" : "ml/min", {
    system,
    dimension: { mass: 1, time: -1 },
    digits: 2,
  });
  const all = formatQuantity(plan.waterTotal, system === "US" ? "fl oz" : "ml", {
    system,
    dimension: { mass: 1 },
    digits: 2,
  });
  return {
    target: { low: target - band, high: target + band },
    hold,
    nobody: courseOf(spread.nobody),
    // Until the first reading is acted on, both are one.
    corrected: courseOf([...spread.nobody.filter(({ time }) => time < first), ...spread.corrected]),
    start: plan.startReading,
    startReads: wholeDegree(plan.startReading + work.readsHighBy),
    additions: plan.additions.map(({ t, water, duration }) => ({ time: t, mass: water, duration })),
    poured:
      pours === "steady"
        ? `${feed}, ${all}`.replaceAll("\u00a0", " ")
        : `${all} in ${plan.additions.length} pours`.replaceAll("\u00a0", " "),
    holds: { nobody: 100 * plan.inBand, corrected: 100 * plan.inBandCorrected },
  };
}

/** What would keep more holds in the band, ranked; words follow the numbers. */
function helps({ open, shownCase }: BookFigureInput): Beside | undefined {
  const list = shownLimits(open, shownCase);
  const now = shownPlan(open, shownCase);
  if (!list || !now) return undefined;
  const items = list.map(({ what, how, corrected, nobody, u }) => {
    const gain = corrected.after - corrected.now;
    const says = (after: number, before: number) => `${holdsWords(after)} in place of ${holdsWords(before)}`;
    const told = Math.abs(gain) < 1.96 * u ? "can't tell" : says(corrected.after, corrected.now);
    const alone = Math.abs(nobody.after - nobody.now) < 1.96 * u ? "can't tell" : says(nobody.after, nobody.now);
    return { what, how, gain: `holds in 100, table followed: ${told}; nobody correcting: ${alone}` };
  });
  return { title: "What holds it back", items };
}

const holdFigure: BookFigureMaker = {
  title: "The planned hold",
  caption: ({ open, shownCase, system }) => {
    const shown = shownPlan(open, shownCase);
    const holds = shown ? `${shown.spread.holds} simulated holds` : "simulated holds";
    const high = shown?.work.readsHighBy ?? 0;
    const off = (Math.abs(high) * (system === "US" ? 1.8 : 1)).toFixed(1);
    const reads =
      off === "0.0"
        ? ""
        : ` This thermometer reads ${off} ${system === "US" ? "°F" : "°C"} ${high > 0 ? "high" : "low"}: its readings lie so much ${high > 0 ? "above" : "below"} what is drawn.`;
    return `The bright strip is the target band. Where the true temperature of the bath lies in 95 of 100 of ${holds}: in blue with the correction table followed, between the dashed lines with nobody correcting.${reads}`;
  },
  draw: ({ open, shownCase, width, system, narrow }) => {
    const shown = shownPlan(open, shownCase);
    return shown && plannedHold(plannedHoldData(shown, system), { document, width, system, narrow });
  },
  beside: helps,
};

/** Those that boil, and the first that does not. */
function worthDrawing(fires: readonly TurnedDown[]): readonly TurnedDown[] {
  const first = fires.findIndex(({ inBand }) => inBand === null);
  return first < 0 ? fires : fires.slice(0, first + 1);
}

function tradeOff({ open, shownCase }: BookFigureInput): FireTradeOffData | undefined {
  const found = shownFires(open, shownCase);
  if (!found) return undefined;
  const best = bestFire(found);
  return {
    fires: worthDrawing(found.fires).map(({ share, feed, inBand, inBandCorrected, steady }) => ({
      share,
      feed,
      steady,
      ...(inBand === null || inBandCorrected === null
        ? {}
        : { nobody: 100 * inBand, corrected: 100 * inBandCorrected }),
    })),
    ...(best ? { best: best.share } : {}),
  };
}

const fires: BookFigureMaker = {
  title: "Turning the fire down",
  caption: (input) => {
    const data = tradeOff(input);
    const best = data?.fires.find(({ share }) => share === data.best);
    const full = data?.fires.find(({ share }) => share === 1);
    if (!best) return "None of these fires boils steadily: a gust can stop any of them.";
    if (best === full)
      return "Full fire boils it; whether a smaller one still does when a gust takes a part of it, can’t tell: below it the spread reaches a bath that stops boiling.";
    return "Holds that stay in the band above, what the bath has to be fed below. A smaller fire needs less feeding and forgives more, until a gust can stop its boil.";
  },
  cautions: ({ open, shownCase }) => shownFires(open, shownCase)?.cautions ?? [],
  draw: (input) => {
    const data = tradeOff(input);
    const { width, system, narrow } = input;
    return data && fireTradeOff(data, { document, width, system, narrow });
  },
};

/** The figures of a planned hold, by the names that its notebook calls them by. */
export const holdFigures: ReadonlyMap<string, BookFigureMaker> = new Map([
  ["planned hold", holdFigure],
  ["turning the fire down", fires],
]);
