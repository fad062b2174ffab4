import { expect, test } from "vitest";
import {
  addBath,
  addNotebook,
  addRun,
  addSetup,
  asInvented,
  changeBath,
  changeItem,
  changeNotebook,
  changeRun,
  changeSettings,
  changeSetup,
  differences,
  factsForNextRun,
  hasDemo,
  itemOf,
  keyed,
  later,
  newBath,
  newId,
  newNotebook,
  newRecord,
  newRun,
  newSetup,
  putBack,
  putInPlace,
  removeItem,
  same,
  shown,
  stampChanges,
  takeBack,
  thisMoment,
  withDemo,
  withFact,
  withoutDemo,
  withoutFact,
} from "../../../lib/record/index.ts";
import { bath, record, run, setup, stamp, steadyMoments } from "./example.ts";

const now = "2026-11-25T12:00:00.000Z";
const moment = steadyMoments();

test("newId() gives 16 letters and digits, another each time, and only from the bytes it is handed", () => {
  const ids = Array.from({ length: 1000 }, () => newId());
  expect(new Set(ids).size).toBe(1000);
  for (const id of ids) expect(id).toMatch(/^[0-9a-hjkmnp-tv-z]{16}$/);
  expect(newId((bytes) => bytes.fill(31))).toBe("zzzzzzzzzzzzzzzz");
  expect(newId((bytes) => bytes.fill(32))).toBe("0000000000000000");
});

test.each([
  ["2026-11-25T11:00:00.000Z", now, now],
  [now, now, "2026-11-25T12:00:00.001Z"],
  ["2027-01-01T00:00:00.000Z", now, "2027-01-01T00:00:00.001Z"],
  ["", now, now],
  ["never", now, now],
])("later(%j, %j) is %s", (before, clock, expected) => {
  expect(later(before, clock)).toBe(expected);
});

test("later() refuses a clock that says no time", () => {
  expect(() => later(stamp, "noon")).toThrow("invalid time: noon; an ISO 8601 date and time is allowed");
});

test.each([
  [1, 1, true],
  [1, "1", false],
  [0, -0, true],
  [Number.NaN, Number.NaN, true],
  [null, undefined, false],
  [[], {}, false],
  [[1, 2], [1, 2], true],
  [[1, 2], [2, 1], false],
  [{ a: 1, b: 2 }, { b: 2, a: 1 }, true],
  [{ a: 1 }, { a: 1, b: undefined }, true],
  [{ a: undefined, b: 1 }, { b: 1, c: 1 }, false],
  [keyed([["a", 1]]), { a: 1 }, true],
  [{}, { toString: 1 }, false],
  [{ toString: 1 }, {}, false],
])("same(%j, %j) is %s", (a, b, expected) => {
  expect(same(a, b)).toBe(expected);
});

test("keyed() holds __proto__ as any other key", () => {
  const found = keyed([["__proto__", 1]]);
  expect(Object.keys(found)).toEqual(["__proto__"]);
  expect(found.toString).toBe(undefined);
});

test("newRecord() is empty, in US units, with the id and the time it is handed", () => {
  expect(newRecord(steadyMoments("x", now)())).toEqual({
    schema: 2,
    kind: "shop record",
    id: "x1",
    saved: now,
    settings: { units: "US", changed: now },
    setups: [],
    baths: [],
    runs: [],
    notebooks: [],
  });
  expect(Date.parse(thisMoment().now)).toBeGreaterThan(0);
});

test("addRun(), addSetup(), addBath(), addNotebook() add at the end and refuse an id twice", () => {
  const more = addNotebook(
    addBath(addSetup(record, newSetup("Short tank", {}, moment())), newBath("Own salts", {}, moment())),
    newNotebook("Feed", { asks: "?", lines: {} }, moment()),
  );
  expect(more.setups.map(({ name }) => name)).toEqual(["Long tank", "Short tank"]);
  expect(more.baths.map(({ name }) => name)).toEqual(["Ready mix", "Own salts"]);
  expect(more.notebooks.map(({ name }) => name)).toEqual(["My question", "Feed"]);
  expect(() => addRun(record, run)).toThrow("ambiguous id: r1; an id that none of the runs has is allowed");
});

test("changeRun() changes that run alone, stamps it, and leaves the record it was handed", () => {
  const before = structuredClone(record);
  const changed = changeRun(record, "r1", { name: "Wednesday" }, now);
  expect(changed.runs[0]).toEqual({ ...run, name: "Wednesday", changed: now });
  expect(changed.setups).toBe(record.setups);
  expect(record).toEqual(before);
});

test("changeSetup(), changeBath() and changeNotebook() take a function, and no run changes with them", () => {
  const changed = changeNotebook(
    changeBath(
      changeSetup(record, "s1", ({ facts }) => ({ facts: withFact(facts, "altitude", { text: "0 ft" }) }), now),
      "b1",
      ({ name }) => ({ name: `${name}, second charge` }),
      now,
    ),
    "n1",
    { notebook: { asks: "?", lines: {} } },
    now,
  );
  expect(changed.setups[0]?.facts.altitude?.text).toBe("0 ft");
  expect(changed.baths[0]?.name).toBe("Ready mix, second charge");
  expect(changed.runs).toBe(record.runs);
});

test("changeItem() refuses an id and a list that are not there", () => {
  expect(() => changeRun(record, "r9", {}, now)).toThrow(
    "unknown id: r9; an id among the runs of the record is allowed",
  );
  expect(() => changeItem(record, "__proto__" as "runs", "r1", {}, now)).toThrow("unknown list: __proto__");
});

test("changeItem() never changes an id, whatever the patch says", () => {
  expect(itemOf(changeRun(record, "r1", { id: "r2" } as object, now), "runs", "r1")).toBeDefined();
});

test("withFact() sets in place or at the end, withoutFact() takes out, both for any name", () => {
  const facts = withFact(withFact(setup.facts, "tank length", { text: "40 in" }), "__proto__", { text: "1 lb" });
  expect(Object.entries(facts).map(([line, { text }]) => `${line}: ${text}`)).toEqual([
    "tank length: 40 in",
    "altitude: 2,100 ft",
    "__proto__: 1 lb",
  ]);
  expect(Object.keys(withoutFact(facts, "__proto__"))).toEqual(["tank length", "altitude"]);
  expect(withoutFact(setup.facts, "nothing of the kind")).toEqual(setup.facts);
});

test("removeItem() hides and putBack() shows again, with nothing lost", () => {
  const gone = removeItem(record, "runs", "r1", now);
  expect(shown(gone.runs)).toEqual([]);
  expect(gone.runs).toHaveLength(1);
  expect(shown(putBack(gone, "runs", "r1", now).runs)).toMatchObject([{ id: "r1", outcome: "even black" }]);
});

test("factsForNextRun(record) gives the open setup's and bath's facts, each carried over", () => {
  expect(factsForNextRun(record)).toEqual({
    setup: "s1",
    bath: "b1",
    facts: {
      "water at the start": { text: "2.3 gal", carriedOver: true },
      altitude: { text: "2,100 ft", known: "published", carriedOver: true },
      "ready mix": { text: "24 lb", known: "from the label", carriedOver: true },
      "tank length": { text: "36 in", known: "measured", carriedOver: true },
    },
    hints: { temperature: "F" },
  });
  expect(factsForNextRun(record, {}, ["water at the start"]).facts).not.toHaveProperty("water at the start");
});

test("factsForNextRun(record) takes the maker's last run where none is open, else the invented one that is shown", () => {
  const { openRun: _, ...settings } = record.settings;
  const closed = { ...record, settings };
  expect(factsForNextRun(closed).setup).toBe("s1");
  const own = { ...run, id: "mine", setup: "s2", bath: "b2", facts: { altitude: { text: "0 ft" } } };
  expect(factsForNextRun(addRun(asInvented(closed), own)).facts).toEqual({
    altitude: { text: "0 ft", carriedOver: true },
  });
  expect(factsForNextRun(asInvented(closed)).facts).toEqual(factsForNextRun(record).facts);
  expect(factsForNextRun(withoutDemo(asInvented(record), now))).toEqual({ facts: {}, hints: {} });
  expect(factsForNextRun(removeItem(record, "runs", "r1", now))).toEqual({ facts: {}, hints: {} });
  expect(factsForNextRun(newRecord())).toEqual({ facts: {}, hints: {} });
});

test("newRun() copies the facts, so that a later change of the setup does not reach it", () => {
  const firing = { name: "Friday", log: run.log, source: run.source, hints: { water: "gal" } };
  const made = newRun(firing, factsForNextRun(record), steadyMoments("x", now)());
  const kept = changeSetup(addRun(record, made), "s1", { facts: {} }, now);
  expect(kept.runs[1]).toMatchObject({ id: "x1", changed: now, name: "Friday", setup: "s1", bath: "b1" });
  expect(kept.runs[1]?.facts["tank length"]).toEqual({ text: "36 in", known: "measured", carriedOver: true });
  expect(kept.runs[1]?.hints).toEqual({ temperature: "F", water: "gal" });
});

test("stampChanges() stamps what changed, notes what it said, and flags what was left out", () => {
  const edit = {
    ...record,
    runs: [{ ...run, name: "Friday", facts: withFact(run.facts, "altitude", { text: "0 ft" }) }],
    baths: [],
  };
  const stamped = stampChanges(record, edit, now);
  expect(stamped.runs[0]).toMatchObject({
    changed: now,
    history: [
      { at: now, what: "altitude", was: "2,150 ft" },
      { at: now, what: "name", was: "Tuesday" },
    ],
  });
  expect(stamped.baths).toEqual([{ ...bath, removed: true, changed: now }]);
  expect(stamped.setups).toBe(record.setups);
});

test("stampChanges() gives the same record where nothing changed", () => {
  expect(stampChanges(record, structuredClone(record), now)).toBe(record);
  expect(stampChanges(record, changeSettings(record, {}, now), now)).toBe(record);
});

test("takeBack() undoes one change and leaves what came after it", () => {
  const after = changeRun(record, "r1", { name: "Friday" }, now);
  const since = changeRun(after, "r1", { outcome: "streaky" }, now);
  const back = takeBack(since, record, after, now);
  expect(back.runs[0]).toMatchObject({ name: "Tuesday", outcome: "streaky" });
  expect((back.runs[0]?.changed ?? "") > (since.runs[0]?.changed ?? "")).toBe(true);
  expect(takeBack(back, after, record, now).runs[0]).toMatchObject({ name: "Friday", outcome: "streaky" });
});

test("takeBack() of an added item throws it away, and of a thrown-away one puts it back", () => {
  const added = addRun(record, { ...run, id: "r2" });
  expect(shown(takeBack(added, record, added, now).runs).map(({ id }) => id)).toEqual(["r1"]);
  const gone = removeItem(record, "runs", "r1", now);
  expect(shown(takeBack(gone, record, gone, now).runs).map(({ id }) => id)).toEqual(["r1"]);
});

test("takeBack() gives units back and leaves the open run alone", () => {
  const after = changeSettings(record, { units: "metric" }, now);
  const since = changeSettings(after, { openRun: "r2" }, now);
  expect(takeBack(since, record, after, now).settings).toMatchObject({ units: "US", openRun: "r2" });
});

test("putInPlace() shows what the copy shows and nothing else, with stamps that win", () => {
  const copy = { ...record, id: "other", runs: [{ ...run, name: "As it was" }], setups: [] };
  const placed = putInPlace(changeRun(record, "r1", { name: "Friday" }, now), copy, now);
  expect(placed.id).toBe("shop1");
  expect(placed.runs).toMatchObject([{ name: "As it was", changed: "2026-11-25T12:00:00.001Z" }]);
  expect(placed.setups).toMatchObject([{ id: "s1", removed: true }]);
});

test("withoutDemo() and withDemo() touch invented items alone", () => {
  const both = addRun(asInvented(record), { ...run, id: "mine" });
  expect(hasDemo(both)).toBe(true);
  const without = withoutDemo(both, now);
  expect(hasDemo(without)).toBe(false);
  expect(shown(without.runs).map(({ id }) => id)).toEqual(["mine"]);
  expect(hasDemo(withDemo(without, record, now))).toBe(true);
  expect(withDemo(newRecord(), record, now).runs[0]?.invented).toBe(true);
  expect(hasDemo(newRecord())).toBe(false);
});

test("differences() names each part that two versions say differently", () => {
  const [first, second] = run.log.entries;
  if (first === undefined || second === undefined) throw new Error("the example has two entries");
  const entries = [{ ...first, struck: true }, second, { ...second, id: "e3", time: 90, text: "flame down" }];
  const after = changeSettings(
    changeRun(
      record,
      "r1",
      { log: { ...run.log, entries }, facts: withoutFact(run.facts, "altitude"), name: "Friday" },
      now,
    ),
    { units: "metric" },
    now,
  );
  expect(differences(record, after).map(({ what, was, now: is }) => [what, was, is])).toEqual([
    ["name", "Tuesday", "Friday"],
    ["altitude", "2,150 ft", undefined],
    ["log entry 7:40 pm", "285", "struck out"],
    ["log entry at 1.5 min", undefined, "struck out"],
    ["units", "US", "metric"],
  ]);
  expect(differences(record, structuredClone(record))).toEqual([]);
});
