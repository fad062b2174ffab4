import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { barriers, keepPicture, openPage, schemes, settle, widths } from "./harness.ts";

const place = "#plan-a-hold";

test.each(widths.flatMap((width) => schemes.map((scheme) => ({ width, scheme }))))(
  "it opens on the invented run, $width px, $scheme, without barriers",
  async ({ width, scheme }) => {
    const page = await openPage("site", { viewport: { width, height: 900 }, colorScheme: scheme }, place);
    await page.getByRole("heading", { name: "How shall I feed the next hold?", level: 1 }).waitFor();
    await page.locator('#answer output[data-line="holds_with_the_table"][data-value]').first().waitFor();
    await settle(page);
    expect(await page.getByText("Invented data").count()).toBeGreaterThan(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await barriers(page)).toEqual([]);
    await keepPicture(page, `plan a hold ${width} ${scheme}`);
  },
);

/** The page with its plan worked out, and printing left to the test. */
async function planned(options: Parameters<typeof openPage>[1] = {}): Promise<Page> {
  const page = await openPage("site", options, place);
  await page.locator('#answer output[data-line="holds_with_the_table"][data-value]').first().waitFor();
  await settle(page);
  await page.evaluate(() => {
    window.print = () => {};
  });
  return page;
}

/** Sets a given of the first case in its place. */
async function change(page: Page, line: string, to: string): Promise<void> {
  await page.locator(`[data-name="${line}"] > [data-in-case]`).first().click();
  const blank = page.locator("[data-blank]");
  await blank.waitFor();
  if ((await blank.evaluate((one) => one.tagName)) === "SELECT") await blank.selectOption(to);
  else await blank.fill(to);
  await page.keyboard.press("Enter");
}

const pagesOf = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

test.each([
  { feeding: "steady drip", format: "Letter" },
  { feeding: "steady drip", format: "A4" },
  { feeding: "pours", format: "Letter" },
])("the feed card prints as one page alone: $feeding on $format", async ({ feeding, format }) => {
  const page = await planned();
  if (feeding === "pours") {
    await change(page, "feeding", feeding);
    await page.locator('#lines output[data-line="each_pour"][data-value]').first().waitFor();
    await settle(page);
  }
  await page.getByRole("button", { name: "print the feed card" }).click();
  await page.emulateMedia({ media: "print" });
  const width = format === "A4" ? 703 : 725;
  await page.setViewportSize({ width, height: format === "A4" ? 1031 : 965 });
  await keepPicture(page, `feed card ${feeding} ${format}`);
  expect(await page.locator("h1").isVisible()).toBe(false);
  const order = page.locator(".card-order");
  expect(await order.evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize))).toBe(47);
  expect(await order.evaluate((one) => one.scrollWidth <= one.clientWidth)).toBe(true);
  await page.emulateMedia({});
  const pdf = await page.pdf({ format });
  expect(pagesOf(pdf)).toBe(1);
});

test("what is given is kept over a reload, and the plan is worked anew from it", async () => {
  const page = await planned();
  await change(page, "hold time", "20 min");
  const hold = page.locator('[data-name="hold time"] > [data-in-case]').first();
  await expect.poll(() => hold.textContent()).toMatch(/20/);
  await settle(page);
  await page.locator('#answer output[data-line="water_in_all"][data-value]').first().waitFor();
  await expect.poll(() => page.locator(".card-hold").textContent()).toMatch(/for 20 min/);
  await page.getByText(/^kept/).first().waitFor();
  await page.reload();
  await page.locator('#answer output[data-line="holds_with_the_table"][data-value]').first().waitFor();
  await settle(page);
  expect(await hold.textContent()).toMatch(/20/);
  expect(await page.locator(".card-hold").textContent()).toMatch(/for 20 min/);
});

test("a plan at work says how far it is, can be stopped, and is worked again when asked", async () => {
  const page = await openPage("site", {}, place);
  const stop = page.getByRole("button", { name: /^stop: / }).first();
  await stop.waitFor();
  const stopped = page.getByText("stopped by you:").first();
  await expect
    .poll(async () => {
      await stop.click({ timeout: 200 }).catch(() => {});
      return stopped.isVisible();
    })
    .toBe(true);
  expect(await page.locator('#answer output[data-line="holds_with_the_table"][data-value]').count()).toBe(0);
  // What was stopped is worked again one by one: words to do so stand only while nothing is at work.
  const again = page.getByRole("button", { name: /^work again: / }).first();
  await expect
    .poll(
      async () => {
        await again.click({ timeout: 200 }).catch(() => {});
        return page.locator("svg[data-figure='planned hold']").count();
      },
      { timeout: 30_000 },
    )
    .toBe(1);
  await page.locator('#answer output[data-line="holds_with_the_table"][data-value]').first().waitFor();
  expect(await page.locator("svg[data-figure='planned hold']").count()).toBe(1);
});

test("the whole notebook prints too, its figures and table with it", async () => {
  const page = await planned();
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("svg[data-figure='planned hold']").isVisible()).toBe(true);
  expect(await page.locator("table.corrections").isVisible()).toBe(true);
  expect(await page.locator("h1").isVisible()).toBe(true);
});
