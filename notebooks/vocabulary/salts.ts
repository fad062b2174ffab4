import type { Taken } from "../../lib/lines/index.ts";
import type { Brine } from "../../lib/physics/index.ts";

/** How a formula tells the salts of a bath: the rest is sodium nitrate. Always at the end of what a function takes. */
export const sharesTaken: readonly Taken[] = [
  { name: "hydroxide share", kind: "share" },
  { name: "nitrite share", kind: "share", optional: true },
  { name: "potassium nitrate share", kind: "share", optional: true },
];

/** Said of each function that takes them. */
export const sharesSaid = "Shares are of the dry salts by weight; what they leave is sodium nitrate.";

/** kg of each salt per kg of water, out of all salt to water and the shares by weight. */
export function brineOf(ratio: number, hydroxide: number, nitrite = 0, potassium = 0): Brine {
  const nitrate = 1 - hydroxide - nitrite - potassium;
  for (const [what, share] of Object.entries({ hydroxide, nitrite, "potassium nitrate": potassium }))
    if (!(share >= 0 && share <= 1)) throw new RangeError(`invalid ${what} share: ${percent(share)}; 0 to 100 %`);
  // A whisker for shares that were written as rounded numbers.
  if (nitrate < -1e-9) throw new RangeError(`invalid shares: ${percent(1 - nitrate)} together; at most 100 %`);
  return {
    sodiumHydroxide: ratio * hydroxide,
    sodiumNitrate: nitrate < 1e-9 ? 0 : ratio * nitrate,
    sodiumNitrite: ratio * nitrite,
    potassiumNitrate: ratio * potassium,
  };
}

const percent = (share: number): string => `${Number((100 * share).toFixed(3))} %`;
