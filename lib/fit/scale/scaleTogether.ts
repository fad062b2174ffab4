import { drawsOf } from "./drawsOf.ts";
import { measurementsOf } from "./oneMeasurement.ts";
import { proportionOf } from "./plainProportion.ts";
import { type DrawnAnswer, scaledOf, valuesOf } from "./scaledOf.ts";
import { type Sources, sourcesOf } from "./sourcesOf.ts";
import type { FitToScale, MeasurementWorth, Proportion, ScaledSetup, ScaleOptions, ScaleSetup } from "./types.ts";

/** All that is to be said of one new tank. */
export interface ScaledTogether {
  readonly scaled: ScaledSetup;
  /** What the width of each answer comes from; empty for one that has no upper end. */
  readonly sources: Readonly<Record<DrawnAnswer, Sources>>;
  /** Measurements that would narrow it, best first. */
  readonly measurements: readonly MeasurementWorth[];
  /** Absent without a fit: proportion starts from one. */
  readonly proportion?: { readonly byLength: Proportion; readonly byGas: Proportion };
}

/**
 * `scaleSetup`, `oneMeasurement` and `plainProportion` from the same draws, and what each width comes from.
 *
 * @param fit of the old setup, or undefined
 * @param from the old setup
 * @param to the new one
 * @param options as for `scaleSetup`
 * @throws RangeError as `scaleSetup`
 * Source: as there.
 * @example
 * const burners = { count: 1, jetDiameter: 0.0017018, pressure: 34_474 };
 * const old = { tank: { length: 0.61, width: 0.152, depth: 0.2, liquidDepth: 0.127 }, burners };
 * const fit = { boilOff: { value: 3.3e-3, standardUncertainty: 1.7e-4 } };
 * const { scaled, sources } = scaleTogether(fit, old, old, { pressure: 101_325, draws: 200 });
 * const width = Math.hypot(...sources.boilOff.values());
 * Math.abs(width / scaled.boilOff.standardUncertainty - 1) < 1e-3 // true
 */
export function scaleTogether(
  fit: FitToScale | undefined,
  from: ScaleSetup,
  to: ScaleSetup,
  options: ScaleOptions,
): ScaledTogether {
  const drawn = drawsOf(fit, from, to, options);
  const values = valuesOf(drawn);
  const split = sourcesOf(drawn);
  return {
    scaled: scaledOf(drawn, options, values),
    sources: {
      boilOff: split(values.boilOff),
      heatUp: split(values.heatUp),
      timeTo10Below: split(values.timeTo10Below),
      gas: split(values.gas),
      gasToBoil: split(values.gasToBoil),
      cylinderDraw: split(values.cylinderDraw),
      driftUnfed: split(values.driftUnfed),
      heatIntoBath: split(values.heatIntoBath),
      share: split(values.share),
      losses: split(values.losses),
    },
    measurements: measurementsOf(drawn),
    ...(fit ? { proportion: proportionOf(fit, drawn) } : {}),
  };
}
