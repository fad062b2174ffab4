/** Names longer than this are never suggested for a slip: it bounds the work for any text. */
const LONGEST = 80;

/**
 * The known name that is nearest to what was written, if it is near enough to be a slip of the hand.
 * @param written What was written.
 * @param names The known names.
 * @returns The nearest name, or undefined where none is within a third of its letters (at most 4).
 * @example nearestName("salt in bath", ["water", "salt in the bath"]) // "salt in the bath"
 */
export function nearestName(written: string, names: Iterable<string>): string | undefined {
  const asked = written.toLowerCase();
  if (asked === "" || asked.length > LONGEST) return undefined;
  let nearest: string | undefined;
  // Of a single letter every other is one step away: that is no slip.
  let least = asked.length === 1 ? 1 : Math.min(4, Math.max(1, Math.floor(asked.length / 3))) + 1;
  for (const name of names) {
    if (Math.abs(name.length - asked.length) >= least) continue;
    const steps = editSteps(asked, name.toLowerCase());
    if (steps < least) {
      least = steps;
      nearest = name;
    }
  }
  return nearest;
}

/** Letters to put in, take out, change or swap with their neighbour (optimal string alignment). */
function editSteps(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let steps = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        steps = Math.min(steps, (before[j - 2] ?? 0) + 1);
      row.push(steps);
    }
    before = above;
    above = row;
  }
  return above[b.length] ?? 0;
}
