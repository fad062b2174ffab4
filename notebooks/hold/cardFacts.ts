import { holdsWords } from "../../lib/figure/index.ts";
import { formatQuantity, inUnit } from "../../lib/measure/index.ts";
import { amountStep, type Correction, corrections, mostAtOnce, type System } from "./corrections.ts";
import type { ShownPlan } from "./shownPlan.ts";
import { timeWords, waterWords } from "./words.ts";

/** One line of the minute rule: when, what, with a box to tick. */
export interface CardMinute {
  /** s from parts in. */
  readonly time: number;
  readonly clock: string;
  readonly says: string;
}

/** Everything that stands on a feed card, in words. */
export interface CardFacts {
  /** The order in pieces; every other one is heavy. */
  readonly order: readonly string[];
  readonly start: string;
  readonly hold: string;
  readonly promise: string;
  readonly minutes: readonly CardMinute[];
  /** s. */
  readonly holdTime: number;
  readonly feedFrom: number;
  readonly steady: boolean;
  readonly corrections: readonly Correction[];
  /** Of the band on this thermometer, in whole degrees. */
  readonly inside: { readonly low: number; readonly high: number };
  readonly most: string;
  readonly unit: string;
  readonly readEvery: string;
  readonly ignoreUntil: string | undefined;
  /** Minutes at which a reading is written down. */
  readonly toWrite: readonly number[];
}

const flow = { mass: 1, time: -1 } as const;
/** Pours stand on a card to 5 s: finer is not poured. */
const five = 5;

const clockOf = (seconds: number): string => {
  const whole = Math.round(seconds);
  const rest = whole % 60;
  return rest === 0 ? String(whole / 60) : `${Math.floor(whole / 60)}:${String(rest).padStart(2, "0")}`;
};

/** s between the pours of a card, and of its first: what is printed is what is followed. */
export function cardPours({ plan, work }: ShownPlan): readonly number[] {
  if (work.givens.pours === "steady" || plan.additions.length === 0) return [];
  const first = plan.additions[0];
  const water = first?.water ?? 0;
  const every = Math.max(five, Math.round(water / plan.feed / five) * five);
  const from = Math.round((first?.t ?? 0) / five) * five;
  const count = Math.floor((work.givens.hold - from - 1) / every) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => from + i * every);
}

/** The minutes at which a drip's jug is looked at: every five, every ten of a long hold. */
function dripMinutes(hold: number): readonly number[] {
  const every = hold <= 45 * 60 ? 300 : hold <= 90 * 60 ? 600 : 1200;
  return Array.from({ length: Math.floor((hold - 1) / every) }, (_, i) => (i + 1) * every);
}

/** What a feed card says of a plan. */
export function cardFacts(shown: ShownPlan, system: System): CardFacts {
  const { plan, work } = shown;
  const { target, band, hold, pours } = work.givens;
  const steady = pours === "steady";
  const unit = system === "US" ? "°F" : "°C";
  const onThermometer = (kelvin: number) => inUnit(kelvin + work.readsHighBy, { temperature: 1, point: true }, unit);
  const [first] = plan.additions;
  const feedFrom = steady ? (first?.t ?? 0) : 0;
  const rate = formatQuantity(plan.feed, system === "US" ? "fl oz/min" : "ml/min", {
    system,
    dimension: flow,
    ...(system === "US" ? { decimals: 1 } : { digits: 2 }),
  }).replace(/\/min$/, "");
  const times = cardPours(shown);
  const each = first?.water ?? 0;
  const every = (times[1] ?? 0) - (times[0] ?? 0);
  const total = steady ? plan.waterTotal : each * times.length;
  const step = amountStep(system);
  const minutes: readonly CardMinute[] = steady
    ? dripMinutes(hold).map((time) => ({
        time,
        clock: clockOf(time),
        says: `${waterWords(Math.round((plan.feed * Math.max(0, time - feedFrom)) / step) * step, system)} fed`,
      }))
    : times.map((time) => ({ time, clock: clockOf(time), says: waterWords(each, system) }));
  const holds = (share: number) => holdsWords(100 * share);
  return {
    order: steady
      ? ["Drip ", rate, " a minute"]
      : times.length > 1
        ? ["Pour ", waterWords(each, system), " every ", `${clockOf(every)} min`]
        : ["Pour ", waterWords(each, system), " once"],
    start: `Parts in when it reads ${Math.round(onThermometer(plan.startReading))} ${unit}, climbing. Start the clock then.`,
    hold: `Hold ${Math.ceil(onThermometer(target - band) - 1e-6)}–${Math.floor(onThermometer(target + band) + 1e-6)} ${unit} as it reads, for ${timeWords(hold)}; ${waterWords(Math.round(total / step) * step, system)} in all.`,
    promise: `Of 100 holds so fed ${holds(plan.inBand)} stay in the band, ${holds(plan.inBandCorrected)} with the corrections.`,
    minutes,
    holdTime: hold,
    feedFrom,
    steady,
    corrections: corrections(shown, system),
    inside: {
      low: Math.ceil(onThermometer(target - band) - 1e-6),
      high: Math.floor(onThermometer(target + band) + 1e-6),
    },
    most: waterWords(mostAtOnce(shown, system), system),
    unit,
    readEvery: timeWords(plan.table.readEvery),
    ignoreUntil: plan.table.ignoreUntil > 0 ? timeWords(Math.ceil(plan.table.ignoreUntil / 30) * 30) : undefined,
    toWrite: [0.25, 0.5, 0.75].map((share) => Math.round((share * hold) / 60)),
  };
}
