import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Plugin } from "vite";
import { expect, test } from "vitest";
import { settle, visitor } from "./harness.ts";

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
  await build({
    configFile: fileURLToPath(new URL("../../notebooks/vite.config.ts", import.meta.url)),
    mode: "one-file",
    logLevel: "silent",
    plugins: [oneMoreLine],
    build: { outDir: folder, emptyOutDir: true },
  });
  const address = pathToFileURL(join(folder, "steady-boil.html")).href;
  const page = await (await visitor("one file", {}, address)).newPage();
  await page.goto(address);
  await settle(page);
  const number = (line: string) => page.locator(`[data-line="${line}"][data-value]`).first().getAttribute("data-value");
  const band = Number(await number("band"));
  expect(band).toBeGreaterThan(0);
  expect(Number(await number("both_sides_of_the_band"))).toBeCloseTo(2 * band, 9);
  await rm(folder, { recursive: true, force: true });
});
