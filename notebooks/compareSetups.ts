import { fitted, given, type Line, type Notebook, notebook, worked } from "../lib/lines/index.ts";
import { supposedGivens } from "./compare/givens.ts";
import { boils, cylinder, firing, gas, heat, hold, room, supposed } from "./compare/headings.ts";
import oneRun from "./oneRun.ts";

const flash =
  "Danger. Water poured into a bath far above the boil of water flashes to steam and throws caustic. A thin steady feed, never a dump; face shield, gauntlets and apron on. The salt's safety data sheet comes first.";

const power = { metricUnit: "kW", group: heat } as const;

/** What is compared comes first, what may be supposed behind it, and what the record says last. */
const order = [hold, boils, gas, room, supposed, firing, cylinder, heat];

/** Lines of one heading together, in the order of the headings; those of the record as One run has them. */
function underHeadings(lines: Notebook["lines"]): Notebook["lines"] {
  const placeOf = ({ group }: Line) => {
    const place = order.indexOf(group ?? "");
    return place < 0 ? order.length : place;
  };
  return Object.fromEntries(Object.entries(lines).sort(([, a], [, b]) => placeOf(a) - placeOf(b)));
}

/** What a run, a setup and a bath have written, under the names that One run gives it. */
function facts(): Notebook["lines"] {
  return Object.fromEntries(
    Object.entries(oneRun.lines).filter(([name, line]) => {
      if (line.kind !== "given")
        return line.group === "Conditions" || name === "salts known" || name === "water balance";
      return true;
    }),
  );
}

/** Which tank and which fire to use for a piece: cases side by side, from fitted runs, setups and supposed changes. */
export default notebook({
  name: "Compare setups",
  asks: "Which tank, on which fire?",
  lines: underHeadings({
    ...supposedGivens,
    ...facts(),

    "fitted bath": fitted(
      "fit of run(log, salts known, water at the start, pressure at the tank, target, band, thermometer reads high by, water measured by, tank length, tank width, tank depth, burner rate, burner's flame)",
      undefined,
      { hidden: true },
    ),

    "inside length": worked("new length when new length is given, otherwise tank length", "in", {
      metricUnit: "cm",
      group: room,
    }),
    "inside width": worked("new width when new width is given, otherwise tank width", "in", {
      metricUnit: "cm",
      group: room,
    }),
    "inside depth": worked("new depth when new depth is given, otherwise tank depth", "in", {
      metricUnit: "cm",
      group: room,
    }),
    "hydroxide share": worked(
      "sodium hydroxide / (sodium hydroxide + sodium nitrate) when sodium hydroxide is given and sodium nitrate is given, hydroxide in the mix when hydroxide in the mix is given, otherwise usual hydroxide share",
      "%",
      { group: room, about: "Of all salt by weight; the rest is taken as sodium nitrate." },
    ),
    "usual hydroxide share": given("68 % ± 8 %", undefined, {
      takes: "share",
      unit: "%",
      group: room,
      rare: true,
      about: "Where nobody weighed the salts: about two parts of hydroxide to one of nitrate.",
    }),
    "curve offset": worked(
      "boiling point offset of fitted bath when log is given, otherwise published curve offset()",
      "°F",
      { metricUnit: "°C", hidden: true },
    ),
    "curve scale": worked(
      "boiling curve scale of fitted bath when log is given, otherwise published curve scale()",
      "",
      {
        hidden: true,
      },
    ),
    salt: worked(
      "salts of water balance * inside length * inside width / (tank length * tank width) when log is given, sodium hydroxide + sodium nitrate when sodium hydroxide is given and sodium nitrate is given, ready-mixed salt when ready-mixed salt is given, otherwise salt for the depth",
      "lb",
      {
        metricUnit: "kg",
        group: room,
        about: "As logged; another tank filled to the same depth holds as much more as its surface is larger.",
      },
    ),
    "salt for the depth": worked(
      "inside length * inside width * liquid depth * density of bath(salt to water wanted, target, hydroxide share) * salt to water wanted / (1 + salt to water wanted)",
      "lb",
      { metricUnit: "kg", hidden: true },
    ),
    "salt to water wanted": worked("salt to water at boil(target, pressure at the tank, hydroxide share)", "lb/gal", {
      metricUnit: "kg/l",
      hidden: true,
    }),

    "walls of the log's tank": worked(
      "heat loss of wall(target, air and feed water, tank depth, 2 * (tank length + tank width))",
      "BTU/h",
      { metricUnit: "kW", hidden: true },
    ),
    "top of the log's tank": worked(
      "dry heat loss of surface(target, air and feed water, tank length, tank width, pressure at the tank)",
      "BTU/h",
      { metricUnit: "kW", hidden: true },
    ),
    "heat lost by walls": worked(
      "heat loss of wall(target, air and feed water, inside depth, 2 * (inside length + inside width))",
      "BTU/h",
      { ...power, about: "Bare steel in still air. Wind takes more; flue gas along the wall can turn it round." },
    ),
    "heat lost by the top": worked(
      "dry heat loss of surface(target, air and feed water, inside length, inside width, pressure at the tank)",
      "BTU/h",
      { ...power, about: "By air and radiation, beside the steam." },
    ),
    "fire into the log's bath": worked(
      "heat into the bath of fitted bath + walls of the log's tank + top of the log's tank",
      "BTU/h",
      { metricUnit: "kW", hidden: true },
    ),
    "gas in the log": worked(
      "burner rate when burner rate is given, otherwise fire into the log's bath / burner efficiency(burner's flame)",
      "BTU/h",
      { metricUnit: "kW", hidden: true },
    ),
    "gas burnt": worked(
      "gas through the jets when jet is given and jet pressure is given, otherwise gas in the log * fire against the log",
      "BTU/h",
      {
        ...power,
        group: gas,
        mark: "heat",
        about:
          "Gross. Where no burner is known it is what the log's heat must have taken, by a guess at the efficiency.",
      },
    ),
    "burners lit": worked("burners when burners is given, otherwise 1", "", { hidden: true }),
    "gas through the jets": worked(
      "burners lit * heat of propane(propane through jet(jet, jet pressure, air and feed water, pressure at the tank) * 1 h) / 1 h when jet pressure > 1 psi, otherwise burners lit * heat of propane(propane through low pressure jet(jet, jet pressure) * 1 h) / 1 h",
      "BTU/h",
      { metricUnit: "kW", hidden: true },
    ),
    "flame now": worked('burner\'s flame when new flame = "as it was", otherwise new flame', undefined, {
      hidden: true,
    }),
    "one burner's fire against the log": worked(
      "gas burnt / gas in the log * burners in the log / burners when burners is given and burners in the log is given, otherwise gas burnt / gas in the log",
      "",
      { hidden: true },
    ),
    "share of the log": worked("fire into the log's bath / gas in the log", "%", { hidden: true }),
    "share that reaches the bath": worked(
      "share of the log * share against the log * share at another fire(one burner's fire against the log) * burner efficiency(flame now) / burner efficiency(burner's flame) when log is given, otherwise share against the log * burner efficiency(flame now)",
      "%",
      { group: heat, about: "Of the gas's gross heat, into the bath, walls and top together." },
    ),
    "fire into the bath": worked("gas burnt * share that reaches the bath", "BTU/h", {
      metricUnit: "kW",
      hidden: true,
    }),
    "heat into the bath": worked("fire into the bath - heat lost by walls - heat lost by the top", "BTU/h", {
      ...power,
      about: "What is left to warm the bath, and to boil water off it.",
    }),

    "firing in trial": worked(
      "firing of bath(fire into the bath, heat lost by walls, heat lost by the top, inside length, inside width, inside depth, salt, hydroxide share, curve offset, curve scale, target, band, pressure at the tank, air and feed water, weight of parts, hold wanted, own feed)",
      undefined,
      { hidden: true },
    ),
    "heat to spare": worked("heat to spare of firing in trial", "BTU/h", {
      ...power,
      about:
        "Over all that a quiet bath at its boil would lose, evaporation too. Near 0 it is not sure to boil at all; below 0 it simmers.",
    }),
    "minutes to the boil": worked("time to the boil of firing in trial", "min", {
      group: hold,
      about: "From a cold bath to its boil at the target, on a full fire.",
    }),
    "boil-off": worked("boil-off of firing in trial", "fl oz/min", {
      metricUnit: "ml/min",
      mark: "water",
      group: boils,
      about: "At the target, fed what holds it there.",
    }),
    "make-up water": worked("make-up water of firing in trial", "fl oz/min", {
      metricUnit: "ml/min",
      key: "make_up",
      mark: "water",
      group: boils,
      caution: flash,
    }),
    "drift left alone": worked("drift left alone of firing in trial", "°F/min", {
      metricUnit: "°C/min",
      group: hold,
      about: "How fast the boiling point climbs at the target when nothing is fed.",
    }),
    "a pour may be late by": worked("time to the upper limit of firing in trial", "s", {
      group: hold,
      safe: "at most",
      about: "From the target to the upper limit of the band when nothing is fed.",
    }),
    "dip when parts go in": worked("dip of firing in trial", "°F", {
      metricUnit: "°C",
      group: hold,
      about: "Parts that take their heat in half a minute; thick ones dip it less and longer.",
    }),
    "time to come back": worked("time to come back of firing in trial", "min", {
      group: hold,
      about: "Until it boils again, nothing fed meanwhile.",
    }),

    "gas for a firing": worked("gas burnt * (minutes to the boil + hold wanted) / heat of propane(1 lb) * 1 lb", "lb", {
      metricUnit: "kg",
      group: gas,
      about: "On a full fire, from lighting to the end of the hold.",
    }),
    "firings to a cylinder": worked("propane in it / gas for a firing", "", { group: gas }),
    "cylinder can give": worked("cylinder gives(cylinder's size, propane in it, air and feed water)", "BTU/h", {
      metricUnit: "kW",
      group: gas,
      about:
        "Published for the 100 lb cylinder alone. For any other it is derived from that one by its wetted wall, ± 50 %, and no maker stands behind it.",
    }),
    "draw against its limit": worked("gas burnt / cylinder can give", "%", {
      group: gas,
      about: "Over 100 % the liquid chills and the flame sinks before the cylinder is empty.",
      caution: "Danger. Never warm a cylinder with a flame or hot water; a larger one, or two together, give more.",
    }),

    "water at the target": worked("water of firing in trial", "gal", { metricUnit: "l", group: room }),
    "liquid at the boil": worked(
      "volume of bath(salt, water at the target, target, hydroxide share) / (inside length * inside width)",
      "in",
      { metricUnit: "cm", group: room, about: "How deep it stands at the target, without parts." },
    ),
    freeboard: worked("inside depth - liquid at the boil", "in", {
      metricUnit: "cm",
      group: room,
      about: "From the liquid to the brim. No published figure was found; 4 in, or a third of the depth, is habit.",
      caution:
        "Danger. A bath that boils spits caustic, and parts raise it. Leave room above; stand back when parts go in.",
    }),
  }),
  answer: [
    {
      says: "The base comes to the boil in {minutes to the boil} and takes {make-up water} a minute to hold its target.",
      otherwise: "How this bath would fire can't be said yet.",
      caution: flash,
    },
    {
      says: "Left alone it climbs {drift left alone} a minute, so a pour may come {a pour may be late by} late.",
      otherwise: "How fast it would climb can't be said yet.",
    },
    {
      says: "A firing burns {gas for a firing} of propane: {firings to a cylinder, bare} firings to a cylinder.",
      otherwise: "What gas it takes can't be said until a log or a burner is known.",
    },
  ],
  figures: ["hold of each case", "steadiness against gas"],
});
