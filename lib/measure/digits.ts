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
  const places = Math.max(-15, Math.min(15, decimals));
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

/**
 * Decimals that a half-width deserves: one significant digit, two where the first is a 1; rounded up unless that
 * hides less than a twentieth of it. `shown` is the half-width so rounded.
 *
 * @param half above 0
 * @example
 * roundedHalf(0.34) // { shown: 0.4, decimals: 1 }
 */
export function roundedHalf(half: number): { readonly shown: number; readonly decimals: number } {
  const power = Math.floor(Math.log10(half));
  const first = half / 10 ** power;
  const decimals = (first < 1.95 ? 1 : 0) - power;
  const steps = decimals > 0 ? half * 10 ** decimals : half / 10 ** -decimals;
  const near = Math.round(steps);
  const count = near >= 0.95 * steps ? near : Math.ceil(steps);
  // 9.7 has become 10: one digit less is enough for a leading 1 with one more digit.
  const shown = decimals > 0 ? count / 10 ** decimals : count * 10 ** -decimals;
  return { shown, decimals };
}
