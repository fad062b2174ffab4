import { formatQuantity } from "../../lib/measure/index.ts";
import type { Correction, Does, System } from "./corrections.ts";

const water = { mass: 1 } as const;

/** Water in a maker's measure: halves of a fluid ounce, whole millilitres. */
export function waterWords(kg: number, system: System): string {
  if (system === "metric") return formatQuantity(kg, "ml", { dimension: water, decimals: 0 });
  return formatQuantity(kg, "fl oz", { dimension: water, fractions: 2 });
}

/** Minutes as they stand on a clock: "2 min", "2½ min", "45 s". */
export function timeWords(seconds: number): string {
  if (seconds < 60) return `${Math.round(seconds)} s`;
  const whole = Math.floor(seconds / 60 + 1e-9);
  const rest = Math.round(seconds - 60 * whole);
  const fraction = ({ 15: "¼", 30: "½", 45: "¾" } as Readonly<Record<number, string>>)[rest];
  if (rest === 0) return `${whole} min`;
  return fraction ? `${whole}${fraction} min` : `${whole} min ${rest} s`;
}

/** "290–292", "293 and above". */
export function rangeWords({ from, to }: Correction): string {
  if (to === undefined) return `${from} and above`;
  if (from === undefined) return `${to} and below`;
  return from === to ? String(from) : `${from}–${to}`;
}

/** What to do, and whether the feed by the clock still stands. */
export function doesWords(
  does: Does,
  { steady, system, limit }: { readonly steady: boolean; readonly system: System; readonly limit: number },
): { readonly does: string; readonly feed: string } {
  const goesOn = steady ? "the drip goes on" : "the next pour stands";
  switch (does.kind) {
    case "nothing":
      return { does: "nothing", feed: goesOn };
    case "add":
      return {
        does: `add ${waterWords(does.water, system)}, once, as a thin stream${does.limited ? ": no more, that is the limit" : ""}`,
        feed: goesOn,
      };
    case "wait":
      return steady
        ? { does: `stop the drip for ${timeWords(does.pause)}`, feed: "then drip as before" }
        : { does: `put the next pour off by ${timeWords(does.pause)}`, feed: "and all after it" };
    case "stop":
      return does.side === "above"
        ? {
            does: `stop. Never more than ${waterWords(limit, system)} at once, however high it reads: it can flash and throw caustic. Fire down, stand back`,
            feed: `${goesOn}; take the parts out if it does not come down`,
          }
        : {
            does: "stop the water and let it boil off. If it does not climb, the fire has failed: gas off, parts out, look",
            feed: "no water until it reads in the band. Never salt into a hot bath",
          };
  }
}
