import { cylinderVaporisation } from "../../physics/cylinderVaporisation.ts";
import type { ScaledAnswer } from "./types.ts";

const pound = 0.45359237;
/** Ours, an upright cylinder: m across for so many kg of propane when full, and kg/m³ of the liquid. */
const across = (size: number) => 0.305 * (size / (20 * pound)) ** 0.12;
const density = 506.9;

/** The table's ends, kg and K; its heat falls to nothing at -44 °F, and is taken to fall to nothing with the last gas. */
const ends = { least: 4.53, most: 45.36, coldest: 255.37, warmest: 294.27, nothing: (-44 + 459.67) / 1.8 };

/** m² of wall, floor included, that the liquid wets. */
function wetted(size: number, contents: number): number {
  const width = across(size);
  const floor = (Math.PI / 4) * width ** 2;
  return floor + (Math.PI * width * contents) / density / floor;
}

/**
 * Heat of the gas that a cylinder gives off without end, as full as it is, in air of a temperature.
 *
 * @param cylinder kg of propane when full, and now
 * @param air K; the published table reaches from 255.4 to 294.3: warmer air is taken to help no more, colder to help less
 * @returns W gross; `published` is false for any cylinder but that of 100 lb: there it is the published one's heat for
 * each m² of wetted wall, half of it more or less (95 %), and no maker of cylinders stands behind it
 * Source: `cylinderVaporisation`; the rest is our own reckoning.
 * @example
 * cylinderGives({ size: 45.359, contents: 22.68 }, 288.706).value // 44818
 * cylinderGives({ size: 9.072, contents: 9.072 }, 288.706).published // false
 */
export function cylinderGives(
  { size, contents }: { readonly size: number; readonly contents: number },
  air: number,
): ScaledAnswer & { readonly published: boolean } {
  const temperature = Math.min(ends.warmest, Math.max(ends.coldest, air));
  const cold = Math.min(1, Math.max(0, (air - ends.nothing) / (ends.coldest - ends.nothing)));
  const big = 100 * pound;
  const published = Math.abs(size / big - 1) <= 0.01;
  const held = published ? contents : (contents / size) * big;
  const inTable = Math.min(ends.most, Math.max(ends.least, held));
  const left = cold * Math.min(1, held / ends.least);
  const value = left * cylinderVaporisation({ size: big, contents: inTable, temperature });
  const here = published ? value : (value * wetted(size, contents)) / wetted(big, inTable);
  const u = published ? 0.05 : 0.25;
  return {
    value: here,
    standardUncertainty: u * here,
    interval95: [here * (1 - 1.96 * u), here * (1 + 1.96 * u)],
    published,
  };
}
