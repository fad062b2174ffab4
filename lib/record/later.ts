/**
 * The time to stamp on a change: now, or a millisecond after what was there before if the clock says it is not
 * later. A clock that was set back, or two changes in one millisecond, never make a newer change lose.
 *
 * @param before - the stamp of the version that is changed, ISO 8601.
 * @param now - what the clock says, ISO 8601.
 * @returns ISO 8601 in UTC, later than `before`. A `before` that is no date counts as long ago.
 * @throws RangeError if `now` is no date.
 * @example
 * later("2026-11-25T10:00:00.000Z", "2026-11-25T09:00:00.000Z"); // "2026-11-25T10:00:00.001Z"
 */
export function later(before: string, now: string): string {
  const clock = Date.parse(now);
  if (Number.isNaN(clock)) throw new RangeError(`invalid time: ${now}; an ISO 8601 date and time is allowed`);
  const previous = Date.parse(before);
  return new Date(Number.isNaN(previous) ? clock : Math.max(clock, previous + 1)).toISOString();
}
