import type { ListName } from "./types.ts";

/** The lists of a shop record, in the order in which they are written. */
export const listNames: readonly ListName[] = ["setups", "baths", "runs", "notebooks"];
