import { minutesText } from "./drawBandBar.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { type HeatPlace, heatAcross } from "./heatAcross.ts";
import { type HeatLabel, heatSplit, heatWriter } from "./heatSplit.ts";
import { heatUpright } from "./heatUpright.ts";
import { svg } from "./svg.ts";
import type { FigureOptions, HeatAmount, WhereHeatWentData } from "./types.ts";
import { whereHeatWentFinding } from "./whereHeatWentFinding.ts";
import { wrapped } from "./wrapped.ts";

/**
 * Where the heat went: all that went into the bath over one run as a bar cut like stock, to scale, each piece with its
 * dimension line, its name and its amount with the 95 % spread; where the gas is known, the longer stock it was cut
 * from. Amounts in J over `start` to `end` (s). A piece left out is not known, one of 0 to 0 is none, one whose spread
 * reaches 0 is said as "can't tell", one below 0 gave heat back; such pieces stand in words. In BTU, or MJ or kJ. Any
 * amounts, none included. Throws a RangeError for a number that is not finite, limits that do not hold their value,
 * and a width outside 200 to 10,000 px.
 * @example
 * const steam = { value: 9.5e6, low: 9e6, high: 1e7 };
 * whereHeatWent({ start: 0, end: 2400, steam }, { document, width: 768, system: "US" });
 */
export function whereHeatWent(data: WhereHeatWentData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const { document, width } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const split = heatSplit(data, options);
  const write = heatWriter(data, options);
  const left = narrow ? 16 : width >= 1000 ? 96 : 48;
  const { total, fire } = split;
  const seconds = data.end - data.start;
  const time = seconds > 0 ? ` in ${minutesText(seconds)} min` : "";
  const into = total ? `into the bath ${write.text(total)}` : "";
  const mean = total && seconds > 0 ? `, a mean of ${write.mean(total, seconds)}` : "";
  const place: HeatPlace = {
    document,
    width,
    size,
    left,
    right: width - left,
    wholeWords: [`${into}${time}${mean}`, `${into}${time}`, into],
    burntWords: fire ? `gas burnt ${write.text(fire.burnt)}` : "",
  };
  const label = (name: string, amount: HeatAmount): HeatLabel => {
    const { number, spread, unit } = write.of(amount);
    return { name, number, spread: `${spread} ${unit}`, words: [] };
  };
  const upright = () =>
    heatUpright(split, place, {
      ...(total ? { total: label(`into the bath${time}`, total) } : {}),
      ...(fire ? { burnt: label("gas burnt", fire.burnt) } : {}),
    });
  const lay =
    split.stock > 0
      ? ((narrow ? undefined : heatAcross(split, place)) ?? upright())
      : { elements: [emptyWords(document, left)], bottom: 44 };
  const notes = split.notes.flatMap((note) => wrapped(note, size, width - 2 * left));
  const leading = size * 1.5;
  const height = Math.ceil(lay.bottom + notes.length * leading + (notes.length > 0 ? 6 : 0));
  const root = svg(
    document,
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      class: "figure",
      "data-figure": "where the heat went",
      role: "img",
      "aria-label": whereHeatWentFinding(data, options),
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      "font-family": '"National Park Variable", "National Park", sans-serif',
      fill: "var(--ink)",
    },
    [
      ...lay.elements,
      svg(
        document,
        "g",
        { "data-part": "notes" },
        notes.map((note, index) =>
          svg(
            document,
            "text",
            { x: left, y: lay.bottom + size + leading * index, "font-size": size, fill: "var(--ink)" },
            [note],
          ),
        ),
      ),
    ],
  ) as SVGSVGElement;
  root.style.setProperty("font-feature-settings", '"tnum"');
  root.style.setProperty("display", "block");
  return root;
}

const emptyWords = (document: Document, x: number): SVGElement =>
  svg(document, "text", { x, y: 28, "font-size": 17, fill: "var(--ink)" }, ["no heat to show yet"]);
