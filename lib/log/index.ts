export { addEntry, correct, putBack, strikeOut } from "./edits.ts";
export { lastTime } from "./lastTime.ts";
export { additions, readings } from "./readings.ts";
export { readLog } from "./readLog.ts";
export type * from "./types.ts";
export { writeLog } from "./writeLog.ts";
