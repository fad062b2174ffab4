import type { Line, Notebook } from "../../lib/lines/index.ts";
import { addEntry, correct, putBack, readLog, strikeOut } from "../../lib/log/index.ts";
import type { Entry, LogReading, Run } from "../../lib/log/types.ts";
import type { Knowing } from "../../lib/measure/types.ts";
import {
  addBath,
  addRun,
  addSetup,
  changeRun,
  changeSettings,
  changeSetup,
  type Facts,
  factsForNextRun,
  type Givens,
  itemOf,
  type KeptRun,
  type Moment,
  newBath,
  newRun,
  newSetup,
  removeItem,
  type ShopRecord,
  withFact,
} from "../../lib/record/index.ts";
import { addedRow } from "./addedRow.ts";
import { type HandRow, handHeading, isHandWritten, withRow } from "./handWriting.ts";
import type { Shop } from "./keep.ts";
import { carryEdits } from "./logRows.ts";
import { withRunFact } from "./runFact.ts";

const runOf = (record: ShopRecord, id: string): KeptRun | undefined => record.runs.find((run) => run.id === id);

const monthDay = new Intl.DateTimeFormat("en-US", { day: "numeric", month: "long" });

/** What a new run is called: its day, as far as the log told it; else today. */
export function runName(log: Run, today: Date): string {
  const day = log.start?.slice(0, 10);
  const date = day ? new Date(`${day}T12:00:00`) : today;
  return `Run of ${monthDay.format(Number.isNaN(date.getTime()) ? today : date)}`;
}

const keptWith = (book: Notebook, facts: Facts, thing: string): Facts =>
  Object.fromEntries(
    Object.entries(facts)
      .filter(([name]) => {
        const line = book.lines[name];
        return line?.kind === "given" && line.keptWith === thing;
      })
      .map(([name, { carriedOver: _, ...fact }]) => [name, fact]),
  );

/** Facts less those that hold for one maker's own instrument alone. */
const withoutOwnOnly = (book: Notebook, facts: Facts): Facts =>
  Object.fromEntries(
    Object.entries(facts).filter(([name]) => {
      const line = book.lines[name];
      return !(line?.kind === "given" && line.ownOnly);
    }),
  );

/** What a next log starts from; where that is the invented shop, the maker gets a setup and a bath of their own. */
function givensForNext(
  record: ShopRecord,
  book: Notebook,
  moment: Moment,
): { readonly record: ShopRecord; readonly givens: Givens } {
  const once = Object.keys(book.lines).filter((name) => {
    const line = book.lines[name];
    return line?.kind === "given" && line.keptWith === undefined;
  });
  const all = factsForNextRun(record, {}, once);
  const fromInvented = all.setup === undefined || itemOf(record, "setups", all.setup)?.invented === true;
  const given = fromInvented ? { ...all, facts: withoutOwnOnly(book, all.facts) } : all;
  const invented = (list: "setups" | "baths", id: string | undefined): boolean =>
    id === undefined || itemOf(record, list, id)?.invented === true;
  let next = record;
  let { setup, bath } = given;
  if (invented("setups", setup)) {
    const own = newSetup("My tank", keptWith(book, given.facts, "setup"), moment);
    next = addSetup(next, own);
    setup = own.id;
  }
  if (invented("baths", bath)) {
    const own = newBath("My bath", keptWith(book, given.facts, "bath"), moment);
    next = addBath(next, own);
    bath = own.id;
  }
  return { record: next, givens: { ...given, ...(setup ? { setup } : {}), ...(bath ? { bath } : {}) } };
}

/** Adds a run made of a log's text, with the open setup's givens carried over, and opens it. */
export function readIn(
  shop: Shop,
  source: string,
  reading: LogReading,
  name: string,
  book: Notebook,
): KeptRun | undefined {
  let made: KeptRun | undefined;
  shop.change((before, moment) => {
    const { record, givens } = givensForNext(before, book, moment);
    const date = reading.run.start?.slice(0, 10);
    made = newRun({ name, log: reading.run, source, ...(date ? { date } : {}) }, givens, moment);
    return changeSettings(addRun(record, made), { openRun: made.id }, moment.now);
  }, `${name} was not read in`);
  return made;
}

/** Starts an empty log to be written row by row. */
export function writeByHand(shop: Shop, system: "US" | "metric", today: Date, book: Notebook): void {
  const source = `${handHeading(system)}\n`;
  readIn(shop, source, { run: { entries: [] }, problems: [], questions: [] }, runName({ entries: [] }, today), book);
}

/** A file's text: UTF-8, or UTF-16 where the file says so in its first two bytes. */
export async function fileText(file: Blob): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : "utf-8";
  return new TextDecoder(encoding).decode(bytes);
}

/** Makes another run the open one; that is no step to undo. */
export function showRun(shop: Shop, id: string): void {
  shop.change((record, moment) => changeSettings(record, { openRun: id }, moment.now), undefined);
}

/** Sets a given of a run, and of the setup or bath that it belongs to, for the next run. Empty text: not known. */
export function setFact(
  shop: Shop,
  id: string,
  name: string,
  fact: { readonly text: string; readonly known: Knowing | undefined },
  was: string,
  line: Line | undefined,
): void {
  shop.change(
    (record, moment) => withRunFact(record, moment, id, name, fact, line),
    `${name} was ${was === "" ? "blank" : was}`,
  );
}

/** Marks all that was carried over as looked at. */
export function checkedAll(shop: Shop, id: string): void {
  shop.change(
    (record, moment) =>
      changeRun(
        record,
        id,
        ({ facts }) => ({
          facts: Object.entries(facts).reduce(
            (all, [line, { carriedOver, ...fact }]) => withFact(all, line, fact),
            facts,
          ),
        }),
        moment.now,
      ),
    "givens were carried over, unchecked",
  );
}

function changeLog(shop: Shop, id: string, name: string, edit: (run: Run) => Run): void {
  shop.change((record, moment) => changeRun(record, id, ({ log }) => ({ log: edit(log) }), moment.now), name);
}

const shownEntry = (entry: Entry): string => entry.quantity?.text ?? entry.text ?? entry.kind;

/** Strikes an entry out; it stays legible. */
export function strike(shop: Shop, id: string, entry: Entry, reason: string): void {
  changeLog(shop, id, `${shownEntry(entry)} was not struck out`, (run) => strikeOut(run, entry.id, reason));
}

/** Takes back a striking out. */
export function unstrike(shop: Shop, id: string, entry: Entry): void {
  changeLog(shop, id, `${shownEntry(entry)} was struck out`, (run) => putBack(run, entry.id));
}

/** Corrects what an entry says; what it said before is kept with it. Gives what is wrong with the text, if anything. */
export function correctEntry(shop: Shop, id: string, entry: Entry, text: string): string | undefined {
  const run = runOf(shop.record, id);
  if (!run) return undefined;
  const corrected = correct(run.log, entry.id, text);
  if ("problem" in corrected) return `${corrected.problem.expected} ${corrected.problem.remedy}`;
  changeLog(shop, id, `${shownEntry(entry)} was not corrected`, () => corrected.run);
  return undefined;
}

/** Writes a pour that was made and not written down. */
export function writePour(
  shop: Shop,
  id: string,
  { time, text }: { readonly time: number; readonly text: string },
): void {
  const run = runOf(shop.record, id);
  const added = run && addEntry(run.log, { time, kind: "addition", text });
  if (added && "run" in added) changeLog(shop, id, `the pour of ${text} was not written`, () => added.run);
}

/** Adds a row: below the others of a hand-written log, by its time in any other. Gives what could not be read. */
export function addRow(shop: Shop, id: string, row: HandRow): LogReading["problems"] {
  const run = runOf(shop.record, id);
  if (!run) return [];
  const said = [row.time, row.temperature, row.water, row.remark].filter((part) => part.trim() !== "").join(" ");
  if (isHandWritten(run.source)) {
    const source = withRow(run.source, row);
    const reading = readLog(source, run.hints);
    const last = source.trimEnd().split("\n").length;
    shop.change(
      (record, moment) =>
        changeRun(record, id, ({ log }) => ({ source, log: carryEdits(log, reading.run) }), moment.now),
      `the row ${said} was not written`,
    );
    return reading.problems.filter(({ line }) => line === last);
  }
  const added = addedRow(run.log, row, shop.record.settings.units === "US" ? "°F" : "°C");
  if (added.run !== run.log) changeLog(shop, id, `the row ${said} was not written`, () => added.run);
  return added.problems;
}

/** Settles what a log left open, for this run and for the next one of its setup. */
export function answerQuestion(shop: Shop, id: string, question: string, answer: string, was: string): void {
  shop.change((record, moment) => {
    const run = runOf(record, id);
    if (!run) return record;
    const hints = { ...run.hints, [question]: answer };
    const { run: log } = readLog(run.source, hints);
    const changed = changeRun(record, id, { hints, log: carryEdits(run.log, log) }, moment.now);
    const setup = changed.setups.find((one) => one.id === run.setup && !one.invented);
    return setup
      ? changeSetup(changed, setup.id, { hints: { ...setup.hints, [question]: answer } }, moment.now)
      : changed;
  }, `${question} was taken as ${was}`);
}

/** Throws a run away; it is kept, so that undo brings it back. */
export function throwAway(shop: Shop, run: KeptRun): void {
  shop.change((record, moment) => removeItem(record, "runs", run.id, moment.now), `${run.name} was there`);
}

/** US or metric, everywhere. */
export function setUnits(shop: Shop, units: "US" | "metric"): void {
  shop.change(
    (record, moment) => changeSettings(record, { units }, moment.now),
    `units were ${shop.record.settings.units}`,
  );
}
