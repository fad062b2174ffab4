/** The generator's four parts: multiplier and modulus of each. */
const PARTS = [
  [11600, 2147483579],
  [47003, 2147483543],
  [23000, 2147483423],
  [33000, 2147483123],
] as const;

/** A text as a whole number, 32 bits (FNV-1a, with the last bits stirred as MurmurHash3 does; both from memory). */
function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/**
 * Numbers between 0 and 1 that look like chance: the enhanced generator of Wichmann and Hill, which JCGM 101:2008
 * recommends (C.2; constants from memory). Each seed gives a row of its own.
 * @param seed Any text.
 * @returns What gives the next number, above 0 and below 1.
 * @example evenChance("a")() < 1 // true
 */
export function evenChance(seed: string): () => number {
  const state = PARTS.map(([, modulus], i) => 1 + (hash(`${i} ${seed}`) % (modulus - 1)));
  const next = () => {
    let sum = 0;
    for (let i = 0; i < PARTS.length; i++) {
      const [times, modulus] = PARTS[i] as (typeof PARTS)[number];
      const now = (times * (state[i] as number)) % modulus;
      state[i] = now;
      sum += now / modulus;
    }
    return sum % 1 || Number.EPSILON;
  };
  // Seeds that are near each other part within a few steps.
  for (let i = 0; i < 16; i++) next();
  return next;
}

/**
 * Standard normal numbers by Box and Muller (JCGM 101:2008, C.4).
 * @param seed Any text.
 * @returns What gives the next number.
 * @example Number.isFinite(normalChance("a")()) // true
 */
export function normalChance(seed: string): () => number {
  const even = evenChance(seed);
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const last = spare;
      spare = undefined;
      return last;
    }
    const [radius, angle] = [Math.sqrt(-2 * Math.log(even())), 2 * Math.PI * even()];
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}
