import type { Answer } from "../../lib/bath/types.ts";
import { type HeatAmount, type WhereHeatWentData, whereHeatWent } from "../../lib/figure/index.ts";
import type { HeatWent } from "../../lib/fit/index.ts";
import { add, interval95 } from "../../lib/measure/index.ts";
import type { FigureMaker } from "../page/drawings.ts";
import { fitOf } from "./balanceOf.ts";

const amount = ({ value, interval95: [low, high] }: Answer): HeatAmount => ({ value, low, high });

function totalOf({ intoBath, wallsAndTop }: HeatWent): HeatAmount {
  if (!wallsAndTop) return amount(intoBath);
  const sum = add(intoBath.measured, wallsAndTop.measured);
  const [low, high] = interval95(sum);
  return { value: sum.value, low, high };
}

/** What the figure of the heat draws, from a fitted run. */
export function heatData(heat: HeatWent): WhereHeatWentData {
  return {
    start: heat.from,
    end: heat.to,
    steam: amount(heat.steam),
    makeUpWater: amount(heat.makeUpWater),
    parts: amount(heat.parts),
    bath: amount(heat.bath),
    ...(heat.wallsAndTop ? { wallsAndTop: amount(heat.wallsAndTop) } : {}),
    total: totalOf(heat),
    ...(heat.gas ? { fire: amount(heat.gas) } : {}),
  };
}

export const heat: FigureMaker = {
  title: "Where the heat went",
  caption: (input) => {
    const went = fitOf(input)?.heat;
    const given = (name: string) => input.notebook.result(name).state === "settled";
    const missing = [
      went?.wallsAndTop ? "" : `what walls and top lost${given("tank length") ? "" : ", which needs the tank's size"}`,
      went?.gas ? "" : `what went past the tank${given("burner rate") ? "" : ", which needs the burner's rate"}`,
    ].filter((part) => part !== "");
    return `From the first boil to the log's last row. Steam takes most of it: that is the boil-off.${missing.length > 0 ? ` Not drawn: ${missing.join("; ")}.` : ""}`;
  },
  draw: (input) => {
    const fit = fitOf(input);
    return fit && fit.heat.to - fit.heat.from >= 60
      ? whereHeatWent(heatData(fit.heat), { document, width: input.width, system: input.system, narrow: input.narrow })
      : undefined;
  },
};
