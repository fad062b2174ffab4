import { zeroCelsius } from "./constants.ts";
import { plain } from "./needNumber.ts";
import { needBrine, shareOf } from "./readBrine.ts";
import type { Brine, Salt, Solubility } from "./types.ts";
import { salts } from "./types.ts";

interface Table {
  readonly name: string;
  readonly source: string;
  /** °C and g per 100 g of water. */
  readonly rows: readonly (readonly [celsius: number, grams: number])[];
}

const tables: Readonly<Record<Salt, Table>> = {
  sodiumHydroxide: {
    name: "sodium hydroxide",
    source: "handbook compilation of sodium hydroxide's solubility, 0 to 200 °C",
    rows: [
      [0, 41.8],
      [20, 108.7],
      [25, 113],
      [30, 118],
      [40, 129],
      [50, 146],
      [60, 177],
      [70, 300],
      [100, 337],
      [125, 374],
      [150, 418],
      [200, 554],
    ],
  },
  sodiumNitrate: {
    name: "sodium nitrate",
    source: "handbook compilation of sodium nitrate's solubility, 0 to 100 °C",
    rows: [
      [0, 72.7],
      [10, 79.9],
      [20, 87.6],
      [25, 91.6],
      [30, 96.1],
      [40, 104.9],
      [50, 114.1],
      [60, 124.7],
      [80, 149],
      [100, 176],
    ],
  },
  sodiumNitrite: {
    name: "sodium nitrite",
    source: "Khimicheskaya Entsiklopediya, sodium nitrite",
    rows: [
      [0, 73],
      [25, 85.5],
      [60, 112.3],
      [100, 160],
    ],
  },
  potassiumNitrate: {
    name: "potassium nitrate",
    source: "Great Soviet Encyclopedia at 20 and 100 °C; Seidell's table between them (from memory)",
    rows: [
      [0, 13.3],
      [10, 20.9],
      [20, 31.6],
      [30, 45.8],
      [40, 63.9],
      [50, 85.5],
      [60, 110],
      [80, 169],
      [100, 245],
    ],
  },
};

/**
 * How much of a salt water dissolves, where it has been published: one salt alone. For a mixture the answer is
 * "unknown", said so: hydroxide drives nitrate out of a cold bath, but no measured table was found.
 *
 * @param brine the salts that are there, any scale; exactly one above 0 for a published answer
 * @param T temperature, K
 * @returns kg per kg of water with its source, straight between the published points; or "unknown" and why
 * @throws RangeError for an unknown salt, a share below 0 or a temperature that is no number
 * @example
 * solubility({ sodiumNitrate: 1 }, 298.15); // { state: "published", ratio: 0.916, source: … }
 */
export function solubility(brine: Brine, T: number): Solubility {
  needBrine(brine);
  if (!Number.isFinite(T)) throw new RangeError(`invalid temperature: ${plain(T)} K; a finite number`);
  const there = salts.filter((salt) => shareOf(brine, salt) > 0);
  const [only, another] = there;
  if (only === undefined) return { state: "unknown", because: "no salt is given" };
  if (another !== undefined) {
    return { state: "unknown", because: "no measured table was found for these salts together" };
  }
  const { rows, name, source } = tables[only];
  const t = T - zeroCelsius;
  for (let i = 1; i < rows.length; i++) {
    const [cold, less] = rows[i - 1] ?? [Number.NaN, Number.NaN];
    const [hot, more] = rows[i] ?? [Number.NaN, Number.NaN];
    // A hair of slack: 0 °C and 100 °C in K need not come back exact.
    if (t >= cold - 1e-9 && t <= hot + 1e-9) {
      return { state: "published", ratio: (less + ((more - less) * (t - cold)) / (hot - cold)) / 100, source };
    }
  }
  const last = rows.at(-1)?.[0] ?? Number.NaN;
  return { state: "unknown", because: `the published table of ${name} runs from 0 to ${last} °C` };
}
