import { realpathSync } from "node:fs";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { installMissing, projectFolder } from "./installMissing.mjs";

/** Builds the site (index.html and its assets) and the one file (steady-boil.html) into a folder. */
export async function buildSite(folder = resolve(projectFolder, "dist")) {
  // Whatever the shell says: a development build of a package warns on the page and is slower.
  process.env.NODE_ENV = "production";
  const { build } = await import("vite");
  const configFile = resolve(projectFolder, "notebooks", "vite.config.ts");
  for (const mode of ["site", "one-file"]) {
    await build({ configFile, mode, logLevel: "warn", build: { outDir: folder, emptyOutDir: mode === "site" } });
  }
  return folder;
}

if (process.argv[1] && realpathSync(process.argv[1]) === realpathSync(fileURLToPath(import.meta.url))) {
  installMissing();
  const folder = await buildSite(process.argv[2] && resolve(process.argv[2]));
  console.log(`Built the site and the one file into ${folder}`);
}
