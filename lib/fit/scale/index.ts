export { boilOffAt } from "./boilOffAt.ts";
export { oneMeasurement } from "./oneMeasurement.ts";
export { plainProportion } from "./plainProportion.ts";
export { scaleSetup } from "./scaleSetup.ts";
export { type ScaledTogether, scaleTogether } from "./scaleTogether.ts";
export { stallLength } from "./stallLength.ts";
export type {
  FitToScale,
  MeasurementWorth,
  PlainWaterLog,
  Proportion,
  ScaleBurners,
  ScaledAnswer,
  ScaledSetup,
  ScaleOptions,
  ScaleSetup,
  ScaleTank,
} from "./types.ts";
