import { cylinderVaporisation } from "../../physics/cylinderVaporisation.ts";
import type { ScaledAnswer } from "./types.ts";

const pound = 0.45359237;
/** Ours, an upright cylinder: m across for so many kg of propane when full, and kg/m³ of the liquid. */
const across = (size: number) => 0.305 * (size / (20 * pound)) ** 0.12;
const density = 506.9;

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
 * @param air K; 255.4 to 294.3 are in the published table, beyond it its ends are taken
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
  const temperature = Math.min(294.27, Math.max(255.37, air));
  const big = 100 * pound;
  const published = Math.abs(size / big - 1) <= 0.01;
  const held = published ? contents : (contents / size) * big;
  const inTable = Math.min(45.36, Math.max(4.53, held));
  const value = cylinderVaporisation({ size: big, contents: inTable, temperature });
  const here = published ? value : (value * wetted(size, contents)) / wetted(big, inTable);
  const u = published ? 0.05 : 0.25;
  return {
    value: here,
    standardUncertainty: u * here,
    interval95: [here * (1 - 1.96 * u), here * (1 + 1.96 * u)],
    published,
  };
}
