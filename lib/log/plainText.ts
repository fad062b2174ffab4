const odd = /[^\x20-\x7e]| {2,}|^ | $/;

/**
 * A cell as the readers of numbers and words want it: one kind of blank, straight quotes and minus, no blanks
 * at the ends. The cell itself is kept as it was written elsewhere.
 *
 * @param text any text; long text costs time in proportion
 * @returns the same text with plain blanks, quotes and minus signs
 * @example
 * plainText(" 284\u00a0\u00b0F ") // "284 °F"
 */
export function plainText(text: string): string {
  if (!odd.test(text)) return text;
  return text
    .replace(/Â(?=[°½¼¾±])/g, "")
    .replace(/[\ufffdº˚](?=\s?[FCfc]\b)/g, "°")
    .replace(/℉/g, "°F")
    .replace(/℃/g, "°C")
    .replace(/[\u2212\u2013\ufe63\uff0d]/g, "-")
    .replace(/[\u2236\ua789]/g, ":")
    .replace(/[\u2018\u2019\u2032\u02b9]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/\u2044/g, "/")
    .replace(/[\uff10-\uff19\uff1a]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[\u200b-\u200f\u2060\ufeff]/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
