/**
 * The lines that may lead back to themselves: all that are left when lines that use nothing more are taken away, again
 * and again. The work grows with the number of lines and mentions, no faster.
 * @param lines All lines.
 * @param uses The lines that a line's formula uses; all of them are among `lines`.
 * @returns Every line of every loop, and those that wait for one.
 * @example loopSuspects(["a", "b"], (line) => (line === "a" ? ["b"] : [])) // []
 */
export function loopSuspects(lines: Iterable<string>, uses: (line: string) => readonly string[]): readonly string[] {
  const open = new Map<string, number>();
  const usedBy = new Map<string, string[]>();
  for (const line of lines) {
    const used = uses(line);
    open.set(line, used.length);
    for (const one of used) {
      const users = usedBy.get(one);
      if (users) users.push(line);
      else usedBy.set(one, [line]);
    }
  }
  const free = [...open].filter(([, count]) => count === 0).map(([line]) => line);
  for (let line = free.pop(); line !== undefined; line = free.pop()) {
    open.delete(line);
    for (const user of usedBy.get(line) ?? []) {
      const count = (open.get(user) ?? 0) - 1;
      open.set(user, count);
      if (count === 0) free.push(user);
    }
  }
  return [...open.keys()];
}
