import { kindFacts } from "./kinds.ts";
import { nearestUnit } from "./nearestUnit.ts";
import type { Kind, Unread } from "./types.ts";

const examples: ReadonlyMap<Kind, string> = new Map<Kind, string>([
  ["number", "4"],
  ["share", "75 %"],
  ["mass", "24 lb or 11 kg"],
  ["water", "24 fl oz or 700 ml"],
  ["length", "18 1/2 in or 47 cm"],
  ["area", "2.5 ft²"],
  ["volume", "2 gal 1 qt or 8.5 l"],
  ["time", "25 min or 12:30"],
  ["temperature", "292 °F or 144 °C"],
  ["temperature difference", "2 °F"],
  ["temperature rate", "3 °F/min"],
  ["pressure", "29.4 inHg or 995 hPa"],
  ["energy", "20000 BTU"],
  ["power", "30000 BTU/h or 9 kW"],
  ["heat flux", "900 BTU/(h ft²)"],
  ["mass flow", "1.4 lb/h"],
  ["water flow", "4.5 fl oz/min"],
  ["hourly water flow", "2.1 gal/h"],
  ["volume flow", "2.1 gal/h"],
  ["density", "13 lb/gal"],
  ["salt to water", "10 lb/gal"],
  ["rate", "3 1/h"],
  ["money", "$18.50"],
  ["price by mass", "$1.20/lb"],
]);

/** "a weight, such as 24 lb or 11 kg". */
export function expectedWords(kind: Kind): string {
  return `${kindFacts(kind).says}, such as ${examples.get(kind) ?? "4"}`;
}

/** Nothing but blanks. */
export function nothingWritten(kind: Kind): Unread {
  return { at: 0, read: "", expected: expectedWords(kind), remedy: "Write a number and its unit." };
}

/** No number where one should be. */
export function noNumber(at: number, read: string, kind: Kind): Unread {
  return { at, read, expected: expectedWords(kind), remedy: "Begin with a number in figures." };
}

/** Commas, dots or a stroke that make no number, or one too large for any use. */
export function oddNumber(at: number, read: string, kind: Kind): Unread {
  return {
    at,
    read,
    expected: expectedWords(kind),
    remedy: `"${read}" is no number that can be used. Write it plainly, as in 1234.5 or 3 1/2.`,
  };
}

/** A word that is no unit. */
export function oddUnit(at: number, read: string, kind: Kind): Unread {
  const near = nearestUnit(read, kind);
  const remedy = near
    ? `"${read}" is no unit known here. Is it ${near}?`
    : `"${read}" is no unit known here. Write one such as in ${examples.get(kind) ?? "4"}.`;
  return { at, read, expected: expectedWords(kind), remedy };
}

/** A unit that measures something else. */
export function otherKind(at: number, read: string, measures: string, kind: Kind): Unread {
  return {
    at,
    read,
    expected: expectedWords(kind),
    remedy: `"${read}" is ${measures}. Write ${kindFacts(kind).says}, as in ${examples.get(kind) ?? "4"}.`,
  };
}

/** Any other trouble. */
export function unread(at: number, read: string, kind: Kind, remedy: string): Unread {
  return { at, read, expected: expectedWords(kind), remedy };
}
