import { mkdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, expect, inject } from "vitest";

/** The two things a build leaves: the site on a server, and the one file opened from the disk. */
export const kindsOfPage = ["site", "one file"] as const;
export type KindOfPage = (typeof kindsOfPage)[number];

export const widths = [390, 768, 1280] as const;
export const schemes = ["light", "dark"] as const;

type Watched = { context: BrowserContext; complaints: string[] };

let browser: Promise<Browser> | undefined;
let open: Watched[] = [];

async function theBrowser(): Promise<Browser> {
  browser ??= chromium.connect(inject("browserAddress"));
  return browser;
}

/** The address of the page itself, without a place in it. */
export function addressOf(kind: KindOfPage): string {
  return kind === "site" ? inject("siteAddress") : inject("oneFileAddress");
}

/** Whether a request stays with the page: the site's own origin, or the one file itself. */
function isOwn(home: string, url: string): boolean {
  if (/^(data|blob|about):/.test(url)) return true;
  return home.startsWith("http") ? url.startsWith(home) : url.split(/[?#]/, 1)[0] === home;
}

function watch(home: string, context: BrowserContext): Watched {
  const complaints: string[] = [];
  context.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(`console: ${message.text()}`);
  });
  context.on("weberror", (problem) => complaints.push(`uncaught: ${problem.error().stack ?? problem.error()}`));
  context.on("request", (request) => {
    if (!isOwn(home, request.url())) complaints.push(`request beyond the page: ${request.url()}`);
  });
  context.on("requestfailed", (request) => {
    if (!/^blob:/.test(request.url())) complaints.push(`failed: ${request.url()} ${request.failure()?.errorText}`);
  });
  context.on("response", (response) => {
    if (response.status() >= 400) complaints.push(`${response.status()}: ${response.url()}`);
  });
  return { context, complaints };
}

/** A visitor of their own: empty storage, watched for every console error, failed request and foreign request. */
export async function visitor(
  kind: KindOfPage,
  options: BrowserContextOptions = {},
  home = addressOf(kind),
): Promise<BrowserContext> {
  const context = await (await theBrowser()).newContext({
    viewport: { width: 1280, height: 900 },
    locale: "en-US",
    timezoneId: "America/Denver",
    reducedMotion: "reduce",
    acceptDownloads: true,
    ...options,
  });
  context.setDefaultTimeout(15_000);
  open.push(watch(home, context));
  return context;
}

/** Opens the page for a new visitor; `place` is what follows the address, such as "#/one-run". */
export async function openPage(kind: KindOfPage, options: BrowserContextOptions = {}, place = ""): Promise<Page> {
  const page = await (await visitor(kind, options)).newPage();
  await page.goto(addressOf(kind) + place);
  return page;
}

/** What the browser complained of so far, once; for a test that provokes a complaint on purpose. */
export function takeComplaints(page: Page): string[] {
  const watched = open.find((one) => one.context === page.context());
  return watched ? watched.complaints.splice(0) : [];
}

afterEach(async () => {
  const visitors = open;
  open = [];
  await Promise.all(visitors.map(({ context }) => context.close()));
  expect(visitors.flatMap(({ complaints }) => complaints)).toEqual([]);
});

afterAll(async () => {
  await (await browser)?.close();
  browser = undefined;
});

/** Waits until the page has settled: nothing marked busy, fonts read, two frames drawn. */
export async function settle(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
  await page.evaluate(async () => {
    await document.fonts.ready;
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  });
}

/** Keeps a picture of the whole page under test/pages/shots/ (git-ignored). */
export async function keepPicture(page: Page, name: string): Promise<Buffer> {
  const folder = fileURLToPath(new URL("./shots/", import.meta.url));
  await mkdir(folder, { recursive: true });
  return page.screenshot({ path: `${folder}${name.replace(/\W+/g, "-")}.png`, fullPage: true });
}

const axeSource = readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const guidelines = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe-core finds against WCAG 2.2 A and AA, one line for each element. */
export async function barriers(page: Page): Promise<string[]> {
  // The driver's own evaluation is outside the page's policy, so the policy stays as shipped.
  await page.evaluate(await axeSource);
  const found: { id: string; help: string; nodes: { html: string; failureSummary?: string }[] }[] = await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(guidelines)}, resultTypes: ["violations"] }).then((r) => r.violations)`,
  );
  return found.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help}: ${node.html.slice(0, 200)} ${node.failureSummary ?? ""}`),
  );
}
