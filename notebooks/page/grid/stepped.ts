import { readNumber } from "../../../lib/measure/index.ts";

/**
 * A given's text with its number changed by one step of its last written digit, up or down: "24 lb" to "25 lb",
 * "4.60" to "4.61", "3 1/2 gal" to "4 gal". What stands behind the number stays. Undefined for a text without a number.
 */
export function steppedText(text: string, up: boolean): string | undefined {
  const begins = /^\s*(?:about\s+|~\s*|\$\s*)?/iu.exec(text)?.[0] ?? "";
  const rest = text.slice(begins.length);
  const read = readNumber(rest);
  if (!read || !Number.isFinite(read.number)) return undefined;
  const [token, behind] = [rest.slice(0, read.end), rest.slice(read.end)];
  const turn = up ? 1 : -1;
  if (read.fraction) {
    const parts = Number(/(\d+)\s*$/u.exec(token.normalize("NFKC"))?.[1] ?? 2);
    return begins + mixed(Math.round(read.number * parts) + turn, parts) + behind;
  }
  if (/e/iu.test(token)) return undefined;
  const marks = [...token.matchAll(/[.,](\d+)(?!.*[.,])/gu)];
  const last = marks[0]?.[1] ?? "";
  // A lone comma before three digits divides thousands: the number that was read tells.
  const digits = Number(token.replace(/[^\d]/gu, ""));
  const decimals = last !== "" && close(digits / 10 ** last.length, Math.abs(read.number)) ? last.length : 0;
  const mark = decimals > 0 ? (marks[0]?.[0].charAt(0) ?? ".") : ".";
  const next = (Math.round(read.number * 10 ** decimals) + turn) / 10 ** decimals;
  const thousands = decimals === 0 ? /[,.]/u.test(token) : /\d[,.]\d{3}[.,]/u.test(token);
  return begins + inDigits(next, decimals, mark, thousands) + behind;
}

const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));

function inDigits(number: number, decimals: number, mark: string, thousands: boolean): string {
  const [whole = "0", part] = Math.abs(number).toFixed(decimals).split(".");
  const grouped = thousands ? whole.replace(/\B(?=(\d{3})+$)/gu, mark === "," && decimals > 0 ? "." : ",") : whole;
  const sign = number < 0 ? "-" : "";
  return sign + grouped + (part === undefined ? "" : mark + part);
}

/** A number of halves, quarters … as a tape reads: 7 halves are "3 1/2". */
function mixed(count: number, parts: number): string {
  const [sign, size] = [count < 0 ? "-" : "", Math.abs(count)];
  const [whole, over] = [Math.floor(size / parts), size % parts];
  if (over === 0) return sign + whole;
  const common = gcd(over, parts);
  const fraction = `${over / common}/${parts / common}`;
  return sign + (whole === 0 ? fraction : `${whole} ${fraction}`);
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
