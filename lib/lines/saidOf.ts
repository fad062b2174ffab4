/**
 * What is said of an error of lib/measure's arithmetic, which is worded for programmers; others are said as they are.
 * @param error What was thrown.
 * @returns The sentence for the maker.
 * @example saidOf(new RangeError("invalid result: NaN; a finite number expected")) // "this comes to no number"
 */
export function saidOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  if (!(error instanceof RangeError)) return error.message;
  if (error.message.startsWith("invalid slope:"))
    return "its width can't be told: at this very number it rises without end";
  return /^invalid (?:result|exponent|divisor):/u.test(error.message) ? "this comes to no number" : error.message;
}
