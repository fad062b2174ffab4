import type { Doubt } from "../measure/defaultUncertainty.ts";
import { kindOf } from "../measure/kindOf.ts";
import { kinds } from "../measure/kinds.ts";
import { writtenValue } from "../measure/measuredValue.ts";
import { readCompound } from "../measure/readCompound.ts";
import { readQuantity } from "../measure/readQuantity.ts";
import type { Kind, Unread, Written } from "../measure/types.ts";
import { findUnit } from "../measure/unit.ts";
import type { Given, Result } from "./types.ts";

/** A line that is exact unless a ± is written. */
const noDoubts: readonly Doubt[] = [{ known: "measured", share: 0, floor: 0, says: "Decided, not measured." }];

/**
 * What a typed-in line comes to. Its doubt is a source of its own, under the line's name.
 * @param name The line's name.
 * @param given The line.
 * @returns The amount or the words; "not given" for empty text; or what could not be read, at which character.
 * @throws Error `invalid takes: …` for a kind of quantity that does not exist.
 * @example readGiven("salt", given("24 lb", "weighed")) // { state: "settled", value: { value: 10.886…, … }, written: … }
 */
export function readGiven(name: string, given: Given): Result {
  if (given.value !== undefined) return { state: "settled", value: given.value };
  const text = given.text.trim();
  if (text === "") return { state: "not given" };
  if (given.choices) {
    const choice = given.choices.find((one) => one.toLowerCase() === text.toLowerCase());
    if (choice !== undefined) return { state: "settled", value: choice };
    if (given.takes === undefined || given.takes === "words")
      return { state: "stopped", says: `"${text}" is none of the choices: ${given.choices.join(", ")}`, at: 0 };
  }
  if (given.takes === "words") return { state: "settled", value: given.text };
  const read = quantity(given);
  if ("remedy" in read) return { state: "stopped", says: inWords(read), at: read.at };
  return { state: "settled", value: writtenValue(read, name), written: read };
}

function quantity(given: Given): Written | Unread {
  const options = given.exact
    ? ({ known: "measured", doubts: noDoubts } as const)
    : { ...(given.known !== undefined && { known: given.known }) };
  const kind = kindTaken(given);
  if (kind !== undefined) return readQuantity(given.text, expected(kind, given), options);
  // Nobody said what is expected: the first kind that the text can be wins, a plain number before all others.
  const usual = given.unit === undefined ? undefined : findUnit(given.unit);
  if (usual && given.takes === undefined)
    return readCompound(given.text, usual, options) ?? notIn(given.text, usual.symbol);
  const first = readQuantity(given.text, { kind: "number" }, options);
  if (!("remedy" in first)) return first;
  for (const one of kinds.keys()) {
    const read = readQuantity(given.text, { kind: one }, options);
    if (!("remedy" in read)) return read;
  }
  return readCompound(given.text, undefined, options) ?? ofSomeKind(first);
}

/** A text that is not in a line's unit, which has no kind of its own. */
function notIn(text: string, unit: string): Unread {
  const read = text.trim().slice(0, 60);
  return {
    at: 0,
    read,
    expected: `an amount in ${unit}`,
    remedy: `Write a number, or a number with its unit, as in 4 ${unit}.`,
  };
}

/** What is said where any kind would do: not that a plain number is wanted. */
function ofSomeKind(first: Unread): Unread {
  const [why] = /^"[^"]*" is no unit known here\./u.exec(first.remedy) ?? [];
  const remedy = why
    ? `${why} Write one such as lb, gal, in, min or $/gal.`
    : first.remedy.replace("Write a plain number, as in 4.", "Look at the number and its unit again.");
  return { ...first, expected: "a number, with its unit if it has one, such as 24 lb,", remedy };
}

const expected = (kind: Kind, { unit, atLeast, atMost }: Given) => ({
  kind,
  ...(unit !== undefined && { unit }),
  ...(atLeast !== undefined && { atLeast }),
  ...(atMost !== undefined && { atMost }),
});

function kindTaken(given: Given): Kind | undefined {
  const { takes, unit } = given;
  if (takes === "anything") return undefined;
  if (takes !== undefined) {
    for (const kind of kinds.keys()) if (kind === takes) return kind;
    throw new Error(`invalid takes: ${takes}; words, anything, or one of ${[...kinds.keys()].join(", ")}`);
  }
  const known = unit === undefined || unit === "" ? undefined : (findUnit(unit, "temperature") ?? findUnit(unit));
  return known && kindOf(known);
}

function inWords({ read, expected: wanted, remedy }: Unread): string {
  return `${read === "" ? "" : `"${read}": `}${wanted} was expected. ${remedy}`;
}
