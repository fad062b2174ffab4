import { resolve } from "node:path";
import { performance } from "node:perf_hooks";
import { installMissing, projectFolder } from "../../notebooks/installMissing.mjs";

installMissing();
const { runnerImport } = await import("vite");
const { module } = await runnerImport(resolve(projectFolder, "test", "bench", "cases.ts"), { configFile: false });

/** ms that a piece of work takes: the median of its runs, after one to warm up. */
async function milliseconds(work, runs) {
  await work();
  const times = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)];
}

/** A fixed calculation, so that a figure means the same on a fast machine and on a slow one. */
function yardstick() {
  let sum = 0;
  for (let i = 1; i <= 2_000_000; i += 1) sum += Math.exp(-i / 2_000_000) / i;
  return sum;
}

const unit = await milliseconds(yardstick, 9);
console.log(`yardstick ${unit.toFixed(1)} ms`);
for (const { name, work, runs, atMost } of module.cases) {
  const time = await milliseconds(work, runs);
  const ratio = time / unit;
  const slow = ratio > atMost;
  console.log(
    `${name}: ${time.toFixed(1)} ms, ${ratio.toFixed(2)} yardsticks${slow ? `, more than the ${atMost} allowed` : ""}`,
  );
  if (slow) process.exitCode = 1;
}
