const most = 500;

/**
 * A pure function of a text and a kind that keeps its last few hundred answers: a logger's file asks the same unit
 * a hundred thousand times. Forgets all of them when full, so that strange texts cannot fill the memory.
 *
 * @example
 * remembering((text, kind) => `${text} of ${kind}`)("oz", "water") // "oz of water"
 */
export function remembering<Kind extends string, Answer>(
  work: (text: string, kind: Kind) => Answer,
): (text: string, kind: Kind) => Answer {
  const kept = new Map<string, Answer>();
  return (text, kind) => {
    const key = `${kind}\n${text}`;
    const known = kept.get(key);
    if (known !== undefined || kept.has(key)) return known as Answer;
    const answer = work(text, kind);
    if (kept.size >= most) kept.clear();
    kept.set(key, answer);
    return answer;
  };
}
