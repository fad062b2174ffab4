import type { Brine, CurveDeparture, Salt } from "../../physics/types.ts";

/** Along the tank's length, across its width, and up. */
export type Vector = readonly [x: number, y: number, z: number];

/** A bar in a tank; m from a corner of the tank's bottom. */
export interface Pose {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly middle: Vector;
  /** Unit vectors, square to each other, of length, width and thickness. */
  readonly along: Vector;
  readonly widthwise: Vector;
  readonly thickwise: Vector;
}

/** How a part lies: along the tank, turned on the level, tilted in the plane of length and depth, or both. */
export type Way = "straight" | "floorDiagonal" | "tilted" | "spaceDiagonal";

/** Inside measures under the surface, m. */
export interface LiquidBox {
  readonly length: number;
  readonly width: number;
  /** Working depth, of the liquid. */
  readonly depth: number;
}

export interface LongestPart extends Readonly<Record<Way, number>> {
  /** How each lies; none where nothing fits and the length is 0. */
  readonly poses: Readonly<Partial<Record<Way, Pose>>>;
}

export interface PartSize {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

export interface SmallestTankOptions {
  /** m, to every wall, the bottom and the surface; 0 where absent. */
  readonly clearance?: number;
  /** m, inside measures that are held; the others are found. */
  readonly length?: number;
  readonly width?: number;
  readonly depth?: number;
  /** What is to be small: the liquid's volume where absent, the area of its surface, or the tank's length. */
  readonly by?: "volume" | "surface" | "length";
}

export interface SmallTank extends LiquidBox {
  readonly way: Way;
  /** m³ under the working depth, the part's own included. */
  readonly volume: number;
  /** m². */
  readonly surface: number;
  readonly pose: Pose;
}

export interface SmallestTanks extends Readonly<Partial<Record<Way, SmallTank>>> {
  /** The smallest of them; of equals the one in which the part lies more simply. */
  readonly smallest?: SmallTank;
}

/** Inside measures of a tank and how far its wall rises above the liquid, m. */
export interface TankSize extends LiquidBox {
  readonly freeboard: number;
}

export interface TankHolds {
  /** m³ under the working depth. */
  readonly volume: number;
  /** m³ of it that parts and hangers take. */
  readonly displaced: number;
  /** m³ of liquid that brings the level to the working depth with parts and hangers in. */
  readonly liquid: number;
  /** m by which the level falls when they come out. */
  readonly fall: number;
  /** m³ between the working depth and the brim. */
  readonly spare: number;
  /** m², of the liquid. */
  readonly surface: number;
}

export interface Plate {
  /** m² of plate cut to size, without waste. */
  readonly area: number;
  /** kg. */
  readonly mass: number;
}

export interface StandLoad {
  /** kg, in use. */
  readonly mass: number;
  /** kg, full to the brim. */
  readonly brimful: number;
  /** N, of the brimful tank. */
  readonly force: number;
}

export interface BathToFill {
  /** kg of salt per kg of water. */
  readonly ratio: number;
  /** kg/m³, hot. */
  readonly density: number;
  /** kg. */
  readonly mass: number;
  readonly water: number;
  readonly salt: number;
  readonly salts: Readonly<Record<Salt, number>>;
  /** Relative, of each mass: the brine's density is known to 2 % (95 %). */
  readonly standardUncertainty: number;
}

export interface BathToFillGivens {
  /** Shares of the salts by weight, on any scale: kg in the present bath will do. */
  readonly salts: Brine;
  /** K, the temperature at which the bath is to boil. */
  readonly target: number;
  /** Pa, of the air. */
  readonly pressure: number;
  /** How this bath departs from the published boiling curve; not at all where absent. */
  readonly departure?: CurveDeparture;
  /** kg of salt per kg of water, where the bath's own is known: then target and pressure set the density alone. */
  readonly ratio?: number;
}

export interface WaterHeatUpGivens {
  readonly tank: LiquidBox;
  /** kg of steel that warms with the water; 0 where absent. */
  readonly steel?: number;
  /** W of gas burnt, gross. */
  readonly power: number;
  /** Share of it that reaches the water, above 0 to 1. */
  readonly efficiency: number;
  /** K, of the water at the start. */
  readonly from: number;
  /** K; a brisk boil where absent. */
  readonly to?: number;
  /** K, of the air; 293.15 where absent. */
  readonly air?: number;
  /** Pa; 101,325 where absent. */
  readonly pressure?: number;
}

export type WaterHeatUp =
  | {
      readonly state: "gets there";
      /** s. */
      readonly time: number;
      /** kg of propane. */
      readonly gas: number;
      /** J of gas, gross. */
      readonly heat: number;
      /** kg of water gone by evaporation. */
      readonly evaporated: number;
    }
  | { readonly state: "never gets there" /** K, where losses take all the heat. */; readonly stallsAt: number };

export type WorkTankName = "clean" | "rinse" | "boiling rinse" | "oil";

export interface WorkTank extends TankSize {
  readonly name: WorkTankName;
  /** m³ to fill. */
  readonly volume: number;
}

/** Something that words alone can say, with where it comes from. */
export interface Caution {
  readonly what: string;
  readonly source: string;
}
