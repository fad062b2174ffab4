export {
  askFirst,
  bathEnthalpy,
  bathToFill,
  cornersOf,
  fourth,
  longestPart,
  madeOf,
  neverOf,
  plateOf,
  simulateBath,
  smallestTank,
  tankHolds,
  usualFreeboard,
  waterBalance,
  waterHeatUp,
  weightOnStand,
  workTanks,
} from "./bath/index.ts";
export * from "./bath/plan/index.ts";
export type * from "./bath/simulationTypes.ts";
export type * from "./bath/sizing/types.ts";
export type * from "./bath/types.ts";
// The answer of a bath; that of a line keeps its name in lib/lines.
export type { Answer } from "./bath/types.ts";
export * from "./fit/index.ts";
export * from "./lines/index.ts";
export * from "./log/index.ts";
export * from "./measure/index.ts";
export * from "./physics/index.ts";
