import type { Written } from "./types.ts";

const twoShares = /^(\d{1,3}(?:[.,]\d+)?)\s*%?\s*(?:-|–|−|to)\s*(\d{1,3}(?:[.,]\d+)?)\s*%$/iu;

/**
 * A range of shares as a safety data sheet gives it: "60-80 %", "15 to 40 %". Anywhere within it is equally likely,
 * so the value is the middle and the standard uncertainty the half-width over √3.
 *
 * @param text as typed
 * @returns what was written, or undefined where it is no range from 0 to 100 %
 * Source: JCGM 100:2008, 4.3.7.
 * @example
 * readShareRange("60-80 %")?.si // 0.7
 */
export function readShareRange(text: string): Written | undefined {
  const found = twoShares.exec(text.trim());
  if (!found) return undefined;
  const [low, high] = [found[1], found[2]].map((share) => Number(share?.replace(",", ".")) / 100);
  if (low === undefined || high === undefined || !(low <= high && high <= 1)) return undefined;
  return {
    text: text.trim(),
    si: (low + high) / 2,
    dimension: {},
    unit: "%",
    standardUncertainty: (high - low) / 2 / Math.sqrt(3),
    known: "from the label",
  };
}
