// Frames a second that the page draws while an arrow key is held on a given of the demo, its figures included.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { setTimeout as sleep } from "node:timers/promises";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
/** A keyboard's usual repeat, and how long the key is held. */
const repeatsASecond = 30;
const heldSeconds = 4;

/** Where a key is held: the place of the page, a given of the demo and a line that follows from it. */
const held = [
  {
    name: "my question",
    place: "#my-question",
    given: "gas_price",
    inCase: "six blades",
    follows: "gas_cost_for_each_blade",
  },
];

async function startSite(folder) {
  const child = spawn(process.execPath, [join(root, "notebooks/start.mjs"), folder], {
    env: { ...process.env, CI: "true", PORT: "0" },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const address = await new Promise((done, failed) => {
    let printed = "";
    child.stdout.on("data", (piece) => {
      printed += piece;
      const found = /^(http:\/\/localhost:\d+\/)$/m.exec(printed)?.[1];
      if (found) done(found);
    });
    child.on("exit", (code) => failed(new Error(`the site did not start (code ${code})`)));
  });
  const stop = () => {
    child.removeAllListeners("exit");
    child.kill();
  };
  return { address, stop };
}

/** Holds Alt and the arrow on a given, by the browser's own input, and counts the frames that are drawn meanwhile. */
async function holdKey(page, { given, inCase, follows }) {
  const cell = page.locator(`#lines [role=row]:has([data-line="${given}"]) [role=gridcell][data-in-case="${inCase}"]`);
  const output = page.locator(`#lines output[data-line="${follows}"][data-case="${inCase}"][data-value]`).first();
  await output.waitFor();
  await cell.focus();
  const before = Number(await output.getAttribute("data-value"));
  const drawn = () => page.locator("figure svg").evaluateAll((all) => all.map((one) => one.outerHTML).join(""));
  const figuresBefore = await drawn();
  await page.evaluate(() => {
    window.framesDrawn = [];
    const frame = (at) => {
      window.framesDrawn.push(at);
      if (window.framesDrawn) requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  const input = await page.context().newCDPSession(page);
  const alt = { key: "Alt", code: "AltLeft", windowsVirtualKeyCode: 18 };
  const up = { key: "ArrowUp", code: "ArrowUp", windowsVirtualKeyCode: 38, modifiers: 1 };
  await input.send("Input.dispatchKeyEvent", { type: "rawKeyDown", modifiers: 1, ...alt });
  const start = performance.now();
  let repeats = 0;
  const sent = [];
  while (performance.now() - start < heldSeconds * 1000) {
    // Not waited for: a keyboard does not wait for the page either.
    sent.push(input.send("Input.dispatchKeyEvent", { type: "rawKeyDown", autoRepeat: repeats > 0, ...up }));
    repeats += 1;
    await sleep(Math.max(0, start + (repeats * 1000) / repeatsASecond - performance.now()));
  }
  await Promise.all(sent);
  const frames = await page.evaluate(() => {
    const all = window.framesDrawn;
    window.framesDrawn = undefined;
    return all;
  });
  await input.send("Input.dispatchKeyEvent", { type: "keyUp", ...up });
  await input.send("Input.dispatchKeyEvent", { type: "keyUp", ...alt, modifiers: 0 });
  await page.waitForTimeout(600);
  const after = Number(await output.getAttribute("data-value"));
  if (!(after > before)) throw new Error(`${follows} did not follow the key: ${before}, ${after}`);
  if ((await drawn()) === figuresBefore) throw new Error("the figures did not follow the key");
  const gaps = frames
    .slice(1)
    .map((at, i) => at - frames[i])
    .sort((a, b) => a - b);
  return {
    repeats,
    framesASecond: (1000 * (frames.length - 1)) / (frames.at(-1) - frames[0]),
    oneIn20: gaps[Math.floor(gaps.length * 0.95)],
    longest: gaps.at(-1),
  };
}

/** One row for each place; undefined where the browser of the package does not start. */
export async function framesHeld() {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const { runnerImport } = await import("vite");
  const { chromium } = await import("playwright-core");
  const { module } = await runnerImport(join(root, "test/pages/browser.ts"), {
    root,
    configFile: false,
    logLevel: "error",
  });
  const server = await module.startBrowser().catch(() => undefined);
  if (!server) return undefined;
  const folder = mkdtempSync(join(tmpdir(), "bench-site-"));
  const site = await startSite(folder);
  try {
    const browser = await chromium.connect(server.wsEndpoint());
    const rows = [];
    for (const one of held) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, locale: "en-US" });
      await page.goto(site.address + one.place);
      rows.push({ name: one.name, ...(await holdKey(page, one)) });
      await page.close();
    }
    return rows;
  } finally {
    site.stop();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
