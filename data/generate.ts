import { readLog } from "../lib/log/index.ts";
import type { Bath, Facts, KeptRun, Setup, ShopRecord } from "../lib/record/types.ts";
import { demoNotebook } from "./generator/demoNotebook.ts";
import { plans } from "./generator/demoPlans.ts";
import { type DemoPlan, demoRun } from "./generator/demoRuns.ts";
import { asCommas, asScrap, asSemicolons, asTabs } from "./generator/writeRows.ts";

const changed = "2026-11-20T08:00:00.000Z";
const kept = { changed, invented: true } as const;

const troughFacts: Facts = {
  "tank length": { text: "34 in", known: "measured" },
  "tank width": { text: "7 in", known: "measured" },
  "tank depth": { text: "6 1/2 in", known: "measured" },
  altitude: { text: "2,300 ft", known: "published" },
  target: { text: "289 °F" },
  band: { text: "3 °F" },
  thermometer: { text: "type K" },
  "thermometer in boiling water": { text: "208.2 °F", known: "measured" },
  "water measured by": { text: "measuring cup" },
};

const smallFacts: Facts = {
  "tank length": { text: "14 in", known: "measured" },
  "tank width": { text: "5 in", known: "measured" },
  "tank depth": { text: "6 in", known: "measured" },
  altitude: { text: "2,300 ft", known: "published" },
  target: { text: "289 °F" },
  band: { text: "3 °F" },
  thermometer: { text: "bimetal dial" },
  "water measured by": { text: "marked jug" },
};

const setups: readonly Setup[] = [
  { ...kept, id: "demo-setup-trough", name: "Long trough, two burners", facts: troughFacts, hints: {} },
  { ...kept, id: "demo-setup-small", name: "Short tank on one burner", facts: smallFacts, hints: {} },
];

const weighed: Facts = {
  "sodium hydroxide": { text: "20 lb", known: "weighed" },
  "sodium nitrate": { text: "8.5 lb", known: "weighed" },
};

const mixed: Facts = {
  "ready-mixed salt": { text: "9 lb", known: "weighed" },
  "hydroxide in the mix": { text: "65-75 %", known: "from the label" },
  "nitrate in the mix": { text: "25-35 %", known: "from the label" },
};

const baths: readonly Bath[] = [
  {
    ...kept,
    id: "demo-bath-trough",
    name: "Lye and nitrate, mixed here",
    facts: weighed,
    account: [
      {
        id: "demo-account-1",
        date: "2026-09-26",
        kind: "charge",
        text: "20 lb lye, 8.5 lb sodium nitrate, into cold water",
      },
    ],
  },
  {
    ...kept,
    id: "demo-bath-small",
    name: "Ready mix",
    facts: mixed,
    account: [
      { id: "demo-account-2", date: "2026-10-17", kind: "charge", text: "9 lb of ready-mixed salt, into cold water" },
    ],
  },
];

interface Story {
  readonly id: string;
  readonly name: string;
  readonly date: string;
  readonly plan: DemoPlan;
  readonly setup: Setup;
  readonly bath: Bath;
  readonly facts: Facts;
  readonly outcome: string;
  readonly write: (rows: ReturnType<typeof demoRun>["rows"]) => string;
}

const [trough, small] = setups as readonly [Setup, Setup];
const [own, ready] = baths as readonly [Bath, Bath];

const stories: readonly Story[] = [
  {
    id: "demo-run-first",
    name: "First try in the trough",
    date: "2026-09-26",
    plan: plans.firstTry,
    setup: trough,
    bath: own,
    facts: { "water at the start": { text: "2.9 gal", known: "measured" } },
    outcome: "Pale grey with a brown cast near the tangs.",
    write: asScrap("7:05 pm"),
  },
  {
    id: "demo-run-windy",
    name: "Windy night",
    date: "2026-10-10",
    plan: plans.windyNight,
    setup: trough,
    bath: own,
    facts: {
      "water at the start": { text: "2 3/4 gal", known: "measured" },
      "air pressure": { text: "27.34 inHg", known: "measured" },
    },
    outcome: "Even black; one blade a little thin at the ricasso.",
    write: asTabs("18:40"),
  },
  {
    id: "demo-run-small",
    name: "Screws and pins in the short tank",
    date: "2026-10-17",
    plan: plans.smallTank,
    setup: small,
    bath: ready,
    facts: { "water at the start": { text: "3.5 qt", known: "measured" } },
    outcome: "Good black on all of it.",
    write: asSemicolons,
  },
  {
    id: "demo-run-knives",
    name: "Four camp knives",
    date: "2026-11-14",
    plan: plans.campKnives,
    setup: trough,
    bath: own,
    facts: { "water at the start": { text: "2.7 gal", known: "measured" } },
    outcome: "Deep even black on all four.",
    write: asCommas,
  },
];

/** The invented shop that a newcomer sees first: the same record each time, from the seeds of `plans`. */
export function demoShop(): ShopRecord {
  const runs = stories.map((story): KeptRun => {
    const source = story.write(demoRun(story.plan).rows);
    return {
      ...kept,
      id: story.id,
      name: story.name,
      setup: story.setup.id,
      bath: story.bath.id,
      date: story.date,
      facts: { ...story.setup.facts, ...story.bath.facts, ...story.facts },
      log: readLog(source).run,
      source,
      hints: {},
      outcome: story.outcome,
    };
  });
  return {
    schema: 2,
    kind: "shop record",
    id: "demo-shop",
    saved: changed,
    settings: { units: "US", openRun: "demo-run-knives" },
    setups,
    baths,
    runs,
    notebooks: [{ ...kept, ...demoNotebook }],
  };
}

/** The demo shop as the text of `demoShop.json`. */
export function demoShopText(): string {
  return `${JSON.stringify(demoShop(), null, 2)}\n`;
}

/** The demo's logs as the files that stand beside it: name and text. */
export function demoLogs(): readonly (readonly [name: string, text: string])[] {
  return stories.map(({ id, plan, write }) => [
    `${id}.${write === asCommas || write === asSemicolons ? "csv" : "txt"}`,
    write(demoRun(plan).rows),
  ]);
}
