/** A given's text cut for its blank: the number that is typed, and the unit that stands after it. */
export interface FieldText {
  readonly number: string;
  /** Empty where the text does not end in one unit ("2 gal 1 qt", "24 lb ± 0.5 lb", words). */
  readonly unit: string;
}

const numberThenUnit = /^([\d\s.,/½¼¾⅓⅔⅛⅜⅝⅞+−–-]*[\d½¼¾⅓⅔⅛⅜⅝⅞])\s*([^\d\s±½¼¾⅓⅔⅛⅜⅝⅞][^\d±]*)$/u;

/** Cuts "3 1/2 gal" into "3 1/2" and "gal". What cannot be cut that way stays whole, in the number. */
export function cutField(text: string): FieldText {
  const found = numberThenUnit.exec(text.trim());
  return found ? { number: found[1] ?? "", unit: (found[2] ?? "").trim() } : { number: text.trim(), unit: "" };
}

/** The text of a given from its blank: a bare number takes the unit beside it, anything else stays as typed. */
export function joinField(typed: string, unit: string): string {
  const trimmed = typed.trim();
  const bare = /^[\d\s.,/½¼¾⅓⅔⅛⅜⅝⅞+−–-]+$/u.test(trimmed);
  return bare && unit !== "" ? `${trimmed} ${unit}` : trimmed;
}
