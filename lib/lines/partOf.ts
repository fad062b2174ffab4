import { inWords } from "./inWords.ts";
import { isValue } from "./isValue.ts";
import { nearestName } from "./nearestName.ts";

/** Parts are named in a maker's words and held under a programmer's: "boil-off" finds `boilOff`. */
function plainPart(name: string): string {
  return name.toLowerCase().replace(/[\s\-_.'’]/gu, "");
}

/**
 * The names of the parts of a thing: the keys of a Map, or an object's own properties that are not functions.
 * @param thing What a line came to.
 * @returns Names; none for an amount, a list or words.
 * @example partsOf({ boilOff: 1 }) // ["boilOff"]
 */
export function partsOf(thing: unknown): readonly string[] {
  if (thing instanceof Map) return [...thing.keys()].filter((key) => typeof key === "string");
  if (typeof thing !== "object" || thing === null || Array.isArray(thing) || isValue(thing)) return [];
  return Object.entries(thing).flatMap(([key, part]) => (typeof part === "function" ? [] : [key]));
}

/**
 * A part of a thing by its name. Blanks, hyphens and capitals do not count, so that "boil-off" finds `boilOff`.
 * @param thing What a line came to.
 * @param name The part's name as the maker wrote it.
 * @returns The part, in a box of one, since a part may be undefined: it is then not known.
 * @throws Error, worded for the maker, where the thing has no parts, none of that name, or two.
 * @example partOf({ boilOff: 0.002 }, "boil-off") // [0.002]
 */
export function partOf(thing: unknown, name: string): readonly [unknown] {
  const parts = partsOf(thing);
  if (parts.length === 0) throw new Error("has no parts");
  const wanted = plainPart(name);
  const exact = parts.filter((part) => part === name);
  const found = exact.length > 0 ? exact : parts.filter((part) => plainPart(part) === wanted);
  const [key] = found;
  if (key === undefined) {
    const near = nearestName(wanted, parts.map(plainPart));
    const meant = parts.find((part) => plainPart(part) === near);
    const list = parts.slice(0, 12).map(inWords).join(", ");
    throw new Error(
      `has no part "${name}"${meant === undefined ? `; its parts are ${list}` : `: did you mean "${inWords(meant)}"?`}`,
    );
  }
  if (found.length > 1) throw new Error(`has two parts that may be called "${name}": ${found.join(", ")}`);
  if (thing instanceof Map) return [thing.get(key)];
  return [Object.getOwnPropertyDescriptor(thing, key)?.value];
}
