import { carriedInterval } from "../measure/carriedInterval.ts";
import { dimensionOf } from "../measure/dimensionOf.ts";
import type { Value } from "../measure/types.ts";
import { type Direction, directionsOf, type Inputs, stepAlong } from "./directions.ts";
import { isValue } from "./isValue.ts";
import { jobsTogether } from "./jobsTogether.ts";
import type { FastFunc, Job, SlowFunc } from "./types.ts";

/** Plain numbers as a function takes them: one that is left out is undefined, which its own optional argument says. */
type Numbers = readonly number[];

/**
 * A quick function is looked at a 64th of a standard unit to either side. The step that JCGM 100:2008 has in 5.1.3,
 * note 2 (a whole unit) would make a bent function's component differ from the same worked as a formula, and
 * what both share would not cancel; a much smaller one would drown in what searches inside a function leave over
 * (1e-9 of the result). This cuts off some 4e-5 of what a whole unit does.
 */
const QUICK = { share: 1 / 64, least: Math.cbrt(Number.EPSILON) };

/** A slow one to one side only, by an eighth: a simulation repeats itself to some 1e-6, and each run costs seconds. */
const SLOW = { share: 1 / 8, least: 1e-4 };

/**
 * Calls a function of plain numbers and carries the doubt of what it is given, source by source (JCGM 100:2008, 5.1.2
 * and 5.2.2): exactly where it knows its slopes, else by one difference for each way in which its arguments can be off.
 * Where only one side is in the function's range, that side tells.
 * @param func The function.
 * @param args What it is given, in its order; undefined where left out.
 * @param jobOf Gives the job for a slow function: for progress, and to be ended.
 * @returns The amount; a promise of it for a slow function.
 * @throws Error of the function's own outside its range; RangeError where it comes to no number.
 * @example callPlain({ name: "cube", takes: [{ name: "side" }], says: "", numbers: (a) => a ** 3 }, [exact(2)]).value // 8
 */
export function callPlain(
  func: FastFunc | SlowFunc,
  args: readonly unknown[],
  jobOf?: () => Job,
): Value | Promise<Value> {
  const given = func.takes.map((_, i) => args[i]);
  const inputs = [...given.map((each) => (isValue(each) ? each : undefined)), ...(func.besides ?? [])];
  const at = inputs.map((each) => each?.value) as Numbers;
  const ways = directionsOf(inputs, func.partials !== undefined);
  if (func.slowNumbers) return callSlow(func, inputs, at, ways, jobOf?.());
  const run = (numbers: Numbers) => finite(func.name, func.numbers(...numbers));
  const value = run(at);
  const known = exactSlopes(func, at, ways);
  const slopes =
    known ??
    ways.map((way) => {
      const step = stepAlong(inputs, way, QUICK.share, QUICK.least);
      return slopeOf(value, step, attempt(run, moved(at, way, step)), attempt(run, moved(at, way, -step)));
    });
  return carried(func, inputs, value, ways, slopes, run);
}

async function callSlow(
  func: SlowFunc,
  inputs: Inputs,
  at: Numbers,
  ways: readonly Direction[],
  job: Job | undefined,
): Promise<Value> {
  const differences = func.partials ? [] : ways;
  const jobs = jobsTogether(job, differences.length + 1);
  const run = async (part: number, numbers: Numbers): Promise<number> => {
    const found = finite(func.name, await func.slowNumbers(jobs.part(part), ...numbers));
    jobs.done(part);
    return found;
  };
  const tried = (part: number, numbers: Numbers): Promise<Tried> =>
    run(part, numbers).then(
      (found) => ({ found }),
      (error: unknown) => ({ error }),
    );
  const base = run(0, at);
  const tells = differences.map(async (way, i) => {
    const step = stepAlong(inputs, way, SLOW.share, SLOW.least);
    const up = await tried(i + 1, moved(at, way, step));
    // Without a base nothing is told by going the other way.
    const value = await base.catch(() => undefined);
    if (value === undefined || jobs.over()) return 0;
    const down = "error" in up ? await tried(i + 1, moved(at, way, -step)) : { error: undefined };
    return slopeOf(value, step, up, down);
  });
  const [value, ...found] = await Promise.all([base, ...tells]).catch((error: unknown) => {
    jobs.end();
    throw error;
  });
  return carried(func, inputs, value, ways, exactSlopes(func, at, ways) ?? found, () => Number.NaN);
}

/** By standard unit of each way, where the function knows its slopes. */
function exactSlopes(func: FastFunc | SlowFunc, at: Numbers, ways: readonly Direction[]) {
  const partials = func.partials?.(...at);
  if (!partials) return undefined;
  return ways.map(({ by }) =>
    finite(
      func.name,
      by.reduce((sum, part, i) => sum + (part === 0 ? 0 : part * (partials[i] ?? Number.NaN)), 0),
    ),
  );
}

function finite(name: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw new RangeError(`${name} comes to no number here`);
}

const moved = (at: Numbers, way: Direction, step: number): Numbers =>
  at.map((number, i) => (way.by[i] ? number + step * (way.by[i] ?? 0) : number));

type Tried = { readonly found: number } | { readonly error: unknown };

function attempt(run: (numbers: Numbers) => number, numbers: Numbers): Tried {
  try {
    return { found: run(numbers) };
  } catch (error) {
    return { error };
  }
}

/** Of both sides where both are there: cutting errors of first order cancel. */
function slopeOf(here: number, step: number, up: Tried, down: Tried): number {
  if ("found" in up && "found" in down) return (up.found - down.found) / (2 * step);
  if ("found" in up) return (up.found - here) / step;
  if ("found" in down) return (here - down.found) / step;
  throw up.error;
}

function carried(
  func: FastFunc | SlowFunc,
  inputs: Inputs,
  value: number,
  ways: readonly Direction[],
  slopes: readonly number[],
  run: (numbers: Numbers) => number,
): Value {
  const components = new Map<string, number>();
  ways.forEach(({ sources }, i) => {
    for (const [source, part] of sources)
      components.set(source, (components.get(source) ?? 0) + (slopes[i] ?? 0) * part);
  });
  for (const [source, component] of components) if (component === 0) components.delete(source);
  const result = { value, dimension: func.gives === undefined ? {} : dimensionOf(func.gives), components };
  const there = inputs.flatMap((each, i) => (each ? [{ each, i }] : []));
  if (there.every(({ each }) => each.interval95 === undefined)) return result;
  const byInput = there.map(({ i }) => {
    const way = ways.findIndex(({ alone }) => alone === i);
    return way < 0 ? 0 : (slopes[way] ?? 0) / (ways[way]?.by[i] ?? 1);
  });
  // An end of an interval may lie outside the function's range: then its sides are widened in proportion.
  const throughRange = (...numbers: number[]): number => {
    const all = inputs.map(() => undefined) as unknown as number[];
    there.forEach(({ i }, place) => {
      all[i] = numbers[place] ?? Number.NaN;
    });
    const end = attempt(run, all);
    return "found" in end ? end.found : Number.NaN;
  };
  const values = there.map(({ each }) => each);
  const interval95 = carriedInterval(result, values, byInput, throughRange);
  return interval95 ? { ...result, interval95 } : result;
}
