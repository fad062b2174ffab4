import type { HoldFrame } from "./holdFrame.ts";
import type { Label, LabelLine, Spot } from "./placeLabels.ts";
import { spreadText } from "./spread.ts";
import { svg } from "./svg.ts";
import type { Box, UnwrittenPour } from "./types.ts";
import { decimal } from "./words.ts";

/**
 * A probability as a maker reads it, 0..1. Throws a RangeError outside that.
 * @example likelihood(0.853) // "85 % likely"
 */
export function likelihood(probability: number): string {
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`invalid probability: ${probability}; 0 to 1`);
  if (probability > 0.99) return "over 99 % likely";
  if (probability < 0.01) return "under 1 % likely";
  return `${decimal(probability * 100)} % likely`;
}

/** How much was poured and not written, with its spread where that is known: "4 ±2 fl oz". */
export function unwrittenAmount(one: UnwrittenPour, { units }: Pick<HoldFrame, "units">): string {
  const { water, system } = units;
  const { mass: value, low = value, high = value } = one;
  if (high > low && low <= value && value <= high)
    return spreadText({ value, low, high }, { mass: 1 }, water.name, system);
  return plainAmount(one, { units });
}

const plainAmount = (one: UnwrittenPour, { units }: Pick<HoldFrame, "units">): string => {
  const amount = units.water.fromSI(one.mass);
  return `${decimal(amount, amount >= 10 ? 0 : 1, units.system)} ${units.water.name}`;
};

/** A pour that nobody wrote: hollow, in a broken line, as a drawing shows what is not there to be seen. */
export const drawUnwrittenBar = (document: Document, one: UnwrittenPour, box: Box): SVGElement =>
  svg(document, "rect", {
    ...box,
    height: Math.max(box.height, 5),
    fill: "none",
    stroke: "var(--ink)",
    "stroke-width": 1.2,
    "stroke-dasharray": "3 2",
    "data-mark": "unwritten",
    "data-likely": likelihood(one.probability),
  });

/** Words for each hollow bar, beside it or on the line below the water, with a leader; likeliest first. */
export function unwrittenLabels(
  hollow: readonly { readonly one: UnwrittenPour; readonly box: Box }[],
  frame: HoldFrame,
): readonly Label[] {
  const { size } = frame;
  return [...hollow]
    .sort((a, b) => b.one.probability - a.one.probability)
    .map(({ one, box }) => {
      const plain = `${plainAmount(one, frame)}?`;
      const whole = `${unwrittenAmount(one, frame)}?`;
      const choices: readonly (readonly LabelLine[])[] = frame.narrow
        ? [[{ text: `${plain} not written` }], [{ text: plain }, { text: "not written" }]]
        : [[{ text: `${whole} not written, ${likelihood(one.probability)}` }], [{ text: `${plain} not written` }]];
      const middle = box.x + box.width / 2;
      const foot = box.y + Math.max(box.height, 5);
      const line = frame.waterTop + frame.waterDepth + 8;
      const beside: readonly Omit<Spot, "lines">[] = [
        { x: box.x + box.width + 4, y: frame.waterTop + size / 2 + 4, side: "level", anchor: "start" },
        { x: box.x - 4, y: frame.waterTop + size / 2 + 4, side: "level", anchor: "end" },
      ];
      const shifts = [0, -24, 24, -48, 48, -80, 80, -120, 120];
      const below = shifts.flatMap((dx) =>
        (["middle", "start", "end"] as const).map(
          (anchor): Omit<Spot, "lines"> => ({
            x: middle + dx,
            y: line,
            side: "below",
            anchor,
            leader: [
              [middle, foot + 2],
              [middle, line - 6],
              [middle + (Math.abs(dx) > 24 ? dx : 0), line - 2],
            ],
          }),
        ),
      );
      return {
        lines: choices[0] ?? [],
        size,
        spots: choices.flatMap((lines) => [...beside, ...below].map((spot) => ({ ...spot, lines }))),
      };
    });
}
