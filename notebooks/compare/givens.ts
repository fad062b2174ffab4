import { type GivenOptions, given } from "../../lib/lines/index.ts";
import { cylinder, firing, supposed } from "./headings.ts";

const tape = { takes: "length", atLeast: 0.01, unit: "in", metricUnit: "cm", group: supposed } as const;
const rare = (options: GivenOptions): GivenOptions => ({ ...options, rare: true });

/** What a firing is to be, and what may be supposed of its tank, its fire and its cylinder. */
export const supposedGivens = {
  "hold wanted": given("30 min", undefined, { takes: "time", unit: "min", exact: true, group: firing }),
  "weight of parts": given("4 lb ± 0.2 lb", undefined, {
    takes: "mass",
    atLeast: 0,
    unit: "lb",
    metricUnit: "kg",
    group: firing,
  }),
  "air and feed water": given("60 °F ± 10 °F", undefined, {
    takes: "temperature",
    unit: "°F",
    metricUnit: "°C",
    group: firing,
    about: "Of the air, the water fed, the parts before they go in, and the bath before it is lit.",
  }),
  "own feed": given("", "measured", {
    takes: "water flow",
    atLeast: 0,
    unit: "fl oz/min",
    metricUnit: "ml/min",
    group: firing,
    about: "A steady feed for the hold that is drawn. Blank: what holds the target.",
  }),

  "fire against the log": given("1", undefined, {
    takes: "number",
    atLeast: 0.05,
    exact: true,
    group: supposed,
    about:
      "Gas burnt against the fire of the log's first boil, full: 1.5 for half as much again, 0.8 turned down to that.",
  }),
  "share against the log": given("1", undefined, {
    takes: "number",
    atLeast: 0.05,
    exact: true,
    group: supposed,
    about:
      "How much more of its heat the fire gives this tank than the one of the log. The tank itself: 1. One that is newly built over the same burners: 1.04 ± 0.19, a judgement, until it has a log of its own.",
  }),
  "new length": given("", "measured", { ...tape, about: "Where it is another tank than the one of the log." }),
  "new width": given("", "measured", tape),
  "new depth": given("", "measured", tape),
  "burners in the log": given(
    "",
    undefined,
    rare({
      takes: "number",
      atLeast: 1,
      exact: true,
      group: supposed,
      about: "Where another number of them is supposed.",
    }),
  ),
  burners: given("", undefined, rare({ takes: "number", atLeast: 1, exact: true, group: supposed })),
  jet: given("", "from the label", {
    takes: "length",
    atLeast: 0,
    unit: "in",
    metricUnit: "mm",
    group: supposed,
    about: "The orifice of each burner. With the number of burners and the pressure it tells the gas.",
  }),
  "jet pressure": given("", "measured", {
    takes: "pressure",
    atLeast: 0,
    unit: "psi",
    metricUnit: "kPa",
    group: supposed,
    about: "Over the air's, while it burns.",
  }),
  "new flame": given("as it was", undefined, {
    takes: "words",
    choices: ["as it was", "open", "skirted"],
    group: supposed,
    about: "Skirted: sheet metal or a flue keeps the hot gas along the tank.",
  }),

  "cylinder's size": given("20 lb", undefined, {
    takes: "mass",
    atLeast: 1,
    unit: "lb",
    metricUnit: "kg",
    exact: true,
    group: cylinder,
    about: "Propane in it when it is full: 20, 30, 40 or 100 lb.",
  }),
  "propane in it": given("20 lb", "from the label", {
    takes: "mass",
    atLeast: 0,
    unit: "lb",
    metricUnit: "kg",
    group: cylinder,
  }),
};
