import type { Dimension, Kind } from "./types.ts";

interface KindFacts {
  readonly dimension: Dimension;
  /** With its article, for sentences. */
  readonly says: string;
  readonly US: string;
  readonly metric: string;
  /** A liquid measure may be written for it, and stands for water. */
  readonly liquid?: true;
}

const mass: Dimension = { mass: 1 };
const massFlow: Dimension = { mass: 1, time: -1 };

/** Every kind: its dimension, its name in a sentence, the page's usual unit in each system. First match names a dimension. */
export const kinds: ReadonlyMap<Kind, KindFacts> = new Map<Kind, KindFacts>([
  ["number", { dimension: {}, says: "a plain number", US: "", metric: "" }],
  ["share", { dimension: {}, says: "a share", US: "%", metric: "%" }],
  ["salt to water", { dimension: {}, says: "a ratio of salt to water", US: "lb/gal", metric: "kg/l", liquid: true }],
  ["mass", { dimension: mass, says: "a weight", US: "lb", metric: "kg" }],
  ["water", { dimension: mass, says: "an amount of water", US: "fl oz", metric: "ml", liquid: true }],
  ["length", { dimension: { length: 1 }, says: "a length", US: "in", metric: "cm" }],
  ["area", { dimension: { length: 2 }, says: "an area", US: "ft²", metric: "m²" }],
  ["volume", { dimension: { length: 3 }, says: "a volume", US: "gal", metric: "l" }],
  ["time", { dimension: { time: 1 }, says: "a time", US: "min", metric: "min" }],
  ["temperature", { dimension: { temperature: 1, point: true }, says: "a temperature", US: "°F", metric: "°C" }],
  [
    "temperature difference",
    { dimension: { temperature: 1 }, says: "a difference of temperatures", US: "°F", metric: "°C" },
  ],
  [
    "temperature rate",
    { dimension: { temperature: 1, time: -1 }, says: "a rate of warming", US: "°F/min", metric: "°C/min" },
  ],
  ["pressure", { dimension: { mass: 1, length: -1, time: -2 }, says: "a pressure", US: "inHg", metric: "hPa" }],
  ["energy", { dimension: { mass: 1, length: 2, time: -2 }, says: "an energy", US: "BTU", metric: "kJ" }],
  ["power", { dimension: { mass: 1, length: 2, time: -3 }, says: "a heat rate", US: "BTU/h", metric: "kW" }],
  [
    "heat flux",
    { dimension: { mass: 1, time: -3 }, says: "a heat rate for each area", US: "BTU/(h ft²)", metric: "kW/m²" },
  ],
  ["mass flow", { dimension: massFlow, says: "a weight for each time", US: "lb/h", metric: "kg/h" }],
  ["water flow", { dimension: massFlow, says: "a flow of water", US: "fl oz/min", metric: "ml/min", liquid: true }],
  ["hourly water flow", { dimension: massFlow, says: "a flow of water", US: "gal/h", metric: "l/h", liquid: true }],
  ["volume flow", { dimension: { length: 3, time: -1 }, says: "a volume for each time", US: "gal/h", metric: "l/h" }],
  ["density", { dimension: { mass: 1, length: -3 }, says: "a density", US: "lb/gal", metric: "kg/l" }],
  ["rate", { dimension: { time: -1 }, says: "a number for each time", US: "1/h", metric: "1/h" }],
  ["money", { dimension: { money: 1 }, says: "an amount of money", US: "$", metric: "$" }],
  ["price by mass", { dimension: { money: 1, mass: -1 }, says: "a price for each weight", US: "$/lb", metric: "$/kg" }],
]);

/**
 * Dimension, name and usual units of a kind.
 *
 * @throws RangeError for a kind that the table does not have.
 * @example
 * kindFacts("mass").says // "a weight"
 */
export function kindFacts(kind: Kind): KindFacts {
  const facts = kinds.get(kind);
  if (!facts) throw new RangeError(`unknown kind: ${String(kind)}; one of ${[...kinds.keys()].join(", ")}`);
  return facts;
}
