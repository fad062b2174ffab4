import { readLog, waterBalance } from "../../lib/index.ts";

/** A piece of work, how often it is timed, and how many yardsticks it may take at most. */
export type Case = { name: string; work: () => unknown; runs: number; atMost: number };

/** A log of one row a second, invented: a sawtooth of pours, as a logger would write it. */
function loggerFile(rows: number): string {
  const lines = ["time s,bath F,water fl oz"];
  for (let second = 0; second < rows; second += 1) {
    const temperature = 290 + ((second % 600) / 600) * 4;
    lines.push(`${second},${temperature.toFixed(1)},${second > 0 && second % 600 === 0 ? "24" : ""}`);
  }
  return lines.join("\n");
}

/** A log by hand of one evening, invented: a reading every two minutes, a pour every ten. */
function handLog(minutes: number): string {
  const lines = ["time,temp F,water fl oz"];
  for (let minute = 0; minute <= minutes; minute += 2) {
    lines.push(`${minute}:00,${(290 + ((minute % 10) / 10) * 4).toFixed(0)},`);
    if (minute > 0 && minute % 10 === 0) lines.push(`${minute}:30,,24`);
  }
  return lines.join("\n");
}

const givens = {
  salts: { sodiumHydroxide: 8, sodiumNitrate: 3 },
  pressure: 94_000,
  target: 417.6,
  band: 1.1,
};
const long = loggerFile(100_000);
const hour = handLog(60);
const { run: evening } = await readLog(hour);
const { run: logged } = await readLog(loggerFile(7200));

export const cases: readonly Case[] = [
  { name: "readLog, an hour by hand", work: () => readLog(hour), runs: 15, atMost: 1 },
  { name: "readLog, 100,000 rows of a logger", work: () => readLog(long), runs: 3, atMost: 120 },
  { name: "waterBalance, an hour by hand", work: () => waterBalance(evening, givens), runs: 9, atMost: 8 },
  { name: "waterBalance, two hours at 1 Hz", work: () => waterBalance(logged, givens), runs: 5, atMost: 60 },
];
