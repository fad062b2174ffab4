/**
 * The rings among some lines and all that these use: lines that lead back to each other, or one to itself (Tarjan,
 * SIAM J. Comput. 1, 146, 1972; from memory). The work grows with lines and mentions, no faster, and nothing calls itself.
 * @param starts The lines to begin with.
 * @param uses The lines that a line's formula uses.
 * @returns The lines of each ring, each line in one ring at most.
 * @example ringsOf(["a", "c"], (line) => (line === "a" ? ["b"] : line === "b" ? ["a"] : [])) // [["a", "b"]]
 */
export function ringsOf(
  starts: Iterable<string>,
  uses: (line: string) => readonly string[],
): readonly (readonly string[])[] {
  const rings: (readonly string[])[] = [];
  const found = new Map<string, number>();
  /** The first line found that each leads back to, as far as is known. */
  const back = new Map<string, number>();
  const open: string[] = [];
  const isOpen = new Set<string>();
  const way: { readonly line: string; readonly used: readonly string[]; next: number }[] = [];
  const enter = (line: string) => {
    back.set(line, found.size);
    found.set(line, found.size);
    open.push(line);
    isOpen.add(line);
    way.push({ line, used: uses(line), next: 0 });
  };
  const leadsTo = (line: string, number: number) => back.set(line, Math.min(back.get(line) ?? number, number));
  for (const start of starts) {
    if (!found.has(start)) enter(start);
    for (let here = way.at(-1); here; here = way.at(-1)) {
      const { line, used } = here;
      const next = used[here.next++];
      if (next !== undefined) {
        if (!found.has(next)) enter(next);
        else if (isOpen.has(next)) leadsTo(line, found.get(next) ?? 0);
        continue;
      }
      way.pop();
      const before = way.at(-1);
      if (before) leadsTo(before.line, back.get(line) ?? 0);
      if (back.get(line) !== found.get(line)) continue;
      const ring = open.splice(open.lastIndexOf(line));
      for (const one of ring) isOpen.delete(one);
      if (ring.length > 1 || used.includes(line)) rings.push(ring);
    }
  }
  return rings;
}
