import { figureUnits } from "./figureUnits.ts";
import type { FireTradeOffData } from "./planTypes.ts";
import type { FigureOptions } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * What the trade-off of fires shows, in sentences.
 * @example
 * fireTradeOffFinding({ fires: [] }, { system: "US" }) // "Turning the fire down. No fire was tried."
 */
export function fireTradeOffFinding({ fires, best }: FireTradeOffData, options: Pick<FigureOptions, "system">): string {
  const { waterRate } = figureUnits(options.system);
  const said = ["Turning the fire down."];
  if (fires.length === 0) return "Turning the fire down. No fire was tried.";
  for (const { share, feed, nobody, corrected, steady } of [...fires].sort((a, b) => b.share - a.share)) {
    const holds =
      nobody === undefined || corrected === undefined
        ? "does not boil"
        : `${decimal(nobody, 0)} holds in 100 nobody correcting, ${decimal(corrected, 0)} with the table`;
    said.push(
      `At ${decimal(100 * share, 0)} %: ${holds}, feed ${decimal(waterRate.fromSI(feed), 1)} ${waterRate.name}${steady ? "" : ", a gust can stop the boil"}.`,
    );
  }
  said.push(
    best === undefined
      ? "No fire tried boils steadily."
      : `The least feeding that still boils steadily is at ${decimal(100 * best, 0)} %.`,
  );
  return said.join(" ");
}
