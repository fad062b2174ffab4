/** A bath, its fire and what is asked of both. SI. */
export interface FiringGivens {
  /** W of the fire that reach the bath at its boil, losses not yet taken off. */
  readonly fire: number;
  /** How much more of it reaches a bath that warms up, as a factor over the whole heat-up; 1 for none. */
  readonly warming?: number;
  /** W that walls, and the surface by convection and radiation, lose at the target. */
  readonly wall: number;
  readonly top: number;
  /** W/(m² Pa), heat of a quiet bath's evaporation; that of the published table where absent. */
  readonly evaporation?: number;
  /** Inside of the tank, m; `plate` its thickness. */
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly plate?: number;
  /** kg of all salts together, and the hydroxide's share of it; the rest is sodium nitrate. */
  readonly salt: number;
  readonly hydroxide: number;
  /** K, the boiling point that is held, and how far from it is still good. */
  readonly target: number;
  readonly band: number;
  /** Pa, of the air. */
  readonly pressure: number;
  /** How this bath departs from the published boiling curve: K, and a scale. */
  readonly offset: number;
  readonly scale: number;
  /** K, of the air, of the bath before it is lit, of the feed and of the parts before they go in. */
  readonly cold: number;
  /** kg of steel that go in at the target. */
  readonly parts: number;
  /** s from parts in. */
  readonly hold: number;
  /** kg/s fed throughout the hold; what holds the ratio where absent. */
  readonly feed?: number;
}

/** What such a firing does. SI. */
export interface Firing {
  /** W over all that a quiet bath at its boil would lose, evaporation too: below 0 it simmers and never boils. */
  readonly spare: number;
  /** kg of water in the bath at its target. */
  readonly water: number;
  /** kg of water in it before it is lit. */
  readonly waterCold: number;
  /** s from lighting to the boil at the target. */
  readonly toBoil: number;
  /** kg/s that leave as steam at the target while it is fed what holds it there. */
  readonly boilOff: number;
  /** kg/s of cold water that hold it there. */
  readonly makeUp: number;
  /** K/s by which it climbs at the target when nothing is fed. */
  readonly drift: number;
  /** s unfed from the target to the upper limit of the band. */
  readonly late: number;
  /** K by which the parts cool it, and s until it boils again. */
  readonly dip: number;
  readonly back: number;
  /** K over the target at `times` after parts in: unfed, and fed. */
  readonly unfed: readonly number[];
  readonly fed: readonly number[];
}

/** The numbers of a firing, without its courses. */
export type FiringNumber = Exclude<keyof Firing, "unfed" | "fed">;
