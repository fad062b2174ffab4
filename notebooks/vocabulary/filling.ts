import { remembered } from "../../lib/bath/remembered.ts";
import { bathToFill, type SaltsKnown, type WaterHeatUp, waterHeatUp } from "../../lib/index.ts";
import type { Func, Taken } from "../../lib/lines/index.ts";
import { exact, measuredValue } from "../../lib/measure/index.ts";
import { type Brine, salts as kinds, saltCurvePrior } from "../../lib/physics/index.ts";
import { brineOf, sharesSaid, sharesTaken } from "./salts.ts";

/** Middle of what a label says, kg of each salt on one scale; hydroxide 2 to nitrate 1 where only the depth was seen. */
function brineKnown(salts: SaltsKnown): Brine {
  const weighed = Object.fromEntries(
    kinds.flatMap((kind) => {
      const given = salts[kind];
      const kg = typeof given === "object" ? given.value : (given ?? 0);
      return kg > 0 ? [[kind, kg] as const] : [];
    }),
  );
  const mix = salts.readyMix;
  const shares = kinds.flatMap((kind) => {
    const [low, high] = mix?.shares?.[kind] ?? [0, 0];
    return high > 0 ? [[kind, (low + high) / 2] as const] : [];
  });
  const sum = shares.reduce((all, [, one]) => all + one, 0);
  const kg = mix ? (typeof mix.mass === "object" ? mix.mass.value : mix.mass) : 0;
  const mixed = sum > 0 ? shares.map(([kind, one]) => [kind, (one / sum) * kg] as const) : [];
  const all: Record<string, number> = { ...weighed };
  for (const [kind, more] of mixed) all[kind] = (all[kind] ?? 0) + more;
  const known = Object.values(all).some((one) => one > 0);
  return known ? all : { sodiumHydroxide: 2, sodiumNitrate: 1 };
}

function saltShares(salts: unknown): ReadonlyMap<string, unknown> {
  const brine = brineKnown(salts as SaltsKnown);
  const all = kinds.reduce((sum, kind) => sum + (brine[kind] ?? 0), 0);
  const share = (kind: (typeof kinds)[number]) => exact((brine[kind] ?? 0) / all, {});
  return new Map<string, unknown>([
    ["hydroxide", share("sodiumHydroxide")],
    ["nitrate", share("sodiumNitrate")],
    ["nitrite", share("sodiumNitrite")],
    ["potassium", share("potassiumNitrate")],
    ["brine", brine],
  ]);
}

/** What is believed of a bath and its fire where nobody logged one. */
function handbookBath(): ReadonlyMap<string, unknown> {
  const { offset, scale } = saltCurvePrior;
  return new Map<string, unknown>([
    [
      "boiling point offset",
      measuredValue(offset.value, offset.standardUncertainty, { temperature: 1 }, "boiling curve"),
    ],
    [
      "boiling curve scale",
      measuredValue(scale.value, scale.standardUncertainty, {}, "steepness of the boiling curve"),
    ],
    ["whole fit", "handbook"],
  ]);
}

const fillTaken: readonly Taken[] = [
  { name: "volume", kind: "volume" },
  { name: "target", kind: "temperature" },
  { name: "air pressure", kind: "pressure" },
  { name: "boiling point offset", kind: "temperature difference" },
  { name: "boiling curve scale", kind: "number" },
  ...sharesTaken,
];
const fillSaid = `For a bath that boils at its target here, by its own boiling curve. Counted hot: cold it stands lower. ${sharesSaid}`;
const fillSource = "The boiling curve and density of the brine; offset and scale by a fitted run, else the handbook";
const density = [measuredValue(1, 0.01, {}, "published density of the mix")];

/** A bath that fills a volume, out of the arguments of a formula. */
function filled(
  volume: number,
  target: number,
  pressure: number,
  offset: number,
  scale: number,
  shares: readonly number[],
) {
  const [hydroxide = 1, nitrite, potassium] = shares;
  const salts = brineOf(1, hydroxide, nitrite, potassium);
  return bathToFill(volume, { salts, target, pressure, departure: { offset, scale } });
}

type Filled = ReturnType<typeof filled>;

/** A function of what fills a tank. */
const filling = (
  name: string,
  gives: "mass" | "water" | "density",
  says: string,
  of: (bath: Filled) => number,
): Func => ({
  name,
  takes: fillTaken,
  gives,
  says: `${says} ${fillSaid}`,
  source: fillSource,
  besides: density,
  numbers: (volume, target, pressure, offset, scale, hydroxide, nitrite, potassium, off = 1) =>
    off * of(filled(volume, target, pressure, offset, scale, [hydroxide, nitrite, potassium])),
});

const rinseTaken: readonly Taken[] = [
  { name: "length", kind: "length" },
  { name: "width", kind: "length" },
  { name: "depth", kind: "length" },
  { name: "burner rate", kind: "power" },
  { name: "share of the fire", kind: "share" },
  { name: "start temperature", kind: "temperature" },
  { name: "air temperature", kind: "temperature" },
  { name: "air pressure", kind: "pressure" },
];

/** Cases share their rinse: each is worked once. */
const heatUps = remembered<WaterHeatUp>(64);

/** An open tank of plain water on its fire; its arguments are those of `rinseTaken`. */
function rinse(...[length, width, depth, power, efficiency, from, air, pressure]: Rinse) {
  const given = { tank: { length, width, depth }, power, efficiency, from, air, pressure };
  const up = heatUps(JSON.stringify(given), () => waterHeatUp(given));
  if (up.state === "gets there") return up;
  throw new Error(`this fire never boils it: it stalls at ${Math.round((up.stallsAt - 273.15) * 1.8 + 32)} °F`);
}

type Rinse = [
  length: number,
  width: number,
  depth: number,
  power: number,
  efficiency: number,
  from: number,
  air: number,
  pressure: number,
];

/** What a new tank is filled with: the bath, and plain water for the boiling rinse. */
export const fillings: readonly Func[] = [
  {
    name: "salt shares",
    takes: [{ name: "salts" }],
    says: "Each salt's share of the dry weight, as weighed or as the middle of its label; 2 to 1 where only the depth was seen.",
    work: saltShares,
  },
  {
    name: "handbook bath",
    takes: [{ name: "salts" }],
    says: "What is believed of a bath and a fire that nobody logged.",
    source: "A judgement from published curves",
    work: handbookBath,
  },
  filling("salt to fill", "mass", "Salt.", ({ salt }) => salt),
  filling("water to fill", "water", "Water.", ({ water }) => water),
  filling("density of fill", "density", "Weight of the liquid for its volume.", (bath) => bath.density),
  {
    name: "heat-up of water tank",
    takes: rinseTaken,
    gives: "time",
    says: "From cold to a brisk boil over an open fire, bare walls, no lid.",
    source: "Heat of water, losses of walls and surface; the share of the fire that enters is the greatest doubt",
    numbers: (...of) => rinse(...(of as Rinse)).time,
  },
];
