import fc from "fast-check";
import { exact, measuredValue } from "../../../lib/measure/measuredValue.ts";
import type { Dimension, Value } from "../../../lib/measure/types.ts";
import { fluidOunce } from "./figureSupport.ts";

const flow: Dimension = { mass: 1, time: -1 };

/** fl oz/min with its standard uncertainty, from a source of its own. */
export const boilOff = (value: number, uncertainty: number, source: string): Value =>
  measuredValue((value * fluidOunce) / 60, (uncertainty * fluidOunce) / 60, flow, source);

/** A plain number with its standard uncertainty. */
export const plain = (value: number, uncertainty: number, source = "a"): Value =>
  measuredValue(value, uncertainty, {}, source);

/** A value whose spread has no end. */
export const endless = (value: number): Value =>
  measuredValue(value, 1, {}, "endless", [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]);

export const longName = "Second-hand tank, two jets, the lower row";

/** Values of every size and sign, exact ones, wide ones and endless ones. */
export const anyValue: fc.Arbitrary<Value> = fc.oneof(
  fc
    .tuple(fc.double({ min: -1e7, max: 1e7, noNaN: true }), fc.double({ min: 0, max: 1e5, noNaN: true }))
    .map(([value, uncertainty]) => plain(value, uncertainty)),
  fc.double({ min: -1e-6, max: 1e-6, noNaN: true }).map((value) => exact(value)),
  fc.integer({ min: -3, max: 3 }).map(endless),
);

export const anyName: fc.Arbitrary<string> = fc.oneof(fc.string({ maxLength: 40 }), fc.constant("W".repeat(40)));

/** Takes the words of names out of attributes, so that a name like "NaN" is not taken for a fault. */
export function withoutWords(root: Element): Element {
  for (const element of [root, ...root.querySelectorAll("*")]) {
    element.removeAttribute("aria-label");
    element.removeAttribute("data-label");
  }
  return root;
}

/** Elements of a figure that a selector finds. */
export const all = (root: Element, selector: string) => [...root.querySelectorAll(selector)];

/** The numbers of a path. */
export const numbersOf = (element: Element | undefined): readonly number[] =>
  (element?.getAttribute("d")?.match(/-?[\d.]+/g) ?? []).map(Number);

/** Reads a rule's figures and gives where on it, px, a value lies. */
export const ruleAt = (root: Element, side: "left" | "below") => {
  const figures = all(root, `[data-rule="${side}"] text`).map((text) => ({
    value: Number(text.textContent),
    at: side === "below" ? Number(text.getAttribute("x")) : Number(text.getAttribute("y")) - 14 * 0.35,
  }));
  const [first, last] = [figures[0], figures.at(-1)];
  if (!first || !last) throw new Error("no figures on the rule");
  return (value: number) => first.at + ((value - first.value) / (last.value - first.value)) * (last.at - first.at);
};
