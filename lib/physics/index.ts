export { altitudeDerate } from "./altitudeDerate.ts";
export { barometerToPressure } from "./barometerToPressure.ts";
export { boilingPoint } from "./boilingPoint.ts";
export { boilingPointSlope } from "./boilingPointSlope.ts";
export { brineDensity } from "./brineDensity.ts";
export { brineEnthalpy } from "./brineEnthalpy.ts";
export { brineHeatCapacity } from "./brineHeatCapacity.ts";
export { brineVapourPressure } from "./brineVapourPressure.ts";
export { burnerEfficiencyPrior } from "./burnerEfficiencyPrior.ts";
export { burnerPower, type GasFlow } from "./burnerPower.ts";
export {
  airGasConstant,
  atmosphere,
  molarMass,
  standardGravity,
  waterGasConstant,
  waterMolarMass,
  zeroCelsius,
} from "./constants.ts";
export { cylinderVaporisation, type GasCylinder } from "./cylinderVaporisation.ts";
export { departedBoilingPoint, departedSaltRatio } from "./departedBoilingPoint.ts";
export type { Estimate, HeatingBasis } from "./estimate.ts";
export { evaporationHeat } from "./evaporationHeat.ts";
export { heatOfCylinderWeight } from "./heatOfCylinderWeight.ts";
export { type HighPressureJet, jetFlowHighPressure } from "./jetFlowHighPressure.ts";
export { jetFlowLowPressure, type LowPressureJet } from "./jetFlowLowPressure.ts";
export { propane } from "./propane.ts";
export { propaneVapourPressure } from "./propaneVapourPressure.ts";
export { saltCurvePrior } from "./saltCurvePrior.ts";
export { saltRatio } from "./saltRatio.ts";
export { saturationPressure } from "./saturationPressure.ts";
export { saturationTemperature } from "./saturationTemperature.ts";
export { solubility } from "./solubility.ts";
export { standardAltitude } from "./standardAltitude.ts";
export { standardPressure } from "./standardPressure.ts";
export { steamEnthalpy } from "./steamEnthalpy.ts";
export { steelHeat } from "./steelHeat.ts";
export { type SurfaceLoss, type SurfaceLossGivens, surfaceLoss } from "./surfaceLoss.ts";
export { thermometerOffset } from "./thermometerOffset.ts";
export { thermometerKinds, thermometerTolerance } from "./thermometerTolerance.ts";
export type {
  Brine,
  CurveDeparture,
  Salt,
  Solubility,
  ThermometerCheck,
  ThermometerKind,
  ThermometerOffset,
  ThermometerTolerance,
} from "./types.ts";
export { salts } from "./types.ts";
export { type WallLossGivens, wallLoss } from "./wallLoss.ts";
export { waterDensity } from "./waterDensity.ts";
export { waterEnthalpy } from "./waterEnthalpy.ts";
export { waterInBrineEnthalpy } from "./waterInBrineEnthalpy.ts";
