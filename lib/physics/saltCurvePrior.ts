/**
 * What is known, before a maker's own boil readings, of how a bath's boiling points depart from `boilingPoint`: an
 * offset at bath strength, K, and a scale on the curve's slope, each with its standard uncertainty. A judgement:
 * older hydroxide charts lie 1.3 to 3.5 K below the curve at bath strength, the one published boiling point of a
 * mixture 0.7 K above it, and the slope against water and hydroxide agrees within some 10 %.
 * Source: EP 1 284 309 A1 (2003) for the mixture; Gerlach's table, McCabe and Smith and Geankoplis (from memory) for
 * the charts; Dow's caustic soda physical properties.
 * @example
 * saltCurvePrior.offset.standardUncertainty; // 1.7 K: 3 °F
 */
export const saltCurvePrior = {
  offset: { value: -0.5, standardUncertainty: 1.7 },
  scale: { value: 1, standardUncertainty: 0.07 },
  pivot: 417.594,
} as const;
