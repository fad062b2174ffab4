import type { Kept, KeptCases } from "./Desk.ts";
import { readGiven } from "./readGiven.ts";
import type { Given, Result } from "./types.ts";

/**
 * What a given comes to in one case. A reading of the case's own is a source of doubt of its own, "salt of Long tank";
 * what every case takes from the line is one source for all.
 * @param kept The line.
 * @param inCase Id of the case.
 * @param cases All cases.
 * @returns As `readGiven`.
 * @throws Error as `readGiven`.
 * @example readInCase({ id: "line 1", name: "salt", line: given("24 lb") }, "case 1", cases).state // "settled"
 */
export function readInCase({ name, line, thing, own }: Kept, inCase: string, { list }: KeptCases): Result {
  const mine = line.kind === "given" ? own?.get(inCase) : undefined;
  const box = mine ? mine.thing : thing;
  if (box) return (box[0] ?? undefined) === undefined ? { state: "not given" } : { state: "settled", value: box[0] };
  if (line.kind !== "given") return { state: "not given" };
  if (!mine) return readGiven(name, line);
  const { value: _, ...rest } = line;
  const text: Given = { ...rest, text: mine.text, ...(mine.known !== undefined && { known: mine.known }) };
  const origin = list.find(({ id }) => id === (mine.sameAs ?? inCase))?.name ?? "";
  return readGiven(origin === "" ? name : `${name} of ${origin}`, text);
}
