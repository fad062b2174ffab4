export { barometerToPressure } from "./barometerToPressure.ts";
export { boilingPoint } from "./boilingPoint.ts";
export { boilingPointSlope } from "./boilingPointSlope.ts";
export {
  airGasConstant,
  atmosphere,
  molarMass,
  standardGravity,
  waterGasConstant,
  waterMolarMass,
  zeroCelsius,
} from "./constants.ts";
export { saltRatio } from "./saltRatio.ts";
export { saturationPressure } from "./saturationPressure.ts";
export { saturationTemperature } from "./saturationTemperature.ts";
export { standardAltitude } from "./standardAltitude.ts";
export { standardPressure } from "./standardPressure.ts";
export type { Brine, Salt } from "./types.ts";
export { salts } from "./types.ts";
