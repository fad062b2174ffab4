import type { Placing } from "./placeTimes.ts";
import type { TimeMark } from "./timeMark.ts";

/**
 * Local date and time of the first row as far as the log told: "2026-11-09T19:40" with a date, "T19:40" with a clock
 * that leaves no doubt about morning and evening, else undefined.
 *
 * @param marks time marks in order
 * @param times s of each mark on the scale of the marks
 * @param earliest s of the earliest row on that scale
 * @param placing what the marks were taken to mean
 * @returns ISO 8601 without a zone
 * @example
 * startOfRun([timeMark("7:40 pm")], [70800], 70800, placing) // "T19:40"
 */
export function startOfRun(
  marks: readonly (TimeMark | undefined)[],
  times: readonly (number | undefined)[],
  earliest: number,
  placing: Placing,
): string | undefined {
  const first = times.indexOf(earliest);
  const mark = marks[first];
  if (mark === undefined) return undefined;
  const local = earliest + (mark.zone ?? 0);
  const dated = local > 5e8 && local < 7.3e9;
  const clock =
    mark.half !== undefined ||
    (placing.pair === "hours and minutes" &&
      marks.some((each) => each?.half !== undefined || (each?.shape === "pair" && each.a > 12)));
  if (!dated && !clock) return undefined;
  const iso = new Date(
    Math.floor((((local % 86_400) + 86_400) % 86_400) + (dated ? local - (local % 86_400) : 0)) * 1000,
  ).toISOString();
  const time = iso.slice(17, 19) === "00" ? iso.slice(11, 16) : iso.slice(11, 19);
  return dated && !(mark.date?.style === "named" && iso.startsWith("2000"))
    ? `${iso.slice(0, 10)}T${time}`
    : `T${time}`;
}
