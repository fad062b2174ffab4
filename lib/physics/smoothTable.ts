/**
 * A function through the points (x[i], y[i]), x rising: cubic between them without overshoot (slopes by Fritsch and
 * Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300), level below the first, held at the last value above the last.
 */
export function smoothTable(x: readonly number[], y: readonly number[]): (at: number) => number {
  const n = x.length;
  const px = Float64Array.from(x);
  const py = Float64Array.from(y);
  const step = (i: number) => ((py[i + 1] as number) - (py[i] as number)) / ((px[i + 1] as number) - (px[i] as number));
  const slope = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const before = step(i - 1);
    const after = step(i);
    slope[i] = before * after > 0 ? (2 * before * after) / (before + after) : 0;
  }
  slope[n - 1] = step(n - 2);
  return (at) => {
    if (at <= (px[0] as number)) return py[0] as number;
    if (at >= (px[n - 1] as number)) return py[n - 1] as number;
    let i = 0;
    while (at >= (px[i + 1] as number)) i++;
    const h = (px[i + 1] as number) - (px[i] as number);
    const t = (at - (px[i] as number)) / h;
    const u = 1 - t;
    return (
      u * u * ((1 + 2 * t) * (py[i] as number) + h * t * (slope[i] as number)) +
      t * t * ((3 - 2 * t) * (py[i + 1] as number) - h * u * (slope[i + 1] as number))
    );
  };
}
