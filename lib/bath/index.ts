export { bathEnthalpy } from "./bathEnthalpy.ts";
export { fourth, type WaterStory } from "./fourth.ts";
export { simulateBath } from "./simulateBath.ts";
export type * from "./simulationTypes.ts";
export type { Answer, BalanceCall, BalanceGivens, Doubtful, SaltsKnown, WaterBalance } from "./types.ts";
export { waterBalance } from "./waterBalance.ts";
