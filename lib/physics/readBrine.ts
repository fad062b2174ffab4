import { plain } from "./needNumber.ts";
import type { Brine } from "./types.ts";
import { salts } from "./types.ts";

const words: ReadonlyMap<string, string> = new Map([
  ["sodiumHydroxide", "sodium hydroxide"],
  ["sodiumNitrate", "sodium nitrate"],
  ["sodiumNitrite", "sodium nitrite"],
  ["potassiumNitrate", "potassium nitrate"],
]);

/** kg of one salt for each kg of water, checked: absent is 0, never negative, never more than 100. */
export function shareOf(brine: Brine, salt: keyof Brine): number {
  const share = brine[salt] ?? 0;
  if (share >= 0 && share <= 100) return share;
  throw new RangeError(`invalid ${words.get(salt)}: ${plain(share)} kg per kg of water; 0 to 100`);
}

/** Throws where a brine holds a key that is no salt of ours: a mistyped name must not pass for plain water. */
export function needBrine(brine: Brine): void {
  if (typeof brine !== "object" || brine === null) {
    throw new TypeError(`invalid brine: ${String(brine)}; an object with kg of each salt per kg of water`);
  }
  for (const key in brine) {
    if (!words.has(key)) throw new RangeError(`unknown salt: ${key}; ${salts.join(", ")}`);
  }
}
