/**
 * The later of two stamps. They are all written alike (ISO 8601 in UTC), so the order of the text is that of time.
 *
 * @example
 * newer("2026-11-25T10:00:00.000Z", "2026-11-24T10:00:00.000Z"); // "2026-11-25T10:00:00.000Z"
 */
export function newer(a: string, b: string): string {
  return a < b ? b : a;
}
