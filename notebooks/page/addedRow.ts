import { addEntry, readLog } from "../../lib/log/index.ts";
import type { Problem, Run } from "../../lib/log/types.ts";
import { type HandRow, handHeading, handRow } from "./handWriting.ts";

/** Time of a typed row in a log that came from elsewhere: by its clock beside one of the log's, else from the first row. */
function timeIn(run: Run, typed: string): number | undefined {
  const clocked = run.entries.find(({ clock }) => clock !== undefined && clock !== "");
  const anchor = clocked && /[ap]\.?m|:/i.test(clocked.clock ?? "") ? clocked.clock : undefined;
  const text = [
    handHeading("US"),
    anchor && `${anchor}\t200\t\t`,
    `${anchor ? "" : "0:00\t200\t\t\n"}${typed}\t201\t\t`,
  ]
    .filter(Boolean)
    .join("\n");
  const { entries } = readLog(text).run;
  const added = entries.find(({ quantity }) => quantity?.text.startsWith("201"));
  if (!added) return undefined;
  return anchor && clocked
    ? clocked.time + added.time - (entries.find(({ quantity }) => quantity?.text.startsWith("200"))?.time ?? 0)
    : added.time;
}

/** A row typed below a log that came from elsewhere: its parts become entries of their own. */
export function addedRow(
  run: Run,
  row: HandRow,
  degrees: "°F" | "°C",
): { readonly run: Run; readonly problems: readonly Problem[] } {
  const written = handRow(row).split("\t");
  const [time = "", temperature = "", water = "", remark = ""] = written;
  const at = timeIn(run, time);
  if (at === undefined || at < 0) {
    return {
      run,
      problems: [
        {
          line: 1,
          read: time === "" ? "no time" : time,
          expected: "a time of this log",
          remedy: "Write it as the log does: 12:30, or 7:46 pm.",
        },
      ],
    };
  }
  const parts = [
    {
      kind: "reading" as const,
      text: temperature && /[a-z°]/i.test(temperature) ? temperature : temperature && `${temperature} ${degrees}`,
    },
    { kind: "addition" as const, text: water },
    {
      kind: /^parts? in/i.test(remark)
        ? ("parts in" as const)
        : /^parts? out/i.test(remark)
          ? ("parts out" as const)
          : ("remark" as const),
      text: remark,
    },
  ].filter(({ text }) => text !== "");
  return parts.reduce<{ run: Run; problems: readonly Problem[] }>(
    (sum, { kind, text }) => {
      const added = addEntry(sum.run, { time: at, kind, text, clock: time });
      return "run" in added
        ? { run: added.run, problems: sum.problems }
        : { run: sum.run, problems: [...sum.problems, added.problem] };
    },
    { run, problems: [] },
  );
}
