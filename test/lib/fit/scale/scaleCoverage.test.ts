import { expect, test } from "vitest";
import { plainProportion, type ScaledAnswer, scaleSetup } from "../../../../lib/fit/scale/index.ts";
import { half, holds, type Judged, judged, judgedByLog, median, options, percent, shareOf } from "./judgeTanks.ts";

// 500 pairs of an old tank and a longer one that nothing was tuned on. Their fire is smoke marched along a floor, their
// losses another law than the library's, their regulator another droop: yet they are ours, a figure of regression and
// honesty, no proof of the physics. 40 of them carry a whole log of the old tank, read and fitted; for the others a boil-off
// known to 5 % stands in.
const first = 60_001;
const all: Judged[] = [];
for (let i = 0; i < 460; i++) {
  all.push(judged(first + i));
  // A worker that never pauses looks dead to its parent.
  if (i % 20 === 0) await new Promise((resolve) => setImmediate(resolve));
}
for (let i = 0; i < 40; i++) all.push(judgedByLog(first + 1000 + i));

const names = ["boilOff", "heatUp", "gas", "timeTo10Below"] as const;
for (const name of names) {
  const held = shareOf(all, ({ said, tanks }) => holds(said[name], tanks.truth[name]));
  test(`scaleSetup(...): the 95 % interval of ${name} holds the truth in ${percent(held)} of ${all.length} invented tanks`, () => {
    expect(held).toBeGreaterThanOrEqual(0.9);
    expect(held).toBeLessThanOrEqual(0.98);
  });
}

const logged = all.slice(460);
const loggedHeld = shareOf(logged, ({ said, tanks }) => holds(said.boilOff, tanks.truth.boilOff));
const loggedHalf = median(logged.map(({ said }) => half(said.boilOff)));

test(`scaleSetup(fitRun(...), ...): of the ${logged.length} with a whole log of the old tank it holds in ${percent(loggedHeld)}, with a median half-width of ${percent(loggedHalf)}`, () => {
  expect(loggedHeld).toBeGreaterThanOrEqual(0.85);
});

const near = all.filter(({ served }) => served >= 0.6 && served <= 1.6);
const nearHalf = median(near.map(({ said }) => half(said.boilOff)));
const nearHeld = shareOf(near, ({ said, tanks }) => holds(said.boilOff, tanks.truth.boilOff));
const wholeHalf = median(all.map(({ said }) => half(said.boilOff)));

test(`scaleSetup(...): where each burner serves 0.6 to 1.6 times the length it served, the boil-off's median half-width is ${percent(nearHalf)} and holds the truth in ${percent(nearHeld)} of ${near.length}`, () => {
  expect(nearHalf).toBeLessThanOrEqual(0.25);
  expect(nearHeld).toBeGreaterThanOrEqual(0.9);
});

test(`scaleSetup(...): over 1.25 to 3 times the length with one to four burners it is ${percent(wholeHalf)}`, () => {
  expect(wholeHalf).toBeLessThanOrEqual(0.3);
});

// What plain proportion would have said of the same tanks; the model's own error beside it.
const off = (said: number, truth: number) => Math.abs(said / truth - 1);
const lean = { ...options, draws: 50 };
const shares = all.slice(0, 150).map(({ fit, tanks, said }) => {
  const { byLength, byGas } = plainProportion(fit, tanks.from, tanks.to, lean);
  const truth = tanks.truth.boilOff;
  return [said.boilOff.value, byLength.boilOff, byGas.boilOff].map((one) => off(one, truth)) as [
    number,
    number,
    number,
  ];
});
const [model, length, gas] = [0, 1, 2].map((i) => median(shares.map((one) => one[i] as number))) as [
  number,
  number,
  number,
];

test(`plainProportion(...): to length it is off by ${percent(length)} in the median, to gas by ${percent(gas)}, physics by ${percent(model)}`, () => {
  expect(length).toBeGreaterThan(2 * model);
  expect(gas).toBeGreaterThan(model);
});

interface Watered {
  readonly ten: ScaledAnswer;
  readonly hour: ScaledAnswer;
  readonly hourGas: ScaledAnswer;
  readonly truth: { readonly boilOff: number; readonly gas: number };
}
const watered = all.slice(0, 120).map(({ fit, tanks }): Watered => {
  const { from, to, plainWater, halfHour } = tanks;
  const more = (plainWaterLog: Parameters<typeof scaleSetup>[3]["plainWaterLog"]) =>
    scaleSetup(fit, from, to, { ...options, draws: 200, ...(plainWaterLog ? { plainWaterLog } : {}) });
  const hour = more({
    ...plainWater,
    boiledOff: { mass: halfHour.boiled, duration: 1800 },
    cylinder: { lost: { value: halfHour.gas, standardUncertainty: 0.015 }, duration: 1800 },
  });
  return { ten: more(plainWater).boilOff, hour: hour.boilOff, hourGas: hour.gas, truth: tanks.truth };
});
const tenHalf = median(watered.map(({ ten }) => half(ten)));
const tenHeld = shareOf(watered, ({ ten, truth }) => holds(ten, truth.boilOff));
const hourHalf = median(watered.map(({ hour }) => half(hour)));
const hourHeld = shareOf(watered, ({ hour, truth }) => holds(hour, truth.boilOff));
const gasHalf = median(watered.map(({ hourGas }) => half(hourGas)));
const gasHeld = shareOf(watered, ({ hourGas, truth }) => holds(hourGas, truth.gas));

test(`scaleSetup(..., { plainWaterLog }): after ten minutes of plain water the boil-off's median half-width is ${percent(tenHalf)}, and holds in ${percent(tenHeld)} of ${watered.length}`, () => {
  expect(tenHalf).toBeLessThanOrEqual(0.16);
  expect(tenHeld).toBeGreaterThanOrEqual(0.9);
});

test(`scaleSetup(..., { plainWaterLog }): after half an hour's boil with the cylinder weighed it is ${percent(hourHalf)} (holds in ${percent(hourHeld)}), the gas's ${percent(gasHalf)} (in ${percent(gasHeld)})`, () => {
  expect(hourHalf).toBeLessThan(tenHalf);
  expect(hourHeld).toBeGreaterThanOrEqual(0.88);
  expect(gasHalf).toBeLessThanOrEqual(0.08);
  expect(gasHeld).toBeGreaterThanOrEqual(0.9);
});
