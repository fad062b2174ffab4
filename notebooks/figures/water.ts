import type { Answer } from "../../lib/bath/types.ts";
import { waterGone } from "../../lib/figure/index.ts";
import { interval95 as interval95Of } from "../../lib/measure/index.ts";
import type { FigureMaker } from "../page/drawings.ts";
import { evened as evenedValue } from "../page/showValue.ts";
import { balanceOf, timeOf } from "./balanceOf.ts";

/** The slope with the spread that the answer shows: one ± where the sides nearly agree. */
function evened({ measured, interval95 }: Answer): { value: number; low: number; high: number } {
  const [low, high] = interval95Of(evenedValue({ ...measured, interval95 }));
  return { value: measured.value, low, high };
}

export const water: FigureMaker = {
  title: "Water gone",
  caption: () =>
    "Each dot is what one reading says of the water that has left as steam; the slope of the line through them is the boil-off by water balance. Hollow dots hardly count.",
  draw: (input) => {
    const balance = balanceOf(input);
    if (!balance || balance.points.length === 0) return undefined;
    const last = input.run.log.entries.at(-1)?.time ?? balance.firstBoil;
    const partsIn = timeOf(input.run.log.entries, "parts in", "first");
    const { boilOff } = balance;
    return waterGone(
      {
        points: balance.points,
        slope: evened(boilOff),
        firstBoil: balance.firstBoil,
        end: last,
        ...(partsIn === undefined ? {} : { partsIn }),
      },
      { document, width: input.width, system: input.system, narrow: input.narrow },
    );
  },
};
