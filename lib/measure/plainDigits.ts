import { digits } from "./digits.ts";
import type { FormatOptions } from "./formatQuantity.ts";
import { fractionDigits } from "./fractionDigits.ts";

/**
 * A number as it is shown without a spread: fractions or decimals where the options ask for them, money in cents, else
 * four significant digits without idle zeros.
 *
 * @param number in the unit shown
 * @example
 * plainDigits(2.5, "gal", {}) // "2.5"
 */
export function plainDigits(number: number, symbol: string, options: FormatOptions): string {
  const { system = "US", decimals = symbol.startsWith("$") ? 2 : undefined } = options;
  if (options.fractions !== undefined) return fractionDigits(number, options.fractions);
  if (decimals !== undefined) return digits(number, decimals, system);
  const before = number === 0 ? 1 : Math.floor(Math.log10(Math.abs(number))) + 1;
  const text = digits(number, Math.max(0, (options.digits ?? 4) - before), system);
  return text.includes(".") ? text.replace(/\.?0+$/u, "") : text;
}
