import { kindFacts } from "./kinds.ts";
import { remembering } from "./remembering.ts";
import type { Kind } from "./types.ts";
import { findUnit } from "./unit.ts";
import { unitSpellings } from "./unitNames.ts";
import { waterUnit } from "./water.ts";

/** Letters to change, add or drop to make one word of the other (Levenshtein). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

const nearest = remembering((asked: string, kind: Kind): string | undefined => {
  const { dimension, liquid } = kindFacts(kind);
  let best: { symbol: string; far: number } | undefined;
  for (const spelling of unitSpellings) {
    const far = distance(asked, spelling.toLowerCase());
    if (far > Math.max(1, Math.floor(asked.length / 3)) || far >= (best?.far ?? Number.POSITIVE_INFINITY)) continue;
    const unit = findUnit(spelling, kind);
    const fits = unit && (liquid ? waterUnit(unit, dimension) : waterUnit(unit, dimension) === unit);
    if (unit && fits) best = { symbol: unit.symbol, far };
  }
  return best?.symbol;
});

/**
 * The unit of a kind whose spelling is nearest to a word that is none, as the table spells it; undefined where
 * nothing is near.
 *
 * @example
 * nearestUnit("galons", "volume") // "gal"
 */
export function nearestUnit(word: string, kind: Kind): string | undefined {
  const asked = word.trim().toLowerCase();
  return asked.length < 2 || asked.length > 20 ? undefined : nearest(asked, kind);
}
