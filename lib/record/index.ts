export { addItem, changeItem, itemOf, type Patch } from "./changeItem.ts";
export { asInvented, hasDemo, withDemo, withoutDemo } from "./demo.ts";
export { type Difference, differences } from "./differences.ts";
export {
  addBath,
  addNotebook,
  addRun,
  addSetup,
  changeBath,
  changeNotebook,
  changeRun,
  changeSettings,
  changeSetup,
  newBath,
  newNotebook,
  newSetup,
  putBack,
  removeItem,
  withFact,
  withoutFact,
} from "./edits.ts";
export { keyed } from "./keyed.ts";
export { later } from "./later.ts";
export { listNames } from "./listNames.ts";
export { type Merged, merge, type Overwritten } from "./merge.ts";
export { newId } from "./newId.ts";
export { newRecord } from "./newRecord.ts";
export { type Firing, factsForNextRun, type Givens, newRun } from "./newRun.ts";
export { putInPlace } from "./putInPlace.ts";
export { readRecord, recordLimits } from "./readRecord.ts";
export { same } from "./same.ts";
export { sayRecordProblem } from "./sayRecordProblem.ts";
export { shown } from "./shown.ts";
export { stampChanges } from "./stampChanges.ts";
export { takeBack } from "./takeBack.ts";
export { thisMoment } from "./thisMoment.ts";
export type * from "./types.ts";
export { currentSchema, type Upgrade, upgrades } from "./upgrades.ts";
export { writeRecord } from "./writeRecord.ts";
