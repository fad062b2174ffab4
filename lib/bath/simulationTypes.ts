import type { Brine, CurveDeparture } from "../physics/types.ts";
import type { BrineCurve } from "./brineCurve.ts";

/** What the tank's sides are made of, where it is known. */
export interface TankWall {
  /** kg of steel that warms with the bath; worked out from `thickness` where absent; without either, none. */
  readonly steel?: number;
  /** m. */
  readonly thickness?: number;
  /** Of the outer face; 0.9 where absent. */
  readonly emissivity?: number;
  /** m and W/(m K). */
  readonly insulation?: { readonly thickness: number; readonly conductivity: number };
}

/** Inside measures, m. */
export interface BathTank {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly wall?: TankWall;
}

/** Gas burnt at full fire, W gross, and the share of it that reaches the bath; or that heat itself, W. */
export type BathBurner = { readonly power: number; readonly efficiency: number } | { readonly heat: number };

/** Losses as a fit gives them; each times the bath's temperature over the air's. */
export interface FittedLosses {
  /** W/K; below 0 where flue gas warms the wall. */
  readonly wall: number;
  /** W/K, of the surface by convection and radiation. */
  readonly top?: number;
  /** W per m² and Pa of vapour pressure over the air's: heat of the quiet bath's evaporation; none where absent. */
  readonly evaporation?: number;
}

export interface SurroundingAir {
  /** K; 293.15 where absent. */
  readonly temperature?: number;
  /** Pa; 101,325 where absent. */
  readonly pressure?: number;
  /** Pa, of the water in the air; 884 where absent. */
  readonly vapourPressure?: number;
}

export interface SimulatedThermometer {
  /** K, what it reads too much. */
  readonly offset?: number;
  /** s, in which it makes up 63 % of a step. */
  readonly lag?: number;
  /** K, what it is read to: 5/9 for whole °F; 0 for as fine as you like. */
  readonly rounding?: number;
  /** K, a temperature that it can show exactly; 273.15 where absent (0 °C, 32 °F). */
  readonly roundingFrom?: number;
}

export interface SimulationSetup {
  readonly tank: BathTank;
  readonly burner: BathBurner;
  /** "computed" where absent: `wallLoss` of the sides, `surfaceLoss` of the top. */
  readonly losses?: "computed" | "none" | FittedLosses;
  readonly thermometer?: SimulatedThermometer;
  readonly air?: SurroundingAir;
}

export interface SimulationCharge {
  /** kg. */
  readonly water: number;
  /** kg of each salt in the tank; `{}` for plain water. */
  readonly salts: Brine;
  /** K, at most the boiling point; or boiling. */
  readonly temperature: number | "boiling";
  /** How this bath departs from the published boiling curve; not at all where absent. Plain water never does. */
  readonly departure?: CurveDeparture;
}

/** Water put in at one time: kg, K. */
export interface SlugIn {
  readonly kind: "slug";
  readonly time: number;
  readonly water: number;
  readonly temperature: number;
}

/** Water run in steadily: kg/s, K. */
export interface FeedIn {
  readonly kind: "feed";
  readonly from: number;
  readonly to: number;
  readonly rate: number;
  readonly temperature: number;
}

/** The burner's share of full fire from then on; 1 at the start. */
export interface BurnerSet {
  readonly kind: "burner";
  readonly time: number;
  readonly share: number;
}

/** Steel put in: kg, K. */
export interface PartsIn {
  readonly kind: "parts in";
  readonly time: number;
  readonly mass: number;
  readonly temperature: number;
}

/** All parts out again, with so many kg of bath on them. */
export interface PartsOut {
  readonly kind: "parts out";
  readonly time: number;
  readonly dragOut: number;
}

/** Dry salt put in: kg of each; K, the air's where absent. */
export interface SaltIn {
  readonly kind: "salt in";
  readonly time: number;
  readonly salts: Brine;
  readonly temperature?: number;
}

export type ScheduledEvent = SlugIn | FeedIn | BurnerSet | PartsIn | PartsOut | SaltIn;

/** Times are s from the start. Things of one time happen in this order: parts out, salt, water and parts in, burner. */
export interface SimulationSchedule {
  readonly end: number;
  readonly events?: readonly ScheduledEvent[];
}

/** A boiling line as a table: ln of kg of salt per kg of water, rising, and K, rising. At least four rows. */
export interface BoilingTable {
  readonly lnRatio: readonly number[];
  readonly T: readonly number[];
}

export interface SimulationOptions {
  /** s, the longest step; 10 where absent. */
  readonly step?: number;
  /** s, rising: when to record. Every step where absent. */
  readonly record?: readonly number[];
  /** s over which a slug mixes in; 0 where absent: at once. */
  readonly mixing?: number;
  /** s over which parts take up their heat; 0 where absent: at once. */
  readonly partsWarming?: number;
  /** The boiling line of this mix under this pressure, before the departure; worked out where absent. */
  readonly curve?: BrineCurve | BoilingTable;
  /** Whether each recorded point carries what went in and out so far. */
  readonly tally?: boolean;
}

/** "warming" is said of every bath below its boil, one that cools too. */
export type BathState = "warming" | "boiling" | "dry" | "overflowing" | "salt coming out";

/** What went in and out of the bath since the start. kg and J; enthalpies count from liquid water at 0 °C. */
export interface BathTally {
  fire: number;
  walls: number;
  top: number;
  /** kg of steam, and what enthalpy it took. */
  steam: number;
  steamEnthalpy: number;
  /** kg of water put in, and what enthalpy it brought. */
  water: number;
  waterEnthalpy: number;
  /** J, parts brought in and took out. */
  partsEnthalpy: number;
  /** kg of parts in the bath now. */
  parts: number;
  /** J, dry salt brought in. */
  saltEnthalpy: number;
  /** kg of bath dragged out, kg of water in it, and the enthalpy it took. */
  dragOut: number;
  dragOutWater: number;
  dragOutEnthalpy: number;
}

export interface CoursePoint {
  /** s. */
  readonly time: number;
  /** kg. */
  readonly water: number;
  /** kg of each salt in the tank. */
  readonly salts: Brine;
  /** K, of the bath. */
  readonly T: number;
  /** K, at which this brine boils. */
  readonly boilingPoint: number;
  /** K, what the thermometer shows. */
  readonly shown: number;
  readonly state: BathState;
  /** kg/s of water that left as steam, mean over the step that ended here. */
  readonly boilOff: number;
  readonly tally?: Readonly<BathTally>;
}

export interface SimulationEvent {
  /** s. */
  readonly time: number;
  readonly says: string;
}

/** What a slug did. */
export interface SlugReport {
  readonly time: number;
  /** kg. */
  readonly water: number;
  /** Whether it stopped a boil. */
  readonly stoppedBoil: boolean;
  /** s until the bath boiled again; absent where it did not before the end. */
  readonly stoppedFor?: number;
  /** kg that flash at once where the slug is mixed in at once. */
  readonly flashes: number;
  /** The most that a cold pocket of it can flash on the heat that the bath holds above water's boiling point: kg, m³. */
  readonly couldFlash: { readonly mass: number; readonly volume: number };
}

/** J; `fire` is the sum of all the others. */
export interface HeatTotals {
  /** What reached the bath from the burner. */
  readonly fire: number;
  /** Turning water into steam: latent heat of plain water at the bath's temperature. */
  readonly steam: number;
  /** Warming the water put in to the bath's temperature, as plain water. */
  readonly makeUpWater: number;
  readonly walls: number;
  /** The surface's convection and radiation; what evaporates is in `steam`. */
  readonly top: number;
  /** Taken up by parts. */
  readonly parts: number;
  /** Taken up by the tank's steel. */
  readonly tank: number;
  /** Taken up by dry salt as it warmed and dissolved; below 0 where that gave heat off. */
  readonly salt: number;
  /** Warming the bath itself, with the heat of its thickening and thinning. */
  readonly bath: number;
}

export interface SimulationTotals {
  /** kg of water that left as steam. */
  readonly steam: number;
  /** kg of water put in. */
  readonly water: number;
  /** kg of bath dragged out. */
  readonly dragOut: number;
  /** J of gas burnt, gross; absent where the burner is known by its heat into the bath. */
  readonly gas?: number;
  readonly heat: HeatTotals;
}

export interface SimulatedBath {
  readonly course: readonly CoursePoint[];
  readonly events: readonly SimulationEvent[];
  readonly slugs: readonly SlugReport[];
  readonly totals: SimulationTotals;
  /** Where it ended: the schedule's end, or where it stopped. */
  readonly end: CoursePoint & {
    /** m³ of bath, with the parts in it. */
    readonly volume: number;
  };
  /** Why it ended before the schedule did. */
  readonly stops?: {
    readonly state: "dry" | "overflowing" | "salt coming out";
    readonly time: number;
    readonly reason: string;
  };
}
