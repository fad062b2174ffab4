import { interval95, widthFrom } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";
import { plainSources } from "../plainSources.ts";

/** As many sources are named; the others are summed. */
const named = 4;
/** A share that rounds to nothing is not worth a name. */
const least = 0.005;

const percentSign = "\u00a0%";

const percent = (share: number): string => {
  if (share > 0.995 && share < 1) return `over 99${percentSign}`;
  return share < least ? `under 1${percentSign}` : `${Math.round(100 * share)}${percentSign}`;
};

/** What a value's width comes from: "heat into the bath 71 %, cup 22 %, the rest 7 %", the largest first. */
export function widthWords(value: Value): string {
  const shares = plainSources(widthFrom(value));
  if (shares.length === 0) {
    const [low, high] = interval95(value);
    return low < high ? "not told apart by source" : "none: it is exact";
  }
  const shown = shares.filter(({ share }, place) => place === 0 || (place < named && share >= least));
  const rest = shares.slice(shown.length).reduce((sum, { share }) => sum + share, 0);
  const words = shown.map(({ source, share }) => `${source} ${percent(share)}`);
  return [...words, ...(rest > 0 ? [`the rest ${percent(rest)}`] : [])].join(", ");
}
