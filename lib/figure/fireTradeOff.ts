import { caseFigure } from "./caseFigure.ts";
import { drawLabel } from "./drawLabel.ts";
import { figureUnits } from "./figureUnits.ts";
import { assertFinite, assertWidth } from "./finite.ts";
import { fireTradeOffFinding } from "./fireTradeOffFinding.ts";
import { type Label, placeLabels, type Segment } from "./placeLabels.ts";
import type { FireTradeOffData, FireTried } from "./planTypes.ts";
import { linePath, svg } from "./svg.ts";
import type { FigureOptions } from "./types.ts";
import { footRule, footRuleHeight, sideRule, valueTicks } from "./valueRule.ts";
import { type ValueScale, valueScale } from "./valueScale.ts";
import { decimal, figuresFor } from "./words.ts";

/**
 * The whole trade-off of turning the fire down: above, how many holds in 100 stay in the band; below, hanging from its
 * own line, the water to feed; both over the share of full fire. Fires that a gust can stop are dashed. SI data.
 * @throws RangeError for a number that is not finite, and for a width outside 200 to 10,000 px.
 * @example
 * const fires = [{ share: 1, feed: 0.002, nobody: 60, corrected: 90, steady: true }, { share: 0.8, feed: 0.0015, nobody: 70, corrected: 93, steady: true }];
 * fireTradeOff({ fires, best: 0.8 }, { document, width: 720, system: "US" });
 */
export function fireTradeOff(data: FireTradeOffData, options: FigureOptions): SVGSVGElement {
  assertWidth(options.width);
  assertFinite(data, "figure data");
  const { document, width, system } = options;
  const narrow = options.narrow ?? width < 600;
  const size = narrow ? 13 : 14;
  const fires = [...data.fires].sort((a, b) => a.share - b.share);
  const top = 12 + size * 2;
  const bottom = top + (narrow ? 190 : 240);
  const edge = bottom + 8;
  const left = narrow ? 48 : 96;
  const right = width - (narrow ? 14 : 216);
  const x = valueScale(
    fires.map(({ share }) => 100 * share),
    left,
    right,
    12,
  );
  const y = valueScale([0, 100], bottom, top, 0);
  const waterTop = edge + footRuleHeight(size) + 8;
  const waterDepth = narrow ? 54 : 64;
  const { waterRate } = figureUnits(system);
  const most = Math.max(1e-12, ...fires.map(({ feed }) => feed));
  const marks = curvesOf(document, fires, x, y);
  const bars = fires.map((one) => {
    const height = (one.feed / most) * waterDepth;
    return svg(document, "rect", {
      x: x.at(100 * one.share) - 4,
      y: waterTop,
      width: 8,
      height: Math.max(1, height),
      fill: one.steady ? "var(--water)" : "none",
      stroke: "var(--water)",
      "stroke-width": 1,
    });
  });
  const amounts = fires.map(({ share, feed }) => {
    const amount = waterRate.fromSI(feed);
    return svg(
      document,
      "text",
      {
        x: x.at(100 * share),
        y: waterTop + (feed / most) * waterDepth + size + 2,
        "text-anchor": "middle",
        "font-size": size,
        "font-weight": 500,
      },
      [decimal(amount, Math.min(2, Math.max(1, figuresFor(amount) - 1)), system)],
    );
  });
  const rule = { size, narrow, width };
  const height = Math.round(waterTop + waterDepth + size * 2);
  const named = [
    svg(document, "line", {
      x1: left,
      x2: right,
      y1: waterTop,
      y2: waterTop,
      stroke: "var(--rule)",
      "stroke-width": 1,
    }),
    svg(
      document,
      "text",
      {
        x: narrow ? 4 : left - 18,
        y: waterTop + (narrow ? -4 : size),
        "text-anchor": narrow ? "start" : "end",
        "font-size": size,
        fill: "var(--ink)",
      },
      [narrow ? `feed, ${waterRate.name}` : waterRate.name],
    ),
  ];
  const best = fires.find(({ share }) => share === data.best);
  const drop = best
    ? [
        svg(document, "line", {
          x1: x.at(100 * best.share),
          x2: x.at(100 * best.share),
          y1: top - size * 0.4,
          y2: edge,
          stroke: "var(--ink)",
          "stroke-width": 0.9,
          "data-mark": "best",
        }),
      ]
    : [];
  return caseFigure({ document, width, height, name: "fire trade-off", finding: fireTradeOffFinding(data, options) }, [
    ...marks.drawn,
    footRule(document, {
      ...rule,
      scale: x,
      ticks: valueTicks(x, { size, upright: false, system }),
      edge,
      name: "fire, % of full",
      room: right - 4,
    }),
    sideRule(document, {
      ...rule,
      scale: y,
      ticks: valueTicks(y, { size, upright: true, system }),
      edge: left,
      name: "holds in 100 that stay in the band",
      room: width - 8,
      nameAt: size + 2,
    }),
    ...drop,
    ...named,
    ...bars,
    ...amounts,
    ...labelled(document, fires, best, { x, y, top, bottom, left, right, width, narrow, size }, marks.segments),
  ]);
}

type Known = FireTried & { readonly corrected: number; readonly nobody: number };

function curvesOf(document: Document, fires: readonly FireTried[], x: ValueScale, y: ValueScale) {
  const known = fires.filter((one): one is Known => one.corrected !== undefined && one.nobody !== undefined);
  const drawn: SVGElement[] = [];
  const segments: Segment[] = [];
  for (const of of ["corrected", "nobody"] as const) {
    const stroke = of === "corrected" ? "var(--fitted)" : "var(--ink)";
    known.slice(1).forEach((one, index) => {
      const from = known[index] ?? one;
      const ends = [
        [x.at(100 * from.share), y.at(from[of])],
        [x.at(100 * one.share), y.at(one[of])],
      ] as const;
      segments.push([ends[0][0], ends[0][1], ends[1][0], ends[1][1]]);
      const sure = from.steady && one.steady;
      const dash = sure ? {} : { "stroke-dasharray": "3 4" };
      const width = of === "corrected" ? 2.2 : 1.4;
      drawn.push(svg(document, "path", { d: linePath(ends), fill: "none", stroke, "stroke-width": width, ...dash }));
    });
    for (const one of known)
      drawn.push(
        svg(document, "circle", {
          cx: x.at(100 * one.share),
          cy: y.at(one[of]),
          r: 3.3,
          fill: one.steady ? stroke : "var(--ground)",
          stroke,
          "stroke-width": 1.2,
        }),
      );
  }
  return { drawn, segments };
}

interface Room {
  readonly x: ValueScale;
  readonly y: ValueScale;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  readonly width: number;
  readonly narrow: boolean;
  readonly size: number;
}

/** Full fire is no turning down: there the finding is another. */
const words = ({ share }: FireTried): string =>
  share >= 1
    ? "full fire: no smaller one surely boils"
    : `${decimal(100 * share, 0)} %: least feeding that boils steadily`;

function labelled(
  document: Document,
  fires: readonly FireTried[],
  best: FireTried | undefined,
  { x, y, top, bottom, left, right, width, narrow, size }: Room,
  segments: readonly Segment[],
): readonly SVGElement[] {
  const last = fires.filter(({ corrected }) => corrected !== undefined).at(-1);
  const curve = (of: "corrected" | "nobody", text: string, colour: string): Label[] => {
    const value = last?.[of];
    if (!last || value === undefined) return [];
    const px = x.at(100 * last.share);
    const py = y.at(value);
    const beside = [0, 18, -18, 36].map((dy) => ({
      x: right + 14,
      y: py + dy,
      side: "level" as const,
      anchor: "start" as const,
    }));
    const inside = [26, 44, 66, -20, 90, 120, 150].flatMap((dy) =>
      [0, 0.2, 0.4].map((share) => ({
        x: px - share * (right - left),
        y: py + dy,
        side: "level" as const,
        anchor: "end" as const,
      })),
    );
    return [{ lines: [{ text, colour }], size, spots: narrow ? inside : beside }];
  };
  const shaky = fires.find(({ steady }) => !steady);
  const labels: Label[] = [
    ...curve("corrected", "with the table followed", "var(--fitted)"),
    ...curve("nobody", "nobody correcting", "var(--ink)"),
    ...(best
      ? [
          {
            lines: [{ text: words(best), weight: 600 }],
            size,
            spots: (["start", "end"] as const).flatMap((anchor) =>
              [bottom - 12, bottom - 34, bottom - 56, top + 60].map((at) => ({
                x: x.at(100 * best.share) + (anchor === "start" ? 8 : -8),
                y: at,
                side: "level" as const,
                anchor,
              })),
            ),
          },
        ]
      : []),
    ...(shaky && !narrow
      ? [
          {
            lines: [{ text: "open marks: a gust can stop the boil" }],
            size,
            spots: [top + 14, top + 34, bottom - 80, bottom - 34].map((at) => ({
              x: x.at(100 * shaky.share) - 4,
              y: at,
              side: "level" as const,
              anchor: "start" as const,
            })),
          },
        ]
      : []),
  ];
  const dropped: Segment[] = best ? [[x.at(100 * best.share), top, x.at(100 * best.share), bottom]] : [];
  return placeLabels(labels, {
    bounds: { x: left + 4, y: top, width: width - left - 8, height: bottom - top },
    boxes: [],
    segments: [...segments, ...dropped],
  }).map((one) => drawLabel(document, one));
}
