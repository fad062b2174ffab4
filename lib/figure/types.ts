/** What every figure needs besides its data. */
export interface FigureOptions {
  /** Makes the elements: the page's document, or a DOM library's in Node. */
  readonly document: Document;
  /** Whole width of the figure in px, edge to edge. */
  readonly width: number;
  /** °F, fl oz and lb/gal, or °C, ml and kg/l. */
  readonly system: "US" | "metric";
  /** Phone layout: fewer labels, none smaller. Default: below 600 px. */
  readonly narrow?: boolean;
}

/** A reading of the thermometer: s from the first row, K. */
export interface ReadingDrawn {
  readonly id: string;
  readonly time: number;
  readonly temperature: number;
  readonly struck: boolean;
  /** Why it was struck out or stands apart. */
  readonly reason?: string;
  /** Not struck out by the maker, but it does not belong: drawn apart, with its reason. */
  readonly apart?: boolean;
  /** 0..1, of a reading that stands apart: how likely it was misread. */
  readonly probability?: number;
}

/** Water put in: s from the first row, kg; `duration` in s for a feed. */
export interface AdditionDrawn {
  readonly time: number;
  readonly mass: number;
  readonly duration?: number;
  /** Words in place of the amount. */
  readonly label?: string;
}

/** A pour that was probably made and not written down: s from the first row, kg, 0..1. */
export interface UnwrittenPour {
  readonly time: number;
  readonly mass: number;
  /** 95 % limits of the mass, kg. */
  readonly low?: number;
  readonly high?: number;
  readonly probability: number;
}

/** Words on the time rule: the fire where it changes, a remark. s from the first row. */
export interface EventDrawn {
  readonly time: number;
  readonly text: string;
}

/** The bath's boiling point, or its temperature as it was fitted, with its 95 % spread: s, K, K, K. */
export interface CoursePoint {
  readonly time: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A stretch of the hold, and where it stood to the target band. s from the first row. */
export interface BandStretch {
  readonly start: number;
  readonly end: number;
  readonly side: "inside" | "over" | "under";
}

/** Limits of the target band, K. */
export interface Target {
  readonly low: number;
  readonly high: number;
}

export interface Stretch {
  readonly start: number;
  readonly end: number;
}

export interface HoldReplayedData {
  readonly readings: readonly ReadingDrawn[];
  readonly target?: Target;
  readonly hold?: Stretch;
  /** s from the first row. Minutes are counted from here, or else from the first row. */
  readonly partsIn?: number;
  readonly partsOut?: number;
  readonly additions: readonly AdditionDrawn[];
  /** Drawn hollow beside the additions, and not counted among them. */
  readonly unwritten?: readonly UnwrittenPour[];
  readonly events: readonly EventDrawn[];
  readonly course?: readonly CoursePoint[];
  readonly inBand?: readonly BandStretch[];
  readonly sums?: {
    /** Words beside the water strip in place of the sum of the pours: "152 ±8 fl oz in six pours". */
    readonly poured?: string;
    /** Words on the bar in place of the sum of `inBand`: "in the band 36 of 40 min". */
    readonly inBand?: string;
    /** How the line is called. Default: "boiling point". */
    readonly course?: string;
  };
}

/** One moment of the bath: s, kg of salt for each kg of water, K and its 95 % spread in K. */
export interface RatioPoint {
  readonly time: number;
  readonly ratio: number;
  readonly boilingPoint: number;
  readonly low: number;
  readonly high: number;
}

export interface RatioAndBoilingPointData {
  readonly course: readonly RatioPoint[];
  /** kg salt per kg water at which the bath boils at a temperature in K; rises with it. */
  readonly ratioAt: (temperature: number) => number;
  /** The pressure as the caption says it: "27.7 inHg". */
  readonly pressure?: string;
  readonly target?: Target;
  readonly hold?: Stretch;
  /** kg/kg that the ends of the hold are said to have, where the answer beside the figure gives them. Default: the course's. */
  readonly ends?: { readonly start: number; readonly end: number };
  readonly partsIn?: number;
}

/** What one reading says about the water gone since the first boil: s, kg, kg, 0..1. */
export interface WaterPoint {
  readonly time: number;
  readonly gone: number;
  readonly standardUncertainty: number;
  /** Below 0.5 it is drawn apart. */
  readonly weight: number;
  readonly because?: string;
}

export interface WaterGoneData {
  readonly points: readonly WaterPoint[];
  /** kg/s with its 95 % spread. */
  readonly slope: { readonly value: number; readonly low: number; readonly high: number };
  /** s from the first row. */
  readonly firstBoil: number;
  readonly end: number;
  /** kg gone at the first boil by the line. Default 0. */
  readonly goneAtFirstBoil?: number;
  /** The line's knots where the fire changes (s, kg, 95 % spread in kg); default: one straight line. */
  readonly line?: readonly CoursePoint[];
  readonly partsIn?: number;
}

export interface RunStripData {
  readonly readings: readonly ReadingDrawn[];
  readonly course?: readonly CoursePoint[];
  readonly target?: Target;
  readonly additions: readonly AdditionDrawn[];
  /** s from the first row: what the strip's width stands for, so that strips in a list share one rule. */
  readonly span: Stretch;
}

/** Inside measures of a tank and the depth of the liquid in it, m. */
export interface TankDrawnData {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly level?: number;
  /** m that the drawing's whole width stands for, so that tanks in a list share one scale. */
  readonly scaleLength?: number;
}

/** Inside measures of a tank, its liquid and a part in it, m. */
export interface TankPlanData {
  readonly length: number;
  readonly width: number;
  /** Of the liquid. */
  readonly depth: number;
  /** Of the wall above the liquid; not drawn where absent. */
  readonly freeboard?: number;
  /** Kept free along walls, bottom and surface; none where absent. */
  readonly clearance?: number;
  readonly part?: {
    readonly length: number;
    readonly width: number;
    readonly thickness: number;
    /** How it lies, in words: "along the diagonal of the floor". */
    readonly lies?: string;
    /** Eight, from a corner of the tank's bottom: along its length, across its width, up; bits 1, 2, 4 of the place say
     * which end of the part's length, width, thickness. */
    readonly corners: readonly (readonly [x: number, y: number, z: number])[];
  };
}

/** Heat over the time of the figure: J, with the 95 % limits in J. Below 0 it came out of that thing. */
export interface HeatAmount {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Where the heat of one run went. An amount that is left out is not known; one of 0 to 0 is none. */
export interface WhereHeatWentData {
  /** s from the first row: the time that the amounts stand for. */
  readonly start: number;
  readonly end: number;
  readonly steam?: HeatAmount;
  /** Warming make-up water from the tap to the bath. */
  readonly makeUpWater?: HeatAmount;
  readonly wallsAndTop?: HeatAmount;
  readonly parts?: HeatAmount;
  /** Warming the bath itself. */
  readonly bath?: HeatAmount;
  /** All of it, walls and top included where they are known. Default: the sum, as wide as its amounts could make it. */
  readonly total?: HeatAmount;
  /** Gas burnt. */
  readonly fire?: HeatAmount;
  /** What of the gas went past the tank. Default: fire less total, as wide as the two could make it. */
  readonly pastTank?: HeatAmount;
}

/** What was believed before the log and what is with it: 95 % limits in any one unit. */
export interface ToldBarData {
  readonly prior: { readonly low: number; readonly high: number };
  readonly posterior: { readonly low: number; readonly high: number };
  readonly told: "nothing" | "some" | "much";
}

export interface ToldBarOptions {
  readonly document: Document;
  /** px, 80 to 10,000. Default 160. */
  readonly width?: number;
  /** Text of 13 px in place of 14. */
  readonly narrow?: boolean;
}

/** A box of text or a mark, px from the figure's upper left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
