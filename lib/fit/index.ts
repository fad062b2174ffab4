export type { LeastSquaresFit, LeastSquaresProblem, Loss, Numbers, Prior, Reason } from "./leastSquares/types.ts";
export { leastSquares } from "./leastSquares.ts";
export * from "./plan/index.ts";
export { fitRun } from "./run/fitRun.ts";
export type {
  FitBurner,
  FitGivens,
  FittedMoment,
  FittedParameter,
  FittedRun,
  HeatWent,
  LogNext,
  ParameterName,
  PatternName,
  ProbablyMisread,
  ProbablyUnwritten,
  Told,
} from "./run/types.ts";
export * from "./scale/index.ts";
