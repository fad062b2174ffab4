import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import { type Lines, type Notebook, openLines } from "../../lib/lines/index.ts";
import { interval95 } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { departedBoilingPoint } from "../../lib/physics/index.ts";
import { newRecord, readRecord, type ShopRecord } from "../../lib/record/index.ts";
import { startNewTank } from "../../notebooks/newTank/start.ts";
import newTank from "../../notebooks/newTank.ts";
import { vocabulary } from "../../notebooks/vocabulary.ts";
import { sharedAside } from "../support/sharedAside.ts";

// Inch, pound and gallon are exact (NIST SP 811, B.8): 25.4 mm, 0.45359237 kg, 231 in³. Steel of 7,850 kg/m³ is that of
// EN 1993-1-2:2005, 3.2.2.
const inch = 0.0254;
const pound = 0.45359237;
const gallon = 231 * inch ** 3;
const steel = 7850;

const path = fileURLToPath(new URL("../../data/demoShop.json", import.meta.url));
const read = readRecord(readFileSync(path, "utf8"));
if (!("record" in read)) throw new Error("the demo cannot be read");
const demo: ShopRecord = read.record;
const shared = sharedAside(vocabulary);

async function opened(record: ShopRecord): Promise<Lines> {
  const start = startNewTank(newTank, record);
  const base = start.base ?? "";
  const id = start.casesFrom?.[base]?.id;
  const log = record.runs.find((run) => run.id === id)?.log;
  const inCases = Object.fromEntries(Object.keys(start.cases ?? {}).map((name) => [name, log ? { log } : {}]));
  const book: Notebook = { ...newTank, ...start };
  const open = openLines(book, { vocabulary: shared, inCases });
  await open.settled();
  return open;
}

const open = await opened(demo);
afterAll(() => open.close());

const base = "Straight";
const diagonal = "On the diagonal";
const longer = "Longer, 3 burners";

function amountOf(line: string, inCase = base, of = open): Value {
  const result = of.result(line, inCase);
  if (result.state === "settled") return result.value as Value;
  throw new Error(`${line} in ${inCase}: ${JSON.stringify(result)}`);
}
const si = (line: string, inCase = base, of = open): number => amountOf(line, inCase, of).value;
const half = (value: Value): number => {
  const [low, high] = interval95(value);
  return (high - low) / 2;
};

/** What the maker changes, and changes back. */
async function trying(edits: Readonly<Record<string, string>>, look: () => void, inCase = base): Promise<void> {
  for (const [line, text] of Object.entries(edits)) open.set(line, { given: text }, inCase);
  await open.settled();
  try {
    look();
  } finally {
    for (const _ of Object.keys(edits)) open.undo();
    await open.settled();
  }
}

test("it starts with three tanks from the last run, the invented one's where there is no other", () => {
  expect(open.cases().map(({ name }) => name)).toEqual([base, diagonal, longer]);
  expect(open.cases().find((one) => one.base)?.name).toBe(base);
  const own = demo.runs.find(({ name }) => name === "First try in the trough");
  if (!own) throw new Error("missing run of the demo");
  const { invented: _, ...mine } = { ...own, id: "mine", date: "2020-01-01" };
  const started = startNewTank(newTank, { ...demo, runs: [...demo.runs, mine] });
  expect(started.casesFrom?.[base]).toMatchObject({ kind: "run", id: "mine" });
  expect(started.cases?.[base]).not.toHaveProperty("jet");
});

test("the answer has at most three clauses, and every name in it is a line", () => {
  expect(newTank.answer).toHaveLength(3);
  const names = [...JSON.stringify(newTank.answer).matchAll(/\{([^{}"]+?)(?:, bare)?\}/g)].map(([, name]) => name);
  expect(names.length).toBeGreaterThan(8);
  for (const name of names) expect(Object.keys(newTank.lines)).toContain(name);
});

test("straight it is the part and twice the room", () => {
  expect(si("new length") / inch).toBeCloseTo(40 + 2, 9);
  expect(si("new length", longer) / inch).toBeCloseTo(40 + 2 + 12, 9);
  expect(si("longest straight", longer) / inch).toBeCloseTo(52, 9);
});

test("along the floor's diagonal it follows the closed form of a bar across a rectangle", () => {
  // A bar l by w turned by θ spans l cos θ + w sin θ by l sin θ + w cos θ; added and taken from each other, squared:
  // ((a + b)/(l + w))² + ((a - b)/(l - w))² = 2. Derived by hand.
  const a = si("new length", diagonal) / inch - 2;
  const b = si("new width", diagonal) / inch - 2;
  const [l, w] = [40, 1 / 4];
  expect(((a + b) / (l + w)) ** 2 + ((a - b) / (l - w)) ** 2).toBeCloseTo(2, 8);
  expect(a).toBeLessThan(l);
});

test("volume, plate and what hangs in it, by hand", () => {
  const volume = 42 * 7 * 4 * inch ** 3;
  expect(si("volume at working depth")).toBeCloseTo(volume, 12);
  expect(si("volume at working depth") / gallon).toBeCloseTo(1176 / 231, 9);
  // Bottom 42 1/4 by 7 1/4, two sides 42 1/4 by 8, two ends 7 by 8: 306.3125 + 676 + 112 in².
  const plate = (306.3125 + 676 + 112) * inch ** 2;
  expect(si("plate to cut")).toBeCloseTo(plate, 12);
  expect(si("weight of plate")).toBeCloseTo((plate * inch * steel) / 8, 9);
  const work = 40 * 1.25 * 0.25 * inch ** 3 * steel;
  const displaced = (work + pound) / steel;
  expect(si("displaced by the work")).toBeCloseTo(displaced, 12);
  expect(si("level falls by")).toBeCloseTo(displaced / (42 * 7 * inch ** 2), 12);
  expect(si("bath to fill it")).toBeCloseTo(volume - displaced, 12);
});

test("salt and water fill it, and boil at the target by this bath's own curve", () => {
  const [salt, water] = [si("salt in all"), si("water in all")];
  const salts = { sodiumHydroxide: (salt / water) * (20 / 28.5), sodiumNitrate: (salt / water) * (8.5 / 28.5) };
  const known = open.result("bath and fire known", base);
  const parts = known.state === "settled" ? (known.value as ReadonlyMap<string, Value>) : new Map<string, Value>();
  const departure = {
    offset: parts.get("boiling point offset")?.value ?? Number.NaN,
    scale: parts.get("boiling curve scale")?.value ?? Number.NaN,
  };
  const boils = departedBoilingPoint(salts, si("pressure at the tank"), departure);
  expect(boils).toBeCloseTo(si("target"), 3);
  // In use: plate, liquid, work and hangers. Brimful: the freeboard of 4 in beside, as heavy as the liquid.
  const density = (salt + water) / si("bath to fill it");
  const brimful =
    salt + water + density * 42 * 7 * 4 * inch ** 3 + si("weight of plate") + si("weight of the work") + pound;
  expect(si("weight on the stand brimful")).toBeCloseTo(brimful, 6);
});

test("what it boils off is what is fed, and proportion is the old boil-off times lengths", () => {
  expect(si("feed to hold it")).toBe(si("boil-off"));
  const fitted = open.result("fitted bath", base);
  const old = fitted.state === "settled" ? (fitted.value as ReadonlyMap<string, Value>).get("boil-off")?.value : 0;
  expect(si("by plain proportion to length") / (old ?? 0)).toBeCloseTo(42 / 34, 6);
  const over = si("by plain proportion to length") / si("boil-off") - 1;
  const [low, high] = interval95(amountOf("proportion to length is over by"));
  expect(over).toBeGreaterThan(low);
  expect(over).toBeLessThan(high);
  // Gross heat of propane: 21,591 BTU/lb in dealers' tables, 1 %.
  const grossPerKilogram = (21_591 * 1055.056) / pound;
  expect(si("cylinder draw") / si("gas") / grossPerKilogram).toBeGreaterThan(0.98);
  expect(si("cylinder draw") / si("gas") / grossPerKilogram).toBeLessThan(1.02);
});

test("what two tanks are both unsure of cancels between them", () => {
  const less = open.less("boil-off", longer);
  if (!less) throw new Error("missing difference");
  expect(less.value).toBeCloseTo(si("boil-off", longer) - si("boil-off"), 12);
  const apart = Math.hypot(half(amountOf("boil-off", longer)), half(amountOf("boil-off")));
  expect(half(less)).toBeLessThan(0.75 * apart);
});

test("plain water in the new tank narrows its boil-off, and the next measurement is another", async () => {
  const before = half(amountOf("boil-off")) / si("boil-off");
  const inOther = amountOf("boil-off", longer);
  // By hand, a fire of 28,000 BTU/h of which some 40 % enters: 42 lb and 39 lb of steel (0.12 BTU/(lb °F)) by 130 °F are
  // 6,070 BTU; less some 1,800 BTU/h of losses and steam on the way that is 39 min. At the boil some 1,600 BTU/h are lost:
  // 9,600 BTU/h by 970 BTU/lb boil 4.9 lb off in half an hour. Gas of 21,591 BTU/lb: 1.6 lb in 75 min.
  const log = {
    "plain water put in": "42 lb",
    "warmed from": "60 °F",
    "warmed to": "190 °F",
    "warmed in": "39 min",
    "water boiled off": "4.9 lb",
    "boiled for": "30 min",
    "cylinder lost": "1.6 lb",
    "burnt for": "75 min",
  };
  await trying(log, () => {
    expect(half(amountOf("boil-off")) / si("boil-off")).toBeLessThan(0.7 * before);
    expect(half(amountOf("gas")) / si("gas")).toBeLessThan(0.15);
    expect(amountOf("boil-off", longer)).toEqual(inOther);
    const next = open.result("surest measurement", base);
    expect(next.state === "settled" && String(next.value)).not.toContain("plain water");
  });
  expect(half(amountOf("boil-off")) / si("boil-off")).toBeCloseTo(before, 12);
});

test("half a log of plain water is refused with what is missing", async () => {
  await trying({ "warmed from": "60 °F" }, () => {
    const result = open.result("plain water", base);
    expect(result.state === "stopped" && result.says).toContain("belong together");
  });
});

test("without a jet nothing is said of gas, and the boil-off stands", async () => {
  await trying({ jet: "" }, () => {
    expect(open.result("gas", base).state).toBe("stopped");
    expect(open.result("cylinder draw", base).state).toBe("stopped");
    expect(si("boil-off")).toBeGreaterThan(0);
  });
});

test("three at once stand on edge where lying they would be too wide, by hand", async () => {
  // Lying: 3 * 1 1/4 + 2 * 1 = 5 3/4 in, more than the 5 in between the walls. On edge: 3 * 1/4 + 2 * 1 = 2 3/4 in wide,
  // 1 1/4 in high, less than the 2 in between bottom and surface.
  await trying({ "how many": "3" }, () => {
    expect(si("new length") / inch).toBeCloseTo(42, 9);
    expect(si("weight of the work")).toBeCloseTo(3 * 40 * 1.25 * 0.25 * inch ** 3 * steel, 9);
  });
  // On edge 8 are 8 * 1/4 + 7 = 9 in: nothing takes them in 5 in.
  await trying({ "how many": "8" }, () => {
    const result = open.result("least length", base);
    expect(result.state === "stopped" && result.says).toContain("make it wider or deeper");
  });
});

test("prices are blank, and costs wait, until the maker gives them", async () => {
  for (const line of ["salt price", "gas price", "plate price"]) expect(open.text(line)).toBe("");
  for (const line of ["cost of salt", "cost of plate", "cost of an hour"])
    expect(open.result(line).state).toBe("waits");
  await trying({ "salt price": "2 $/lb", "plate price": "3 $/lb", "gas price": "1 $/lb" }, () => {
    expect(si("cost of salt")).toBeCloseTo((2 * si("salt in all")) / pound, 9);
    expect(si("cost of plate")).toBeCloseTo((3 * si("weight of plate")) / pound, 9);
    expect(si("cost of an hour")).toBeCloseTo((3600 * si("gas")) / pound, 9);
  });
});

test("where nothing was logged the handbook speaks, wider, and says so", async () => {
  const bare = await opened(newRecord({ now: "2026-01-01T00:00:00.000Z", newId: () => "empty" }));
  const boilOff = amountOf("boil-off", base, bare);
  expect(half(boilOff) / boilOff.value).toBeGreaterThan(half(amountOf("boil-off")) / si("boil-off"));
  const scaled = bare.result("scaled tank", base);
  const remarks = scaled.state === "settled" ? (scaled.value as ReadonlyMap<string, unknown>).get("remarks") : [];
  expect(JSON.stringify(remarks)).toContain("Nothing was logged on the old tank");
  bare.close();
});
