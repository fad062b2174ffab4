import { expect, test } from "vitest";
import { waterBalance } from "../../../lib/bath/index.ts";
import { boilingPoint } from "../../../lib/physics/index.ts";
import { reading } from "./logs.ts";

const salts = { sodiumHydroxide: 9.07, sodiumNitrate: 3.86 };
const pressure = 93_000;
const total = salts.sodiumHydroxide + salts.sodiumNitrate;

/** kg of salt a kg of water at which the curve boils at T, found by halving. */
function ratioAt(T: number): number {
  let [low, high] = [0.3, 4];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    const water = total / middle;
    const at = boilingPoint(
      { sodiumHydroxide: salts.sodiumHydroxide / water, sodiumNitrate: salts.sodiumNitrate / water },
      pressure,
    );
    if (at < T) low = middle;
    else high = middle;
  }
  return low;
}

test.each([
  [240, 300, 0.015],
  [330, 300, 0.015],
  [330, 300, 0.02],
  [330, 300, 0.05],
  [333, 60, 0.015],
  [333, 60, 0.05],
  [20_000 / 60, 1, 0.02],
  [100_000 / 60, 1, 0.015],
])(
  "waterBalance(run, givens) follows a hold of %d min, a row each %d s, drifting %d °F/min",
  (minutes, each, slope) => {
    const T = (min: number) => (286 + slope * min + 0.3 * Math.sin(7.3 * min) + 459.67) / 1.8;
    const entries = Array.from({ length: Math.floor((minutes * 60) / each) + 1 }, (_, i) =>
      reading(i * each, T((i * each) / 60)),
    );
    const answer = waterBalance(
      { entries },
      { salts, pressure, target: 416, band: 1.67, thermometer: { standardUncertainty: 1.27 } },
    );
    const own = ratioAt((286 + slope * minutes + 459.67) / 1.8);
    expect(Math.abs(answer.ratioEnd.value / own - 1)).toBeLessThan(0.05);
    expect(answer.boilOff.interval95[1]).toBeGreaterThan(answer.boilOff.interval95[0]);
    expect(answer.boilOff.interval95[0]).toBeGreaterThan(0);
    expect(answer.misread.length).toBeLessThan(answer.points.length / 2);
  },
);
