import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, preview } from "vite";

/** Builds the page that holds nothing but a grid and serves it; gives its address and how to end it. */
export async function serveGrid(): Promise<{ readonly address: string; readonly end: () => Promise<void> }> {
  const outDir = await mkdtemp(join(tmpdir(), "grid-page-"));
  const common = {
    root: fileURLToPath(new URL(".", import.meta.url)),
    configFile: false,
    logLevel: "error",
    base: "./",
    publicDir: false,
    build: { outDir, emptyOutDir: true, target: "es2022", modulePreload: { polyfill: false } },
  } as const;
  // Whatever the tests say of themselves: a development build of a package warns on the page and is slower.
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = "production";
  try {
    await build({ ...common, mode: "production" });
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
  const site = await preview({ ...common, preview: { port: 0, host: "localhost" } });
  const address = site.resolvedUrls?.local[0];
  if (address === undefined) throw new Error("the page of the grid was not served");
  return {
    address,
    async end() {
      await site.close();
      await rm(outDir, { recursive: true, force: true });
    },
  };
}
