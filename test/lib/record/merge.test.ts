import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addRun,
  changeRun,
  changeSettings,
  changeSetup,
  type Kept,
  listNames,
  merge,
  newRecord,
  removeItem,
  type ShopRecord,
  same,
  withFact,
} from "../../../lib/record/index.ts";
import { record, run, steadyMoments } from "./example.ts";

const [early, late] = ["2026-11-25T12:00:00.000Z", "2026-11-25T13:00:00.000Z"];

const altitude = (from: ShopRecord, text: string, now: string) =>
  changeRun(from, "r1", ({ facts }) => ({ facts: withFact(facts, "altitude", { text }) }), now);

test("merge(mine, theirs) takes the later change of an item whole, whichever side has it", () => {
  const [mine, theirs] = [altitude(record, "1 ft", early), altitude(record, "2 ft", late)];
  expect(merge(mine, theirs).record.runs).toEqual(theirs.runs);
  expect(merge(theirs, mine).record.runs).toEqual(theirs.runs);
  expect(merge(mine, theirs).overwritten).toMatchObject([{ list: "runs", id: "r1", name: "Tuesday", gaveUp: "mine" }]);
  expect(merge(theirs, mine).overwritten).toMatchObject([{ what: "all of it", gaveUp: "theirs" }]);
});

test("merge(mine, theirs, base) puts an item together where each side changed another part", () => {
  const mine = altitude(record, "1 ft", early);
  const theirs = changeRun(record, "r1", { outcome: "streaky" }, late);
  const { record: merged, overwritten } = merge(mine, theirs, record);
  expect(overwritten).toEqual([]);
  expect(merged.runs[0]).toEqual({ ...run, facts: mine.runs[0]?.facts, outcome: "streaky", changed: late });
});

test("merge(mine, theirs, base) joins log entries by id, in order of time, and keeps a strike of one and a row of the other", () => {
  const [first, second] = run.log.entries;
  if (first === undefined || second === undefined) throw new Error("the example has two entries");
  const added = { ...second, id: "e3", time: 120, struck: false };
  const mine = changeRun(record, "r1", { log: { ...run.log, entries: [{ ...first, struck: true }, second] } }, early);
  const theirs = changeRun(record, "r1", { log: { ...run.log, entries: [first, second, added] } }, late);
  for (const merged of [merge(mine, theirs, record), merge(theirs, mine, record)]) {
    expect(merged.overwritten).toEqual([]);
    expect(merged.record.runs[0]?.log.entries.map(({ id, struck }) => [id, struck])).toEqual([
      ["e1", true],
      ["e3", false],
      ["e2", true],
    ]);
  }
});

test("merge(mine, theirs, base) says which fact was overwritten and keeps its text in the history", () => {
  const [mine, theirs] = [altitude(record, "1 ft", early), altitude(record, "2 ft", late)];
  const merged = merge(mine, theirs, record);
  expect(merged.overwritten).toMatchObject([
    { name: "Tuesday", what: "altitude", stands: { text: "2 ft" }, lost: { text: "1 ft" }, gaveUp: "mine" },
  ]);
  expect(merged.record.runs[0]?.history).toEqual([{ at: early, what: "altitude", was: "1 ft" }]);
});

test("merge(mine, theirs) never brings back what was thrown away later, nor throws away what was put back later", () => {
  const gone = removeItem(record, "runs", "r1", late);
  expect(merge(altitude(record, "1 ft", early), gone).record.runs[0]?.removed).toBe(true);
  expect(merge(gone, altitude(record, "1 ft", early)).record.runs[0]?.removed).toBe(true);
  const back = changeRun(gone, "r1", { removed: false }, "2026-11-25T14:00:00.000Z");
  expect(merge(gone, back).record.runs[0]?.removed).toBe(false);
});

test("merge(mine, theirs, base) keeps one side's units and the other side's open run", () => {
  const mine = changeSettings(record, { units: "metric" }, early);
  const theirs = changeSettings(record, { openRun: "r2" }, late);
  for (const merged of [merge(mine, theirs, record), merge(theirs, mine, record)]) {
    expect(merged.record.settings).toMatchObject({ units: "metric", openRun: "r2" });
    expect(merged.overwritten).toEqual([]);
  }
});

test("merge(mine, theirs) reports units that were overwritten", () => {
  const mine = changeSettings(record, { units: "metric" }, early);
  const theirs = changeSettings(record, { units: "US" }, late);
  const merged = merge(mine, theirs);
  expect(merged.record.settings.units).toBe("US");
  expect(merged.overwritten).toMatchObject([{ list: "settings", what: "units", lost: "metric", gaveUp: "mine" }]);
});

test("merge(mine, theirs) keeps fields of both sides that this version does not know", () => {
  const mine = { ...record, mine: 1 } as ShopRecord;
  const theirs = { ...record, theirs: 2, saved: late } as ShopRecord;
  expect(merge(mine, theirs).record).toMatchObject({ mine: 1, theirs: 2 });
});

test("merge(mine, theirs) with an empty record, with itself and with what both came from", () => {
  const empty = { ...newRecord(steadyMoments()()), settings: { units: "US" as const } };
  expect(merge(record, record)).toEqual({ record, overwritten: [] });
  expect(merge(record, empty).record.runs).toEqual(record.runs);
  expect(merge(empty, record).record.runs).toEqual(record.runs);
  expect(merge(record, empty, empty).record).toBe(record);
});

/** A record that came from `record` by some edits. */
const edited = fc
  .array(
    fc.record({
      what: fc.constantFrom("add", "fact", "name", "remove", "setup"),
      n: fc.nat(3),
      minute: fc.nat(5),
      word: fc.constantFrom("x", "y", "z"),
    }),
    { maxLength: 6 },
  )
  .map((edits) =>
    edits.reduce((now, { what, n, minute, word }) => {
      const at = `2026-11-25T12:0${minute}:00.000Z`;
      const id = `r${n}`;
      const there = now.runs.some((it) => it.id === id);
      if (what === "setup") return changeSetup(now, "s1", { name: word }, at);
      if (!there) return addRun(now, { ...run, id, name: word, changed: at });
      if (what === "remove") return removeItem(now, "runs", id, at);
      if (what === "name") return changeRun(now, id, { name: word }, at);
      return changeRun(now, id, ({ facts }) => ({ facts: withFact(facts, `line ${minute % 2}`, { text: word }) }), at);
    }, record),
  );

// Their order in a list is each side's own; what they are is not.
const content = (of: ShopRecord) =>
  listNames.map((list) => [...of[list]].sort((a: Kept, b: Kept) => (a.id < b.id ? -1 : 1)));

test("merge(a, b) and merge(b, a) hold the same items, with a base and without", () => {
  fc.assert(
    fc.property(edited, edited, fc.boolean(), (a, b, based) => {
      const base = based ? record : undefined;
      expect(same(content(merge(a, b, base).record), content(merge(b, a, base).record))).toBe(true);
    }),
  );
});

test("merge(a, b) loses no item of either side, and merging again changes nothing", () => {
  fc.assert(
    fc.property(edited, edited, fc.boolean(), (a, b, based) => {
      const { record: merged } = merge(a, b, based ? record : undefined);
      for (const list of listNames) {
        const ids = merged[list].map(({ id }) => id);
        for (const side of [a, b]) expect(ids).toEqual(expect.arrayContaining(side[list].map(({ id }) => id)));
        expect(new Set(ids).size).toBe(ids.length);
      }
      expect(same(merge(merged, b, b).record, merged)).toBe(true);
      expect(same(merge(merged, merged).record, merged)).toBe(true);
    }),
  );
});

test("merge(a, b, base) leaves what only one side changed as that side has it", () => {
  fc.assert(
    fc.property(edited, (a) => {
      expect(merge(a, structuredClone(record), record).record).toEqual(a);
      expect(same(content(merge(structuredClone(record), a, record).record), content(a))).toBe(true);
    }),
  );
});
