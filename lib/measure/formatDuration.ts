/**
 * A time as minutes and seconds, "12:05"; from an hour on with hours, "1:02:05". Rounded to the second.
 *
 * @param seconds s; finite
 * @throws RangeError where it is not finite.
 * @example
 * formatDuration(725) // "12:05"
 */
export function formatDuration(seconds: number): string {
  if (!Number.isFinite(seconds)) throw new RangeError(`invalid time: ${seconds}; a finite number of seconds expected`);
  const all = Math.round(Math.abs(seconds));
  const two = (number: number) => String(number).padStart(2, "0");
  const minutes = Math.floor(all / 60);
  const hours = Math.floor(minutes / 60);
  const text = hours > 0 ? `${hours}:${two(minutes % 60)}:${two(all % 60)}` : `${minutes}:${two(all % 60)}`;
  return seconds < 0 && all > 0 ? `\u2212${text}` : text;
}
