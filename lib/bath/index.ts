export { fourth, type WaterStory } from "./fourth.ts";
export type { Answer, BalanceCall, BalanceGivens, Doubtful, SaltsKnown, WaterBalance } from "./types.ts";
export { waterBalance } from "./waterBalance.ts";
