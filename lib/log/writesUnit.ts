import { namesUnit } from "./amountReader.ts";
import type { EntryKind } from "./types.ts";

const degree = /([fck])(?![a-z])|fahrenheit|celsius|centigrade|kelvin/i;

/**
 * The unit that an amount names itself, or undefined: "°" and "deg" alone name none.
 *
 * @param amount an amount as written
 * @param kind what it is an amount of
 * @returns the unit's words
 * @example
 * writesUnit("144 C", "reading") // "°C"
 */
export function writesUnit(amount: string, kind: EntryKind): string | undefined {
  if (!namesUnit(amount) && !amount.includes("°")) return undefined;
  if (kind !== "reading") {
    const name = /(?:[\p{L}"'#%][\p{L}. ]*)$/u.exec(amount.replace(/\s*(?:±|\+\/-).*$/, "").trim())?.[0];
    return name?.trim() ?? amount;
  }
  const letter = degree.exec(amount.replace(/^(?:about|approx\.?|ca\.?|around)/i, "").replace(/deg(?:rees?)?\.?/i, ""));
  const first = letter === null ? undefined : (letter[1] ?? letter[0].charAt(0)).toUpperCase();
  return first === undefined ? undefined : first === "K" ? "K" : `°${first}`;
}
