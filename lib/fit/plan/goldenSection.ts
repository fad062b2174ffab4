const ratio = (Math.sqrt(5) - 1) / 2;

/**
 * Greatest value of a function with one hump between two places, by golden section.
 *
 * @param f the function
 * @param low one end
 * @param high the other
 * @param calls how often it may be asked, 2 or more
 * @returns the best place that was asked about
 * @example goldenSection((x) => -((x - 1) ** 2), 0, 3, 30) // 1
 */
export function goldenSection(f: (x: number) => number, low: number, high: number, calls: number): number {
  let [a, b] = [low, high];
  let c = b - ratio * (b - a);
  let d = a + ratio * (b - a);
  let atC = f(c);
  let atD = f(d);
  let best = atC >= atD ? { x: c, y: atC } : { x: d, y: atD };
  for (let i = 2; i < calls; i++) {
    if (atC >= atD) {
      [b, d, atD] = [d, c, atC];
      c = b - ratio * (b - a);
      atC = f(c);
      if (atC > best.y) best = { x: c, y: atC };
    } else {
      [a, c, atC] = [c, d, atD];
      d = a + ratio * (b - a);
      atD = f(d);
      if (atD > best.y) best = { x: d, y: atD };
    }
  }
  return best.x;
}
