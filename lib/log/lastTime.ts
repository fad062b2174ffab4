import type { Run } from "./types.ts";

/**
 * When a run's last row was, remarks included and struck-out rows left out.
 *
 * @param run a run
 * @returns s from the first row; 0 for a run without entries
 * @example
 * lastTime(readLog("0:00 284 F\n1:30 286 F\n5:00 end").run) // 300
 */
export function lastTime(run: Run): number {
  return run.entries.findLast(({ struck }) => !struck)?.time ?? 0;
}
