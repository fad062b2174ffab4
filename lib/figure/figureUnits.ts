import { fromUnit, inUnit } from "../measure/inUnit.ts";
import type { Dimension } from "../measure/types.ts";

/** A unit at the edge of a figure: its name, and both ways between it and SI. */
export interface EdgeUnit {
  readonly name: string;
  readonly fromSI: (value: number) => number;
  readonly toSI: (value: number) => number;
}

export interface FigureUnits {
  readonly system: "US" | "metric";
  /** From K. */
  readonly temperature: EdgeUnit;
  /** From kg of water. */
  readonly water: EdgeUnit;
  /** From kg of water a second. */
  readonly waterRate: EdgeUnit;
  /** From kg of salt for each kg of water. */
  readonly ratio: EdgeUnit;
  /** From m. */
  readonly length: EdgeUnit;
}

const edge = (name: string, dimension: Dimension): EdgeUnit => ({
  name,
  fromSI: (value) => inUnit(value, dimension, name),
  toSI: (value) => fromUnit(value, name, dimension),
});

const units = (
  system: "US" | "metric",
  [temperature, water, ratio, length]: readonly [string, string, string, string],
): FigureUnits => ({
  system,
  temperature: edge(temperature, { temperature: 1, point: true }),
  water: edge(water, { mass: 1 }),
  waterRate: edge(`${water}/min`, { mass: 1, time: -1 }),
  ratio: edge(ratio, {}),
  length: edge(length, { length: 1 }),
});

const us = units("US", ["°F", "fl oz", "lb/gal", "in"]);
const metric = units("metric", ["°C", "ml", "kg/l", "cm"]);

/**
 * The units that a figure shows, each with its conversion from and to SI.
 * @example figureUnits("US").temperature.fromSI(373.15) // 212.0
 */
export function figureUnits(system: "US" | "metric"): FigureUnits {
  return system === "US" ? us : metric;
}
