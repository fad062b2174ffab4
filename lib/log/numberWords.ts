/** A written amount's number: `3 1/2`, `3½`, `1/2`, `½`, `12.5`, `1,234`. For building patterns; no capture. */
export const numberSource = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+ ?[½¼¾⅓⅔⅛⅜⅝⅞]|[½¼¾⅓⅔⅛⅜⅝⅞]|\d[\d.,]*\d|\.?\d)`;

const words = new Map([
  ["a", "1"],
  ["an", "1"],
  ["one", "1"],
  ["two", "2"],
  ["three", "3"],
  ["four", "4"],
  ["five", "5"],
  ["six", "6"],
  ["eight", "8"],
  ["ten", "10"],
  ["twelve", "12"],
  ["half", "1/2"],
  ["half a", "1/2"],
  ["a half", "1/2"],
  ["quarter", "1/4"],
  ["a quarter", "1/4"],
]);

const spoken =
  /\b(half an?|an? half|a quarter|half|quarter|an?|one|two|three|four|five|six|eight|ten|twelve)(?: of an?)? (?=(?:cups?|pints?|quarts?|gal(?:lon)?s?|lit(?:er|re)s?|fl|oz|ounces?|pounds?|lbs?|jugs?)\b)/gi;

/**
 * A text with the spoken numbers before a measure written in figures.
 *
 * @param text plain text
 * @returns the same text, "two cups" as "2 cups"
 * @example
 * numberWords("added half a cup") // "added 1/2 cup"
 */
export function numberWords(text: string): string {
  const counted = text
    .replace(/(?<=\d )(?:more|extra|full|good) (?=(?:cups?|pints?|quarts?|gal|oz|ounces|lit(?:er|re)s?)\b)/gi, "")
    .replace(/^(?=(?:cup|pint|quart|gallon|liter|litre)(?: of)?(?: \w+)? water\b)/i, "1 ");
  return counted.replace(spoken, (whole, word: string) => {
    const figure = words.get(word.toLowerCase());
    return figure === undefined ? whole : `${figure} `;
  });
}
