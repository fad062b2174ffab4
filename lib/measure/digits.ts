import type { UnitSystem } from "./types.ts";

const trueMinus = "\u2212";
const thinSpace = "\u202f";

/**
 * A number as digits: true minus, thousands with a comma in US units and a narrow no-break space in metric ones (from
 * 10,000 there, from 1,000 with commas). `decimals` below zero round to tens, hundreds …
 *
 * @example
 * digits(-1234.5, 1, "US") // "−1,234.5"
 */
export function digits(number: number, decimals: number, system: UnitSystem = "US"): string {
  const places = Math.max(-20, Math.min(20, decimals));
  const step = 10 ** Math.max(0, -places);
  const rounded = step === 1 ? number : Math.round(number / step) * step;
  const fixed = Math.abs(rounded).toFixed(Math.max(0, places));
  if (fixed.includes("e")) return fixed.replace("e+", "e");
  const [whole = "0", fraction] = fixed.split(".");
  const mark = system === "US" ? "," : thinSpace;
  const grouped = whole.length > (system === "US" ? 3 : 4) ? whole.replace(/\B(?=(\d{3})+$)/gu, mark) : whole;
  const zero = Number(fixed) === 0;
  return `${rounded < 0 && !zero ? trueMinus : ""}${grouped}${fraction === undefined ? "" : `.${fraction}`}`;
}
