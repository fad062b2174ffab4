import { addEntry, readLog } from "../../lib/log/index.ts";
import type { Entry, Problem, Run } from "../../lib/log/types.ts";
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

interface AddedRow {
  readonly run: Run;
  readonly problems: readonly Problem[];
}

type Said = Pick<Entry, "kind" | "quantity" | "text" | "duration">;

const whatItSays = ({ kind, quantity, text, duration }: Said): Said => ({
  kind,
  ...(quantity ? { quantity } : {}),
  ...(text === undefined ? {} : { text }),
  ...(duration === undefined ? {} : { duration }),
});

/** A remark read as the log's own are: the fire, parts, a drip become events; what is left open is told. */
function withRemark(
  { run, problems }: AddedRow,
  { time, clock, text }: { readonly time: number; readonly clock: string; readonly text: string },
): AddedRow {
  // A row that the remark stands in, so that it is read as any remark is.
  const read = readLog(`${handHeading("US")}\n0:00\t200\t\t${text}`);
  const said = read.run.entries.filter(({ kind }) => kind !== "reading");
  const found: readonly Said[] = said.length > 0 ? said : [{ kind: "remark", text }];
  const more = found.reduce((sum, event) => {
    const added = addEntry(sum, { time, kind: "remark", text, clock });
    if (!("run" in added)) return sum;
    const known = new Set(sum.entries.map(({ id }) => id));
    const entries = added.run.entries.map((entry) =>
      known.has(entry.id) ? entry : { ...entry, ...whatItSays(event) },
    );
    return { ...added.run, entries };
  }, run);
  return { run: more, problems: [...problems, ...read.problems] };
}

/** A row typed below a log that came from elsewhere: its parts become entries of their own. */
export function addedRow(run: Run, row: HandRow, degrees: "°F" | "°C"): AddedRow {
  const [time = "", temperature = "", water = "", remark = ""] = handRow(row).split("\t");
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
  ].filter(({ text }) => text !== "");
  const written = parts.reduce<AddedRow>(
    (sum, { kind, text }) => {
      const added = addEntry(sum.run, { time: at, kind, text, clock: time });
      return "run" in added
        ? { run: added.run, problems: sum.problems }
        : { run: sum.run, problems: [...sum.problems, added.problem] };
    },
    { run, problems: [] },
  );
  return remark === "" ? written : withRemark(written, { time: at, clock: time, text: remark });
}
