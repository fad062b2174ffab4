/**
 * A way round from a line back to itself, if its formula leads there.
 * @param start The line to begin with.
 * @param uses The lines that a line's formula uses.
 * @returns The lines on the way, `start` first, each using the next and the last using `start`; undefined if there is none.
 * @example findLoop("a", (line) => (line === "a" ? ["b"] : ["a"])) // ["a", "b"]
 */
export function findLoop(start: string, uses: (line: string) => readonly string[]): readonly string[] | undefined {
  const cameFrom = new Map<string, string>();
  const left = [start];
  // Breadth first, so that the shortest way round is told.
  for (let i = 0; i < left.length; i++) {
    const line = left[i] ?? start;
    for (const next of uses(line)) {
      if (next === start) {
        const way = [line];
        for (let back = line; back !== start; ) {
          back = cameFrom.get(back) ?? start;
          way.push(back);
        }
        return way.reverse();
      }
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, line);
      left.push(next);
    }
  }
  return undefined;
}
