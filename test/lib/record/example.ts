import type { Bath, KeptNotebook, KeptRun, Moment, Setup, ShopRecord } from "../../../lib/record/index.ts";

/** An invented record for tests: names that could do harm, fields that no version knows, every kind of part. */
export const stamp = "2026-11-20T10:00:00.000Z";

/** A moment that counts up: ids a1, a2 …, a second between two looks at the clock. */
export function steadyMoments(prefix = "a", start = "2026-11-25T12:00:00.000Z"): () => Moment {
  let ids = 0;
  let seconds = 0;
  return () => ({
    now: new Date(Date.parse(start) + 1000 * seconds++).toISOString(),
    newId: () => `${prefix}${++ids}`,
  });
}

export const setup: Setup = {
  id: "s1",
  changed: stamp,
  name: "Long tank",
  facts: { "tank length": { text: "36 in", known: "measured" }, altitude: { text: "2,100 ft", known: "published" } },
  hints: { temperature: "F" },
};

export const bath: Bath = {
  id: "b1",
  changed: stamp,
  name: "Ready mix",
  facts: { "ready mix": { text: "24 lb", known: "from the label" } },
  account: [{ id: "c1", date: "2026-11-01", kind: "charge", text: "24 lb of ready mix, 2.3 gal" }],
};

export const run: KeptRun = {
  id: "r1",
  changed: stamp,
  name: "Tuesday",
  setup: "s1",
  bath: "b1",
  date: "2026-11-17",
  facts: { "water at the start": { text: "2.3 gal" }, altitude: { text: "2,150 ft" } },
  log: {
    start: "2026-11-17T19:40",
    entries: [
      {
        id: "e1",
        time: 0,
        clock: "7:40 pm",
        kind: "reading",
        quantity: {
          text: "285",
          si: 413.7055555555555,
          dimension: { temperature: 1, point: true },
          unit: "°F",
          standardUncertainty: 0.6,
          known: "measured",
        },
        line: 2,
        struck: false,
        before: ["258"],
      },
      { id: "e2", time: 300, kind: "remark", text: "parts in", line: 3, struck: true, reason: "wrong night" },
    ],
    columns: [{ heading: "temp", taken: "bath, °F" }],
  },
  source: "time,temp\n7:40 pm,285\n",
  hints: {},
  outcome: "even black",
};

/** A notebook with every kind of part. */
export const book: KeptNotebook = {
  id: "n1",
  changed: stamp,
  name: "My question",
  of: "One run",
  notebook: {
    asks: "What does the gas cost for each blade?",
    name: "Gas",
    lines: {
      "gas price": {
        kind: "given",
        text: "4 $/lb",
        known: "from the label",
        unit: "$/lb",
        atLeast: 0,
        choices: ["4 $/lb"],
      },
      blades: { kind: "given", text: "6", key: "blades", group: "Work", about: "That came out black.", exact: true },
      "gas cost": {
        kind: "worked",
        formula: "gas price * 3 lb",
        unit: "$",
        plain: true,
        safe: "at most",
        caution: "Caution.",
      },
      "boil-off": {
        kind: "fitted",
        formula: "boil-off of fitted bath",
        metricUnit: "ml/min",
        rare: false,
        hidden: true,
      },
    },
    cases: {
      "as it is": {},
      "Longer tank": { blades: "9", "gas price": { text: "5 $/lb", known: "guessed", sameAs: "as it is" } },
    },
    caseOrder: ["Longer tank", "as it is"],
    base: "as it is",
    hiddenCases: ["Longer tank"],
    casesFrom: { "Longer tank": { kind: "setup", id: "s1", says: "Long tank" } },
    answer: [
      "{gas cost} in all",
      { says: "{gas cost}", otherwise: { says: "nothing yet" }, caution: ["Caution. Hot."] },
    ],
    figures: [
      "hold replayed",
      { draws: "a line across cases", line: "gas cost", title: "Cost" },
      { draws: "a sweep", line: "gas cost", by: "blades", from: "1", to: "12" },
      { draws: "a line against another", line: "gas cost", against: "blades" },
    ],
    notes: ["Invented."],
  },
};

export const record: ShopRecord = {
  schema: 2,
  kind: "shop record",
  id: "shop1",
  saved: stamp,
  settings: { units: "US", openRun: "r1", copied: stamp, changed: stamp },
  setups: [setup],
  baths: [bath],
  runs: [run],
  notebooks: [book],
};
