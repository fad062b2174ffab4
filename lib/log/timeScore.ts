/**
 * How much like a run of a bath a column of times looks: a lasting of minutes to hours, rows some minutes apart
 * (loggers excepted), no step back. The figures are judgements; only differences between readings of one log count.
 *
 * @param times s for each row, undefined where a row has no time
 * @returns a log likelihood without its constant; higher is likelier
 * @example
 * timeScore([0, 90, 180]) > timeScore([0, 5400, 10800]) // true
 */
export function timeScore(times: readonly (number | undefined)[]): number {
  const known = times.filter((time): time is number => time !== undefined);
  if (known.length < 2) return 0;
  let low = Infinity;
  let high = -Infinity;
  let back = 0;
  const gaps: number[] = [];
  known.forEach((time, index) => {
    low = Math.min(low, time);
    high = Math.max(high, time);
    const gap = time - (known[index - 1] ?? time);
    if (gap < 0) back += 1;
    if (gap > 0) gaps.push(gap);
  });
  const few = Math.max(0, 8 - known.length) * 0.3;
  const lasting = Math.log(Math.max(high - low, 0.1) / 1800) / (1.1 + few);
  let score = -(lasting ** 2) / 2 - 4 * Math.min(back, 10);
  if (known.length <= 200 && gaps.length > 0) {
    const middle = gaps.sort((a, b) => a - b)[Math.floor(gaps.length / 2)] ?? 150;
    score -= (Math.log(middle / 150) / 1.1) ** 2 / 2;
  }
  return score;
}
