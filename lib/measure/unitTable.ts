import type { Dimension, Unit } from "./types.ts";

const length: Dimension = { length: 1 };
const volume: Dimension = { length: 3 };
const mass: Dimension = { mass: 1 };
const time: Dimension = { time: 1 };
const pressure: Dimension = { mass: 1, length: -1, time: -2 };
const energy: Dimension = { mass: 1, length: 2, time: -2 };
const power: Dimension = { mass: 1, length: 2, time: -3 };
const difference: Dimension = { temperature: 1 };

// Exact by definition: the international yard and pound agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg).
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
// Exact: the U.S. gallon is 231 cubic inches (NIST Handbook 44, appendix C).
const gallon = 231 * inch ** 3;
// Exact: the International Table Btu, from 1 Btu/lb = 2326 J/kg (NIST SP 811, appendix B.8, footnote).
const btu = 2326 * pound;
// Exact: standard gravity (3rd CGPM, 1901; SI Brochure, 9th edition).
const gravity = 9.80665;

interface Named extends Unit {
  /** Other spellings, in lower case without full stops. */
  readonly names: readonly string[];
}

/**
 * Every unit that can be written, with its exact factor to SI. Factors: NIST SP 811 (2008) appendix B and NIST
 * Handbook 44 appendix C; SI Brochure, 9th edition. The columns of mercury and water are the conventional ones
 * (SP 811, B.8: inHg 3386.389 Pa, mmHg 133.3224 Pa, inH2O 249.0889 Pa), which are rounded, not exact.
 */
export const unitTable: readonly Named[] = [
  { symbol: "lb", dimension: mass, factor: pound, names: ["lbs", "pound", "pounds", "#", "lbm"] },
  {
    symbol: "oz",
    dimension: mass,
    factor: pound / 16,
    names: ["ounce", "ounces", "ozs", "avoirdupois ounce", "oz wt"],
  },
  { symbol: "g", dimension: mass, factor: 1e-3, names: ["gram", "grams", "gm", "gms", "gramme", "grammes"] },
  { symbol: "kg", dimension: mass, factor: 1, names: ["kilogram", "kilograms", "kilo", "kilos", "kgs"] },

  { symbol: "in", dimension: length, factor: inch, names: ["inch", "inches", "ins", '"', "″", "''", "”", "“"] },
  { symbol: "ft", dimension: length, factor: foot, names: ["foot", "feet", "'", "′", "’"] },
  { symbol: "m", dimension: length, factor: 1, names: ["metre", "metres", "meter", "meters"] },
  { symbol: "cm", dimension: length, factor: 0.01, names: ["centimetre", "centimetres", "centimeter", "centimeters"] },
  { symbol: "mm", dimension: length, factor: 0.001, names: ["millimetre", "millimetres", "millimeter", "millimeters"] },
  { symbol: "ft²", dimension: { length: 2 }, factor: foot ** 2, names: ["sq ft", "square foot", "square feet"] },
  { symbol: "in²", dimension: { length: 2 }, factor: inch ** 2, names: ["sq in", "square inch", "square inches"] },
  {
    symbol: "m²",
    dimension: { length: 2 },
    factor: 1,
    names: ["sq m", "square metre", "square metres", "square meter", "square meters"],
  },

  {
    symbol: "fl oz",
    dimension: volume,
    factor: gallon / 128,
    names: ["floz", "fluid ounce", "fluid ounces", "fl ozs", "fl ounce", "fl ounces", "oz fl"],
  },
  { symbol: "cup", dimension: volume, factor: gallon / 16, names: ["cups"] },
  { symbol: "pt", dimension: volume, factor: gallon / 8, names: ["pint", "pints", "pts"] },
  { symbol: "qt", dimension: volume, factor: gallon / 4, names: ["quart", "quarts", "qts"] },
  {
    symbol: "gal",
    dimension: volume,
    factor: gallon,
    names: ["gallon", "gallons", "gals", "us gal", "us gallon", "us gallons"],
  },
  { symbol: "tbsp", dimension: volume, factor: gallon / 256, names: ["tablespoon", "tablespoons", "tbs"] },
  { symbol: "tsp", dimension: volume, factor: gallon / 768, names: ["teaspoon", "teaspoons"] },
  {
    symbol: "ml",
    dimension: volume,
    factor: 1e-6,
    names: ["millilitre", "millilitres", "milliliter", "milliliters", "cc", "mls", "cm3"],
  },
  { symbol: "l", dimension: volume, factor: 1e-3, names: ["litre", "litres", "liter", "liters", "ltr", "ltrs"] },
  { symbol: "m³", dimension: volume, factor: 1, names: ["cubic metre", "cubic metres", "cubic meter", "cubic meters"] },
  { symbol: "in³", dimension: volume, factor: inch ** 3, names: ["cu in", "cubic inch", "cubic inches"] },
  { symbol: "ft³", dimension: volume, factor: foot ** 3, names: ["cu ft", "cubic foot", "cubic feet"] },

  { symbol: "s", dimension: time, factor: 1, names: ["sec", "secs", "second", "seconds"] },
  { symbol: "min", dimension: time, factor: 60, names: ["mins", "minute", "minutes"] },
  { symbol: "h", dimension: time, factor: 3600, names: ["hr", "hrs", "hour", "hours"] },
  { symbol: "day", dimension: time, factor: 86400, names: ["days", "d"] },

  {
    symbol: "°F",
    dimension: difference,
    factor: 5 / 9,
    offset: 459.67,
    names: [
      "f",
      "degf",
      "deg f",
      "degrees f",
      "degree f",
      "fahrenheit",
      "degrees fahrenheit",
      "deg fahrenheit",
      "° f",
      "ºf",
      "º f",
      "˚f",
      "˚ f",
      "℉",
    ],
  },
  {
    symbol: "°C",
    dimension: difference,
    factor: 1,
    offset: 273.15,
    names: [
      "degc",
      "deg c",
      "degrees c",
      "degree c",
      "celsius",
      "degrees celsius",
      "deg celsius",
      "centigrade",
      "° c",
      "ºc",
      "º c",
      "˚c",
      "˚ c",
      "℃",
    ],
  },
  { symbol: "K", dimension: difference, factor: 1, offset: 0, names: ["kelvin", "kelvins"] },

  { symbol: "Pa", dimension: pressure, factor: 1, names: ["pascal", "pascals"] },
  { symbol: "hPa", dimension: pressure, factor: 100, names: ["hectopascal", "hectopascals"] },
  { symbol: "mbar", dimension: pressure, factor: 100, names: ["mb", "millibar", "millibars"] },
  { symbol: "kPa", dimension: pressure, factor: 1000, names: ["kilopascal", "kilopascals"] },
  { symbol: "bar", dimension: pressure, factor: 1e5, names: ["bars"] },
  {
    symbol: "inHg",
    dimension: pressure,
    factor: 3386.389,
    names: [
      "in hg",
      "inches hg",
      "inch hg",
      "inches of mercury",
      "inch of mercury",
      "in of mercury",
      '"hg',
      '" hg',
      "″hg",
    ],
  },
  {
    symbol: "mmHg",
    dimension: pressure,
    factor: 133.3224,
    names: ["mm hg", "millimetres of mercury", "millimeters of mercury"],
  },
  {
    symbol: "inH₂O",
    dimension: pressure,
    factor: 249.0889,
    names: [
      "inh2o",
      "in h2o",
      "inches h2o",
      "inches of water",
      "inch of water",
      "in wc",
      "inwc",
      "in of water",
      "inches wc",
    ],
  },
  {
    symbol: "psi",
    dimension: pressure,
    factor: (pound * gravity) / inch ** 2,
    names: ["psig", "psia", "lbf/in2", "pounds per square inch"],
  },

  { symbol: "J", dimension: energy, factor: 1, names: ["joule", "joules"] },
  { symbol: "kJ", dimension: energy, factor: 1e3, names: ["kilojoule", "kilojoules"] },
  { symbol: "MJ", dimension: energy, factor: 1e6, names: ["megajoule", "megajoules"] },
  { symbol: "BTU", dimension: energy, factor: btu, names: ["btus"] },
  { symbol: "kWh", dimension: energy, factor: 3.6e6, names: ["kilowatt hour", "kilowatt hours"] },
  { symbol: "W", dimension: power, factor: 1, names: ["watt", "watts"] },
  { symbol: "kW", dimension: power, factor: 1e3, names: ["kilowatt", "kilowatts"] },
  { symbol: "BTU/h", dimension: power, factor: btu / 3600, names: ["btuh", "btu/hr", "btu per hour"] },

  { symbol: "%", dimension: {}, factor: 0.01, names: ["percent", "per cent", "pct"] },
  { symbol: "$", dimension: { money: 1 }, factor: 1, names: ["usd", "dollar", "dollars"] },
];
