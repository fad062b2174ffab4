/** Salts of a bath in kg for each kg of water; absent means none, `{}` is plain water. */
export interface Brine {
  readonly sodiumHydroxide?: number;
  readonly sodiumNitrate?: number;
  readonly sodiumNitrite?: number;
  readonly potassiumNitrate?: number;
}

export type Salt = keyof Brine;

export const salts: readonly Salt[] = ["sodiumHydroxide", "sodiumNitrate", "sodiumNitrite", "potassiumNitrate"];

/** Kinds of thermometer with a published tolerance: thermocouples by ASTM E230 or IEC 60584 (class), and others. */
export type ThermometerKind =
  | "type K"
  | "type K special"
  | "type K class 1"
  | "type K class 2"
  | "type N"
  | "type N special"
  | "type J"
  | "type J special"
  | "type T"
  | "type T special"
  | "type E"
  | "type E special"
  | "platinum class A"
  | "platinum class B"
  | "bimetal dial";

export interface ThermometerTolerance {
  /** K, the most it may be off either way. */
  readonly limit: number;
  /** K, limit/√3. */
  readonly standardUncertainty: number;
  readonly source: string;
}

/** What a thermometer read in boiling plain water, and what the air pressure was. */
export interface ThermometerCheck {
  /** K. */
  readonly read: number;
  /** Pa at the place. */
  readonly pressure?: number;
  /** Pa, corrected to sea level as weather reports give it; needs `altitude`. */
  readonly barometer?: number;
  /** m above sea level. */
  readonly altitude?: number;
  /** K, where the thermometer will be used. */
  readonly at?: number;
  readonly readUncertainty?: number;
  readonly pressureUncertainty?: number;
}

export interface ThermometerOffset {
  /** K, what it reads too much: take it off its readings. */
  readonly offset: number;
  readonly standardUncertainty: number;
  /** K, where water boiled. */
  readonly boilingPoint: number;
}

/** How much of a salt dissolves: published, or not known and why. */
export type Solubility =
  | {
      readonly state: "published";
      /** kg of salt per kg of water. */
      readonly ratio: number;
      readonly source: string;
    }
  | { readonly state: "unknown"; readonly because: string };

/** How a bath's true boiling point departs from the published curve. */
export interface CurveDeparture {
  /** K, added at `pivot`. */
  readonly offset: number;
  /** Factor on the curve's distance from `pivot`. */
  readonly scale: number;
  /** K, boiling point on the published curve at which the offset holds; 417.594 (292 °F) where absent. */
  readonly pivot?: number;
}
