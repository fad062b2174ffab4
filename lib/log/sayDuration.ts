/**
 * A length of time in the words of a question: "14 min", "2 h 5 min", "45 s", "3 days".
 *
 * @param seconds s, any sign
 * @returns words, rounded to what a sentence needs
 * @example
 * sayDuration(7500) // "2 h 5 min"
 */
export function sayDuration(seconds: number): string {
  const size = Math.abs(seconds);
  if (size < 99.5) return `${Math.round(size)} s`;
  if (size < 5970) return `${Math.round(size / 6) / 10} min`;
  if (size > 2 * 86_400) return `${Math.round(size / 8640) / 10} days`;
  const minutes = Math.round(size / 60);
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
