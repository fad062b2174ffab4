import type { InventedRow } from "./inventLog.ts";
import { type Random, random } from "./random.ts";
import { type Scenario, simulate, type Truth } from "./simulate.ts";

const flOz = 0.0295735295625 * 0.9982;
const lb = 0.45359237;
const gallon = 3.785411784 * 0.9982;

/** What the maker of an invented run did, and how it was written down. */
export interface DemoPlan {
  readonly seed: number;
  /** °F that the thermometer reads too high. */
  readonly readsHigh: number;
  readonly hydroxidePounds: number;
  readonly nitratePounds: number;
  readonly waterGallons: number;
  readonly pressure: number;
  /** kg/s that the fire boils off, about. */
  readonly boilOff: number;
  readonly starts: number;
  readonly gusts: readonly [number, number];
  readonly wind: boolean;
  readonly sag: number;
  /** s from the first boil: parts in, parts out, end. */
  readonly partsIn: number;
  readonly partsOut: number;
  readonly end: number;
  readonly partsPounds: number;
  /** fl oz of one cup and °F shown at which the maker pours. */
  readonly cup: number;
  readonly poursAt: number;
  /** s between pours at least, and one pour (number from 0) that comes late by so much. */
  readonly rest: number;
  readonly late?: { readonly pour: number; readonly by: number };
  readonly burner?: { readonly at: number; readonly share: number };
  /** s between readings, and the number of the reading that is misread with what was written too much, °F. */
  readonly every: number;
  readonly misread?: { readonly reading: number; readonly by: number };
  /** s before the first boil when the log begins. */
  readonly lead: number;
  readonly wholeMinutes: boolean;
}

export interface DemoRun {
  readonly rows: readonly InventedRow[];
  readonly truth: Truth;
}

/** Runs one plan: the bath second by second, then what the maker wrote of it. */
export function demoRun(plan: DemoPlan): DemoRun {
  const r = random(plan.seed);
  const cupBias = 1 + 0.02 * r.normal();
  const written: { time: number; ounces: number }[] = [];
  let lastPour = -1e9;
  let held = -1;
  const scenario: Scenario = {
    hydroxide: plan.hydroxidePounds * lb * (1 + 0.005 * r.normal()),
    nitrate: plan.nitratePounds * lb * (1 + 0.005 * r.normal()),
    water: plan.waterGallons * gallon * (1 + 0.02 * r.normal()),
    pressure: plan.pressure,
    departure: { offset: -0.6, scale: 1.02 },
    starts: plan.starts,
    heat: plan.boilOff * 2.58e6,
    sag: plan.sag,
    gusts: plan.gusts,
    wind: plan.wind,
    cold: 0.2e6,
    mixing: 18,
    lag: 11,
    burner: [[0, 1]],
    parts: [],
    holds: plan.end,
    pours: (time, shown, since) => {
      if (since < 60 || since > plan.end - 60) return 0;
      if (shown * 1.8 + 32 < plan.poursAt || since - lastPour < plan.rest) return 0;
      if (plan.late && written.length === plan.late.pour) {
        if (held < 0) held = since;
        if (since - held < plan.late.by) return 0;
      }
      lastPour = since;
      written.push({ time, ounces: plan.cup });
      return plan.cup * flOz * cupBias * (1 + 0.04 * r.normal());
    },
  };
  const first = simulate({ ...scenario, holds: 1, pours: () => 0 }, random(plan.seed + 1)).firstBoil;
  const truth = simulate(
    {
      ...scenario,
      parts: [[first + plan.partsIn, plan.partsPounds * lb]],
      burner: plan.burner
        ? [
            [0, 1],
            [first + plan.burner.at, plan.burner.share],
          ]
        : [[0, 1]],
    },
    random(plan.seed + 1),
  );
  return { rows: writtenRows(plan, r, truth, written), truth };
}

function writtenRows(
  plan: DemoPlan,
  r: Random,
  truth: Truth,
  written: readonly { time: number; ounces: number }[],
): InventedRow[] {
  const start = truth.firstBoil - plan.lead;
  const clock = (time: number) =>
    plan.wholeMinutes ? 60 * Math.round((time - start) / 60) : Math.round((time - start + 1.5 * r.normal()) / 5) * 5;
  const list: { time: number; order: number; row: Omit<InventedRow, "time"> }[] = [];
  let number = 0;
  for (let time = start; time <= truth.end; time += plan.every + (number % 3 === 1 ? 30 : 0)) {
    const shown = (truth.shown[Math.round(time)] ?? 0) * 1.8 + 32 + plan.readsHigh + 0.35 * r.normal();
    const f = Math.round(shown) + (plan.misread?.reading === number ? plan.misread.by : 0);
    list.push({ time: Math.max(0, clock(time)), order: 0, row: { fahrenheit: String(f) } });
    number++;
  }
  for (const pour of written) list.push({ time: clock(pour.time), order: 1, row: { water: String(pour.ounces) } });
  list.push({ time: clock(truth.firstBoil), order: 2, row: { note: "boils" } });
  list.push({ time: clock(truth.firstBoil + plan.partsIn), order: 3, row: { note: "parts in" } });
  list.push({ time: clock(truth.firstBoil + plan.partsOut), order: 3, row: { note: "parts out" } });
  if (plan.burner)
    list.push({
      time: clock(truth.firstBoil + plan.burner.at),
      order: 4,
      row: { note: `burner to ${plan.burner.share * 100} %` },
    });
  list.push({ time: clock(truth.end), order: 9, row: { note: "end" } });
  return list.sort((a, b) => a.time - b.time || a.order - b.order).map(({ time, row }) => ({ time, ...row }));
}
