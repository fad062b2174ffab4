import type { PlainWaterLog } from "../../lib/fit/index.ts";
import type { Func } from "../../lib/lines/index.ts";
import { workedHere } from "../aside/asideFunction.ts";
import { boilOffOverLengths } from "../aside/lengths.ts";
import { newTankByScaling, scaleTakes } from "../aside/newTank.ts";
import { tankAndFire, tankAndFireTakes } from "../aside/setupToScale.ts";
import { doubtful } from "../givensOf.ts";

const plainTakes = [
  { name: "water", optional: true },
  { name: "temperature at the start", optional: true },
  { name: "temperature at the end", optional: true },
  { name: "time between", optional: true },
  { name: "water boiled off", optional: true },
  { name: "time of boiling", optional: true },
  { name: "cylinder lost", optional: true },
  { name: "time of burning", optional: true },
] as const;

/** What plain water in the new tank told; "nothing" where none was boiled. Half an entry is refused, and says its half. */
function plainWaterBoiled(...given: readonly unknown[]): PlainWaterLog | "nothing" {
  const [water, start, end, time, gone, boiling, lost, burning] = plainTakes.map(({ name }, place) =>
    doubtful(given[place], name),
  );
  const needs = (what: string, all: readonly unknown[]) => {
    const there = all.filter((one) => one !== undefined).length;
    if (there > 0 && there < all.length) throw new Error(`of plain water, ${what} belong together`);
    return there > 0;
  };
  const warmed = needs("both temperatures and the minutes between", [start, end, time]);
  const boiled = needs("the water boiled off and the minutes of boiling", [gone, boiling]);
  const weighed = needs("the cylinder's loss and the minutes of burning", [lost, burning]);
  if (warmed && !water) throw new Error("of plain water, its weight is needed to read the warming");
  if (!warmed && !boiled && !weighed) return "nothing";
  return {
    water: water ?? 1,
    ...(warmed && start && end && time
      ? {
          readings: [
            { time: 0, temperature: start.value },
            { time: time.value, temperature: end.value },
          ],
        }
      : {}),
    ...(boiled && gone && boiling ? { boiledOff: { mass: gone, duration: boiling.value } } : {}),
    ...(weighed && lost && burning ? { cylinder: { lost, duration: burning.value } } : {}),
  };
}

const source =
  "Jets, losses, evaporation and heats as published; how a flame's share carries over is a judgement, held to invented tanks";

/** A part of what a scaling found; where it has none it says why. */
function scaledPart(found: unknown, part: unknown): unknown {
  const name = String(part);
  const all = found instanceof Map ? found : new Map<string, unknown>();
  const value: unknown = all.get(name);
  if (value !== undefined) return value;
  const why = all.get("why not") as Readonly<Record<string, string>> | undefined;
  throw new Error(why?.[name] ?? `${name} is not known`);
}

/** From a fitted tank to a new one. */
export const scaling: readonly Func[] = [
  {
    name: "answer if any",
    takes: [{ name: "scaled tank" }, { name: "answer's name" }],
    says: "An answer of a scaled tank by its name in quotes; where it has none, because it may never get there or a given is missing, it says why.",
    work: scaledPart,
  },
  {
    name: "tank and fire",
    takes: tankAndFireTakes,
    says: "A tank's inside measures with the fire under it. Without jet and regulator pressure nothing is said of gas.",
    work: tankAndFire,
  },
  {
    name: "plain water boiled",
    takes: plainTakes,
    says: "A log of plain water in the new tank: how fast it warmed, how fast it boiled off, what the cylinder lost.",
    work: plainWaterBoiled,
  },
  {
    name: newTankByScaling.name,
    takes: [
      ...scaleTakes,
      { name: "size of the cylinder", optional: true },
      { name: "propane in the cylinder", optional: true },
      { name: "plain water", optional: true },
    ],
    says: "What a new tank will do, by physics from a fitted run on the old one: the share of the gas that entered the old tank is carried over, jets give the new gas, walls and surface the losses. Worked in 2,000 possible worlds.",
    source,
    work: workedHere(newTankByScaling),
  },
  {
    name: boilOffOverLengths.name,
    takes: scaleTakes,
    says: "Boil-off against the length of the tank for one to four burners of the new fire, and the length at which a fire no longer boils steadily.",
    source,
    work: workedHere(boilOffOverLengths),
  },
];
