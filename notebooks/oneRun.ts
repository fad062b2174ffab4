import { fitted, given, notebook, worked } from "../lib/lines/index.ts";

const inTheTank = "Salts in the bath";
const tank = "Tank, inside";
const air = "Air";
const wanted = "Wanted";
const instruments = "Thermometer and cup";
const fire = "Fire";
const boils = "Boil-off and make-up";
const hold = "The hold";
const bath = "Water, salt and ratio";
const conditions = "Conditions";

const flash =
  "Danger. Water poured into a bath far above the boil of water flashes to steam and throws caustic. A thin steady feed, never a dump; face shield, gauntlets and apron on. The salt's safety data sheet comes first.";

const salt = { takes: "mass", atLeast: 0, unit: "lb", metricUnit: "kg", group: inTheTank, keptWith: "bath" } as const;
const share = { takes: "share", unit: "%", group: inTheTank, keptWith: "bath" } as const;
const tape = { takes: "length", atLeast: 0, unit: "in", metricUnit: "cm", group: tank, keptWith: "setup" } as const;

/** One firing: how fast the bath boiled water off, and how much of the hold stood in its band. */
export default notebook({
  name: "One run",
  asks: "How did that run go?",
  lines: {
    log: given("", undefined, { takes: "log", hidden: true }),

    "sodium hydroxide": given("", "weighed", salt),
    "sodium nitrate": given("", "weighed", salt),
    "sodium nitrite": given("", "weighed", { ...salt, rare: true }),
    "potassium nitrate": given("", "weighed", { ...salt, rare: true }),
    "ready-mixed salt": given("", "weighed", {
      ...salt,
      about: "A salt bought ready mixed: its whole weight. The shares below come from its safety data sheet.",
    }),
    "hydroxide in the mix": given("", "from the label", {
      ...share,
      about: "Sodium hydroxide in the ready-mixed salt, as its safety data sheet gives it: 60-80 %.",
    }),
    "nitrate in the mix": given("", "from the label", {
      ...share,
      about: "Sodium nitrate in the ready-mixed salt, as its safety data sheet gives it: 15-40 %.",
    }),
    "nitrite in the mix": given("", "from the label", {
      ...share,
      about: "Sodium nitrite in the ready-mixed salt, as its safety data sheet gives it.",
    }),
    "water at the start": given("", "measured", {
      takes: "water",
      atLeast: 0,
      unit: "gal",
      metricUnit: "l",
      key: "water_start",
      group: inTheTank,
      about: "Water in the tank at the first row of the log. Leave it blank if you don't know.",
    }),

    "tank length": given("", "measured", tape),
    "tank width": given("", "measured", tape),
    "tank depth": given("", "measured", { ...tape, rare: true }),
    "liquid depth": given("", "measured", {
      ...tape,
      about:
        "How deep the liquid stood when the bath first boiled. With the tank's size it tells the salts when nobody weighed them.",
    }),

    altitude: given("", "published", {
      takes: "length",
      atLeast: -430,
      atMost: 5000,
      unit: "ft",
      metricUnit: "m",
      group: air,
      keptWith: "setup",
    }),
    "air pressure": given("", "measured", {
      takes: "pressure",
      atLeast: 0,
      unit: "inHg",
      metricUnit: "hPa",
      group: air,
      about:
        "A barometer's own reading at the tank, not the weather report's, which is corrected to sea level. It goes before the altitude.",
    }),

    "burner rate": given("", "from the label", {
      takes: "power",
      atLeast: 0,
      unit: "BTU/h",
      metricUnit: "kW",
      group: fire,
      keptWith: "setup",
      rare: true,
      about:
        "Gas at full fire, gross, as its maker gives it for the pressure you run: of all the tank's burners together.",
    }),
    "burner's flame": given("open", undefined, {
      takes: "words",
      group: fire,
      keptWith: "setup",
      rare: true,
      choices: ["open", "skirted"],
      about: "Skirted: sheet metal or a flue keeps the hot gas along the tank.",
    }),

    target: given("292 °F", undefined, {
      takes: "temperature",
      unit: "°F",
      metricUnit: "°C",
      group: wanted,
      keptWith: "setup",
      exact: true,
    }),
    band: given("2 °F", undefined, {
      takes: "temperature difference",
      atLeast: 0.01,
      unit: "°F",
      metricUnit: "°C",
      group: wanted,
      keptWith: "setup",
      exact: true,
      about: "How far from the target is still good, up or down.",
    }),

    thermometer: given("type K", undefined, {
      takes: "words",
      group: instruments,
      keptWith: "setup",
      choices: ["type K", "type K special", "type J", "type T", "type N", "platinum class B", "bimetal dial"],
    }),
    "thermometer in boiling water": given("", "measured", {
      takes: "temperature",
      unit: "°F",
      metricUnit: "°C",
      group: instruments,
      keptWith: "setup",
      ownOnly: true,
      rare: true,
      about:
        "What it read in plain boiling water. That fixes its error there; at bath heat it is still a little less sure.",
    }),
    "barometer at that check": given("", "measured", {
      takes: "pressure",
      atLeast: 0,
      unit: "inHg",
      metricUnit: "hPa",
      group: instruments,
      keptWith: "setup",
      ownOnly: true,
      rare: true,
      about: "The air pressure when it was checked. Blank: the pressure of this run.",
    }),
    "water measured by": given("measuring cup", undefined, {
      takes: "words",
      group: instruments,
      keptWith: "setup",
      choices: ["measuring cup", "marked jug", "scale"],
      about:
        "A cup is taken as good to 6 % all night (95 %) and 10 % a pour, a marked jug to half that, a scale to 1 %.",
    }),

    "pressure at the tank": worked("station pressure(air pressure, altitude)", "inHg", {
      metricUnit: "hPa",
      group: conditions,
    }),
    "thermometer reads high by": worked(
      "thermometer error(thermometer, thermometer in boiling water, barometer at that check, pressure at the tank)",
      "°F",
      { metricUnit: "°C", group: conditions },
    ),
    "salts known": worked(
      "salts of bath(sodium hydroxide, sodium nitrate, sodium nitrite, potassium nitrate, ready-mixed salt, hydroxide in the mix, nitrate in the mix, nitrite in the mix, liquid depth, tank length, tank width)",
      undefined,
      { hidden: true },
    ),
    "water balance": worked(
      "balance of run(log, salts known, water at the start, pressure at the tank, target, band, thermometer reads high by, water measured by)",
      undefined,
      { hidden: true },
    ),

    "fitted bath": fitted(
      "fit of run(log, salts known, water at the start, pressure at the tank, target, band, thermometer reads high by, water measured by, tank length, tank width, tank depth, burner rate, burner's flame)",
      undefined,
      { hidden: true },
    ),
    "which way to trust": worked("which way to trust(fitted bath, water balance)", undefined, { hidden: true }),

    "heat into the bath": fitted("heat into the bath of fitted bath", "BTU/h", {
      metricUnit: "kW",
      about: "What the fire of the first boil brought into the bath beyond what walls and top lost.",
    }),
    "water at the first row": fitted("water at the start of fitted bath", "gal", { metricUnit: "l" }),
    "boiling point offset": fitted("boiling point offset of fitted bath", "°F", {
      metricUnit: "°C",
      about: "How far this bath boils above the published curve; below it where it is negative.",
    }),
    "boiling curve scale": fitted("boiling curve scale of fitted bath", "", {
      about: "How steep this bath's curve is beside the published one, 1.",
    }),
    "thermometer lag": fitted("thermometer lag of fitted bath", "s"),
    "mixing time": fitted("mixing time of fitted bath", "s"),
    "true pour for each one written": fitted("cup of fitted bath", "", {
      about: "Above 1 the cup holds more than is written.",
    }),
    "first burner change": fitted("first burner change of fitted bath", "", {
      rare: true,
      about: "Heat after it, as a share of that.",
    }),
    "second burner change": fitted("second burner change of fitted bath", "", { rare: true }),
    "third burner change": fitted("third burner change of fitted bath", "", { rare: true }),

    "lower limit": worked("target - band", "°F", { metricUnit: "°C", hidden: true, plain: true }),
    "upper limit": worked("target + band", "°F", { metricUnit: "°C", hidden: true, plain: true }),
    "boil-off": worked("boil-off of fitted bath", "fl oz/min", { metricUnit: "ml/min", mark: "water", group: boils }),
    "boil-off an hour": worked("boil-off", "gal/h", { metricUnit: "l/h", hidden: true }),
    "boil-off by water balance": worked("boil-off of water balance", "fl oz/min", {
      metricUnit: "ml/min",
      mark: "water",
      group: boils,
    }),
    "make-up water": worked("make-up water of fitted bath", "fl oz/min", {
      metricUnit: "ml/min",
      key: "make_up",
      mark: "water",
      group: boils,
      about:
        "Cold water a minute that would have held the ratio on this fire: the heat that went into steam, into warming the bath and into the pours, all spent on make-up water.",
    }),
    "make-up water by water balance": worked("make-up water of water balance", "fl oz/min", {
      metricUnit: "ml/min",
      mark: "water",
      hidden: true,
    }),
    "poured a minute": worked("poured a minute of water balance", "fl oz/min", {
      metricUnit: "ml/min",
      mark: "water",
      group: boils,
    }),
    "poured in all": worked("poured of water balance", "fl oz", { metricUnit: "ml", group: boils }),
    "not written down": worked("not written down of water balance", "fl oz", {
      metricUnit: "ml",
      rare: true,
      group: boils,
      about: "What the feed jug lost beyond the pours that were written.",
    }),
    "water to come back to target": worked("water to come back to target of fitted bath", "fl oz", {
      metricUnit: "ml",
      group: boils,
      below: "too much water for the target by",
      caution: flash,
      about: "At the log's last row.",
    }),
    "pour to come back": worked("pour to come back of fitted bath", "fl oz", {
      metricUnit: "ml",
      hidden: true,
      safe: "at most",
      mark: "water",
    }),
    "too much water": worked("too much water of fitted bath", "fl oz", {
      metricUnit: "ml",
      hidden: true,
      mark: "water",
    }),

    "minutes in the band": worked("time in band of water balance", "min", { key: "minutes_in_band", group: hold }),
    "hold time": worked("hold time of water balance", "min", { plain: true, group: hold }),
    "minutes until out of the band": worked("time until it leaves the band of fitted bath", "min", {
      group: hold,
      about: "From the log's last row, left alone on the last fire; 0 where it is out already.",
    }),
    "drift left alone": worked("drift left alone of water balance", "°F/min", {
      metricUnit: "°C/min",
      group: hold,
      about: "How fast the boiling point climbs, at the target, when nothing is poured.",
    }),
    "ratio at the start": worked("ratio at the start of water balance", "lb/gal", {
      metricUnit: "kg/l",
      key: "ratio_start",
      group: bath,
    }),
    "ratio at the end": worked("ratio at the end of water balance", "lb/gal", {
      metricUnit: "kg/l",
      key: "ratio_end",
      group: bath,
    }),
    "water at the first boil": worked("water at the first boil of water balance", "gal", {
      metricUnit: "l",
      group: bath,
    }),
    "water at the end": worked("water at the end of water balance", "gal", {
      metricUnit: "l",
      key: "water_end",
      group: bath,
    }),
    "salts in the bath": worked("salts of water balance", "lb", { metricUnit: "kg", group: bath }),
  },
  answer: [
    {
      says: "It stood in its band, {lower limit, bare} to {upper limit}, for {minutes in the band, bare} of the {hold time}.",
      otherwise: "The log doesn't say yet how long it stood in its band.",
    },
    {
      says: "It boiled off {boil-off} a minute, {boil-off an hour} an hour, and its ratio went from {ratio at the start, bare} to {ratio at the end}.",
      otherwise: {
        says: "By its water balance alone it boiled off {boil-off by water balance} a minute, and its ratio went from {ratio at the start, bare} to {ratio at the end}.",
        otherwise: "How fast it boils water off can't be said yet.",
      },
      caution:
        "Caution. The two ways of working disagree: {boil-off} a minute by the fitted bath, {boil-off by water balance} by the water balance; they lie further apart than their half-widths together. {which way to trust}",
    },
    {
      says: "You poured {poured a minute} a minute and to hold its ratio it takes {make-up water}; at the end it could take {pour to come back} to come back to its target.",
      otherwise: {
        says: "You poured {poured a minute} a minute and to hold its ratio it takes {make-up water}; at the end {too much water} too much was in it for its target.",
        otherwise: {
          says: "You poured {poured a minute} a minute; to hold its ratio it takes {make-up water} a minute.",
          otherwise: {
            says: "Nothing poured is written; to hold its ratio it takes {make-up water} a minute.",
            otherwise: {
              says: "To hold its ratio it takes {make-up water by water balance} a minute, by its water balance.",
              otherwise: "What it takes to hold its ratio can't be said yet.",
            },
          },
        },
      },
      caution: flash,
    },
  ],
  figures: ["hold replayed", "ratio and boiling point", "water gone", "where the heat went"],
});
