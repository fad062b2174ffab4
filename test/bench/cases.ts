import Papa from "papaparse";
import { readLog, waterBalance } from "../../lib/index.ts";
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
import { editLines, editNumbers, editTen, openOnly } from "./lines.ts";
import { bareNewTank, wholeNewTank } from "./newTank.ts";
import { fitNist } from "./nist.ts";
import { bareHolds, fullHold, holds300, wholePlan } from "./plan.ts";

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
const inCases = 6;
const lines = await editLines(chain, inCases);
const numbers = await editNumbers(chain, inCases);
const [few, many] = [await editTen(30), await editTen(3000)];

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
    name: `an edit at the head of ${chain} lines x ${inCases} cases`,
    over: "the bare runtime with the same graph of plain numbers",
    means:
      "what units, eight sources of doubt, errors and undo cost on top of the runtime: 3 at most, and within 16.7 ms, one frame at 60 Hz",
    does: { work: lines.edit },
    yardstick: { work: numbers },
    runs: 41,
  },
  {
    name: "an edit that ten lines of 3,000 hang on",
    over: "the same with 30 lines",
    means: "an edit costs what hangs on it, whatever else there is: 100 times the lines may cost 1.6 times (slope 0.1)",
    does: often(20, many.edit),
    yardstick: often(20, few.edit),
    runs: 15,
  },
  {
    name: "opening a notebook of 3,000 lines",
    over: "opening one of 300",
    means: "opening grows with the lines: 10 times the lines may cost 12.6 times (slope 1.1)",
    does: { work: () => openOnly(3000) },
    yardstick: often(10, () => openOnly(300)),
    runs: 7,
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
  {
    name: "one simulated hold of 30 min (of 300)",
    over: "the full simulation of the same hold",
    means: "what it saves to let slopes at the target stand for enthalpies: a plan needs thousands of holds",
    does: { times: 300, work: holds300 },
    yardstick: often(20, fullHold),
    runs: 15,
  },
  {
    name: "a whole plan of a hold",
    over: "its bare simulated holds",
    means: "what drawing, searching, the table and the heat-up cost on top: 1.5 at most",
    does: { work: wholePlan },
    yardstick: { work: bareHolds },
    runs: 11,
  },
  {
    name: "New tank, three tanks and their lengths",
    over: "its bare fit, draws and stall lengths",
    means: "what lines, cases, quantiles, sources of doubt and measurements cost on top: 1.3 at most",
    does: { work: wholeNewTank },
    yardstick: { work: bareNewTank },
    runs: 9,
  },
];
