import type { ShopRecord } from "../../lib/record/index.ts";
import { lastFittedRun, type Supposed } from "./start.ts";

/** How much longer the longer tank is: more may be too much for a fire to boil at all. */
const longer = 1.12;

/** A length as a maker writes it, an eighth longer, to the whole inch or centimetre; undefined for what is no number with a unit. */
function somewhatLonger(text: string | undefined): string | undefined {
  const read = /^\s*([\d.]+)\s*(in|cm)\s*$/.exec(text ?? "");
  const number = Number(read?.[1]);
  if (!read || !(number > 0)) return undefined;
  return `${Math.round(number * longer)} ${read[2]}`;
}

/** Changes to the last fitted run that are supposed, and say so by their names: nobody built or fired them. */
export function supposedChanges(record: ShopRecord): readonly Supposed[] {
  const run = lastFittedRun(record);
  const length = somewhatLonger(run?.facts["tank length"]?.text);
  return [
    { name: "supposed: a bigger fire", own: { "fire against the log": "1.4" } },
    ...(length === undefined
      ? []
      : [
          {
            name: `supposed: ${length} long`,
            own: { "new length": length, "share against the log": "1.04 ± 0.19" },
          },
        ]),
  ];
}
