import { type ChildProcess, spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { TestProject } from "vitest/node";
import { startBrowser } from "./browser.ts";

declare module "vitest" {
  export interface ProvidedContext {
    browserAddress: string;
    siteAddress: string;
    oneFileAddress: string;
  }
}

/** Starts the site as a newcomer does and gives the address it prints. */
function startSite(folder: string): { child: ChildProcess; address: Promise<string> } {
  const script = fileURLToPath(new URL("../../notebooks/start.mjs", import.meta.url));
  const child = spawn(process.execPath, [script, folder], {
    env: { ...process.env, CI: "true", PORT: "0" },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let printed = "";
  const address = new Promise<string>((done, failed) => {
    const listen = (piece: Buffer) => {
      printed += piece.toString();
      const line = /^(http:\/\/localhost:\d+\/)$/m.exec(printed);
      if (line?.[1]) done(line[1]);
    };
    child.stdout.on("data", listen);
    child.stderr.on("data", listen);
    child.on("exit", (code) => failed(new Error(`The site did not start (code ${code}):\n${printed}`)));
  });
  return { child, address };
}

/** Builds and serves the site and starts one browser for the whole test run. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), "steady-boil-site-"));
  const site = startSite(folder);
  const siteAddress = await site.address;
  const browser = await startBrowser();
  project.provide("siteAddress", siteAddress);
  project.provide("oneFileAddress", pathToFileURL(join(folder, "steady-boil.html")).href);
  project.provide("browserAddress", browser.wsEndpoint());
  return async () => {
    await browser.close();
    site.child.removeAllListeners("exit");
    site.child.kill();
    await rm(folder, { recursive: true, force: true });
  };
}
