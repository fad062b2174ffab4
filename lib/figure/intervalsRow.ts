import { interval95 } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { caseMark, caseMarkPath, markPaint } from "./caseMark.ts";
import type { IntervalsRowOptions, RowValue } from "./caseTypes.ts";
import { intervalBar } from "./intervalBar.ts";
import { svg } from "./svg.ts";
import { valueScale } from "./valueScale.ts";

interface Laid {
  readonly mark: number;
  readonly base: boolean;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly across: number;
}

/**
 * The 95 % intervals of one row of the grid side by side, each case with its mark on a lane of its own, all on the
 * row's own scale; the base as a line dropped through them. Hidden from screen readers: the numbers stand beside it. A
 * value without a number leaves its lane empty. All values of one kind, in SI. A handful of elements, so that a hundred
 * rows cost little.
 * @throws RangeError for a value that is not finite, limits that are not numbers with the lower first, a width outside
 * 60 to 10,000 px or a height outside 12 to 1,000 px.
 * @example
 * const values = [{ mark: 0, value: measuredValue(4.6, 0.15, {}, "a"), base: true }, { mark: 1, value: exact(6.5) }];
 * intervalsRow(values, { document, width: 160, height: 24 });
 */
export function intervalsRow(values: readonly RowValue[], options: IntervalsRowOptions): SVGSVGElement {
  const { document, width = 160, height = Math.max(12, 11 * values.length) } = options;
  if (!(width >= 60 && width <= 10000)) throw new RangeError(`invalid figure width: ${width}; 60 to 10,000 px`);
  if (!(height >= 12 && height <= 1000)) throw new RangeError(`invalid figure height: ${height}; 12 to 1,000 px`);
  const lane = height / Math.max(1, values.length);
  const laid = values.flatMap(({ mark, value, base = false }, index): readonly Laid[] =>
    value ? [{ mark, base, value: value.value, ...limitsOf(value), across: lane * (index + 0.5) }] : [],
  );
  const radius = Math.min(3.5, Math.max(2, lane * 0.36));
  const { at } = valueScale(
    laid.flatMap((one) => [one.value, one.low, one.high]),
    1,
    width - 1,
    radius * 1.4,
  );
  const bars = laid
    .filter((one) => one.low < one.high)
    .map((one) =>
      intervalBar({
        from: at(one.low),
        to: at(one.high),
        across: one.across,
        tick: Math.min(3, lane * 0.36),
        openFrom: one.low === Number.NEGATIVE_INFINITY,
        openTo: one.high === Number.POSITIVE_INFINITY,
      }),
    );
  const drop = laid
    .filter((one) => one.base)
    .map((one) => `M${px(at(one.value))},0L${px(at(one.value))},${px(height)}`);
  const line = (kind: string, parts: readonly string[], strokeWidth: number) =>
    parts.length === 0
      ? []
      : [
          svg(document, "path", {
            d: parts.join(""),
            fill: "none",
            stroke: "var(--ink)",
            "stroke-width": strokeWidth,
            "data-mark": kind,
          }),
        ];
  const shapes = (filled: boolean) => {
    const parts = laid.filter((one) => caseMark(one.mark).filled === filled);
    const d = parts.map((one) => caseMarkPath(one.mark, at(one.value), one.across, radius)).join("");
    return d === "" ? [] : [svg(document, "path", { d, ...markPaint(filled), "data-mark": filled ? "solid" : "open" })];
  };
  return svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "intervals",
      "data-figure": "intervals",
      "aria-hidden": "true",
      focusable: "false",
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
    },
    [...line("base", drop, 0.9), ...line("interval", bars, 1), ...shapes(false), ...shapes(true)],
  ) as SVGSVGElement;
}

function limitsOf(value: Value): { readonly low: number; readonly high: number } {
  const [low, high] = interval95(value);
  if (!Number.isFinite(value.value)) throw new RangeError(`invalid value: ${value.value}; a finite number expected`);
  if (!(low <= high)) throw new RangeError(`invalid interval: ${low} to ${high}; two numbers, the lower first`);
  return { low, high };
}

const px = (value: number): string => String(Math.round(value * 100) / 100);
