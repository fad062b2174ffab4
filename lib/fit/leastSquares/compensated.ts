/** A sum whose rounding error is carried along (Neumaier's variant of Kahan's): as if added in twice the digits. */
export function compensatedSum(count: number, term: (i: number) => number): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < count; i += 1) {
    const x = term(i);
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
}
