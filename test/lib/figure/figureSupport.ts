import { parseHTML } from "linkedom";
import { boxesMeet } from "../../../lib/figure/placeLabels.ts";
import { textWidth } from "../../../lib/figure/textWidth.ts";
import type { Box, HoldReplayedData } from "../../../lib/figure/types.ts";

export const page = (): Document => parseHTML("<!doctype html><html><body></body></html>").document;

export const fahrenheit = (value: number): number => (value - 32) / 1.8 + 273.15;

/** A fluid ounce of water, kg: 29.5735295625 ml (NIST SP 811) at 998.2 kg/m³. */
export const fluidOunce = 0.0295735295625 * 0.9982;

/** Text in a figure with the box it is estimated to take. */
export function textBoxes(root: Element): readonly { readonly text: string; readonly box: Box }[] {
  return [...root.querySelectorAll("text")].map((element) => {
    const size = Number(element.getAttribute("font-size"));
    const text = element.textContent ?? "";
    const width = textWidth(text, size, Number(element.getAttribute("font-weight") ?? 400));
    const anchor = element.getAttribute("text-anchor") ?? "start";
    const x = Number(element.getAttribute("x")) - (anchor === "end" ? width : anchor === "middle" ? width / 2 : 0);
    return { text, box: { x, y: Number(element.getAttribute("y")) - size * 0.75, width, height: size * 0.78 } };
  });
}

/** Pairs of texts that lie on each other. */
export function overlaps(root: Element): readonly string[] {
  const boxes = textBoxes(root);
  return boxes.flatMap((one, index) =>
    boxes
      .slice(0, index)
      .filter((other) => boxesMeet(one.box, other.box, -1))
      .map((other) => `${one.text} / ${other.text}`),
  );
}

/** Texts that leave the figure. */
export function clipped(root: Element): readonly string[] {
  const [, , width = 0, height = 0] = (root.getAttribute("viewBox") ?? "").split(" ").map(Number);
  return textBoxes(root)
    .filter(
      ({ box }) => box.x < -0.5 || box.y < -0.5 || box.x + box.width > width + 0.5 || box.y + box.height > height + 0.5,
    )
    .map(({ text }) => text);
}

/** Attributes that hold what no number may be. */
export function badAttributes(root: Element): readonly string[] {
  return [root, ...root.querySelectorAll("*")].flatMap((element) =>
    [...element.attributes]
      .filter((attribute) => /NaN|Infinity|undefined|null/.test(attribute.value))
      .map((attribute) => `${element.tagName} ${attribute.name}=${attribute.value}`),
  );
}

export const words = (root: Element): readonly string[] => textBoxes(root).map(({ text }) => text);

/** An invented hold: 33 rows, one struck out, six pours, two words of fire. */
export function inventedHold(): HoldReplayedData {
  const pours: readonly (readonly [number, number])[] = [
    [700, 20],
    [1080, 20],
    [1400, 20],
    [1760, 20],
    [2500, 36],
    [2860, 14],
  ];
  const at = (time: number): number => {
    const rising = time < 180 ? 276 + (time / 180) * 9 : 285 + ((time - 180) / 60) * 0.65;
    const cooled = pours.map(([when, amount]) =>
      time > when ? amount * 0.19 * (1 - Math.exp((when - time) / 30)) : 0,
    );
    return rising - cooled.reduce((sum, one) => sum + one, 0);
  };
  const rows = Array.from({ length: 32 }, (_, index) => ({
    id: `r${index}`,
    time: index * 100,
    temperature: fahrenheit(Math.round(at(index * 100))),
    struck: false,
  }));
  return {
    readings: [
      ...rows,
      { id: "x", time: 1428, temperature: fahrenheit(279), struck: true, reason: "probe out of the bath" },
    ],
    target: { low: fahrenheit(286), high: fahrenheit(292) },
    hold: { start: 660, end: 3060 },
    partsIn: 660,
    partsOut: 3060,
    additions: pours.map(([time, amount]) => ({ time, mass: amount * fluidOunce })),
    events: [
      { time: 0, text: "full" },
      { time: 1740, text: "down to ¾" },
    ],
    course: Array.from({ length: 160 }, (_, index) => {
      const value = fahrenheit(at(index * 20));
      return { time: index * 20, value, low: value - 0.4, high: value + 0.4 };
    }),
    inBand: [
      { start: 660, end: 2160, side: "inside" },
      { start: 2160, end: 2520, side: "over" },
      { start: 2520, end: 3060, side: "inside" },
    ],
  };
}
