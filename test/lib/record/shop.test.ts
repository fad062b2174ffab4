import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addRun,
  changeRun,
  changeSettings,
  changeSetup,
  type KeptRun,
  readRecord,
  removeItem,
  type ShopRecord,
  same,
  shown,
  withFact,
  writeRecord,
} from "../../../lib/record/index.ts";
import { mostEarlier } from "../../../notebooks/page/keep/earlier.ts";
import { openShopIn } from "../../../notebooks/page/keep/shop.ts";
import type { Shop } from "../../../notebooks/page/keep/types.ts";
import { record as demo, run, steadyMoments } from "./example.ts";
import { MemoryStorage } from "./memoryStorage.ts";

const own = (id: string, name = id): KeptRun => ({ ...run, id, name });

const open = (memory: MemoryStorage, prefix = "a", start?: string): Promise<Shop> =>
  openShopIn({ storage: memory.tab(), demo, moment: steadyMoments(prefix, start) });

const add = (shop: Shop, id: string) => shop.change((now) => addRun(now, own(id)), `${id} was not there`);

const set = (shop: Shop, id: string, line: string, text: string) =>
  shop.change(
    (now, { now: at }) => changeRun(now, id, (it) => ({ facts: withFact(it.facts, line, { text }) }), at),
    `${line} was ${shop.record.runs.find((it) => it.id === id)?.facts[line]?.text}`,
    `${line} ${text}`,
  );

const fact = (record: ShopRecord, id: string, line: string) =>
  record.runs.find((it) => it.id === id)?.facts[line]?.text;

/** Waits until neither tab has anything more to write or to hear. */
async function quiet(...shops: Shop[]): Promise<void> {
  for (let i = 0; i < 4; i++) {
    for (const shop of shops) await shop.settled();
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}

test("openShopIn() shows the demo on a first visit, flagged as invented, and keeps nothing yet", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  expect(shop.record.runs.map(({ id, invented }) => [id, invented])).toEqual([["r1", true]]);
  expect(shop.hasDemo).toBe(true);
  expect(shop.keptAt).toBe(undefined);
  expect(shop.problem).toBe(undefined);
  expect(memory.values.size).toBe(0);
});

test("change() is kept, and there again when the shop is opened anew", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  await shop.settled();
  expect(shop.keptAt).toMatch(/^2026-11-25T12:/);
  const again = await open(memory, "b");
  expect(again.record).toEqual(shop.record);
  expect(again.record.runs.map(({ id, invented }) => [id, invented])).toEqual([
    ["r1", true],
    ["mine", undefined],
  ]);
});

test("change() that changes nothing gives the same record and no step to undo", async () => {
  const shop = await open(new MemoryStorage());
  const before = shop.record;
  expect(shop.change((now) => ({ ...now, runs: [...now.runs] }), "nothing")).toBe(before);
  expect(shop.undoName).toBe(undefined);
});

test("undo() and redo() go by name and give back what was there", async () => {
  const shop = await open(new MemoryStorage());
  add(shop, "mine");
  set(shop, "mine", "altitude", "2,400 ft");
  expect(shop.undoName).toBe("altitude was 2,150 ft");
  shop.undo();
  expect(fact(shop.record, "mine", "altitude")).toBe("2,150 ft");
  expect(shop.redoName).toBe("altitude 2,400 ft");
  expect(shop.undoName).toBe("mine was not there");
  shop.undo();
  expect(shown(shop.record.runs).map(({ id }) => id)).toEqual(["r1"]);
  expect(shop.undoName).toBe(undefined);
  shop.undo();
  shop.redo();
  shop.redo();
  expect(fact(shop.record, "mine", "altitude")).toBe("2,400 ft");
  expect(shop.redoName).toBe(undefined);
});

test("change() keeps in the run's history what a fact said before", async () => {
  const shop = await open(new MemoryStorage());
  add(shop, "mine");
  set(shop, "mine", "altitude", "2,400 ft");
  set(shop, "mine", "altitude", "2,500 ft");
  const history = shop.record.runs.find(({ id }) => id === "mine")?.history ?? [];
  expect(history.map(({ what, was }) => `${what} ${was}`)).toEqual(["altitude 2,150 ft", "altitude 2,400 ft"]);
});

test("removeDemo() and bringBackDemo() leave the maker's own alone", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  shop.removeDemo();
  expect(shop.hasDemo).toBe(false);
  expect(shown(shop.record.runs).map(({ id }) => id)).toEqual(["mine"]);
  await shop.settled();
  const again = await open(memory, "b");
  expect(again.hasDemo).toBe(false);
  again.bringBackDemo();
  expect(shown(again.record.runs).map(({ id }) => id)).toEqual(["r1", "mine"]);
  expect(shown(again.record.setups).map(({ name }) => name)).toEqual(["Long tank"]);
});

test("two tabs that change different things keep both", async () => {
  const memory = new MemoryStorage();
  const [one, two] = [await open(memory, "a"), await open(memory, "b")];
  add(one, "from one");
  add(two, "from two");
  await quiet(one, two);
  set(one, "from one", "altitude", "1 ft");
  set(two, "from one", "water at the start", "9 gal");
  one.change((now, { now: at }) => changeSettings(now, { units: "metric" }, at), "units were US");
  two.change((now, { now: at }) => changeSetup(now, "s1", { name: "Longer tank" }, at), "the tank was Long tank");
  await quiet(one, two);
  for (const { record } of [one, two, await open(memory, "c")]) {
    expect(
      shown(record.runs)
        .map(({ id }) => id)
        .sort(),
    ).toEqual(["from one", "from two", "r1"]);
    expect(fact(record, "from one", "altitude")).toBe("1 ft");
    expect(fact(record, "from one", "water at the start")).toBe("9 gal");
    expect(record.settings.units).toBe("metric");
    expect(record.setups[0]?.name).toBe("Longer tank");
  }
});

test("the tab whose text was replaced is told so in words, and the text stays in the history", async () => {
  const memory = new MemoryStorage();
  const one = await open(memory, "a", "2026-11-25T12:00:00.000Z");
  add(one, "mine");
  await quiet(one);
  const two = await open(memory, "b", "2026-11-25T13:00:00.000Z");
  const told: string[] = [];
  one.subscribe(({ says }) => told.push(...says));
  set(one, "mine", "altitude", "1,000 ft");
  set(two, "mine", "altitude", "2,000 ft");
  await quiet(one, two);
  for (const { record } of [one, two]) {
    expect(fact(record, "mine", "altitude")).toBe("2,000 ft");
    expect(record.runs.find(({ id }) => id === "mine")?.history).toContainEqual(
      expect.objectContaining({ what: "altitude", was: "1,000 ft" }),
    );
  }
  expect(told).toEqual([
    "Another open tab changed altitude of the run “mine”. “2,000 ft” stands in place of “1,000 ft”.",
  ]);
});

test("which run is open stays each tab's own", async () => {
  const memory = new MemoryStorage();
  const [one, two] = [await open(memory, "a"), await open(memory, "b")];
  one.change((now, { now: at }) => changeSettings(now, { openRun: "r1" }, at), undefined);
  await quiet(one, two);
  add(two, "from two");
  two.change((now, { now: at }) => changeSettings(now, { openRun: "from two" }, at), undefined);
  await quiet(one, two);
  expect(one.record.settings.openRun).toBe("r1");
  expect(two.record.settings.openRun).toBe("from two");
  expect(one.undoName).toBe(undefined);
  expect((await open(memory, "c")).record.settings.openRun).toBe("from two");
});

test("undo() takes back only its own change, not what another tab wrote since", async () => {
  const memory = new MemoryStorage();
  const one = await open(memory, "a");
  add(one, "mine");
  await quiet(one);
  const two = await open(memory, "b");
  set(one, "mine", "altitude", "1 ft");
  await quiet(one, two);
  set(two, "mine", "water at the start", "9 gal");
  await quiet(one, two);
  one.undo();
  await quiet(one, two);
  for (const { record } of [one, two]) {
    expect(fact(record, "mine", "altitude")).toBe("2,150 ft");
    expect(fact(record, "mine", "water at the start")).toBe("9 gal");
  }
});

test("any interleaving of two tabs ends in one record, with every run and every last text of a fact", async () => {
  const act = fc.record({
    tab: fc.nat(1),
    what: fc.constantFrom("add", "set", "remove", "undo", "redo", "wait", "settle"),
    line: fc.constantFrom("altitude", "air pressure", "target"),
    which: fc.nat(20),
  });
  await fc.assert(
    fc.asyncProperty(fc.array(act, { maxLength: 25 }), async (acts) => {
      const memory = new MemoryStorage();
      const tabs = [await open(memory, "a"), await open(memory, "b")] as const;
      const added = new Set<string>();
      const lastBy = new Map<string, Map<number, string>>();
      let n = 0;
      let undone = false;
      for (const { tab, what, line, which } of acts) {
        const shop = tab === 0 ? tabs[0] : tabs[1];
        const target = shop.record.runs[which % shop.record.runs.length];
        n++;
        if (what === "add") {
          added.add(`r-${n}`);
          add(shop, `r-${n}`);
        } else if (what === "set" && target !== undefined) {
          set(shop, target.id, line, `text ${n}`);
          const key = `${target.id} ${line}`;
          lastBy.set(key, new Map(lastBy.get(key)).set(tab, `text ${n}`));
        } else if (what === "remove" && target !== undefined) {
          shop.change((now, { now: at }) => removeItem(now, "runs", target.id, at), `${target.name} was there`);
        } else if (what === "undo" || what === "redo") {
          undone = true;
          shop[what]();
        } else if (what === "settle") await quiet(...tabs);
        else await Promise.resolve();
      }
      await quiet(...tabs);
      const third = await open(memory, "c");
      const [one, two] = [tabs[0].record, tabs[1].record];
      const content = ({ setups, baths, runs, notebooks }: ShopRecord) => ({
        setups,
        baths,
        runs,
        notebooks,
      });
      expect(same(content(one), content(two))).toBe(true);
      if (n > 0 && third.keptAt !== undefined) expect(same(content(one), content(third.record))).toBe(true);
      for (const id of added) expect(one.runs.some((it) => it.id === id)).toBe(true);
      // Without undo, what stands is one of the tabs' last texts, and the other is in the history unless it was
      // replaced knowingly, which the history says as well.
      if (!undone) {
        for (const [key, texts] of lastBy) {
          const [id = "", ...line] = key.split(" ");
          const found = one.runs.find((it) => it.id === id);
          const name = line.join(" ");
          expect([...texts.values()]).toContain(found?.facts[name]?.text);
          const said = [found?.facts[name]?.text, ...(found?.history ?? []).map(({ was }) => was)];
          for (const text of texts.values()) expect(said).toContain(text);
        }
      }
    }),
    { numRuns: 150 },
  );
}, 60_000);

test("a storage that fails is said in plain words, work goes on, and the next change tries again", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  const causes: string[] = [];
  shop.subscribe(({ cause }) => causes.push(cause));
  memory.fails = new DOMException("full", "QuotaExceededError");
  add(shop, "mine");
  await shop.settled();
  expect(shop.problem?.because).toBe("The browser has no room left for this page.");
  expect(shop.problem?.remedy).toContain("save a copy");
  expect(shop.record.runs.some(({ id }) => id === "mine")).toBe(true);
  expect(causes).toEqual(["change", "not kept"]);
  memory.fails = undefined;
  add(shop, "another");
  await shop.settled();
  expect(shop.problem).toBe(undefined);
  expect((await open(memory, "b")).record.runs.map(({ id }) => id)).toEqual(["r1", "mine", "another"]);
});

test("openShopIn() opens on the demo where nothing may be kept at all", async () => {
  const memory = new MemoryStorage();
  memory.fails = new DOMException("no", "SecurityError");
  const shop = await open(memory);
  expect(shop.problem?.because).toContain("private window");
  add(shop, "mine");
  expect(shop.undoName).toBe("mine was not there");
  expect(JSON.parse(shop.copy().text).runs).toHaveLength(2);
});

test("openShopIn() goes on without a storage that does not answer, and takes up what it has when it does", async () => {
  const memory = new MemoryStorage();
  const first = await open(memory);
  add(first, "kept");
  await first.settled();
  let answer = (): void => {};
  const waiting = new Promise<void>((resolve) => {
    answer = resolve;
  });
  const tab = memory.tab();
  const storage = { ...tab, get: (key: string) => waiting.then(() => tab.get(key)) };
  const shop = await openShopIn({ storage, demo, moment: steadyMoments("b"), patience: 5 });
  expect(shop.problem?.because).toContain("does not answer");
  add(shop, "meanwhile");
  answer();
  await quiet(shop);
  expect(shop.problem).toBe(undefined);
  expect(shop.record.runs.map(({ id }) => id).sort()).toEqual(["kept", "meanwhile", "r1"]);
  expect((await open(memory, "c")).record.runs).toHaveLength(3);
});

test.each([
  ["a newer version's record", { stamp: "x", at: "", text: '{"schema": 3, "kind": "shop record"}' }, "newer version"],
  ["a broken record", { stamp: "x", at: "", text: '{"schema": 1, "kind": "shop rec' }, "cut short"],
  ["something else", 5, "not a shop record"],
])("openShopIn() leaves %s as it is, until the maker starts afresh", async (_, value, said) => {
  const memory = new MemoryStorage();
  memory.values.set("shop", value);
  const shop = await open(memory);
  expect(shop.problem?.because).toContain(said);
  add(shop, "mine");
  await quiet(shop);
  expect(memory.values.get("shop")).toBe(value);
  expect(shop.unreadable).toBe(typeof value === "number" ? "5" : value.text);
  await shop.startAfresh();
  expect(shop.problem).toBe(undefined);
  expect((await open(memory, "b")).record.runs.map(({ id }) => id)).toEqual(["r1", "mine"]);
  expect((await shop.earlier()).map(({ why }) => why)).toEqual(["could not be read"]);
});

test("a tab stops writing when another tab's newer version has written", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  await shop.settled();
  const newer = { stamp: "new", at: "", text: '{"schema": 3, "kind": "shop record"}' };
  memory.values.set("shop", newer);
  add(shop, "another");
  await quiet(shop);
  expect(memory.values.get("shop")).toBe(newer);
  expect(shop.problem?.because).toContain("newer version");
  expect(shop.record.runs).toHaveLength(3);
});

test("change() with a number that cannot be written says so and keeps what was kept", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  await shop.settled();
  const before = memory.values.get("shop");
  shop.change(
    (now) =>
      addRun(now, {
        ...own("bad"),
        log: { entries: [{ id: "e", time: Number.NaN, kind: "remark", line: 0, struck: false }] },
      }),
    "it was not there",
  );
  await shop.settled();
  expect(memory.values.get("shop")).toBe(before);
  expect(shop.problem?.because).toContain("NaN");
});

test("openCopy(file) adds what the copy holds, lets the later version stand, and can be undone", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  set(shop, "mine", "altitude", "1 ft");
  const copy = { ...demo, runs: [own("mine"), own("theirs")], setups: [], baths: [], notebooks: [] };
  const taken = await shop.openCopy(new Blob([writeRecord(copy)]));
  expect(taken).toEqual({ says: ["1 run added.", "1 run changed later here: the version here stands."] });
  expect(shown(shop.record.runs).map(({ id }) => id)).toEqual(["r1", "mine", "theirs"]);
  expect(fact(shop.record, "mine", "altitude")).toBe("1 ft");
  expect((await shop.earlier()).map(({ why }) => why)).toEqual(["before a copy was opened"]);
  shop.undo();
  expect(shown(shop.record.runs).map(({ id }) => id)).toEqual(["r1", "mine"]);
});

test("openCopy(file) puts back what the copy shows and was thrown away here", async () => {
  const shop = await open(new MemoryStorage());
  add(shop, "mine");
  const saved = shop.copy().text;
  shop.change((now, { now: at }) => removeItem(now, "runs", "mine", at), "mine was there");
  await shop.openCopy(new Blob([saved]));
  expect(shown(shop.record.runs).map(({ id }) => id)).toEqual(["r1", "mine"]);
});

test("openCopy(file) says what is wrong with another kind of file and changes nothing", async () => {
  const shop = await open(new MemoryStorage());
  const before = shop.record;
  const taken = await shop.openCopy(new Blob(["time,temp\n0:00,285\n"]));
  expect("problem" in taken && taken.problem).toContain("time,temp");
  expect(shop.record).toBe(before);
  expect(await shop.earlier()).toEqual([]);
});

test("bringBack(key) makes the record what it was, in every open tab, and can itself be gone back from", async () => {
  const memory = new MemoryStorage();
  const [one, two] = [await open(memory, "a"), await open(memory, "b")];
  add(one, "mine");
  await quiet(one, two);
  await one.openCopy(new Blob([writeRecord({ ...demo, runs: [own("theirs")] })]), "replace");
  await quiet(one, two);
  expect(shown(two.record.runs).map(({ id }) => id)).toEqual(["theirs"]);
  const [aside] = await one.earlier();
  await one.bringBack(aside?.key ?? "");
  await quiet(one, two);
  expect(
    shown(one.record.runs)
      .map(({ id }) => id)
      .sort(),
  ).toEqual(["mine", "r1"]);
  expect(
    shown(two.record.runs)
      .map(({ id }) => id)
      .sort(),
  ).toEqual(["mine", "r1"]);
  expect((await one.earlier()).map(({ why }) => why)).toEqual([
    "before an earlier record was brought back",
    "before a copy was opened",
  ]);
  expect(await one.bringBack("earlier nothing")).toHaveProperty("problem");
});

test(`earlier() holds the newest ${mostEarlier} and no more`, async () => {
  const shop = await open(new MemoryStorage());
  const empty = new Blob([writeRecord({ ...demo, runs: [], setups: [], baths: [], notebooks: [] })]);
  for (let i = 0; i < mostEarlier + 3; i++) await shop.openCopy(empty);
  const keys = (await shop.earlier()).map(({ at }) => at);
  expect(keys).toHaveLength(mostEarlier);
  expect([...keys].sort().reverse()).toEqual(keys);
});

test("the first change of a day puts aside how the day before ended", async () => {
  const memory = new MemoryStorage();
  const shop = await open(memory);
  add(shop, "mine");
  await shop.settled();
  const next = await open(memory, "b", "2026-11-26T09:00:00.000Z");
  add(next, "next day");
  await next.settled();
  const [aside] = await next.earlier();
  expect(aside?.why).toBe("as it was before 2026-11-26");
  const text = memory.values.get(aside?.key ?? "");
  expect(readRecord(String(text))).toMatchObject({ record: { runs: [{ id: "r1" }, { id: "mine" }] } });
});

test("copy() gives the one file under its dated name, and the file reads back equal", async () => {
  const shop = await open(new MemoryStorage());
  add(shop, "mine");
  const { name, text } = shop.copy();
  expect(name).toMatch(/^steady-boil-shop-2026-11-2\d\.json$/);
  const reading = readRecord(text);
  expect("record" in reading && same(reading.record.runs, shop.record.runs)).toBe(true);
});
