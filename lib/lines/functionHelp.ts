import type { Func } from "./types.ts";

/** What a page says of a function. */
export interface FunctionHelp {
  readonly name: string;
  /** As a maker writes it: "station pressure(barometer, altitude)". */
  readonly call: string;
  /** Which of what it is given need not be there, in words; left out where all must. */
  readonly optional?: string;
  readonly says: string;
  readonly source?: string;
}

/** A function of many alike amounts shows this many of them. */
const SHOWN = 2;

/**
 * How a function is called, what it does and where that comes from.
 * @param func The function.
 * @returns Texts for a page.
 * @example
 * const dose = { name: "dose", takes: [{ name: "salt" }, { name: "water", optional: true }], says: "Salt to add.", work: () => 1 };
 * functionHelp(dose).call // "dose(salt, water)"
 * functionHelp(dose).optional // "water may be left out"
 */
export function functionHelp(func: Func): FunctionHelp {
  const many = manyAlike(func);
  const names = func.takes.map((one) => one.name);
  const call = many ? [...names.slice(0, SHOWN), "…"] : names;
  const optional = many ? `from ${many.least} to ${names.length} of them` : optionalOf(func);
  return {
    name: func.name,
    call: `${func.name}(${call.join(", ")})`,
    ...(optional !== undefined && { optional }),
    says: func.says,
    ...(func.source !== undefined && { source: func.source }),
  };
}

/**
 * What a function takes, for what is said of a call with too few or too many.
 * @param func The function.
 * @returns The names of what it takes; of many alike only how many there may be.
 * @example takenInWords(dose) // "salt, water (may be left out)"
 */
export function takenInWords(func: Func): string {
  const many = manyAlike(func);
  if (many) return `${many.least} to ${func.takes.length} amounts`;
  return func.takes.map((one) => (one.optional ? `${one.name} (may be left out)` : one.name)).join(", ") || "nothing";
}

/** Whether all that a function takes differs by its number alone: "amount 1, amount 2, …", more than can be listed. */
function manyAlike({ takes }: Func): { readonly least: number } | undefined {
  if (takes.length <= SHOWN + 1) return undefined;
  const stem = (name: string) => name.replace(/\s*\d+$/u, "");
  const [first] = takes;
  if (!first || takes.some((one) => stem(one.name) !== stem(first.name) || stem(one.name) === one.name))
    return undefined;
  return { least: takes.filter((one) => !one.optional).length };
}

/** What stands last can be left out; before something that must be there, its place is held by a line that is not given. */
function optionalOf({ takes }: Func): string | undefined {
  const lastNeeded = takes.findLastIndex((one) => !one.optional);
  const last = takes.slice(lastNeeded + 1).map((one) => one.name);
  const inside = takes.slice(0, Math.max(0, lastNeeded)).flatMap((one) => (one.optional ? [one.name] : []));
  const says = [
    ...(inside.length > 0 ? [`${listed(inside)} may be a line that is not given`] : []),
    ...(last.length > 0 ? [`${shorter(takes.slice(0, lastNeeded + 1), last)} may be left out`] : []),
  ];
  return says.length > 0 ? says.join("; ") : undefined;
}

/** What can be left out, or what cannot, whichever is told in fewer words. */
function shorter(before: Func["takes"], last: readonly string[]): string {
  if (before.length === 0 && last.length > 1) return "any of them";
  const isShort = last.length > 3 && before.length < last.length && before.every((one) => !one.optional);
  return isShort ? `all but ${listed(before.map((one) => one.name))}` : listed(last);
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
