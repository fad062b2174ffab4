import type { Draft } from "./draft.ts";
import { stepsBack } from "./stepsBack.ts";
import type { Problem } from "./types.ts";
import { timeless } from "./untimed.ts";

/**
 * Seconds of each row from the earliest one. A row without a time gets that of the row before, with a problem unless
 * it is a title, a comment or something like the jug's level; a row that steps back in time keeps the time it has, with
 * a problem.
 *
 * @param drafts the rows in order
 * @param scale s of each row on the scale of its marks
 * @param problems list that problems are added to
 * @returns s from the earliest row for each row, and that row's place on the scale
 * @example
 * timesFromStart(drafts, [70800, undefined, 71160], []).times // [0, 0, 360]
 */
export function timesFromStart(
  drafts: readonly Draft[],
  scale: readonly (number | undefined)[],
  problems: Problem[],
): { readonly times: readonly number[]; readonly earliest: number | undefined } {
  const counted = scale.map((time, index) => (drafts[index]?.aside ? undefined : time));
  const earliest = counted.reduce<number | undefined>(
    (least, time) => (time !== undefined && (least === undefined || time < least) ? time : least),
    undefined,
  );
  let before = 0;
  const times = counted.map((time) => {
    if (time !== undefined && earliest !== undefined) before = Math.round((time - earliest) * 1e6) / 1e6;
    return before;
  });
  drafts.forEach((draft, index) => {
    if (counted[index] !== undefined || draft.aside) return;
    const told = draft.findings.length > 0 && draft.findings.every(({ kind }) => timeless.has(kind));
    if (told && draft.badTime === undefined) return;
    const words = draft.findings.map(({ amount, text }) => text ?? amount ?? "").join(" ");
    problems.push({
      line: draft.line,
      read: (draft.badTime ?? words).slice(0, 80) || "a row without a time",
      expected: "a time, such as 7:46 pm, 0:30 or 12 min",
      remedy: "Its words were kept at the time of the row before. Write its time in front.",
    });
  });
  for (const index of stepsBack(counted)) {
    const draft = drafts[index];
    if (draft === undefined) continue;
    problems.push({
      line: draft.line,
      read: draft.clock ?? "",
      expected: "a time between those of the rows around it",
      remedy: "It was put where its time says. Correct its time if that is wrong.",
    });
  }
  return { times, earliest };
}
