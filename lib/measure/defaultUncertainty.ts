import type { Kind, Knowing } from "./types.ts";

/** One default: the larger of a share of the value and a floor in SI, as standard uncertainty. */
export interface Doubt {
  readonly known: Knowing;
  /** Absent: every kind that has no row of its own. */
  readonly kind?: Kind;
  readonly share: number;
  readonly floor: number;
  /** Why, in a sentence for the page. */
  readonly says: string;
}

const ounce = 0.45359237 / 16;
const inch = 0.0254;
const fahrenheit = 5 / 9;
const inHg = 3386.389;
// A clock read to the minute is off by up to 30 s, evenly spread: 60 s / √12 (JCGM 100:2008, 4.3.7).
const minuteRead = 60 / Math.sqrt(12);

/**
 * How far each way of knowing is trusted when nobody wrote a ±. All of it is our judgement, no source: the page shows
 * these sentences and lets the maker put in another figure.
 */
export const defaultDoubts: readonly Doubt[] = [
  {
    known: "weighed",
    share: 0.01,
    floor: 0.5 * ounce,
    says: "A kitchen or shipping scale: 1 %, at least half an ounce.",
  },
  { known: "measured", share: 0.03, floor: 0, says: "Measured by hand: 3 %." },
  { known: "measured", kind: "mass", share: 0.02, floor: ounce, says: "A weight by measure: 2 %, at least an ounce." },
  {
    known: "measured",
    kind: "length",
    share: 0.002,
    floor: inch / 16,
    says: "A tape or a dipstick: a sixteenth of an inch, on long lengths 0.2 %.",
  },
  { known: "measured", kind: "temperature", share: 0, floor: 2 * fahrenheit, says: "A shop thermometer: 2 °F." },
  {
    known: "measured",
    kind: "temperature difference",
    share: 0,
    floor: 2 * fahrenheit,
    says: "A shop thermometer: 2 °F.",
  },
  {
    known: "measured",
    kind: "pressure",
    share: 0,
    floor: 0.1 * inHg,
    says: "A barometer, or the weather service brought to your height: 0.1 inHg.",
  },
  { known: "measured", kind: "time", share: 0, floor: minuteRead, says: "A clock read to the minute: 17 s." },
  { known: "measured", kind: "number", share: 0, floor: 0, says: "A count is taken as exact." },
  { known: "measured", kind: "money", share: 0, floor: 0, says: "A price paid is taken as exact." },
  { known: "measured", kind: "price by mass", share: 0, floor: 0, says: "A price paid is taken as exact." },
  { known: "measured", kind: "share", share: 0, floor: 0.03, says: "A share read off by eye: 3 of 100." },
  { known: "guessed", share: 0.15, floor: 0, says: "A guess: 15 %." },
  { known: "guessed", kind: "temperature", share: 0, floor: 8 * fahrenheit, says: "A guessed temperature: 8 °F." },
  {
    known: "guessed",
    kind: "temperature difference",
    share: 0.15,
    floor: 4 * fahrenheit,
    says: "A guessed difference: 15 %, at least 4 °F.",
  },
  {
    known: "guessed",
    kind: "pressure",
    share: 0,
    floor: 0.5 * inHg,
    says: "A guessed air pressure: 0.5 inHg, the swing of the weather.",
  },
  { known: "guessed", kind: "time", share: 0.15, floor: 60, says: "A guessed time: 15 %, at least a minute." },
  { known: "guessed", kind: "share", share: 0, floor: 0.1, says: "A guessed share: 10 of 100." },
  { known: "from the label", share: 0.02, floor: 0, says: "As the label says: 2 %." },
  {
    known: "from the label",
    kind: "temperature",
    share: 0,
    floor: 2 * fahrenheit,
    says: "A temperature from a label: 2 °F.",
  },
  { known: "from the label", kind: "share", share: 0, floor: 0.02, says: "A share from a label: 2 of 100." },
  { known: "published", share: 0.005, floor: 0, says: "A published figure: 0.5 %." },
  {
    known: "published",
    kind: "temperature",
    share: 0,
    floor: 0.5 * fahrenheit,
    says: "A published temperature: 0.5 °F.",
  },
  { known: "published", kind: "share", share: 0, floor: 0.005, says: "A published share: half of 1 in 100." },
];

/**
 * The row of the table that speaks about a way of knowing and a kind: its own, else the general one of that way.
 *
 * @throws RangeError where the table has neither.
 * @example
 * doubtOf("weighed", "mass").says // "A kitchen or shipping scale: 1 %, at least half an ounce."
 */
export function doubtOf(known: Knowing, kind: Kind, doubts: readonly Doubt[] = defaultDoubts): Doubt {
  const rows = doubts.filter((row) => row.known === known);
  const row = rows.find((each) => each.kind === kind) ?? rows.find((each) => each.kind === undefined);
  if (!row)
    throw new RangeError(
      `unknown way of knowing: ${String(known)}; one of ${[...new Set(doubts.map((each) => each.known))].join(", ")}`,
    );
  return row;
}

/**
 * Standard uncertainty, SI, of a value about which only its way of knowing is known.
 *
 * @param si the value in SI; a temperature in K
 * @param doubts the table, which a page may change
 * @throws RangeError for a way of knowing that the table does not have.
 * @example
 * defaultUncertainty("weighed", "mass", 10) // 0.1
 */
export function defaultUncertainty(
  known: Knowing,
  kind: Kind,
  si: number,
  doubts: readonly Doubt[] = defaultDoubts,
): number {
  const { share, floor } = doubtOf(known, kind, doubts);
  return Math.max(share * Math.abs(si), floor);
}
