import { expect, test } from "vitest";
import { nitrateMolality } from "../../lib/physics/nitrateMolality.ts";
import { nitriteMolality } from "../../lib/physics/saltMolality.ts";

/** Water activity at 25 °C by Pitzer's equation, from the parameters of Pitzer and Mayorga, J. Phys. Chem. 77 (1973) 2300. */
function pitzer(m: number, beta0: number, beta1: number, cPhi: number): number {
  const root = Math.sqrt(m);
  const osmotic = 1 - (0.3915 * root) / (1 + 1.2 * root) + m * (beta0 + beta1 * Math.exp(-2 * root)) + m * m * cPhi;
  return Math.exp(-2 * 0.0180153 * m * osmotic);
}

test.each([1, 2, 3, 4, 5, 6])(
  "nitrateMolality finds %f mol/kg from Pitzer and Mayorga's activity within 2.5 percent",
  (m) => {
    expect(Math.abs(nitrateMolality(pitzer(m, 0.0068, 0.1783, -0.00072)) / m - 1)).toBeLessThan(0.025);
  },
);

test.each([2, 3, 4, 5, 6])(
  "nitriteMolality finds %f mol/kg from Pitzer and Mayorga's activity within 5 percent",
  (m) => {
    expect(Math.abs(nitriteMolality(pitzer(m, 0.0641, 0.1015, -0.0049)) / m - 1)).toBeLessThan(0.05);
  },
);

// Relative humidity over saturated sodium nitrate, %: Greenspan, J. Res. NBS 81A (1977) 89 (from memory), at the
// solubility of a handbook table (read), g per 100 g. The molality must lie between those of 1 % of humidity either way.
test.each([
  [10, 77.5, 79.9],
  [20, 75.4, 87.6],
  [25, 74.3, 91.6],
  [30, 73.1, 96.1],
  [40, 71.0, 104.9],
])(
  "nitrateMolality of the saturated solution at %f °C, humidity %f percent (%f g per 100 g, Greenspan 1977)",
  (_t, humidity, grams) => {
    const saturated = (grams * 10) / 84.994;
    expect(nitrateMolality((humidity + 1) / 100)).toBeLessThan(saturated);
    expect(nitrateMolality((humidity - 1) / 100)).toBeGreaterThan(saturated);
  },
);

// CRC Handbook, section 6, Apelblat and Korin (1998) (read): 2.335 kPa over saturated sodium nitrate at 25 °C, water 3.169.
test("nitrateMolality of the saturated solution at 25 °C from its vapour pressure in the CRC Handbook", () => {
  expect(Math.abs(nitrateMolality(2.335 / 3.169) / (916 / 84.994) - 1)).toBeLessThan(0.02);
});

// Winston and Bates, Ecology 41 (1960) 232 (from memory): 65 % over saturated sodium nitrite at 25 °C; solubility
// 85.5 g per 100 g (Khimicheskaya Entsiklopediya, read). It set the factor there: a check of the arithmetic only.
test("nitriteMolality of the saturated solution at 25 °C from its humidity", () => {
  expect(Math.abs(nitriteMolality(0.65) / (855 / 68.995) - 1)).toBeLessThan(0.02);
});
