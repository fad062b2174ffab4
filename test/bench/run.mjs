// Ratios of two pieces of work measured in turns in one run: npm run bench. They tell where time goes, pass or fail nothing.
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { fileURLToPath, pathToFileURL } from "node:url";
import { installMissing } from "../../notebooks/installMissing.mjs";
import { framesHeld } from "./frames.mjs";

installMissing();
const { build } = await import("vite");
const built = mkdtempSync(join(tmpdir(), "bench-built-"));
process.on("exit", () => rmSync(built, { recursive: true, force: true }));
// Bundled as the page is: run module by module, each call across files costs more than the work of a small function.
await build({
  configFile: false,
  logLevel: "error",
  root: fileURLToPath(new URL("../..", import.meta.url)),
  build: {
    ssr: fileURLToPath(new URL("./cases.ts", import.meta.url)),
    outDir: built,
    rollupOptions: { output: { entryFileNames: "cases.mjs" } },
  },
  ssr: { noExternal: true },
});
// What a bundled module reads from beside itself.
copyFileSync(new URL("../published/nistNonlinear.json", import.meta.url), join(built, "nistNonlinear.json"));
const module = await import(pathToFileURL(join(built, "cases.mjs")).href);

/** A Python that has NumPy and SciPy; undefined where there is none. */
const python = ["python3", "python"].find((name) => spawnSync(name, ["-c", "import numpy, scipy"]).status === 0);

/** ms that one doing took in Python, as the script measured it: the last line that it prints; and the lines before. */
function onceInPython(script, words) {
  const path = fileURLToPath(new URL(script, import.meta.url));
  // No compiled copies beside the sources.
  const { status, stdout, stderr } = spawnSync(python, ["-B", path, ...words], { encoding: "utf8" });
  const lines = stdout?.trim().split("\n") ?? [];
  const ms = Number(lines.pop() || Number.NaN);
  if (status !== 0 || !(ms > 0)) throw new Error(`invalid time from ${script}: ${stdout}${stderr}`);
  return { ms, says: lines };
}

/** ms that one doing of the work takes. */
async function once({ work, times = 1, python: script, words = [] }) {
  if (script) return onceInPython(script, words).ms;
  const start = performance.now();
  await work();
  return (performance.now() - start) / times;
}

const middle = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];
const say = (number) =>
  number >= 100 ? Math.round(number).toLocaleString("en-US") : String(Number(number.toPrecision(2)));

const rows = [["work", "ms", "over", "ms", "ratio"]];
const meanings = [];
const leftOut = [];
for (const { name, over, means, does, yardstick, runs } of module.comparisons) {
  if (yardstick.python && !python) {
    leftOut.push(name);
    continue;
  }
  await once(does);
  const says = yardstick.python ? onceInPython(yardstick.python, yardstick.words ?? []).says : [];
  if (!yardstick.python) await once(yardstick);
  const pairs = [];
  // In turns, so that a busy machine slows both alike.
  for (let run = 0; run < runs; run += 1) pairs.push([await once(does), await once(yardstick)]);
  const ratio = middle(pairs.map(([a, b]) => a / b));
  rows.push([name, say(middle(pairs.map(([a]) => a))), over, say(middle(pairs.map(([, b]) => b))), say(ratio)]);
  meanings.push([`${name}: ${means}`, ...says].join("\n  "));
}
const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
for (const row of rows) {
  const cells = row.map((cell, column) =>
    column % 2 === 0 && column < 4 ? cell.padEnd(widths[column]) : cell.padStart(widths[column]),
  );
  console.log(cells.join("  "));
}
console.log(`\nRatios are medians of pairs. What each means:\n${meanings.map((line) => `- ${line}`).join("\n")}`);
if (leftOut.length > 0)
  console.log(
    `\nLeft out, for want of a Python with NumPy and SciPy:\n${leftOut.map((name) => `- ${name}`).join("\n")}`,
  );

const frames = await framesHeld();
console.log("\nHolding an arrow key on a given of the demo in a real browser, figures included (30 is the bar):");
if (!frames) console.log("left out: the browser that the tests bring along does not start here");
for (const { name, framesASecond, repeats, oneIn20, longest } of frames ?? [])
  console.log(
    `${name}: ${say(framesASecond)} frames a second over ${repeats} repeats of the key; one in 20 took ${say(oneIn20)} ms or more, the longest ${say(longest)} ms`,
  );
