export { fourth, waterBalance } from "./bath/index.ts";
export type * from "./bath/types.ts";
export * from "./fit/index.ts";
export * from "./log/index.ts";
export * from "./physics/index.ts";
