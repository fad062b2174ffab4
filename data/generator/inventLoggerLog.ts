import { random as seeded } from "./random.ts";
import { roughRun } from "./roughRun.ts";
import { clockText } from "./roughScrap.ts";
import { type RoughOptions, type RoughShop, roughShop } from "./roughShop.ts";
import { type TrueAnswers, trueAnswers } from "./roughTruth.ts";

export interface LoggerLog {
  readonly seed: number;
  /** One row a second with °C to a tenth; pours typed into the column beside it. */
  readonly text: string;
  readonly told: RoughShop["told"];
  readonly truth: TrueAnswers & {
    /** s from the first row. */
    readonly firstBoil: number;
    readonly end: number;
    readonly poured: readonly { readonly time: number; readonly mass: number }[];
    /** s from the first row, and share of full fire: the maker typed none of these. */
    readonly burner: readonly { readonly time: number; readonly share: number }[];
    /** K, and s after which the noise has forgotten itself. */
    readonly noise: { readonly sd: number; readonly time: number };
  };
}

/** s of a logger's file. */
const long = 7200;

/**
 * Two hours of a logger at 1 Hz, from some minutes before the first boil: noise that is correlated over 20 s, and pours
 * that the maker typed within a few seconds.
 */
export function inventLoggerLog(seed: number, options: RoughOptions = {}): LoggerLog {
  const r = seeded((seed ^ 0x51ed270b) >>> 0);
  const shop = roughShop(r, { habit: r.pick(["steady", "by eye"] as const), holds: long - 600, ...options });
  const lead = Math.round(r.from(120, 900));
  const warmUp = { ...shop.scenario, pours: () => 0, holds: 1 };
  const boil = roughRun(warmUp, seeded(seed)).firstBoil;
  const zero = Math.max(0, boil - lead);
  const scenario = { ...shop.scenario, holds: long - (boil - zero) };
  const run = roughRun(scenario, seeded(seed));
  const sd = r.from(0.15, 0.5);
  const time = 20;
  const keep = Math.exp(-1 / time);
  let noise = sd * r.normal();
  const typed = new Map<number, number>();
  for (const pour of shop.maker.made) {
    let at = Math.min(run.end - zero, Math.max(0, Math.round(pour.time - zero + 2 * r.normal())));
    while (typed.has(at)) at++;
    typed.set(at, pour.ounces);
  }
  const lines: string[] = [];
  for (let at = 0; at <= run.end - zero; at++) {
    noise = noise * keep + sd * Math.sqrt(1 - keep * keep) * r.normal();
    const shown = (run.shown[zero + at] ?? 0) + shop.thermometer.high + noise;
    lines.push(`${clockText(at)},${shown.toFixed(1)},${typed.get(at) ?? ""}`);
  }
  return {
    seed,
    text: `time,temp (°C),water (fl oz)\n${lines.join("\n")}\n`,
    told: shop.told,
    truth: {
      ...trueAnswers(run, scenario),
      firstBoil: run.firstBoil - zero,
      end: run.end - zero,
      poured: shop.maker.made.map((pour) => ({ time: pour.time - zero, mass: pour.mass })),
      burner: scenario.burner.map(({ since, share }) => ({ time: run.firstBoil - zero + since, share })),
      noise: { sd, time },
    },
  };
}
