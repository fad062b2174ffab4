import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Plugin } from "vite";
import { expect, test, vi } from "vitest";
import { visitor } from "./harness.ts";
import { answered, blank, number, oneRun } from "./oneRun.ts";

/** One more line in the data of the notebook, and nothing else. */
const oneMoreLine: Plugin = {
  name: "one-more-line",
  enforce: "pre",
  transform(code, id) {
    if (!id.endsWith("/notebooks/oneRun.ts")) return undefined;
    const changed = code.replace(
      /\blines:\s*\{/,
      (start) => `${start} "both sides of the band": worked("band * 2", "°F"),`,
    );
    expect(changed).not.toBe(code);
    return changed;
  },
};

test("a line added to a notebook's data is worked out and shown, with no change to the page", async () => {
  const folder = await mkdtemp(join(tmpdir(), "steady-boil-line-"));
  // As it is shipped: the tests' own mode would take the development build of a package.
  vi.stubEnv("NODE_ENV", "production");
  await build({
    configFile: fileURLToPath(new URL("../../notebooks/vite.config.ts", import.meta.url)),
    mode: "one-file",
    logLevel: "silent",
    plugins: [oneMoreLine],
    build: { outDir: folder, emptyOutDir: true },
  });
  vi.unstubAllEnvs();
  const address = pathToFileURL(join(folder, "steady-boil.html")).href;
  const page = await (await visitor("one file", {}, address)).newPage();
  await page.goto(address + oneRun);
  await answered(page);
  const halfWidth = Number(await blank(page, "band").inputValue());
  expect(halfWidth).toBeGreaterThan(0);
  // °F on the page, K for machines: 1.8 °F to the K (NIST SP 811, appendix B).
  expect((await number(page, "both_sides_of_the_band")).value).toBeCloseTo((2 * halfWidth) / 1.8, 9);
  await rm(folder, { recursive: true, force: true });
});
