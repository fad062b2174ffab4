import type { Units } from "./decideUnits.ts";
import type { Draft } from "./draft.ts";
import { type Inquiry, settle } from "./settle.ts";
import { writesUnit } from "./writesUnit.ts";

export type PourOrder = "before the pour" | "after the pour";

/**
 * Whether the readings on rows with a pour were taken before or after it. Before, unless most typed lines name the
 * pour first.
 *
 * @param drafts the rows as read
 * @param typed whether the rows are typed lines, whose order of words tells something
 * @param units units taken where none was written
 * @param inquiry where answers come from and questions go to
 * @returns the order taken for all such rows
 * @example
 * decideOrder(drafts, false, units, inquiry) // "before the pour"
 */
export function decideOrder(drafts: readonly Draft[], typed: boolean, units: Units, inquiry: Inquiry): PourOrder {
  let both = 0;
  let pourFirst = 0;
  let example: Draft | undefined;
  for (const draft of drafts) {
    if (draft.findings.length < 2 || draft.struck !== undefined) continue;
    const pour = draft.findings.findIndex(({ kind, flow }) => kind === "addition" && flow === undefined);
    const reading = draft.findings.findIndex(({ kind }) => kind === "reading");
    if (pour < 0 || reading < 0) continue;
    both += 1;
    if (pour < reading) pourFirst += 1;
    example ??= draft;
  }
  if (example === undefined) return "before the pour";
  const likeliest: PourOrder = typed && pourFirst > both / 2 ? "after the pour" : "before the pour";
  const [reading, pour] = (["reading", "addition"] as const).map((kind) => {
    const { amount = "", unit = units.get(kind) ?? "" } =
      example.findings.find((finding) => finding.kind === kind) ?? {};
    return writesUnit(amount, kind) === undefined ? `${amount} ${unit}`.trim() : amount;
  });
  const rows = both === 1 ? "1 reading" : `${both} readings`;
  const says = (order: PourOrder) =>
    `${rows}, such as ${reading} with the pour of ${pour}, ${both === 1 ? "was" : "were"} taken ${order}.`;
  const changes = (order: PourOrder) => {
    const verb = both === 1 ? "counts" : "count";
    const water = order === "before the pour" ? "without" : "with";
    return order === likeliest
      ? `As taken: ${rows} ${verb} ${water} the water of the same row.`
      : `${rows} would count ${water} the water of the same row: at ${reading}, ${pour} ${water === "with" ? "more" : "less"} water in the bath.`;
  };
  return settle<PourOrder>(inquiry, {
    id: "pour on a reading's row",
    asks: "Where a row has a temperature and a pour: was the temperature read before or after pouring?",
    line: example.line,
    likeliest,
    open: true,
    answers: (["before the pour", "after the pour"] as const).map((answer) => ({
      answer,
      says: says(answer),
      changes: changes(answer),
    })),
  });
}
