import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { installMissing, projectFolder } from "../notebooks/installMissing.mjs";

let passed = 0;
let failed = 0;

/** Runs one of the installed tools and gives its exit code. */
function run(title, script, ...words) {
  const start = Date.now();
  console.log(`\n== ${title}`);
  const result = spawnSync(process.execPath, [join(projectFolder, "node_modules", script), ...words], {
    cwd: projectFolder,
    stdio: ["ignore", "inherit", "inherit"],
  });
  console.log(
    `== ${title}: ${result.status === 0 ? "passed" : "failed"}, ${((Date.now() - start) / 1000).toFixed(1)} s`,
  );
  return result.status ?? 1;
}

/** Counts a tool that gives one verdict as one test. */
function check(title, script, ...words) {
  if (run(title, script, ...words) === 0) passed += 1;
  else failed += 1;
}

/** Adds vitest's own counts. A test that was skipped, or a file that could not be read, counts as failed. */
function countTests(report, code) {
  let broken = 0;
  try {
    const { testResults } = JSON.parse(readFileSync(report, "utf8"));
    for (const file of testResults) {
      for (const test of file.assertionResults) {
        if (test.status === "passed") passed += 1;
        else broken += 1;
        if (test.status !== "passed" && test.status !== "failed")
          console.log(`not run (${test.status}): ${test.fullName}`);
      }
      const noneFailed = file.assertionResults.every((test) => test.status !== "failed");
      if (file.status === "failed" && noneFailed) broken += 1;
    }
    if (testResults.length === 0) broken += 1;
  } catch (problem) {
    console.error(`The tests left no report: ${problem.message}`);
    broken += 1;
  }
  // An error outside any test ends vitest with a code and no failed test.
  failed += broken === 0 && code !== 0 ? 1 : broken;
}

installMissing();
check("format and lint", "@biomejs/biome/bin/biome", "check", "--no-errors-on-unmatched", ".");
check("types", "typescript/bin/tsc", "--noEmit", "-p", "tsconfig.json");
const folder = mkdtempSync(join(tmpdir(), "steady-boil-test-"));
const report = join(folder, "report.json");
const code = run(
  "tests",
  "vitest/vitest.mjs",
  "run",
  "--config",
  "test/vitest.config.ts",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
);
countTests(report, code);
rmSync(folder, { recursive: true, force: true });
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
