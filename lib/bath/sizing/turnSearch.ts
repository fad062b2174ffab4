const right = Math.PI / 2;

/**
 * Angles among which the best one is, for a bar turned in a plane. The upright rectangle round it measures
 * l cos θ + w sin θ by l sin θ + w cos θ: both are concave between 0 and a right angle, and so is their product,
 * (l² + w²) sin θ cos θ + l w. Whatever grows with them is therefore least at an end of the angles allowed: at 0, at a
 * right angle, halfway, or where a side just reaches a limit.
 *
 * @param length m
 * @param width m
 * @param limits m, of either side; those without end are left out
 * @returns rad, 0 to π/2
 * @example anglesToTry(1, 0, [0.5]) // [0, 0.7854, 1.5708, 1.0472, 0.5236]
 */
export function anglesToTry(length: number, width: number, limits: readonly number[]): readonly number[] {
  const across = Math.hypot(length, width);
  const lean = Math.atan2(width, length);
  const reached = limits
    .filter((limit) => limit >= 0 && limit < across)
    .flatMap((limit) => {
      const first = Math.acos(limit / across);
      const second = Math.asin(limit / across);
      return [lean + first, lean - first, second - lean, Math.PI - second - lean];
    });
  const all = [0, right / 2, right, ...reached.filter((angle) => angle > 0 && angle < right)];
  return [...new Set(all)];
}

/**
 * The least of a function of an angle, 0 to π/2, that may be bumpy or not allowed in places: exact angles and a grid
 * first, then closer and closer about the best three.
 *
 * @param f what is there at an angle
 * @param exact angles that are worth a look of their own
 * @param cost what is to be least; infinite where not allowed
 * @returns what the three looks began with, and the best of each, in turns
 * @example leastOver((angle) => angle, [], (angle) => (angle - 1) ** 2)[1] // 1.0000
 */
export function leastOver<T>(
  f: (angle: number) => T,
  exact: readonly number[],
  cost: (one: T) => number,
): readonly T[] {
  const count = 60;
  const grid = Array.from({ length: count + 1 }, (_, i) => (i * right) / count);
  const seen = [...grid, ...exact].map((angle) => ({ angle, one: f(angle) }));
  const ranked = seen.filter(({ one }) => cost(one) < Number.POSITIVE_INFINITY);
  ranked.sort((a, b) => cost(a.one) - cost(b.one));
  return ranked.slice(0, 3).flatMap(({ angle, one }) => [one, closer(f, cost, angle, right / count)]);
}

const golden = (Math.sqrt(5) - 1) / 2;

function closer<T>(f: (angle: number) => T, cost: (one: T) => number, about: number, reach: number): T {
  let [low, high] = [Math.max(0, about - reach), Math.min(right, about + reach)];
  let best = f(about);
  const look = (angle: number) => {
    const one = f(angle);
    if (cost(one) < cost(best)) best = one;
    return cost(one);
  };
  let [left, middle] = [high - golden * (high - low), low + golden * (high - low)];
  let [atLeft, atMiddle] = [look(left), look(middle)];
  for (let i = 0; i < 45; i++) {
    // Where neither is allowed the known good angle says which way.
    const goLeft = atLeft === atMiddle ? about < (left + middle) / 2 : atLeft < atMiddle;
    if (goLeft) {
      high = middle;
      [middle, atMiddle] = [left, atLeft];
      left = high - golden * (high - low);
      atLeft = look(left);
    } else {
      low = left;
      [left, atLeft] = [middle, atMiddle];
      middle = low + golden * (high - low);
      atMiddle = look(middle);
    }
  }
  return best;
}
