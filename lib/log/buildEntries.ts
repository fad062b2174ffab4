import { isUnread, type Written } from "../measure/index.ts";
import type { AmountReader } from "./amountReader.ts";
import type { PourOrder } from "./decideOrder.ts";
import type { Units } from "./decideUnits.ts";
import type { WaterMeaning } from "./decideWater.ts";
import type { Draft } from "./draft.ts";
import { entryId } from "./entryId.ts";
import type { Finding } from "./finding.ts";
import { implausible } from "./implausible.ts";
import { inTimeOrder } from "./inTimeOrder.ts";
import { measures } from "./measures.ts";
import { runDrips } from "./runDrips.ts";
import type { Inquiry } from "./settle.ts";
import { totalsToPours } from "./totalsToPours.ts";
import type { Entry, Problem } from "./types.ts";

export interface Decisions {
  readonly units: Units;
  readonly water: WaterMeaning;
  readonly order: PourOrder;
  readonly read: AmountReader;
  readonly decimalComma: boolean;
}

/**
 * The entries of a log from its rows, in time order, with times in s from the earliest row.
 *
 * @param drafts the rows as read, in the order of the log
 * @param times s of each row from the earliest; a row without a time has that of the row before
 * @param decisions units and meanings taken for the whole log
 * @param inquiry where questions and problems go to
 * @returns entries in time order; rows of one time in the order of the log
 * @example
 * buildEntries(drafts, [0], decisions, inquiry)[0]?.kind // "reading"
 */
export function buildEntries(
  drafts: readonly Draft[],
  times: readonly number[],
  decisions: Decisions,
  inquiry: Inquiry,
): readonly Entry[] {
  const { problems } = inquiry;
  const entries: Entry[] = [];
  const ids = new Set<string>();
  const drips = { on: new Map<string, Written>(), off: new Set<string>() };
  const totals = totalsToPours(decisions.read, problems);
  let previous = 0;
  drafts.forEach((draft, index) => {
    const time = times[index] ?? 0;
    for (const finding of ordered(draft.findings, decisions.order)) {
      const started = finding.inColumn && decisions.water === "since the row before" ? Math.min(previous, time) : time;
      const read = quantityOf(finding, draft.line, decisions, problems);
      const struck = draft.struck ?? (finding.struck ? "crossed out in the log" : undefined);
      let quantity = read;
      if (quantity !== undefined && finding.inColumn && struck === undefined && decisions.water === "running total") {
        quantity = totals(quantity, draft.line);
        if (quantity === undefined) continue;
      }
      const failed = finding.amount !== undefined && quantity === undefined;
      const kind =
        failed && (finding.kind === "reading" || finding.kind === "addition" || finding.text === undefined)
          ? "remark"
          : finding.kind;
      const text = finding.text ?? (failed ? finding.amount : undefined);
      if (finding.trouble) problems.push({ line: draft.line, ...finding.trouble });
      const odd =
        quantity === undefined || struck !== undefined || finding.flow !== undefined
          ? undefined
          : implausible(kind, quantity);
      if (odd) problems.push({ line: draft.line, read: quantity?.text ?? "", ...odd });
      const id = entryId(ids, `${draft.line}`, kind);
      if (finding.flow === "on" && quantity !== undefined) drips.on.set(id, quantity);
      if (finding.flow === "off" && struck === undefined) drips.off.add(id);
      entries.push({
        id,
        time: started,
        ...(draft.clock === undefined ? {} : { clock: draft.clock }),
        kind,
        ...(quantity === undefined ? {} : { quantity }),
        ...(text === undefined ? {} : { text }),
        ...(started < time ? { duration: time - started } : {}),
        line: draft.line,
        struck: struck !== undefined,
        ...(struck === undefined ? {} : { reason: struck }),
      });
    }
    if (draft.findings.length === 0 && draft.clock !== undefined) entries.push(bare(draft, time, ids));
    if (draft.mark !== undefined && draft.aside === undefined) previous = time;
  });
  return runDrips(inTimeOrder(entries), drips, decisions.read, inquiry);
}

function bare(draft: Draft, time: number, ids: Set<string>): Entry {
  const { line, clock = "", struck } = draft;
  const reason = struck === undefined ? {} : { reason: struck };
  return {
    id: entryId(ids, `${line}`, "remark"),
    time,
    clock,
    kind: "remark",
    text: "",
    line,
    struck: struck !== undefined,
    ...reason,
  };
}

function ordered(findings: readonly Finding[], order: PourOrder): readonly Finding[] {
  if (findings.length < 2) return findings;
  const reading = findings.findIndex(({ kind }) => kind === "reading");
  const pour = findings.findIndex(({ kind, flow }) => kind === "addition" && flow === undefined);
  if (reading < 0 || pour < 0 || reading < pour === (order === "before the pour")) return findings;
  const sorted = [...findings];
  const [moved] = sorted.splice(Math.max(reading, pour), 1);
  if (moved !== undefined) sorted.splice(Math.min(reading, pour), 0, moved);
  return sorted;
}

function quantityOf(finding: Finding, line: number, decisions: Decisions, problems: Problem[]): Written | undefined {
  const { amount, kind, flow } = finding;
  const measured = measures.get(kind);
  if (amount === undefined || measured === undefined) return undefined;
  const unit = flow === undefined ? (finding.unit ?? decisions.units.get(kind) ?? "") : "fl oz/min";
  const text = kind === "reading" ? amount.replace(/°(?!\s?[fck])|deg(?:rees?)?\.?\s?(?![fck])/i, "").trim() : amount;
  const read = decisions.read(text, flow === undefined ? measured : "water flow", unit);
  if (!isUnread(read)) return read;
  problems.push({ line, read: amount.slice(0, 80), expected: read.expected, remedy: read.remedy });
  return undefined;
}
