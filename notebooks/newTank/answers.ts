import { fitted, type Line, worked } from "../../lib/lines/index.ts";
import { beside, cost, does, flow, long, pounds, power, workTaken } from "./words.ts";

const setups =
  "bath and fire known, old tank and fire, new tank and fire, pressure at the tank, salts by share, target, air temperature";
const rinseFire =
  "length of other tanks for it, width of other tanks for it, depth of other tanks for it, rinse burner rate, share of the fire into the rinse, tap water, air temperature, pressure at the tank";
const money = { metricUnit: "$", group: cost } as const;
const gasCaution =
  "Gas piping, hoses, regulators and cylinders indoors are for a licensed gas fitter and the local code. For cylinders other than of 100 lb no maker's figure was found.";

/** What the new tank does, the tanks beside it, what it all costs. */
export const answers: Readonly<Record<string, Line>> = {
  "old tank and fire": worked(
    "tank and fire(tank length, tank width, tank depth when tank depth is given, otherwise 1.5 * new depth, liquid depth, plate thickness, burners, jet, regulator pressure, burner's flame)",
    undefined,
    { hidden: true },
  ),
  "new tank and fire": worked(
    "tank and fire(new length, new width, new depth + freeboard, new depth, plate thickness, new burners, new jet, new regulator pressure, new flame)",
    undefined,
    { hidden: true },
  ),
  "plain water": worked(
    "plain water boiled(plain water put in, warmed from, warmed to, warmed in, water boiled off, boiled for, cylinder lost, burnt for)",
    undefined,
    { hidden: true },
  ),
  "scaled tank": fitted(`new tank by scaling(${setups}, cylinder size, propane in it, plain water)`, undefined, {
    hidden: true,
  }),
  "fires over lengths": fitted(`boil-off over lengths(${setups})`, undefined, { hidden: true }),

  "boil-off": worked("boil-off of scaled tank", "fl oz/min", { ...flow, mark: "water", group: does }),
  "feed to hold it": worked("boil-off", "fl oz/min", {
    ...flow,
    mark: "water",
    group: does,
    about: "What boils off, fed back: the bath stays at its target.",
    caution:
      "Danger. Water poured into a bath far above the boil of water flashes to steam and throws caustic: a thin steady feed, never a dump.",
  }),
  "boils steadily": worked("boils steadily of scaled tank", "%", {
    plain: true,
    group: does,
    about: "How likely this fire keeps the bath at its boil.",
  }),
  "minutes to just below the boil": worked('answer if any(scaled tank, "time to 10 below")', "min", {
    group: does,
    about: "From lighting the burners under a cold bath to 10 °F (5.6 °C) below its boil.",
  }),
  "minutes to the boil": worked('answer if any(scaled tank, "time to the boil")', "min", {
    group: does,
    rare: true,
    about: "Only where it has an upper end.",
  }),
  "minutes to the boil at least": worked("time to the boil at least of scaled tank", "min", {
    plain: true,
    group: does,
  }),
  "drift left unfed": worked("drift unfed of scaled tank", "°F/min", {
    metricUnit: "°C/min",
    group: does,
  }),
  "heat into the bath": worked("heat into the bath of scaled tank", "BTU/h", { ...power, group: does }),
  "walls and top lose": worked("losses of scaled tank", "BTU/h", { ...power, group: does }),
  "stall length": worked('answer if any(fires over lengths, "stall length")', "in", {
    metricUnit: "cm",
    group: does,
    rare: true,
    about: "Beyond it this fire no longer boils the bath steadily.",
  }),
  "boils steadily up to": worked("stalls no sooner than of fires over lengths", "in", {
    ...long,
    group: does,
    rare: true,
    about: "Almost surely, by this fire.",
  }),
  gas: worked('answer if any(scaled tank, "gas")', "lb/h", { metricUnit: "kg/h", group: does, rare: true }),
  "gas to the boil": worked('answer if any(scaled tank, "gas to the boil")', "lb", {
    ...pounds,
    group: does,
    rare: true,
  }),
  "cylinder draw": worked('answer if any(scaled tank, "cylinder draw")', "BTU/h", {
    ...power,
    group: does,
    rare: true,
    caution: gasCaution,
  }),
  "cylinder gives without end": worked('answer if any(scaled tank, "cylinder gives")', "BTU/h", {
    ...power,
    group: does,
    rare: true,
  }),

  "by plain proportion to length": worked("by length of scaled tank", "fl oz/min", {
    ...flow,
    group: does,
    rare: true,
  }),
  "proportion to length is over by": worked("by length over of scaled tank", "%", {
    group: does,
    rare: true,
    below: "proportion to length is under by",
  }),
  "by plain proportion to gas": worked('answer if any(scaled tank, "by gas")', "fl oz/min", {
    ...flow,
    group: does,
    rare: true,
  }),
  "proportion to gas is over by": worked('answer if any(scaled tank, "by gas over")', "%", {
    group: does,
    rare: true,
    below: "proportion to gas is under by",
  }),
  "surest measurement": worked("best measurement of scaled tank", undefined, { hidden: true }),
  "doubt it takes off": worked("doubt it takes off of scaled tank", "%", { plain: true, hidden: true }),

  "other tanks for it": worked(`other tanks(${workTaken})`, undefined, { hidden: true }),
  "rinse burner rate": worked("rinse burner when rinse burner is given, otherwise cylinder draw", "BTU/h", {
    ...power,
    group: beside,
    rare: true,
  }),
  "share of the fire into the rinse": worked('burner efficiency("open")', "%", {
    group: beside,
    rare: true,
  }),
  "boiling rinse heat-up": worked(`heat-up of water tank(${rinseFire})`, "min", {
    group: beside,
    rare: true,
    about: "Open, from the tap.",
  }),
  "gas for the boiling rinse": worked(
    "rinse burner rate * boiling rinse heat-up / heat of propane(1 lb) * 1 lb",
    "lb",
    {
      ...pounds,
      group: beside,
      rare: true,
    },
  ),

  "cost of salt": worked("salt to buy * salt price", "$", { ...money, rare: true }),
  "cost of plate": worked("weight of plate * plate price", "$", { ...money, rare: true }),
  "cost of a heat-up": worked("(gas to the boil + gas for the boiling rinse) * gas price", "$", {
    ...money,
    rare: true,
    about: "Bath and boiling rinse from cold, once.",
  }),
  "cost of an hour": worked("gas * 1 h * gas price", "$", {
    ...money,
    rare: true,
    about: "Of holding the bath.",
  }),
};
