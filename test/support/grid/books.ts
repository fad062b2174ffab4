import { fitted, given, type Notebook, notebook, type Vocabulary, worked } from "../../../lib/lines/index.ts";

/** Invented: three tanks with lines of every kind and state. */
export const tanks: Notebook = notebook({
  asks: "Which tank?",
  lines: {
    "tank length": given("24 in", "measured", { unit: "in", metricUnit: "cm", group: "Tank and fire" }),
    "tank width": given("6 in ± 1/8 in", "measured", { unit: "in", metricUnit: "cm", group: "Tank and fire" }),
    burners: given("one ring", undefined, {
      takes: "words",
      choices: ["one ring", "two rings"],
      group: "Tank and fire",
    }),
    "gas burned": given("20 lb/h", "guessed", { unit: "lb/h", takes: "mass flow", group: "Tank and fire" }),
    depth: given("5 in", "measured", { unit: "in", group: "Bath" }),
    "salt in the bath": given("24 lb", "weighed", { unit: "lb", metricUnit: "kg", group: "Bath" }),
    "lid height": given("", undefined, { unit: "in", group: "Bath" }),
    "liquid volume": worked("tank length * tank width * depth", "gal", { group: "Bath" }),
    "twice the depth": worked("2 * depth", "in", { group: "Bath" }),
    "plate seen by the fit": fitted("tank length * tank width", "in²", { group: "Bath" }),
    "salt for each gallon": worked("salt in the bath / liquid volume", "lb/gal", { group: "Bath" }),
    blades: given("9", undefined, { takes: "number", exact: true, group: "Your own lines" }),
    "salt for each blade": worked("salt in the bath / blades", "lb", { group: "Your own lines" }),
    "cost for each blade": worked("salt for each blade * salt prise", "$", { group: "Your own lines" }),
    "cost of a batch": worked("cost for each blade * blades", "$", { group: "Your own lines" }),
    "salt price": given("$3.20/lb", "published", { takes: "price by mass", unit: "$/lb", group: "Your own lines" }),
    "slow volume": worked("slowly(liquid volume)", "gal", { group: "Your own lines" }),
  },
  cases: {
    "Small tank": {},
    "Bigger fire": { burners: "two rings", "gas burned": "30 lb/h" },
    "Longer tank": { "tank length": "42 in", blades: "16", "salt in the bath": "19 kg" },
  },
  casesFrom: { "Small tank": { kind: "setup", id: "s1", says: "an invented setup" } },
});

const names = (count: number) => Array.from({ length: count }, (_, index) => `case ${index + 1}`);

/** A long chain of lines in many cases, each fed by the one before and by one of eight givens. */
export function longBook(lines: number, cases: number): Notebook {
  const givens = Array.from(
    { length: 8 },
    (_, index) =>
      [
        `source ${index + 1} of it`,
        given(`${index + 2} lb ± 0.1 lb`, "weighed", { unit: "lb", group: "Givens" }),
      ] as const,
  );
  const chain = Array.from({ length: lines - 8 }, (_, index) => {
    const before = index === 0 ? "0 lb" : `sum ${index} so far`;
    return [
      `sum ${index + 1} so far`,
      worked(`${before} + source ${(index % 8) + 1} of it / ${index + 1}`, "lb", {
        group: `Part ${Math.floor(index / 20) + 1}`,
      }),
    ] as const;
  });
  return notebook({
    asks: "How long can it get?",
    lines: Object.fromEntries([...givens, ...chain]),
    cases: Object.fromEntries(
      names(cases).map((name, index) => [name, index === 0 ? {} : { "source 2 of it": `${index + 3} lb` }]),
    ),
  });
}

/** A function that takes a while, as a fit does, until it is let go by `letGo` on the window. */
export const slowWords: Vocabulary = {
  functions: [
    {
      name: "slowly",
      takes: [{ name: "amount" }],
      says: "The amount itself, after a while.",
      work: (amount) => amount,
      slow: (job, amount) =>
        new Promise((done) => {
          job.says("half of it", 0.5);
          const end = setTimeout(() => done(amount), 1500);
          job.onStop(() => clearTimeout(end));
        }),
    },
  ],
};
