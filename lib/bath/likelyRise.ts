import type { Block } from "./blockReadings.ts";
import { median } from "./firstBoil.ts";
import type { Pour } from "./logFacts.ts";

/** K/s that boiling alone can be expected to raise the boiling point between pours. */
export function likelyRise(blocks: readonly Block[], pours: readonly Pour[], slope: number, pouredShare: number) {
  const typical = (slope * 0.004) / 60;
  if (pours.length > 0) return () => Math.max(typical, slope * pouredShare);
  // Without pours the readings themselves say how fast boiling raises them, later than the one asked about.
  const rates = blocks.slice(1).map((block, i) => {
    const before = blocks[i] as Block;
    return block.time - before.time >= 20 ? (block.T - before.T) / (block.time - before.time) : Number.NaN;
  });
  return (i: number) => {
    const later = rates.slice(i + 1).filter((rate) => rate > 0);
    return later.length < 2 ? Math.max(typical, (slope * 0.012) / 60) : Math.max(typical, median(later));
  };
}
