import { type Placing, placeTimes } from "./placeTimes.ts";
import { sayDuration } from "./sayDuration.ts";
import { type Inquiry, settle } from "./settle.ts";
import type { TimeMark } from "./timeMark.ts";
import { meaningOfUnit, type TimeMeaning, timeMeanings } from "./timeMeaning.ts";
import { timeScore } from "./timeScore.ts";

export interface TimeColumn {
  readonly marks: readonly (TimeMark | undefined)[];
  readonly lines: readonly number[];
  /** Unit that the heading names. */
  readonly unit?: string;
}

export interface ResolvedTimes {
  /** s on the scale of the marks. */
  readonly times: readonly (number | undefined)[];
  readonly placing: Placing;
}

/** Differences of log likelihood beyond which a reading of the times is not worth asking about. Judgement. */
const worthAsking = 6;

/**
 * What a log's times mean, taken over all its rows at once, with the questions that stay open.
 *
 * @param column time marks in order, their lines and the unit of the heading
 * @param inquiry where answers come from and questions go to
 * @returns s for each mark, and what was taken
 * @example
 * resolveTimes({ marks: [timeMark("0:00"), timeMark("1:30")], lines: [1, 2] }, inquiry).times // [0, 90]
 */
export function resolveTimes(column: TimeColumn, inquiry: Inquiry): ResolvedTimes {
  let placing: Placing = { pair: "minutes and seconds", number: "minutes", dayFirst: false };
  placing = { ...placing, dayFirst: dayFirst(column, placing, inquiry) };
  const count = (wanted: TimeMark["shape"]) => column.marks.filter((mark) => mark?.shape === wanted).length;
  const shapes = (["pair", "number"] as const).filter((shape) => count(shape) > 0);
  if (count("pair") < count("number")) shapes.reverse();
  shapes.forEach((shape, index) => {
    placing = { ...placing, [shape]: meaningOf(shape, column, placing, inquiry, index === 0) };
  });
  return { times: placeTimes(column.marks, placing), placing };
}

function meaningOf(
  shape: "pair" | "number",
  column: TimeColumn,
  placing: Placing,
  inquiry: Inquiry,
  ask: boolean,
): TimeMeaning {
  const marks = column.marks.filter((mark): mark is TimeMark => mark?.shape === shape);
  const scored = timeMeanings
    .filter((candidate) => candidate.shape === shape && candidate.allows(marks))
    .map(({ meaning, prior }) => {
      const times = placeTimes(column.marks, { ...placing, [shape]: meaning });
      return { meaning, times, score: timeScore(times) + prior(marks[0]) };
    })
    .sort((one, other) => other.score - one.score);
  const told = meaningOfUnit(column.unit, shape);
  const best = scored[0];
  if (best === undefined) return told ?? (shape === "pair" ? "minutes and seconds" : "minutes");
  const allWritten = shape === "pair" && marks.every(({ half, date }) => half !== undefined || date !== undefined);
  const likeliest = told ?? best.meaning;
  const taken = scored.find(({ meaning }) => meaning === likeliest) ?? best;
  const differs = (times: readonly (number | undefined)[]) => Math.abs(lasting(times) - lasting(taken.times)) > 0.5;
  const close = scored.filter(
    ({ meaning, score, times }) => meaning === taken.meaning || (score > best.score - worthAsking && differs(times)),
  );
  if (!ask) return likeliest;
  const first = column.marks.findIndex((mark) => mark?.shape === shape);
  const sample =
    shape === "pair" ? `${marks.at(-1)?.a}:${String(marks.at(-1)?.b).padStart(2, "0")}` : `${marks.at(-1)?.a}`;
  return settle<TimeMeaning>(inquiry, {
    id: "time",
    asks: `What are the times, such as ${sample}?`,
    line: column.lines[first] ?? 1,
    likeliest,
    open: told === undefined && !allWritten && close.length > 1,
    answers: (told === undefined && close.length > 1 ? close : scored).map(({ meaning, times }) => ({
      answer: meaning,
      says: `The times are ${meaning}.`,
      changes:
        meaning === taken.meaning
          ? `As taken: the run lasts ${sayDuration(lasting(times))}.`
          : `The run would last ${sayDuration(lasting(times))} instead of ${sayDuration(lasting(taken.times))}.`,
    })),
  });
}

function dayFirst(column: TimeColumn, placing: Placing, inquiry: Inquiry): boolean {
  const dated = column.marks.flatMap((mark) => (mark?.date === undefined ? [] : [mark.date]));
  const unclear = dated.filter(({ style }) => style === "slash" || style === "dot");
  const first = unclear[0];
  if (first === undefined) return false;
  const [a, b, year] = first.numbers;
  const monthPossible = unclear.every(({ numbers }) => numbers[0] <= 12);
  const dayPossible = unclear.every(({ numbers }) => numbers[1] <= 12);
  const same = unclear.every(({ numbers }) => numbers[0] === numbers[1]);
  if (!monthPossible || !dayPossible || same) return !monthPossible;
  const last = (day: boolean) => lasting(placeTimes(column.marks, { ...placing, dayFirst: day }));
  const [asMonth, asDay] = [last(false), last(true)];
  const likeliest = asMonth === asDay ? first.style === "dot" : asDay < asMonth;
  const says = (month: number, day: number) =>
    `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  const changes = (day: boolean) => {
    const began = day ? says(b, a) : says(a, b);
    const lasts = asMonth === asDay ? "" : ` and would last ${sayDuration(day ? asDay : asMonth)}`;
    return day === likeliest ? `As taken: the run began on ${began}.` : `The run would have begun on ${began}${lasts}.`;
  };
  const answer = settle<"month first" | "day first">(inquiry, {
    id: "day or month first",
    asks: `Is ${a}${first.style === "dot" ? "." : "/"}${b} written with the month or the day first?`,
    line: column.lines[column.marks.findIndex((mark) => mark?.date === first)] ?? 1,
    likeliest: likeliest ? "day first" : "month first",
    open: true,
    answers: [
      { answer: "month first", says: `It is ${says(a, b)}.`, changes: changes(false) },
      { answer: "day first", says: `It is ${says(b, a)}.`, changes: changes(true) },
    ],
  });
  return answer === "day first";
}

function lasting(times: readonly (number | undefined)[]): number {
  let low = Infinity;
  let high = -Infinity;
  for (const time of times) {
    if (time === undefined) continue;
    if (time < low) low = time;
    if (time > high) high = time;
  }
  return high >= low ? high - low : 0;
}
