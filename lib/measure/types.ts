/**
 * Exponents of the base quantities: {length: 1, time: -1} is a speed. A key that is absent counts as zero.
 * `point` marks a temperature on a scale (292 °F), which is another kind than a difference of
 * temperatures (2 °F): both have the exponent {temperature: 1}, only the first has `point`.
 */
export interface Dimension {
  readonly length?: number;
  readonly mass?: number;
  readonly time?: number;
  readonly temperature?: number;
  readonly money?: number;
  readonly point?: true;
}

/**
 * A number with its doubt, in SI units. `components` splits the standard uncertainty along independent
 * standard sources (JCGM 100:2008, 5.1): key is the source's id, entry is sensitivity times standard
 * uncertainty, signed. Two values that share a source are correlated by it, so `a - a` is exactly zero wide.
 */
export interface Value {
  readonly value: number;
  readonly dimension: Dimension;
  readonly components: ReadonlyMap<string, number>;
  /** 95 % interval, where it is not simply value ± 1.96 u (one-sided, skewed or from few readings). */
  readonly interval95?: readonly [low: number, high: number];
}

/** How a given is known. Each way has a stated default standard uncertainty (`defaultUncertainty`). */
export type Knowing = "weighed" | "measured" | "guessed" | "from the label" | "published";

/** A quantity as somebody wrote it. Reading `text` again gives the same `si`; `text` itself is never changed. */
export interface Written {
  readonly text: string;
  /** In SI: kg, m, s, K, Pa, m³, kg/s … by the dimension of `unit`. */
  readonly si: number;
  readonly dimension: Dimension;
  /** The unit as our table spells it ("fl oz", "°F"), even where it was written another way or not at all. */
  readonly unit: string;
  readonly standardUncertainty: number;
  readonly known: Knowing;
}

/** What could not be read: where (character, from 0), what was expected and what to do, worded for the maker. */
export interface Unread {
  readonly at: number;
  readonly read: string;
  readonly expected: string;
  readonly remedy: string;
}

/** What sort of quantity is meant. Two kinds can share a dimension: a mass and an amount of water are both kg. */
export type Kind =
  | "number"
  | "share"
  | "mass"
  | "water"
  | "length"
  | "area"
  | "volume"
  | "time"
  | "temperature"
  | "temperature difference"
  | "temperature rate"
  | "pressure"
  | "energy"
  | "power"
  | "heat flux"
  | "mass flow"
  | "water flow"
  | "hourly water flow"
  | "volume flow"
  | "density"
  | "salt to water"
  | "rate"
  | "money"
  | "price by mass";

export type UnitSystem = "US" | "metric";

/** SI value = (number in the unit + offset) x factor. Only the scales of temperature have an offset. */
export interface Unit {
  /** As our table spells it: "fl oz", "°F", "BTU/(h ft²)". */
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
}

/** What a field expects: the kind, and the unit taken when none is written. */
export interface Expected {
  readonly kind: Kind;
  readonly unit?: string;
  /** Smallest and largest value that makes sense here, SI. Outside, the text is refused with a reason. */
  readonly atLeast?: number;
  readonly atMost?: number;
}
