import { Runtime } from "@observablehq/runtime";
import Papa from "papaparse";
import { readLog, waterBalance } from "../../lib/index.ts";
import { given, type Line, notebook, openLines, worked } from "../../lib/lines/index.ts";
import type { Run } from "../../lib/log/types.ts";
import {
  bathForPython,
  fitLogged,
  fitLoggedWhole,
  fitWritten,
  fitWrittenWhole,
  loggedForPython,
  ninetyMinutes,
  writtenForPython,
} from "./bath.ts";
import { fitNist } from "./nist.ts";

/** A piece of work; `times` is how often one call of it does the work. */
export interface Work {
  readonly work: () => unknown;
  readonly times?: number;
}

/**
 * The same work done in Python, where there is a Python with NumPy and SciPy: a script beside this file that prints the
 * milliseconds of one doing, measured inside so that starting Python is left out. It may print more lines before.
 */
export interface InPython {
  readonly python: string;
  /** Words for the script. */
  readonly words?: readonly string[];
}

/** A piece of work done so often at once. */
function often(times: number, work: () => unknown): Work {
  return {
    times,
    work: () => {
      for (let i = 0; i < times; i += 1) work();
    },
  };
}

/** One piece of work measured against another of the same size. */
export interface Comparison {
  readonly name: string;
  readonly over: string;
  readonly means: string;
  readonly does: Work;
  readonly yardstick: Work | InPython;
  readonly runs: number;
}

const givens = { salts: { sodiumHydroxide: 8, sodiumNitrate: 3 }, pressure: 101_325 };

/** A log of a bath that creeps up and is poured back every few rows: s and °F a row, fl oz on some. */
function logOf(rows: number, step: number, pourEvery: number): string {
  const lines = ["time (s),temp F,water (fl oz)"];
  for (let i = 0; i < rows; i += 1) {
    const since = i % pourEvery;
    lines.push(`${i * step},${(289 + (2 * since) / pourEvery).toFixed(1)},${since === pourEvery - 1 ? 8 : ""}`);
  }
  return lines.join("\n");
}

const written = readLog(logOf(40, 90, 4)).run;
const logged = readLog(logOf(7200, 1, 360)).run;
const long = logOf(100_000, 1, 360);

const pointsOf = (run: Run) =>
  run.entries.flatMap(({ kind, time, quantity }) => (kind === "reading" && quantity ? [[time, quantity.si]] : []));
const points = pointsOf(written);

/** Ordinary least squares, slope alone: the least that anybody would do with a log. */
function straightLine(list: readonly (readonly number[])[]): number {
  let n = 0;
  let sx = 0;
  let sy = 0;
  let sxx = 0;
  let sxy = 0;
  for (const [x = 0, y = 0] of list) {
    n += 1;
    sx += x;
    sy += y;
    sxx += x * x;
    sxy += x * y;
  }
  return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}

const chain = 300;
const letters = (i: number) => String.fromCharCode(97 + Math.floor(i / 26), 97 + (i % 26));
const nameOf = (i: number) => `step ${letters(i)}`;
const last = nameOf(chain - 1);

async function chainOfLines(): Promise<() => Promise<unknown>> {
  const lines: Record<string, Line> = { [nameOf(0)]: given("1") };
  for (let i = 1; i < chain; i += 1) lines[nameOf(i)] = worked(`${nameOf(i - 1)} + 1`);
  const open = openLines(notebook({ asks: "How long is the chain?", lines }));
  await open.settled();
  let edit = 1;
  return async () => {
    edit += 1;
    open.set(nameOf(0), { given: String(edit) });
    await open.settled();
    const answer = await open.value(last);
    if (!("value" in answer) || answer.value !== edit + chain - 1) throw new Error(`invalid chain: ${String(answer)}`);
  };
}

async function chainOfNumbers(): Promise<() => Promise<unknown>> {
  const runtime = new Runtime(null, (name) => {
    throw new Error(`unknown name: ${name}`);
  });
  // Both sides are driven by hand, so that no frame or timer is measured.
  runtime._computeSoon = async () => undefined;
  const found = new Map<string, unknown>();
  const module = runtime.module();
  const nodes = Array.from({ length: chain }, (_, i) =>
    module.variable({ fulfilled: (value: unknown) => found.set(nameOf(i), value) }),
  );
  nodes[0]?.define(nameOf(0), [], () => 1);
  for (let i = 1; i < chain; i += 1) nodes[i]?.define(nameOf(i), [nameOf(i - 1)], (before) => Number(before) + 1);
  let edit = 1;
  const settle = async () => {
    await runtime._computeNow();
    for (let wait = 0; found.get(last) !== edit + chain - 1; wait += 1) {
      if (wait > 10_000) throw new Error(`invalid chain: ${String(found.get(last))}`);
      await Promise.resolve();
    }
  };
  await settle();
  return async () => {
    edit += 1;
    const now = edit;
    nodes[0]?.define(nameOf(0), [], () => now);
    await settle();
  };
}

const editLines = await chainOfLines();
const editNumbers = await chainOfNumbers();

export const comparisons: readonly Comparison[] = [
  {
    name: "water balance of a log of 40 rows",
    over: "a straight line through the same points",
    means: "what it costs to carry every doubt and weigh every explanation",
    does: { work: () => waterBalance(written, givens) },
    yardstick: {
      times: 20_000,
      work: () => {
        let sum = 0;
        for (let i = 0; i < 20_000; i += 1) sum += straightLine(points);
        return sum;
      },
    },
    runs: 9,
  },
  {
    name: "water balance of 2 h at 1 Hz (7,200 rows)",
    over: "water balance of a log of 40 rows",
    means: "a logger's log must not cost its rows: it is thinned first (180 times the rows)",
    does: { work: () => waterBalance(logged, givens) },
    yardstick: { work: () => waterBalance(written, givens) },
    runs: 7,
  },
  {
    name: "reading a log of 100,000 rows at 1 Hz",
    over: "papaparse alone on the same text",
    means: "what it costs to understand units, times and pours beyond cutting cells",
    does: { work: () => readLog(long) },
    yardstick: { work: () => Papa.parse(long) },
    runs: 3,
  },
  {
    name: `an edit at the head of a chain of ${chain} lines`,
    over: "the bare runtime with plain numbers",
    means: "what units, doubts and undo cost on top of the runtime",
    does: { work: editLines },
    yardstick: { work: editNumbers },
    runs: 15,
  },
  {
    name: "the 54 regressions of NIST, residuals and start alone",
    over: "SciPy's least_squares at the settings that solve them all",
    means: "what our own least squares costs beside the usual one; both get 6 digits of every parameter",
    does: { work: fitNist },
    yardstick: { python: "nist.py" },
    runs: 5,
  },
  {
    name: "90 min of a simulated bath in steps of 10 s",
    over: "SciPy's solve_ivp on the same bath, at the same 541 times",
    means: "ours should be 50 times as fast or more (0.02), and its temperatures the same within 0.005 °F",
    does: often(50, ninetyMinutes),
    yardstick: { python: "bath.py", words: [bathForPython()] },
    runs: 7,
  },
  {
    name: "fit of a log of 40 rows",
    over: "SciPy's least_squares of a constant rate to the same log",
    means:
      "what every doubt, pours that were not written and readings that do not belong cost beside the plainest fit; boil-off, parameters, covariance and remarks; both do it some hundred times over",
    does: often(100, fitWritten),
    yardstick: { python: "line.py", words: [writtenForPython()] },
    runs: 7,
  },
  {
    name: "the same with every answer read",
    over: "SciPy's least_squares of a constant rate to the same log",
    means: "what course, heats, residuals, time left in the band and what to log next cost on top",
    does: often(50, fitWrittenWhole),
    yardstick: { python: "line.py", words: [writtenForPython()] },
    runs: 7,
  },
  {
    name: "fit of 2 h at 1 Hz (7,200 rows)",
    over: "SciPy's least_squares around a simulation of the same log",
    means:
      "what it saves to weigh a straightened line of thinned rows instead of simulating (SciPy's fit has no doubts of pours, cup or salts, and weighs no explanations)",
    does: often(10, fitLogged),
    yardstick: { python: "simulated.py", words: [loggedForPython()] },
    runs: 5,
  },
  {
    name: "the same with every answer read",
    over: "SciPy's least_squares around a simulation of the same log",
    means: "what course, heats, residuals, time left in the band and what to log next cost on top",
    does: often(10, fitLoggedWhole),
    yardstick: { python: "simulated.py", words: [loggedForPython()] },
    runs: 5,
  },
];
