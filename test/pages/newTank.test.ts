import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { barriers, keepPicture, openPage, schemes, widths } from "./harness.ts";
import * as lines from "./lines.ts";
import { word, write } from "./lines.ts";

const place = "#new-tank";
const base = "Straight";
const inch = 0.0254;

const amount = (page: Page, line: string, inCase = base) => lines.amount(page, line, inCase);

async function worked(page: Page): Promise<void> {
  await amount(page, "boil_off");
  await page.locator('svg[data-figure="a sweep"]').waitFor({ timeout: 40_000 });
  await lines.worked(page);
}

test.each(widths.flatMap((width) => schemes.map((scheme) => ({ width, scheme }))))(
  "it opens on the invented run with tanks proposed, $width px, $scheme, without barriers",
  async ({ width, scheme }) => {
    const page = await openPage("site", { viewport: { width, height: 900 }, colorScheme: scheme }, place);
    await page.getByRole("heading", { name: "What will a new tank take, and what will it do?", level: 1 }).waitFor();
    await worked(page);
    expect(await page.getByText("Invented data").count()).toBeGreaterThan(0);
    // From above and from the side: three tanks on a desk, one on a phone.
    const parts = page.locator('svg[data-figure="the tanks to scale"] [data-part="part"]');
    expect(await parts.count()).toBe(width < 640 ? 2 : 6);
    expect(await page.locator("#answer .clause").count()).toBeLessThanOrEqual(3);
    expect(await page.locator("#never-of").textContent()).toContain("Aluminium");
    expect(await page.locator("#who-decides").textContent()).toContain("licensed gas fitter");
    expect(await page.locator("#other-tanks dt").allTextContents()).toEqual(["clean", "rinse", "boiling rinse", "oil"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await barriers(page)).toEqual([]);
    await keepPicture(page, `new tank ${width} ${scheme}`);
  },
);

test("the same number stands in the answer, among the lines and beside proportion", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  const shown = await page
    .locator(`output[data-line="boil_off"][data-value]`)
    .evaluateAll((all) =>
      all
        .filter((one) => (one.getAttribute("data-case") ?? "Straight") === "Straight" && one.closest("dd") === null)
        .map((one) => [one.getAttribute("data-value"), one.textContent]),
    );
  expect(shown.length).toBeGreaterThan(1);
  expect(new Set(shown.map(String)).size).toBe(1);
  const beside = page.locator('#proportion output[data-line="boil_off"]').first();
  expect([await beside.getAttribute("data-value"), await beside.textContent()]).toEqual(shown[0]);
});

test("a longer part is written by keyboard, undone by name, and still there after a reload", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  const length = async () => (await amount(page, "new_length"))[0] / inch;
  expect(await length()).toBeCloseTo(42, 6);
  await write(page, "part length", base, "46 in");
  await expect.poll(length, { timeout: 20_000 }).toBeCloseTo(48, 6);
  await word(page, /^Undo: part length/).click();
  await expect.poll(length, { timeout: 20_000 }).toBeCloseTo(42, 6);
  await word(page, /^Redo: part length/).click();
  await expect.poll(length, { timeout: 20_000 }).toBeCloseTo(48, 6);
  await page.waitForFunction(() => /kept \d/.test(document.querySelector(".kept-at")?.textContent ?? ""));
  await page.reload();
  await worked(page);
  expect(await length()).toBeCloseTo(48, 6);
});

test("plain water boiled in the new tank narrows its answer", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  const wide = async () => {
    const [value, low, high] = await amount(page, "boil_off");
    return (high - low) / value;
  };
  const before = await wide();
  await word(page, /lines seldom needed/).click();
  // As reckoned by hand in test/notebooks/newTank.test.ts.
  await write(page, "plain water put in", base, "42 lb");
  await write(page, "warmed from", base, "60 °F");
  await write(page, "warmed to", base, "190 °F");
  await write(page, "warmed in", base, "39 min");
  await expect.poll(wide, { timeout: 30_000 }).toBeLessThan(0.8 * before);
});
