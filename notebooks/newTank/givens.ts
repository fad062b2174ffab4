import { given, type Line } from "../../lib/lines/index.ts";
import { beside, cost, fire, power, price, tank, tape, trial, weighed, work } from "./words.ts";

const decided = { ...tape, exact: true, group: tank } as const;

/** What the maker says of the work, the tank to build, its fire, and later of plain water and prices. */
export const givens: Readonly<Record<string, Line>> = {
  "part length": given("40 in", "measured", { ...tape, group: work }),
  "part width": given("1 1/4 in", "measured", {
    ...tape,
    group: work,
    about: "With its guard, bend or sight: the widest place.",
  }),
  "part thickness": given("1/4 in", "measured", { ...tape, group: work }),
  "how many": given("1", undefined, {
    takes: "number",
    atLeast: 1,
    atMost: 200,
    exact: true,
    group: work,
    about: "At once, side by side.",
  }),
  "room at the walls": given("1 in", undefined, {
    ...tape,
    exact: true,
    group: work,
    about:
      "To every wall, the bottom and the surface, and between parts: for bars, hangers, stirring liquid, and what your tape may be off.",
  }),
  "weight of hangers": given("1 lb", "guessed", { ...weighed, group: work }),

  "way it lies": given("straight", undefined, {
    takes: "words",
    group: tank,
    choices: ["straight", "along the floor's diagonal", "tilted", "along the space's diagonal"],
  }),
  "new width": given("7 in", undefined, decided),
  "new depth": given("4 in", undefined, {
    ...decided,
    about: "Of the liquid when it works: of the wall, freeboard comes on top.",
  }),
  "length wanted": given("", undefined, { ...decided, about: "Blank: the least that takes the part." }),
  "length to spare": given("0 in", undefined, { ...decided, about: "Beyond the least that takes the part." }),
  "freeboard wanted": given("", undefined, {
    ...decided,
    about: "Blank: 4 in, or a third of the depth where that is more.",
  }),
  "plate thickness": given("1/8 in", undefined, {
    ...decided,
    about: "How thick it must be no source here says. Thin plate buckles and rusts through.",
  }),

  burners: given("1", undefined, {
    takes: "number",
    atLeast: 1,
    atMost: 20,
    exact: true,
    group: fire,
    about: "Under the tank that was logged.",
  }),
  jet: given("", undefined, {
    exact: true,
    takes: "length",
    atLeast: 0.0003,
    atMost: 0.005,
    unit: "in",
    metricUnit: "mm",
    group: fire,
    about: "Across the hole in each burner's jet. Its own doubt is counted. Blank: nothing is said of gas.",
  }),
  "regulator pressure": given("", undefined, {
    exact: true,
    takes: "pressure",
    atLeast: 0,
    unit: "psi",
    metricUnit: "kPa",
    group: fire,
    about: "As its gauge shows while they burn; what a gauge may be off is counted.",
  }),
  "new burners": given("", undefined, {
    takes: "number",
    atLeast: 1,
    atMost: 20,
    exact: true,
    group: fire,
    about: "Under the new tank, spread evenly along it. Blank: as many as now.",
  }),
  "new jet": given("", undefined, {
    exact: true,
    takes: "length",
    atLeast: 0.0003,
    atMost: 0.005,
    unit: "in",
    metricUnit: "mm",
    group: fire,
    rare: true,
    about: "Blank: as now.",
  }),
  "new regulator pressure": given("", undefined, {
    exact: true,
    takes: "pressure",
    atLeast: 0,
    unit: "psi",
    metricUnit: "kPa",
    group: fire,
    rare: true,
    about: "Blank: as now.",
  }),
  "new flame": given("", undefined, {
    takes: "words",
    choices: ["open", "skirted"],
    group: fire,
    rare: true,
    about: "Blank: as now.",
  }),
  "cylinder size": given("", "from the label", {
    ...weighed,
    group: fire,
    about: "Propane that it holds when full.",
  }),
  "propane in it": given("", "weighed", { ...weighed, group: fire, about: "Blank: full." }),
  "air temperature": given("60 °F", "guessed", { takes: "temperature", unit: "°F", metricUnit: "°C", group: fire }),
  "heat known from": given("its log", undefined, {
    takes: "words",
    choices: ["its log", "the handbook"],
    group: fire,
    about: "The handbook: for a fire that nobody logged. Honestly wider.",
  }),

  "plain water put in": given("", "weighed", {
    ...weighed,
    group: trial,
    rare: true,
    about: "Weighed into the new tank before the burners are lit.",
  }),
  "warmed from": given("", "measured", {
    takes: "temperature",
    unit: "°F",
    metricUnit: "°C",
    group: trial,
    rare: true,
  }),
  "warmed to": given("", "measured", {
    takes: "temperature",
    unit: "°F",
    metricUnit: "°C",
    group: trial,
    rare: true,
    about: "Some 10 °F below its boil or lower.",
  }),
  "warmed in": given("", undefined, { takes: "time", unit: "min", exact: true, group: trial, rare: true }),
  "water boiled off": given("", "weighed", {
    ...weighed,
    group: trial,
    rare: true,
    about: "What brought it back to its mark after a rolling boil.",
  }),
  "boiled for": given("", undefined, { takes: "time", unit: "min", exact: true, group: trial, rare: true }),
  "cylinder lost": given("", "weighed", { ...weighed, group: trial, rare: true }),
  "burnt for": given("", undefined, { takes: "time", unit: "min", exact: true, group: trial, rare: true }),

  "salt price": given("", undefined, { ...price, exact: true }),
  "gas price": given("", undefined, { ...price, exact: true }),
  "plate price": given("", undefined, { ...price, exact: true, about: "For its weight." }),
  "salt on hand": given("0 lb", "weighed", {
    ...weighed,
    group: cost,
    about: "That you have, or would move over from the old bath.",
  }),

  "tap water": given("60 °F", "guessed", { takes: "temperature", unit: "°F", metricUnit: "°C", group: beside }),
  "rinse burner": given("", "from the label", {
    takes: "power",
    atLeast: 0,
    ...power,
    group: beside,
    about: "Gas under the boiling rinse, gross. Blank: the same fire as the new tank's.",
  }),
};
