/**
 * Where a falling function crosses zero between low and high: secant steps kept inside a bracket, halving it where
 * they would leave. Quick on the nearly straight functions it is given (4 to 6 calls), and always ends.
 */
export function findZero(f: (x: number) => number, low: number, high: number, guess: number): number {
  let lo = low;
  let hi = high;
  let x = Math.min(Math.max(guess, lo), hi);
  let y = f(x);
  // ln of a sum against ln of strength has a slope near -1: the first step takes it to be so.
  let next = x + y;
  for (let i = 0; i < 100; i++) {
    if (y === 0) return x;
    if (y > 0) lo = x;
    else hi = x;
    if (!(next > lo && next < hi)) next = (lo + hi) / 2;
    const step = next - x;
    if (Math.abs(step) < 1e-13 * (1 + Math.abs(x)) || next === lo || next === hi) return next;
    const before = y;
    x = next;
    y = f(x);
    if (Math.abs(step) < 1e-9 && Math.abs(y) < 1e-9) return y === before ? x : x - (y * step) / (y - before);
    next = y === before ? (lo + hi) / 2 : x - (y * step) / (y - before);
  }
  return x;
}
