import { boils } from "./boilingTable.ts";
import type { Random } from "./random.ts";
import { steamHeat } from "./roughBath.ts";
import { type Habit, type Maker, roughMaker } from "./roughMaker.ts";
import type { RoughScenario } from "./roughRun.ts";

/** Turns of the screw for a harder shop. Defaults are the usual one. */
export interface RoughOptions {
  /** Share of logs that have each of the faults that come now and then. Default 1/3. */
  readonly faults?: number;
  /** Standard deviation of the cup all night, default 0.03, and of each pour, 0.05. */
  readonly cup?: number;
  readonly eachPour?: number;
  /** Factor on all gusts, default 1. */
  readonly gusts?: number;
  /** Share of pours that a maker who forgets does not write down; default drawn from 0.03 to 0.09. */
  readonly forgets?: number;
  /** Standard deviation of the told salts, default 0.02, and of the curve's slope, 0.07. */
  readonly salts?: number;
  readonly slope?: number;
  /** ln-standard deviation of the gaps of a steady maker; default drawn from 0.05 to 0.2. */
  readonly unsteady?: number;
  readonly habit?: Habit;
  /** s at the boil; default drawn from 20 to 100 min. */
  readonly holds?: number;
  readonly waterTold?: boolean;
  readonly warmUp?: "from cold" | "its end" | "not seen";
}

/** Faults that come now and then. Those of `strangers` no fit knows of. */
export const strangers = ["wind bursts", "pour a row late", "drag-out", "tip moved", "carbonate", "splash"] as const;
export const slips = ["forgets pours", "misreads", "writes late", "burner changed", "parts in cold"] as const;
export type Fault = (typeof strangers)[number] | (typeof slips)[number];

/** A thermometer's kind and how far it may be off either way, K: this generator's own figures of new wire and dials. */
const thermometers: readonly (readonly [kind: string, tolerance: number])[] = [
  ["type K", 2.2],
  ["type K", 2.2],
  ["type K special", 1.1],
  ["type J special", 1.1],
  ["bimetal dial", 2.78],
];

export interface RoughShop {
  readonly scenario: RoughScenario;
  readonly maker: Maker;
  readonly habit: Habit;
  readonly faults: ReadonlySet<Fault>;
  readonly unsteady: number;
  readonly cup: number;
  /** K by which the thermometer reads high, and its kind's tolerance. */
  readonly thermometer: { readonly kind: string; readonly tolerance: number; readonly high: number };
  /** Shares as the maker writes them, one for each burner change. */
  readonly burnerTold: readonly number[];
  readonly told: {
    readonly hydroxide: number;
    readonly nitrate: number;
    /** kg, and its standard uncertainty as a share; absent where the maker does not know. */
    readonly water?: { readonly value: number; readonly share: number };
    readonly pressure: number;
    /** Inside of the tank, m, and W of gas at full fire, gross. */
    readonly tank: { readonly length: number; readonly width: number; readonly depth: number };
    readonly burner?: number;
  };
}

/** Draws tank, brine, fire, maker and what goes wrong. */
export function roughShop(r: Random, options: RoughOptions): RoughShop {
  const usual = options.faults ?? 1 / 3;
  const faults = new Set<Fault>([...strangers, ...slips].filter(() => r.chance(usual)));
  const has = (fault: Fault) => faults.has(fault);
  const habit =
    options.habit ?? r.pick(["steady", "steady", "steady", "by eye", "by eye", "by eye", "few", "few", "none", "drip"]);
  const water = Math.exp(r.from(Math.log(2), Math.log(10))) * 3.785 * r.from(0.8, 1);
  const feet = r.chance(0.5) ? r.from(0, 800) : r.from(800, 7000);
  const pressure = 101_325 * (1 - (0.0065 * feet * 0.3048) / 288.15) ** 5.2559 * (1 + 0.005 * r.normal());
  const share = r.from(0.62, 0.85);
  const salt = water * r.from(1.02, 1.4) * (0.8 / (share + 0.145 * (1 - share)));
  const hydroxide = salt * share;
  const nitrate = salt - hydroxide;
  const departure = { offset: -0.4 + 1.5 * r.normal(), scale: 1 + (options.slope ?? 0.07) * r.normal() };
  const hot = boils(hydroxide / water, nitrate / water, pressure, departure);
  const dilution = r.from(0.3e6, 0.46e6);
  const latent = steamHeat(hot) - 4180 * (hot - 20) + dilution;
  const boilOff = (water * r.from(0.003, 0.011)) / 60;
  const losses = boilOff * latent * r.from(-0.05, 0.5);
  const gusts = options.gusts ?? 1;
  const usualHold = Math.round(60 * r.from(20, 100));
  const holds = options.holds ?? usualHold;
  const cup = (options.cup ?? 0.03) * r.normal();
  const unsteady = options.unsteady ?? r.from(0.05, 0.2);
  const maker = roughMaker({ habit, cup, eachPour: options.eachPour ?? 0.05, boilOff, holds, unsteady }, r);
  const fire = boilOff * latent + losses;
  const topEvaporation = boilOff * r.from(0.05, 0.6);
  // Nobody turns a fire down so far that the bath stands still, as far as they know.
  const least = (losses + 1.15 * topEvaporation * latent) / fire;
  const downTo = r.pick([0.75, 0.5, 0.85].filter((to) => to > least));
  const burnerTold = has("burner changed") && downTo !== undefined ? (r.chance(0.3) ? [downTo, 1] : [downTo]) : [];
  const turned = holds * r.from(0.25, 0.6);
  const goIn = Math.round(60 * r.from(3, Math.min(15, holds / 180)));
  const [kind, tolerance] = r.pick(thermometers);
  const scenario: RoughScenario = {
    tank: {
      hydroxide,
      nitrate,
      water,
      pressure,
      departure,
      steel: 490 * water * r.from(0.25, 0.6),
      air: r.from(2, 32),
      tap: r.from(6, 22),
      losses,
      hot,
      dilution,
      topEvaporation,
    },
    starts: options.warmUp === "from cold" || r.chance(0.7) ? r.from(15, 60) : r.from(105, 122),
    fire,
    gusts: [
      { sd: gusts * r.from(0.04, 0.11), time: 200 },
      { sd: gusts * r.from(0.05, 0.16), time: 1500 },
    ],
    fades: 0.08 * r.normal(),
    ...(has("wind bursts") ? { windEvery: 900 } : {}),
    burner: burnerTold.map((to, i) => ({
      since: Math.round(turned + i * 0.3 * holds),
      share: to * Math.exp(0.2 * r.normal()),
    })),
    ...(has("parts in cold") || has("drag-out")
      ? {
          parts: {
            goIn,
            comeOut: Math.round(Math.min(goIn + 60 * r.from(15, 35), holds * r.from(0.6, 0.95))),
            mass: r.from(0.5, 4),
            dragOut: has("drag-out") ? r.from(0.003, 0.02) : 0,
          },
        }
      : {}),
    ...(has("splash") ? { splash: { since: Math.round(holds * r.from(0.1, 0.9)), share: r.from(0.005, 0.015) } } : {}),
    carbonate: has("carbonate") ? r.from(0.005, 0.015) : 0,
    ...(has("tip moved") ? { tip: { since: Math.round(holds * r.from(0.15, 0.85)), kelvin: 0.5 * r.normal() } } : {}),
    mixing: Math.exp(r.from(Math.log(10), Math.log(60))),
    lag: Math.exp(r.from(Math.log(6), Math.log(40))),
    holds,
    hottest: 162,
    pours: maker.pours,
  };
  const doubt = r.from(0.05, 0.1);
  const knows = options.waterTold ?? r.chance(0.7);
  const weighed = options.salts ?? 0.02;
  // A trough three to five times as long as it is wide, three quarters full.
  const volume = (water + salt) / 1530;
  const depth = r.from(0.07, 0.13);
  const width = Math.sqrt(volume / depth / r.from(3, 5));
  const efficiency = r.from(0.25, 0.5);
  return {
    scenario,
    maker,
    habit,
    faults,
    unsteady,
    cup,
    thermometer: { kind, tolerance, high: tolerance * r.from(-1, 1) },
    burnerTold,
    told: {
      hydroxide: hydroxide * (1 + weighed * r.normal()),
      nitrate: nitrate * (1 + weighed * r.normal()),
      ...(knows ? { water: { value: water * (1 + doubt * r.normal()), share: doubt } } : {}),
      pressure: pressure * (1 + 0.004 * r.normal()),
      tank: { length: volume / depth / width, width, depth: depth / 0.75 },
      ...(r.chance(0.5) ? { burner: fire / efficiency } : {}),
    },
  };
}
