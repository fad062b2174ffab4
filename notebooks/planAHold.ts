import { fitted, type Line, notebook, worked } from "../lib/lines/index.ts";
import { givenLines } from "./hold/givenLines.ts";
import oneRun from "./oneRun.ts";

const tonight = "When it is lit";
const promise = "How sure it is";
const clock = "On the clock";
const feed = "The feed";
const limits = "Limits";

const flash =
  "Danger. Water poured into a bath far above the boil of water flashes to steam and throws caustic. A thin steady stream at the far end, never a dump; face shield, gauntlets and apron on. The salt's safety data sheet comes first.";
const overMany =
  "Caution. One fit's error is the same all night: your own bath may hold more or less often than said. Over many baths it is right.";

const setupAndBath =
  "setup and bath(tank length, tank width, tank depth, burner rate, burner's flame, thermometer reads high by, water measured by, air temperature, pressure at the tank, salts known, water when lit, bath's temperature when lit, liquid depth)";
const plan = (name: string): string =>
  `${name}(what is wanted, tank and bath, fitted bath) when log is given, otherwise ${name}(what is wanted, tank and bath)`;

/** How to feed a hold, when to start it, what to do at readings, and how sure it is. */
export default notebook({
  name: "Plan a hold",
  asks: "How shall I feed the next hold?",
  lines: {
    ...givenLines,

    "pressure at the tank": worked("station pressure(air pressure, altitude)", "inHg", {
      metricUnit: "hPa",
      group: tonight,
    }),
    "thermometer reads high by": worked(
      "thermometer error(thermometer, thermometer in boiling water, barometer at that check, pressure then)",
      "°F",
      { metricUnit: "°C", group: tonight },
    ),
    "pressure then": worked("station pressure(barometer then, altitude)", "inHg", { metricUnit: "hPa", hidden: true }),
    "salts known": { ...oneRun.lines["salts known"] } as Line,
    "fitted bath": fitted(
      "fit of run(log, salts known, water at the start, pressure then, target then, band then, thermometer reads high by, water measured by, tank length, tank width, tank depth, burner rate, burner's flame)",
      undefined,
      { hidden: true },
    ),
    "what is wanted": worked(
      "hold wanted(target, band, hold time, weight of the parts, temperature of the parts, feeding, measure of one pour)",
      undefined,
      { hidden: true },
    ),
    "tank and bath": worked(setupAndBath, undefined, { hidden: true }),
    "first plan": fitted(plan("first plan of hold"), undefined, { hidden: true }),
    "planned hold": fitted(plan("plan of hold"), undefined, { hidden: true }),
    "smaller fires": fitted(plan("turn-down of hold"), undefined, { hidden: true }),

    "what holds it back": fitted(plan("limits of hold"), undefined, { hidden: true }),

    "lower limit": worked("target - band", "°F", { metricUnit: "°C", hidden: true, plain: true }),
    "upper limit": worked("target + band", "°F", { metricUnit: "°C", hidden: true, plain: true }),

    "minutes to the boil": worked("time to the boil of planned hold", "min", { group: clock }),
    "first boils at": worked("first boil of planned hold", "°F", {
      metricUnit: "°C",
      group: clock,
      about: "On this thermometer, with what evaporates on the way there.",
    }),
    "minutes from boil to start": worked("time from boil to start of planned hold", "min", {
      group: clock,
      rare: true,
      about: "Boiling without feed until it reads what the hold starts at.",
    }),
    "reading to start at": worked("reading to start at of planned hold", "°F", {
      metricUnit: "°C",
      plain: true,
      group: clock,
      about: "On this thermometer, as it climbs. The parts go in then, and the clock starts.",
    }),
    "back at its boil after": worked("recovery of planned hold", "min", {
      group: clock,
      rare: true,
      about: "From parts in: the parts cool the bath below its boil for so long.",
    }),
    "parts cool it by": worked("dip of planned hold", "°F", { metricUnit: "°C", group: clock, rare: true }),

    drip: worked("drip of planned hold", "fl oz/min", {
      metricUnit: "ml/min",
      mark: "water",
      group: feed,
      rare: true,
    }),
    "each pour": worked("pour of planned hold", "fl oz", {
      metricUnit: "ml",
      mark: "water",
      group: feed,
      rare: true,
    }),
    "minutes between pours": worked("time between pours of planned hold", "min", { group: feed, rare: true }),
    "number of pours": worked("number of pours of planned hold", "", { group: feed, rare: true, plain: true }),
    "water in all": worked("water in all of planned hold", "fl oz", {
      metricUnit: "ml",
      mark: "water",
      group: feed,
      about: "Fed in the hold, without corrections.",
    }),
    "water before the parts": worked("water first of planned hold", "fl oz", {
      metricUnit: "ml",
      group: feed,
      rare: true,
      about:
        "It first boils above the reading to start at, by what evaporates on the way: about so much goes in before the parts, cold before lighting, or at the boil as a thin steady feed until it reads right.",
    }),
    "gas in all": worked("gas in all of planned hold", "lb", {
      metricUnit: "kg",
      group: feed,
      rare: true,
      about: "Propane from lighting the burner to parts out.",
    }),

    "holds left alone": worked("holds left alone of planned hold", "", {
      group: promise,
      caution: overMany,
      about:
        "Of a hundred holds so many stay in the band: true temperature within it for 95 % of the time. ± is that of counting simulated holds.",
    }),
    "holds with the table": worked("holds with the table of planned hold", "", {
      group: promise,
      about: "The same with the correction table followed at a reading every two minutes.",
    }),
    "so far left alone": worked("holds left alone of first plan", "", { hidden: true }),
    "so far with the table": worked("holds with the table of first plan", "", { hidden: true }),
    "minutes out when it does not hold": worked("lost left alone of planned hold", "min", {
      group: promise,
      about: "Out of the band, mean over the holds that do not count, nobody correcting.",
    }),
    "minutes out with the table": worked("lost with the table of planned hold", "min", {
      group: promise,
      about: "The same with the table followed.",
    }),
    "climbs unfed by": worked("drift of planned hold", "°F/min", { metricUnit: "°C/min", group: promise }),
    "whole band lasts unfed": worked("band lasts of planned hold", "min", { group: promise }),

    "limit of one pour": worked("slug limit of planned hold", "fl oz", {
      metricUnit: "ml",
      group: limits,
      safe: "at most",
      mark: "water",
      caution: flash,
      about:
        "What the fire warms to the bath's heat in 20 s (a judgement). More could stop the boil, lie cold in the bath and flash when it mixes. In a sentence it is at its safe end.",
    }),
  },
  answer: [
    {
      says: "Put the parts in when it reads {reading to start at} and climbs; from then on drip {drip} a minute, {water in all} in all.",
      otherwise: {
        says: "Put the parts in when it reads {reading to start at} and climbs; from then on pour {each pour} every {minutes between pours}, {water in all} in all.",
        otherwise: "The feed can't be said yet.",
      },
      caution:
        "Danger. One pour is {limit of one pour}, whatever the cup holds, as a thin steady stream at the far end: more can stop the boil, then flash to steam and throw caustic. Face shield, gauntlets, apron; the salt's safety data sheet comes first.",
    },
    {
      says: "Nobody correcting, {holds left alone} holds in 100 stay in the band; with the correction table followed it is {holds with the table} in 100.",
      otherwise: {
        says: "So far: nobody correcting, {so far left alone} holds in 100 stay in the band; with the correction table followed it is {so far with the table} in 100.",
        otherwise: "How many holds stay in the band can't be said yet.",
      },
      caution: overMany,
    },
    {
      says: "It boils {minutes to the boil} after lighting and comes to that reading {minutes from boil to start} later; until the parts come out it burns {gas in all} of propane.",
      otherwise: {
        says: "It boils {minutes to the boil} after lighting and comes to that reading {minutes from boil to start} later.",
        otherwise: {
          says: "It boils {minutes to the boil} after lighting, already above that reading: {water before the parts} of water goes in before the parts.",
          otherwise: {
            says: "It boils {minutes to the boil} after lighting.",
            otherwise: "When it boils can't be said: the fire may never bring it there.",
          },
        },
      },
    },
  ],
  figures: ["planned hold", "turning the fire down"],
});
