import { readFileSync } from "node:fs";
import { fitRun } from "../../lib/fit/index.ts";
import { drawsOf } from "../../lib/fit/scale/drawsOf.ts";
import { valuesOf } from "../../lib/fit/scale/scaledOf.ts";
import { stallLength } from "../../lib/index.ts";
import { openLines } from "../../lib/lines/index.ts";
import { readRecord } from "../../lib/record/index.ts";
import { fitOfRun } from "../../notebooks/aside/fitOfRun.ts";
import { boilOffOverLengths, type FireOverLengths } from "../../notebooks/aside/lengths.ts";
import { newTankByScaling, type ScaleWork } from "../../notebooks/aside/newTank.ts";
import type { FitWork } from "../../notebooks/givensOf.ts";
import { startNewTank } from "../../notebooks/newTank/start.ts";
import newTank from "../../notebooks/newTank.ts";
import { vocabulary } from "../../notebooks/vocabulary.ts";
import { type DoneAside, sharedAside } from "../support/sharedAside.ts";

const read = readRecord(readFileSync("data/demoShop.json", "utf8"));
if (!("record" in read)) throw new Error("the demo cannot be read");
const { record } = read;
const start = startNewTank(newTank, record);
const run = record.runs.find(({ id }) => id === start.casesFrom?.[start.base ?? ""]?.id);
const inCases = Object.fromEntries(Object.keys(start.cases ?? {}).map((name) => [name, { log: run?.log }]));

/** The whole notebook of three tanks, from opening it until every line has settled; the same work is done once. */
export async function wholeNewTank(): Promise<readonly DoneAside[]> {
  const { functions, done } = sharedAside(vocabulary);
  const open = openLines({ ...newTank, ...start }, { vocabulary: { functions }, inCases });
  await open.settled();
  open.close();
  return done;
}

const works = await wholeNewTank();
const of = <Work>(name: string): readonly Work[] =>
  works.filter((one) => one.name === name).map(({ data }) => data as Work);
const fits = of<FitWork>(fitOfRun.name);
const tanks = of<ScaleWork>(newTankByScaling.name);
const ranges = works
  .filter(({ name }) => name === boilOffOverLengths.name)
  .map(({ data, found }) => ({
    work: data as ScaleWork,
    fires: found as readonly FireOverLengths[],
  }));

/** Its fit, its draws with their heat-ups, and its stall lengths, and nothing else. */
export function bareNewTank(): void {
  for (const { run: log, givens } of fits) fitRun(log, givens);
  for (const { fit, from, to, options } of tanks) valuesOf(drawsOf(fit, from, to, options));
  for (const { work, fires } of ranges) {
    const { fit, from, to, options } = work;
    for (const { burners, at } of fires) {
      const fire = { ...to.burners, count: burners };
      for (const { length } of at)
        drawsOf(fit, from, { tank: { ...to.tank, length }, burners: fire }, { ...options, draws: 400 });
      stallLength(fit, from, { tank: to.tank, burners: fire }, { ...options, draws: 200 });
    }
  }
}
