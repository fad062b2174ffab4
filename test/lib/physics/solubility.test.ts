import { expect, test } from "vitest";
import { solubility } from "../../../lib/physics/solubility.ts";
import { salts } from "../../../lib/physics/types.ts";

test.each(salts)("solubility of %s rises with the temperature", (salt) => {
  let before = 0;
  for (let t = 0; t <= 100; t += 2.5) {
    const found = solubility({ [salt]: 1 }, t + 273.15);
    if (found.state === "unknown") throw new Error(found.because);
    expect(found.ratio).toBeGreaterThan(before);
    before = found.ratio;
  }
});

test.each([
  [{ sodiumHydroxide: 2, sodiumNitrate: 1 }, 300, "together"],
  [{ sodiumNitrate: 1 }, 420, "0 to 100 °C"],
  [{ sodiumNitrate: 1 }, 270, "0 to 100 °C"],
  [{}, 300, "no salt"],
])("solubility(%j, %f) is unknown and says why", (brine, T, because) => {
  const found = solubility(brine, T);
  expect(found.state === "unknown" && found.because).toContain(because);
});

test("solubility refuses what is no temperature", () => {
  expect(() => solubility({ sodiumNitrate: 1 }, Number.NaN)).toThrow("invalid temperature: NaN K; a finite number");
});
