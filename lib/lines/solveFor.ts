import { sameDimension } from "../measure/dimension.ts";
import { dimensionName } from "../measure/dimensionName.ts";
import { formatWithSpread } from "../measure/formatWithSpread.ts";

import { standardUncertainty } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { widthFrom } from "../measure/widthFrom.ts";
import { isValue } from "./isValue.ts";
import { type Probe, probe } from "./probe.ts";
import { rootsOf } from "./rootsOf.ts";
import type { Solved } from "./solved.ts";
import type { World } from "./supposed.ts";
import type { Given, Line } from "./types.ts";
import { unitShown } from "./unitShown.ts";
import { wantedIn } from "./wantedIn.ts";

/**
 * The amount of a given at which a worked line comes to what is wanted, with the width that everything else leaves it
 * (first order, JCGM 100:2008, 5.1.2). It is looked for within the given's own limits, else from a thousandth to a
 * thousand times its present amount, or 300 °F around a temperature.
 * @param world The open notebook, settled, and the case.
 * @param line Id of the worked line.
 * @param wanted What it is to come to.
 * @param by Id of the given.
 * @returns The amount; or, in words, that there is none, or which several there are.
 * @example (await solveFor({ ...world, inCase: "case 1" }, "line 3", "24 min", "line 1")).text // "41.2 ±1.3 in"
 */
export async function solveFor(
  world: World & { readonly inCase: string },
  line: string,
  wanted: string | Value,
  by: string,
): Promise<Solved> {
  const { desk, inCase } = world;
  const [asked, given] = [desk.kept.get(line), desk.kept.get(by)];
  if (!asked || !given) return { stopped: "the line is gone" };
  try {
    const { at, now } = probe(world, inCase, line, by);
    const grid = gridOf(now, given.line);
    const like = await firstAmount(at, [now.value, ...grid]);
    if ("says" in like) return { stopped: `"${asked.name}" has no number: ${like.says}` };
    const goal = goalOf(wanted, like, asked.line);
    const f = async (x: number) => {
      const y = await at(x);
      return isValue(y) && sameDimension(y.dimension, like.dimension) ? y.value - goal.value : undefined;
    };
    const { roots, range } = await rootsOf(f, grid);
    const unit = unitOf(given.line, now);
    const [first] = roots;
    if (first === undefined) return { stopped: noneInWords(asked.name, asked.line, like, range, goal.value) };
    const found = await Promise.all(roots.map((x) => atRoot(at, x, now, goal)));
    if (found.length > 1) {
      const texts = found.map((one) => formatWithSpread(one, unit).text);
      return { stopped: `there is more than one: ${texts.join(", ")}`, found };
    }
    const [amount] = found;
    if (!amount) return { stopped: "there is none" };
    return {
      value: amount.value,
      standardUncertainty: standardUncertainty(amount),
      text: formatWithSpread(amount, unit).text,
      widthFrom: widthFrom(amount),
      amount,
    };
  } catch (error) {
    return { stopped: error instanceof Error ? error.message : String(error) };
  }
}

/** The first amount that the line comes to, to know its kind; else why it has none at the given's present amount. */
async function firstAmount(at: Probe, grid: readonly number[]): Promise<Value | { readonly says: string }> {
  let says: string | undefined;
  for (const x of grid) {
    const found = await at(x);
    if (isValue(found)) return found;
    says ??= found.says;
  }
  return { says: says ?? "nothing was tried" };
}

function goalOf(wanted: string | Value, like: Value, { unit }: Line): Value {
  if (typeof wanted === "string")
    return { value: wantedIn(wanted, like.dimension, unit), dimension: like.dimension, components: new Map() };
  if (!sameDimension(wanted.dimension, like.dimension))
    throw new Error(`${dimensionName(wanted.dimension)} is wanted of a line that is ${dimensionName(like.dimension)}`);
  return wanted;
}

/** Where to look: the limits that the given has, else far around its present amount. */
function gridOf(now: Value, line: Line): readonly number[] {
  const { atLeast, atMost } = line as Given;
  const size = Math.abs(now.value) || 1;
  const spans = now.dimension.point
    ? Array.from({ length: 121 }, (_, i) => now.value + (i - 60) * (167 / 60))
    : [-1, 1].flatMap((side) => Array.from({ length: 61 }, (_, i) => side * size * 10 ** ((i - 30) / 10)));
  const low = atLeast ?? (now.dimension.point || now.value < 0 ? Number.NEGATIVE_INFINITY : 0);
  const high = atMost ?? Number.POSITIVE_INFINITY;
  const within = spans.filter((x) => x >= low && x <= high);
  const ends = [low, high].filter((x) => Number.isFinite(x));
  return [...new Set([...within, ...ends, now.value])].sort((a, b) => a - b);
}

function unitOf(line: Line, now: Value): string {
  return unitShown(now.dimension, line.unit);
}

/** The root with its width: what moves the line must be made good by the given. */
async function atRoot(at: Probe, x: number, now: Value, goal: Value): Promise<Value> {
  const step = 1e-5 * (Math.abs(x) || Math.abs(now.value) || 1);
  const [low, here, high] = [await at(x - step), await at(x), await at(x + step)];
  const [from, to] = [isValue(low) ? low : here, isValue(high) ? high : here];
  if (!isValue(here) || !isValue(from) || !isValue(to)) return { ...now, value: x, components: new Map() };
  const slope = (to.value - from.value) / ((isValue(high) ? step : 0) + (isValue(low) ? step : 0));
  const components = new Map<string, number>();
  for (const source of new Set([...here.components.keys(), ...goal.components.keys()])) {
    const part = ((goal.components.get(source) ?? 0) - (here.components.get(source) ?? 0)) / slope;
    if (Number.isFinite(part) && part !== 0) components.set(source, part);
  }
  return { value: x, dimension: now.dimension, components };
}

function noneInWords(
  name: string,
  line: Line,
  like: Value,
  range: readonly [number, number] | undefined,
  goal: number,
): string {
  if (!range) return `there is none: "${name}" has no number anywhere in what was tried`;
  const unit = unitOf(line, like);
  const plain = (value: number) =>
    formatWithSpread({ value, dimension: like.dimension, components: new Map() }, unit).text.replace(/\s*exactly/u, "");
  return `there is none: over all that was tried, "${name}" goes from ${plain(range[0] + goal)} to ${plain(range[1] + goal)}`;
}
