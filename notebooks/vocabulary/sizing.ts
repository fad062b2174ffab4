import { remembered } from "../../lib/bath/remembered.ts";
import {
  longestPart,
  type PartSize,
  plateOf,
  smallestTank,
  tankHolds,
  usualFreeboard,
  type Way,
  weightOnStand,
  workTanks,
} from "../../lib/index.ts";
import type { Func, Taken } from "../../lib/lines/index.ts";
import { exact } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { number } from "../givensOf.ts";

const length = { length: 1 } as const;
const metres = (value: number): Value => exact(value, length);

/** Ways in which a part lies, as a maker says them. */
export const ways: ReadonlyMap<string, Way> = new Map([
  ["straight", "straight"],
  ["along the floor's diagonal", "floorDiagonal"],
  ["tilted", "tilted"],
  ["along the space's diagonal", "spaceDiagonal"],
]);

const si = (what: string, given: unknown): number => {
  const value = number(what, given);
  if (!value) throw new Error(`missing ${what}`);
  return value.value;
};

/**
 * A batch as one bar: pieces side by side lying flat, or standing on edge, with the room at the walls between them too.
 */
export function batches(part: PartSize, many: number, room: number): readonly PartSize[] {
  if (!(many >= 1 && many <= 200 && Number.isInteger(many)))
    throw new RangeError(`invalid number of parts: ${many}; a whole number, 1 to 200`);
  const beside = (each: number) => many * each + (many - 1) * room;
  const flat = { ...part, width: beside(part.width) };
  return many === 1 ? [flat] : [flat, { ...part, thickness: beside(part.thickness) }];
}

const partTaken: readonly Taken[] = [
  { name: "part's length", kind: "length" },
  { name: "part's width", kind: "length" },
  { name: "part's thickness", kind: "length" },
  { name: "how many" },
  { name: "room at the walls", kind: "length" },
];

/** A part, how many of it, and the room round it, out of the arguments of a formula. */
export function partIn(given: readonly unknown[]): { readonly batch: readonly PartSize[]; readonly room: number } {
  const room = si("room at the walls", given[4]);
  const part = {
    length: si("part's length", given[0]),
    width: si("part's width", given[1]),
    thickness: si("part's thickness", given[2]),
  };
  return { batch: batches(part, si("how many", given[3]), room), room };
}

const leastLengths = remembered<readonly number[]>(16);

function tankForPart(...given: readonly unknown[]): Value {
  const { batch, room } = partIn(given);
  const way = ways.get(String(given[5]));
  if (!way) throw new Error(`unknown way: ${String(given[5])}; one of ${[...ways.keys()].join(", ")}`);
  const held = { clearance: room, width: si("width of the tank", given[6]), depth: si("depth", given[7]) };
  const found = leastLengths(JSON.stringify([batch, held, way]), () =>
    batch.flatMap((bar) => smallestTank(bar, { ...held, by: "length" })[way]?.length ?? []),
  );
  if (found.length === 0)
    throw new Error("no tank of this width and depth takes it so: make it wider or deeper, or take fewer at once");
  return metres(Math.min(...found));
}

/** The longest piece of its kind that a tank takes, each way. */
export function longestOf(given: readonly unknown[]) {
  const { batch, room } = partIn(given);
  const [, , , , , long, wide, deep] = given;
  const tank = { length: si("length", long), width: si("width", wide), depth: si("depth of the liquid", deep) };
  return batch.map((bar) => ({ bar, room, tank, most: longestPart(tank, bar, room) }));
}

function longestInTank(...given: readonly unknown[]): ReadonlyMap<string, Value> {
  const all = longestOf(given);
  const best = (way: Way) => metres(Math.max(...all.map(({ most }) => most[way])));
  return new Map([
    ["straight", best("straight")],
    ["floor diagonal", best("floorDiagonal")],
    ["tilted", best("tilted")],
    ["space diagonal", best("spaceDiagonal")],
  ]);
}

const tankTaken: readonly Taken[] = [
  { name: "length", kind: "length" },
  { name: "width", kind: "length" },
  { name: "depth of the liquid", kind: "length" },
  { name: "freeboard", kind: "length" },
];
const sized = (long: number, wide: number, depth: number, freeboard: number) => ({
  length: long,
  width: wide,
  depth,
  freeboard,
});

/** Cases share the work: its tanks are worked once. */
const otherTanksOf = remembered<ReadonlyMap<string, unknown>>(8);

function otherTanks(...given: readonly unknown[]): ReadonlyMap<string, unknown> {
  const { batch, room } = partIn(given);
  return otherTanksOf(JSON.stringify([batch, room]), () => tanksBeside(batch, room));
}

function tanksBeside(batch: readonly PartSize[], room: number): ReadonlyMap<string, unknown> {
  const tanks = batch
    .map((bar) => workTanks(bar, { clearance: room }))
    .sort((a, b) => (a[0]?.volume ?? 0) - (b[0]?.volume ?? 0))[0];
  const [one] = tanks ?? [];
  if (!one) throw new Error("no tank takes it");
  return new Map<string, unknown>([
    ["length", metres(one.length)],
    ["width", metres(one.width)],
    ["depth", metres(one.depth)],
    ["freeboard", metres(one.freeboard)],
    ["volume", exact(one.volume, { length: 3 })],
    ["tanks", tanks],
  ]);
}

/** What fits a tank, what it weighs, and the tanks beside it. */
export const sizing: readonly Func[] = [
  {
    name: "least length for part",
    takes: [
      ...partTaken,
      { name: "way" },
      { name: "width of the tank", kind: "length" },
      { name: "depth of the liquid", kind: "length" },
    ],
    says: "The shortest tank of a width and depth that takes parts side by side: straight, along the floor's diagonal, tilted, or along the space's diagonal, with room all round.",
    source: "Geometry",
    work: tankForPart,
  },
  {
    name: "longest in tank",
    takes: [...partTaken, ...tankTaken.slice(0, 3)],
    says: "The longest part of a width and thickness that a tank takes under its surface: its straight, floor diagonal, tilted, space diagonal. The last is a safe bound.",
    source: "Geometry",
    work: longestInTank,
  },
  {
    name: "usual freeboard",
    takes: [{ name: "depth of the liquid", kind: "length" }],
    gives: "length",
    says: "4 in of wall above the liquid, or a third of its depth where that is more: a habit of shops, no rule.",
    source: "Common practice, no source",
    numbers: (depth) => usualFreeboard(depth),
  },
  {
    name: "plate of tank",
    takes: [...tankTaken, { name: "plate", kind: "length" }],
    gives: "area",
    says: "Plate cut to size, without waste, rim or skirt. How thick it must be no source here says.",
    source: "Geometry",
    numbers: (long, wide, depth, freeboard, plate) => plateOf(sized(long, wide, depth, freeboard), plate).area,
  },
  {
    name: "brimful weight",
    takes: [
      ...tankTaken,
      { name: "plate", kind: "length" },
      { name: "steel in it", kind: "mass" },
      { name: "density of the liquid", kind: "density" },
    ],
    gives: "mass",
    says: "What stands on the stand when the tank is full to its brim: plate, liquid and the steel in it.",
    source: "Geometry; steel of 7,850 kg/m³ (EN 1993-1-2:2005)",
    numbers: (long, wide, depth, freeboard, plate, steel, heavy) => {
      const tank = sized(long, wide, depth, freeboard);
      const holds = tankHolds(tank, { parts: steel });
      return weightOnStand(holds, { tank: plateOf(tank, plate).mass, parts: steel }, heavy).brimful;
    },
  },
  {
    name: "other tanks",
    takes: partTaken,
    says: "The clean, rinse, boiling rinse and oil tanks for a part: straight, with room all round, wide and deep enough for a hand in a glove.",
    source: "Geometry; the sizes are common practice, no source",
    work: otherTanks,
  },
];
