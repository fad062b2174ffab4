export { addEntry, correct, putBack, strikeOut } from "./edits.ts";
export { readLog } from "./readLog.ts";
export type * from "./types.ts";
export { writeLog } from "./writeLog.ts";
