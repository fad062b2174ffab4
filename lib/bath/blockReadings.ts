import type { Reading } from "./logFacts.ts";
import { middleOf } from "./middleOf.ts";

export interface Block extends Reading {
  /** The readings that it stands for. */
  readonly ids: readonly string[];
}

/**
 * Whether a logger wrote a block's readings: no hand writes so many in a minute or two.
 *
 * @param block readings drawn together
 * @example loggerWrote({ id: "r0", time: 0, T: 417, order: 0, ids: ["r0"] }) // false
 */
export function loggerWrote({ ids }: Block): boolean {
  return ids.length > 4;
}

/**
 * Thins a dense log to the middle reading of blocks of half a minute or more, at most `most` of them: readings closer
 * together than the thermometer's own lag tell nothing new and would make the doubt too small.
 *
 * @param readings in time order
 * @param cuts s, times (pours, first boil) that no block reaches across
 * @param most blocks
 * @example
 * const dense = Array.from({ length: 3600 }, (_, time) => ({ id: `r${time}`, time, temperature: 417 }));
 * blockReadings(dense, [], 100).length <= 100 // true
 */
export function blockReadings(readings: readonly Reading[], cuts: readonly number[], most: number): Block[] {
  if (readings.length <= most) return readings.map((reading) => ({ ...reading, ids: [reading.id] }));
  const first = readings[0]?.time ?? 0;
  const span = (readings.at(-1)?.time ?? 0) - first;
  const length = Math.max(30, span / Math.max(1, most - cuts.length));
  const sorted = [...cuts].sort((a, b) => a - b);
  const blocks: Reading[][] = [];
  let block: Reading[] = [];
  let passed = 0;
  for (const reading of readings) {
    const start = block[0]?.time ?? reading.time;
    let cut = false;
    while (passed < sorted.length && (sorted[passed] ?? Infinity) <= reading.time) {
      passed++;
      cut = true;
    }
    if (block.length > 0 && (cut || reading.time - start >= length)) {
      blocks.push(block);
      block = [];
    }
    block.push(reading);
  }
  if (block.length > 0) blocks.push(block);
  return blocks.map((list) => {
    const middle = list[Math.floor(list.length / 2)] as Reading;
    const T = new Float64Array(list.length);
    let time = 0;
    list.forEach((reading, i) => {
      T[i] = reading.T;
      time += reading.time;
    });
    return {
      id: middle.id,
      time: time / list.length,
      T: middleOf(T),
      order: middle.order,
      ids: list.map((reading) => reading.id),
    };
  });
}
