export { bathEnthalpy, fourth, simulateBath, waterBalance } from "./bath/index.ts";
export type * from "./bath/simulationTypes.ts";
export type * from "./bath/types.ts";
export * from "./fit/index.ts";
export * from "./log/index.ts";
export * from "./physics/index.ts";
