/** Numbers that look random and come again with the same seed (mulberry32). */
export interface Random {
  /** 0..1. */
  even(): number;
  /** Mean 0, standard deviation 1. */
  normal(): number;
  /** From low to high. */
  from(low: number, high: number): number;
  pick<T>(list: readonly T[]): T;
  chance(share: number): boolean;
}

export function random(seed: number): Random {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return {
    even,
    normal,
    from: (low, high) => low + (high - low) * even(),
    pick: (list) => list[Math.min(list.length - 1, Math.floor(even() * list.length))] as (typeof list)[number],
    chance: (share) => even() < share,
  };
}
