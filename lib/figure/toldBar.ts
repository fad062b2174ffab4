import { assertFinite } from "./finite.ts";
import { svg } from "./svg.ts";
import { textWidth } from "./textWidth.ts";
import type { ToldBarData, ToldBarOptions } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * What a told bar shows, in a sentence: the word, and how wide the 95 % spread is against before.
 * @example
 * toldBarFinding({ prior: { low: 0, high: 40 }, posterior: { low: 18, high: 22 }, told: "much" }) // "The log told much: the 95 % spread is 10 % of…"
 */
export function toldBarFinding({ prior, posterior, told }: ToldBarData): string {
  const before = prior.high - prior.low;
  const share = before > 0 ? (100 * (posterior.high - posterior.low)) / before : undefined;
  const width =
    share === undefined ? "" : `: the 95 % spread is ${decimal(share, share < 10 ? 1 : 0)} % of what it was`;
  return `The log told ${told}${width}`;
}

/**
 * How far a log drew a fitted line from what was believed before it: a thin rule with end ticks (the prior's 95 %)
 * under a thick bar (with the log), on the row's own scale, behind its word. 16 px high, for a row of a ledger.
 * Limits in any one unit, the lower first. Throws a RangeError for limits that are not finite or stand the wrong way
 * round and for a width outside 80 to 10,000 px.
 * @example
 * toldBar({ prior: { low: 0, high: 40 }, posterior: { low: 18, high: 22 }, told: "much" }, { document });
 */
export function toldBar(data: ToldBarData, options: ToldBarOptions): SVGSVGElement {
  const { document, width = 160 } = options;
  if (!(Number.isFinite(width) && width >= 80 && width <= 10000))
    throw new RangeError(`invalid figure width: ${width}; 80 to 10,000 px`);
  assertFinite(data, "told bar");
  for (const { low, high } of [data.prior, data.posterior])
    if (low > high) throw new RangeError(`invalid interval: ${low} to ${high}; the lower limit first`);
  const size = options.narrow ? 13 : 14;
  const [height, middle] = [16, 8];
  // The longest word sets where all bars start, so that those of a ledger stand under each other.
  const left = Math.ceil(textWidth("nothing", size)) + 10;
  const right = width - 2;
  const lowest = Math.min(data.prior.low, data.posterior.low);
  const span = Math.max(data.prior.high, data.posterior.high) - lowest;
  const at = (value: number) => (span > 0 ? left + ((value - lowest) / span) * (right - left) : (left + right) / 2);
  const [from, to] = [at(data.posterior.low), at(data.posterior.high)];
  const thick = Math.max(3, to - from);
  const ink = { stroke: "var(--ink)", "stroke-width": 1 };
  const tick = (x: number) => svg(document, "line", { x1: x, x2: x, y1: middle - 3.5, y2: middle + 3.5, ...ink });
  const [first, last] = [at(data.prior.low), at(data.prior.high)];
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "figure",
      "data-figure": "told bar",
      role: "img",
      "aria-label": toldBarFinding(data),
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      "font-family": '"National Park Variable", "National Park", sans-serif',
      fill: "var(--ink)",
    },
    [
      svg(document, "text", { x: 0, y: middle + size * 0.34, "font-size": size, fill: "var(--ink)" }, [data.told]),
      svg(document, "g", { "data-mark": "prior" }, [
        svg(document, "line", { x1: first, x2: last, y1: middle, y2: middle, ...ink }),
        tick(first),
        tick(last),
      ]),
      svg(document, "rect", {
        x: Math.min(Math.max(left, (from + to - thick) / 2), right - thick),
        y: middle - 3,
        width: thick,
        height: 6,
        fill: "var(--fitted)",
        "data-mark": "posterior",
      }),
    ],
  ) as SVGSVGElement;
  root.style.setProperty("display", "block");
  return root;
}
