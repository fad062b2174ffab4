import type { RecordProblem } from "./types.ts";

/**
 * A problem with a file as one plain paragraph.
 *
 * @param problem - from `readRecord`.
 * @example
 * sayRecordProblem(readRecord("").problem); // "In the whole file: read nothing…"
 */
export function sayRecordProblem(problem: RecordProblem): string {
  return `In ${problem.where}: read ${problem.read}; expected ${problem.expected}. ${problem.remedy}`;
}
