import { given, type Line } from "../../lib/lines/index.ts";
import oneRun from "../oneRun.ts";

const wanted = "Wanted";
const partsGroup = "Parts";
const feeding = "Feeding";
const tonight = "When it is lit";
const theBath = "Salts in the bath";
const thatRun = "The run that it goes by";

/** Lines of One run as they are, or listed elsewhere. */
function ofRun(names: readonly string[], more: Partial<Extract<Line, { kind: "given" }>> = {}): Record<string, Line> {
  return Object.fromEntries(
    names.map((name) => {
      const line = oneRun.lines[name];
      if (!line) throw new Error(`unknown line of One run: ${name}`);
      return [name, { ...line, ...more } as Line];
    }),
  );
}

/** What the maker gives for a planned hold. */
export const givenLines: Readonly<Record<string, Line>> = {
  log: given("", undefined, { takes: "log", hidden: true }),

  ...ofRun(["target", "band"]),
  "hold time": given("30 min", undefined, {
    takes: "time",
    atLeast: 60,
    atMost: 6 * 3600,
    unit: "min",
    group: wanted,
    exact: true,
    about: "From parts in to parts out.",
  }),

  "weight of the parts": given("", "weighed", {
    takes: "mass",
    atLeast: 0,
    unit: "lb",
    metricUnit: "kg",
    group: partsGroup,
    about: "All that hangs in the bath, hooks and basket too. Blank: so little that it cools nothing.",
  }),
  "temperature of the parts": given("", "measured", {
    takes: "temperature",
    atLeast: 273.15,
    atMost: 513.15,
    unit: "°F",
    metricUnit: "°C",
    group: partsGroup,
    rare: true,
    about: "As they go in. Blank: the air's. Dry them: water carried in on a part flashes.",
  }),
  "steel of the parts": given("carbon steel", undefined, {
    takes: "words",
    group: partsGroup,
    rare: true,
    choices: ["carbon steel", "low-alloy steel", "cast iron"],
    about:
      "These take up heat alike within 3 %, so no number hangs on it. Aluminium, zinc, tin, solder and brazed joints must never go in: lye eats them and gives off hydrogen.",
  }),

  feeding: given("steady drip", undefined, {
    takes: "words",
    group: feeding,
    choices: ["steady drip", "pours"],
    about: "A steady thin drip holds best and is safest.",
  }),
  "measure of one pour": given("4 fl oz", undefined, {
    takes: "water",
    atLeast: 0,
    unit: "fl oz",
    metricUnit: "ml",
    group: feeding,
    exact: true,
    about: "Used where the water goes in by pours. More than the limit is never planned.",
  }),

  "water when lit": given("", "measured", {
    takes: "water",
    atLeast: 0,
    unit: "gal",
    metricUnit: "l",
    group: tonight,
    about: "Water in the bath when the burner is lit. Blank: as much as makes it boil 5 °F below the target.",
  }),
  "bath's temperature when lit": given("70 °F", "guessed", {
    takes: "temperature",
    unit: "°F",
    metricUnit: "°C",
    group: tonight,
    about: "A cold bath may be crusted: see the checklist before lighting under one.",
  }),
  "air temperature": given("70 °F", "guessed", {
    takes: "temperature",
    atLeast: 233.15,
    atMost: 323.15,
    unit: "°F",
    metricUnit: "°C",
    group: tonight,
    rare: true,
  }),
  ...ofRun(["altitude"]),
  ...ofRun(["air pressure"], {
    about:
      "A barometer's own reading at the tank on the day of the hold, not the weather report's. Blank: by the altitude, give or take the weather.",
  }),

  ...ofRun([
    "sodium hydroxide",
    "sodium nitrate",
    "sodium nitrite",
    "potassium nitrate",
    "ready-mixed salt",
    "hydroxide in the mix",
    "nitrate in the mix",
    "nitrite in the mix",
  ]),
  "bath dragged out": given("", "guessed", {
    takes: "mass",
    atLeast: 0,
    unit: "lb",
    metricUnit: "kg",
    group: theBath,
    rare: true,
    about: "What left on parts since the weights above held: weigh a rack before and after, or guess.",
  }),
  "wet sludge taken out": given("", "guessed", {
    takes: "mass",
    atLeast: 0,
    unit: "lb",
    metricUnit: "kg",
    group: theBath,
    rare: true,
    about: "Since the weights above held; half of it is taken to be bath (a judgement).",
  }),
  ...ofRun(["liquid depth"], { rare: true }),
  ...ofRun(["tank length", "tank width"]),
  ...ofRun(["tank depth"], { rare: false }),
  ...ofRun(["burner rate"], {
    rare: false,
    about:
      "Gas at full fire, gross, as its maker gives it for the pressure you run: of all burners together. With a fitted run only the gas hangs on it; without one all does, and the answer is wide.",
  }),
  ...ofRun([
    "burner's flame",
    "thermometer",
    "thermometer in boiling water",
    "barometer at that check",
    "water measured by",
  ]),

  "water at the start": {
    ...ofRun(["water at the start"])["water at the start"],
    group: thatRun,
    rare: true,
  } as Line,
  "barometer then": given("", "measured", {
    takes: "pressure",
    atLeast: 0,
    unit: "inHg",
    metricUnit: "hPa",
    group: thatRun,
    rare: true,
    about: "The air pressure on the day of that run.",
  }),
  "target then": given("", undefined, {
    takes: "temperature",
    unit: "°F",
    metricUnit: "°C",
    exact: true,
    hidden: true,
  }),
  "band then": given("", undefined, {
    takes: "temperature difference",
    unit: "°F",
    metricUnit: "°C",
    exact: true,
    hidden: true,
  }),
};
