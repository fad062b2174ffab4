import type { LogNext } from "../lib/fit/index.ts";
import { inUnit, unit } from "../lib/measure/index.ts";
import { fitOf } from "./figures/balanceOf.ts";
import type { Beside, FigureInput } from "./page/drawings.ts";
import type { System } from "./page/showValue.ts";

const most = 5;

const unitOf = (system: System) => unit(system === "US" ? "fl oz" : "ml");

const noBreak = "\u00a0";

/** A half-width before and after, with just as many decimals as it takes to tell them apart. */
function narrowed(now: number, after: number, unit: string): string {
  const decimals = [0, 1, 2].find((count) => now.toFixed(count) !== after.toFixed(count)) ?? 2;
  return `from ±${now.toFixed(decimals)}${noBreak}${unit} to ±${after.toFixed(decimals)}${noBreak}${unit}`;
}

const water = (kg: number, system: System): number => inUnit(kg, { mass: 1 }, unitOf(system));

/** What one thing to log would gain, of the answer that it narrows most. */
export function gainSaid({ boilOff, waterToTarget }: LogNext, system: System): string {
  const share = ({ now, after }: { readonly now: number; readonly after: number }) => (now > 0 ? 1 - after / now : 0);
  const ofBoilOff = `the boil-off ${narrowed(100 * boilOff.now, 100 * boilOff.after, "%")}`;
  const ofWater = `the water to come back to target ${narrowed(water(waterToTarget.now, system), water(waterToTarget.after, system), unitOf(system).symbol)}`;
  const [first, second] = share(boilOff) >= share(waterToTarget) ? [boilOff, waterToTarget] : [waterToTarget, boilOff];
  const said = (one: typeof boilOff) => (one === boilOff ? ofBoilOff : ofWater);
  return `Would narrow ${said(first)}${share(second) >= 0.1 ? `, and ${said(second)}` : ""}.`;
}

/** What to log next time, ranked by what it would gain. */
export function logNext(input: Pick<FigureInput, "notebook" | "system">): Beside | undefined {
  const list = fitOf(input)?.logNext ?? [];
  if (list.length === 0) return undefined;
  return {
    title: "What to log next time",
    items: list.slice(0, most).map((one) => ({ what: one.what, how: one.how, gain: gainSaid(one, input.system) })),
  };
}
