import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BrowserServer, chromium, type LaunchOptions } from "playwright-core";

const modules = fileURLToPath(new URL("../../node_modules/", import.meta.url));
const plainArguments = ["--font-render-hinting=none", "--disable-lcd-text", "--force-color-profile=srgb"];

/** The packaged browser takes what it finds in the temporary folder, so it gets one of its own, filled once. */
async function unpack(folder: string): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  const half = await mkdtemp(`${folder}-`);
  const before = { ...process.env };
  process.env.TMPDIR = half;
  // Asks for the shared libraries that come with the package too: a bare machine has none of them.
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs20.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    await packaged.executablePath();
  } finally {
    for (const name of ["TMPDIR", "AWS_EXECUTION_ENV", "FONTCONFIG_PATH", "HOME", "LD_LIBRARY_PATH"]) {
      const value = before[name];
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
  try {
    await rename(half, folder);
  } catch (problem) {
    // Another run was faster; its folder is as good.
    await rm(half, { recursive: true, force: true });
    if (!existsSync(join(folder, "chromium"))) throw problem;
  }
}

/** Points the browser to the fonts of the package: its own settings name a folder that is not there. */
async function nameFonts(folder: string): Promise<void> {
  const safe = folder.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  const settings = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${safe}/fonts</dir>
  <cachedir>${safe}/fonts-cache</cachedir>
</fontconfig>
`;
  await writeFile(join(folder, "fonts", "fonts.conf"), settings);
}

/** How to start the browser that comes inside the npm package (one build, for Linux on x64). */
async function packagedBrowser(): Promise<LaunchOptions> {
  const { version } = JSON.parse(await readFile(join(modules, "@sparticuz/chromium/package.json"), "utf8"));
  const folder = join(modules, ".cache", `packaged-browser-${version}`);
  if (!existsSync(join(folder, "chromium"))) await unpack(folder);
  await nameFonts(folder);
  const libraries = [join(folder, "al2023", "lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(":");
  return {
    executablePath: join(folder, "chromium"),
    args: [...plainArguments, "--no-sandbox", "--no-zygote", "--disable-gpu"],
    env: { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: join(folder, "fonts") },
  };
}

/** Starts the browser of the tests: the packaged one on Linux x64, an installed one elsewhere. */
export async function startBrowser(): Promise<BrowserServer> {
  if (process.platform === "linux" && process.arch === "x64") {
    return chromium.launchServer({ headless: true, ...(await packagedBrowser()) });
  }
  const refusals: string[] = [];
  for (const channel of ["chrome", "msedge", "chromium"]) {
    try {
      return await chromium.launchServer({ headless: true, channel, args: plainArguments });
    } catch (problem) {
      refusals.push(`${channel}: ${String(problem).split("\n", 1)[0]}`);
    }
  }
  throw new Error(
    `The page tests need a browser, and none was found here. Install Google Chrome or Microsoft Edge, then run npm test again.\n${refusals.join("\n")}`,
  );
}
