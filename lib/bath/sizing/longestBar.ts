/** A bar in a rectangle: its length, m, and its angle to the first side, rad. */
export interface BarAcross {
  readonly length: number;
  readonly angle: number;
}

/**
 * The longest bar of a width that lies in a rectangle, at any angle. Turned, it touches all four sides, l cos θ + w sin θ
 * = a and l sin θ + w cos θ = b; without the angle that is ((a + b)/(l + w))² + ((a - b)/(l - w))² = 2. From straight on,
 * turning first costs length: the equation finds what a walk uphill from 0 would miss. A bar wider than both sides can
 * still lie across, shorter than it is wide.
 *
 * @param a m, side from which the angle is counted; 0 or more, as the others
 * @param b m
 * @param width m
 * @returns length, m (0 where none fits) and angle, rad, 0 to π/2
 * Source: the condition for a rectangle in a rectangle, Carver 1957 (from memory), derived anew as above.
 * @example
 * longestBar(4, 3, 0); // { length: 5, angle: 0.6435 }
 * longestBar(4, 3, 2); // { length: 4, angle: 0 }: wider bars gain nothing from the diagonal
 */
export function longestBar(a: number, b: number, width: number): BarAcross {
  const long = Math.max(a, b);
  const short = Math.min(a, b);
  const turned = (angle: number) => (a < b ? Math.PI / 2 - angle : angle);
  const over = (length: number) =>
    ((long + short) / (length + width)) ** 2 + (long === short ? 0 : ((long - short) / (length - width)) ** 2) - 2;
  if (width > short && width <= long) return { length: short, angle: turned(Math.PI / 2) };
  if (width <= short) {
    const most = width === 0 ? Math.hypot(long, short) : Math.sqrt(long ** 2 + short ** 2 - width ** 2);
    if (most <= long || (width > 0 && over(long) <= 0)) return { length: long, angle: turned(0) };
    // A bar without width is a line: its diagonal is exact.
    const { length, angle } =
      width === 0
        ? { length: most, angle: Math.atan2(short, long) }
        : touching(long, short, width, root(over, long, most));
    return length > long ? { length, angle: turned(angle) } : { length: long, angle: turned(0) };
  }
  if (width > Math.hypot(a, b)) return { length: 0, angle: 0 };
  const { length, angle } = touching(long, short, width, root(over, 0, short));
  return { length, angle: turned(angle) };
}

/** The angle at which a bar of about this length touches all sides, and what lies inside at that angle. */
function touching(long: number, short: number, width: number, length: number): BarAcross {
  const sum = (long + short) / (length + width);
  const difference = long === short ? 0 : (long - short) / (length - width);
  const angle = Math.atan2(sum - difference, sum + difference);
  const within = Math.min(
    (long - width * Math.sin(angle)) / Math.cos(angle),
    (short - width * Math.cos(angle)) / Math.sin(angle),
  );
  return { length: Math.max(0, within), angle };
}

/** Where a function that is above 0 at `low` and not at `high` crosses, halving. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (from + to) / 2;
    if (middle <= from || middle >= to) break;
    if (f(middle) > 0) from = middle;
    else to = middle;
  }
  return from;
}
