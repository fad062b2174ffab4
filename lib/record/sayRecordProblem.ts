import type { RecordProblem } from "./types.ts";

/**
 * A problem with a file as one plain paragraph.
 *
 * @param problem - from `readRecord`.
 * @example
 * const reading = readRecord("");
 * if ("problem" in reading) sayRecordProblem(reading.problem); // "In the whole file: read nothing: …"
 */
export function sayRecordProblem(problem: RecordProblem): string {
  return `In ${problem.where}: read ${problem.read}; expected ${problem.expected}. ${problem.remedy}`;
}
