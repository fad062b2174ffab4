import { waterGone } from "../../lib/figure/index.ts";
import type { FigureMaker } from "../page/drawings.ts";
import { balanceOf, timeOf } from "./balanceOf.ts";

export const water: FigureMaker = {
  title: "Water gone",
  caption: () =>
    "Each dot is what one reading says of the water that has left as steam; the slope of the line through them is the boil-off. Hollow dots hardly count.",
  draw: (input) => {
    const balance = balanceOf(input);
    if (!balance || balance.points.length === 0) return undefined;
    const last = input.run.log.entries.at(-1)?.time ?? balance.firstBoil;
    const partsIn = timeOf(input.run.log.entries, "parts in", "first");
    const { boilOff } = balance;
    return waterGone(
      {
        points: balance.points,
        slope: { value: boilOff.value, low: boilOff.interval95[0], high: boilOff.interval95[1] },
        firstBoil: balance.firstBoil,
        end: last,
        ...(partsIn === undefined ? {} : { partsIn }),
      },
      { document, width: input.width, system: input.system, narrow: input.narrow },
    );
  },
};
