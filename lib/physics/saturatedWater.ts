/** Coefficients of water on its saturation line (IAPWS SR1-86(1992); Wagner and Pruss, J. Phys. Chem. Ref. Data 22 (1993) 783). */
export const criticalTemperature = 647.096;
export const criticalPressure = 22.064e6;
export const criticalDensity = 322;

const a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502] as const;

/** dp/dT of the saturation line, Pa/K, from the same release's pressure equation. */
export function saturationSlope(T: number): number {
  const theta = T / criticalTemperature;
  const t = 1 - theta;
  const root = Math.sqrt(t);
  const t3 = t * t * t;
  const sum = a[0] * t + a[1] * t * root + a[2] * t3 + a[3] * t3 * root + a[4] * t3 * t + a[5] * t3 * t3 * t * root;
  const slope =
    a[0] +
    1.5 * a[1] * root +
    3 * a[2] * t * t +
    3.5 * a[3] * t * t * root +
    4 * a[4] * t3 +
    7.5 * a[5] * t3 * t3 * root;
  const p = criticalPressure * Math.exp(sum / theta);
  return -(p / T) * (sum / theta + slope);
}
