import { ratioAndBoilingPoint } from "../../lib/figure/index.ts";
import { formatQuantity } from "../../lib/measure/index.ts";
import { logNext } from "../logNext.ts";
import type { FigureInput, FigureMaker } from "../page/drawings.ts";
import { balanceOf, numberOf, targetOf, timeOf } from "./balanceOf.ts";

interface Pair {
  readonly ratio: number;
  readonly boilingPoint: number;
}

/** The ratio that boils at a temperature, by straight lines through the pairs that the balance found. */
export function ratioThrough(pairs: readonly Pair[]): (temperature: number) => number {
  const sorted = [...pairs].sort((a, b) => a.boilingPoint - b.boilingPoint);
  const first = sorted[0];
  const last = sorted.at(-1);
  if (!first || !last) return () => Number.NaN;
  return (temperature) => {
    const after = sorted.findIndex(({ boilingPoint }) => boilingPoint >= temperature);
    let b = sorted[after] ?? last;
    let a = sorted[after - 1] ?? first;
    // Beyond either end the line through the two ends goes on: steadier than through two neighbours.
    if (after <= 0 || b.boilingPoint - a.boilingPoint < 1e-9) [a, b] = [first, last];
    const span = b.boilingPoint - a.boilingPoint;
    return span > 1e-9
      ? a.ratio + ((b.ratio - a.ratio) * (temperature - a.boilingPoint)) / span
      : a.ratio * (1 + (temperature - a.boilingPoint) / 50);
  };
}

const pressureWords = ({ notebook, system }: FigureInput): string | undefined => {
  const pressure = numberOf(notebook.result("pressure at the tank"));
  return pressure === undefined
    ? undefined
    : formatQuantity(pressure, system === "US" ? "inHg" : "hPa", {
        system,
        dimension: { mass: 1, length: -1, time: -2 },
      });
};

export const ratio: FigureMaker = {
  beside: logNext,
  title: "One line, two rules",
  caption: (input) => {
    const at = pressureWords(input);
    const [left, right] =
      input.system === "US" ? ["lb of salt to the gallon of water", "°F"] : ["kg of salt to the litre of water", "°C"];
    return `${at ? `At ${at} each` : "Each"} ratio has one boiling point, so the same line is read as ${left} on the left and ${right} on the right.`;
  },
  draw: (input) => {
    const balance = balanceOf(input);
    if (!balance || balance.course.length < 2) return undefined;
    const target = targetOf(input);
    const pressure = pressureWords(input);
    const partsIn = timeOf(input.run.log.entries, "parts in", "first");
    return ratioAndBoilingPoint(
      {
        course: balance.course.map(({ time, ratio: of, boilingPoint, standardUncertainty }) => ({
          time,
          ratio: of,
          boilingPoint,
          low: boilingPoint - 1.96 * standardUncertainty,
          high: boilingPoint + 1.96 * standardUncertainty,
        })),
        ratioAt: ratioThrough(balance.course),
        ...(pressure ? { pressure } : {}),
        ...(target ? { target } : {}),
        // Marked where the answer's two ratios stand: at parts in and out. Without parts they are those of the whole log.
        ...(balance.hold.from === "parts in"
          ? { hold: balance.hold, ends: { start: balance.ratioStart.value, end: balance.ratioEnd.value } }
          : {}),
        ...(partsIn === undefined ? {} : { partsIn }),
      },
      { document, width: input.width, system: input.system, narrow: input.narrow },
    );
  },
};
