import type { Pour } from "./logFacts.ts";

const mostPours = 80;

/** Pours beyond what a line needs are drawn together, neighbours first, so that a drip on every row stays cheap. */
export function gathered(pours: readonly Pour[]): readonly Pour[] {
  if (pours.length <= mostPours) return pours;
  const each = Math.ceil(pours.length / mostPours);
  const groups: Pour[] = [];
  for (let i = 0; i < pours.length; i += each) {
    const group = pours.slice(i, i + each);
    const first = group[0] as Pour;
    const last = group[group.length - 1] as Pour;
    groups.push({
      ...first,
      mass: group.reduce((sum, pour) => sum + pour.mass, 0),
      duration: last.time + last.duration - first.time,
    });
  }
  return groups;
}
