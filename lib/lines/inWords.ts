/**
 * A part's name as a maker reads it, whatever a programmer calls it.
 * @param part The name under which the part is held.
 * @returns The same in words; a name that is in words already stays as it is.
 * @example inWords("waterAtTheStart") // "water at the start"
 */
export function inWords(part: string): string {
  return part.replace(/([a-z])([A-Z])/gu, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}
