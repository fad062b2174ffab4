/** Where a function is 0, and whether it is known everywhere it was looked for. */
export interface Roots {
  readonly roots: readonly number[];
  /** Least and greatest of what was found, where there is anything. */
  readonly range?: readonly [low: number, high: number];
}

type F = (x: number) => Promise<number | undefined>;
interface Point {
  readonly x: number;
  readonly y: number;
}

const STEPS = 80;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function is 0 between the first and the last of some points: each change of sign is closed in, and each place
 * where it only comes near to 0 between two points is looked into. A jump or a pole is no root.
 * @param f Undefined where it has no value.
 * @param grid Points to look at, rising.
 * @param relative How near is near enough, as a share of x.
 * @returns The roots, rising; two nearer than that are one.
 * @example (await rootsOf(async (x) => x * x - 4, [1, 1.5, 3])).range // [-3, 5]
 */
export async function rootsOf(f: F, grid: readonly number[], relative = 1e-10): Promise<Roots> {
  const points: (Point | undefined)[] = [];
  for (const x of grid) points.push(await pointAt(f, x));
  const known = points.flatMap((point) => point ?? []);
  const roots: number[] = known.flatMap(({ x, y }) => (y === 0 ? [x] : []));
  for (let i = 1; i < points.length; i++) {
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]];
    if (!a || !b) continue;
    const closed = await closeIn(f, a, b, relative);
    if (closed !== undefined) roots.push(closed);
    if (c && a.y * b.y > 0 && b.y * c.y > 0 && Math.abs(b.y) <= Math.min(Math.abs(a.y), Math.abs(c.y))) {
      const beyond = await crossing(f, a, b, c);
      if (beyond?.y === 0) roots.push(beyond.x);
      else if (beyond)
        for (const side of [await closeIn(f, a, beyond, relative), await closeIn(f, beyond, c, relative)])
          if (side !== undefined) roots.push(side);
    }
  }
  const sorted = roots.sort((a, b) => a - b);
  const apart = sorted.filter((x, i) => i === 0 || x - (sorted[i - 1] ?? 0) > 1e-7 * Math.max(Math.abs(x), 1e-300));
  const ys = known.map(({ y }) => y);
  return { roots: apart, ...(ys.length > 0 && { range: [Math.min(...ys), Math.max(...ys)] as const }) };
}

async function pointAt(f: F, x: number): Promise<Point | undefined> {
  const y = await f(x);
  return y === undefined || !Number.isFinite(y) ? undefined : { x, y };
}

/** One root between two points of unlike sign, by false position with halved weights, else by halving. */
async function closeIn(f: F, from: Point, to: Point, relative: number): Promise<number | undefined> {
  let [a, b] = [from, to];
  if (!(a.y * b.y < 0)) return undefined;
  let weights = { a: a.y, b: b.y };
  for (let step = 0; step < STEPS; step++) {
    const width = Math.abs(b.x - a.x);
    if (width <= relative * Math.max(Math.abs(a.x), Math.abs(b.x))) break;
    const aimed = (a.x * weights.b - b.x * weights.a) / (weights.b - weights.a);
    // Every third step halves, so that a bad shape cannot hold it up.
    const x = step % 3 === 2 || !(aimed > Math.min(a.x, b.x) && aimed < Math.max(a.x, b.x)) ? (a.x + b.x) / 2 : aimed;
    const m = await pointAt(f, x);
    if (!m) return undefined;
    if (m.y === 0) return m.x;
    if (m.y * a.y > 0) {
      weights = { a: m.y, b: weights.b / 2 };
      a = m;
    } else {
      weights = { a: weights.a / 2, b: m.y };
      b = m;
    }
  }
  // At a jump the two sides stay as far apart as they were.
  const near = Math.min(Math.abs(a.y), Math.abs(b.y));
  if (near > 1e-4 * Math.max(Math.abs(from.y), Math.abs(to.y))) return undefined;
  return Math.abs(a.y) < Math.abs(b.y) ? a.x : b.x;
}

/** Follows a dip towards 0 between three points; gives the first point on the other side, or on 0 as near as it tells. */
async function crossing(f: F, a: Point, b: Point, c: Point): Promise<Point | undefined> {
  const sign = Math.sign(b.y);
  let [low, high] = [a.x, c.x];
  let best = b;
  for (let step = 0; step < STEPS && high - low > 1e-9 * Math.max(Math.abs(low), Math.abs(high)); step++) {
    const [x1, x2] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    const [p, q] = [await pointAt(f, x1), await pointAt(f, x2)];
    if (!p || !q) return undefined;
    for (const point of [p, q]) if (point.y * sign < best.y * sign) best = point;
    if (best.y * sign <= 0) return best;
    if (p.y * sign < q.y * sign) high = x2;
    else low = x1;
  }
  const scale = Math.max(Math.abs(a.y), Math.abs(c.y));
  return Math.abs(best.y) <= 1e-12 * scale ? { x: best.x, y: 0 } : undefined;
}
