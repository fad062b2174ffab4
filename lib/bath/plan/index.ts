export { type AfterDragOut, afterDragOut } from "./afterDragOut.ts";
export { type BoilElsewhere, boilElsewhere } from "./boilElsewhere.ts";
export { type ChargeGivens, chargeFor } from "./chargeFor.ts";
export { type StrengthenGivens, strengthen } from "./strengthen.ts";
export type { Charge, ChargeStep, DoubtfulDeparture, ExpectedBoil, StandingBath } from "./types.ts";
export { type Weakening, weaken } from "./weaken.ts";
