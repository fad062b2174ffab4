import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { barriers, keepPicture, openPage, schemes, widths } from "./harness.ts";
import * as lines from "./lines.ts";
import { word, write } from "./lines.ts";

const place = "#compare-setups";
const base = "Four camp knives";
const fire = "supposed: a bigger fire";

const amount = async (page: Page, line: string, inCase: string): Promise<number> =>
  (await lines.amount(page, line, inCase))[0];

async function worked(page: Page): Promise<void> {
  await amount(page, "freeboard", base);
  await lines.worked(page);
}

test.each(widths.flatMap((width) => schemes.map((scheme) => ({ width, scheme }))))(
  "it opens on the invented run, $width px, $scheme, without barriers",
  async ({ width, scheme }) => {
    const page = await openPage("site", { viewport: { width, height: 900 }, colorScheme: scheme }, place);
    await page.getByRole("heading", { name: "Which tank, on which fire?", level: 1 }).waitFor();
    await worked(page);
    expect(await page.getByText("Invented data").count()).toBeGreaterThan(0);
    expect(await page.locator("figure svg").count()).toBe(2);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await barriers(page)).toEqual([]);
    await keepPicture(page, `compare setups ${width} ${scheme}`);
  },
);

test("on a phone every place along the bottom edge can be seen and touched", async () => {
  const page = await openPage("site", { viewport: { width: 390, height: 844 }, hasTouch: true }, place);
  const places = page.locator("nav[aria-label=Notebooks] a");
  for (let i = 0; i < (await places.count()); i++) {
    const box = await places.nth(i).boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(390);
    expect(box?.height).toBeGreaterThanOrEqual(44);
    expect((box?.y ?? 0) + (box?.height ?? 999)).toBeLessThanOrEqual(844);
  }
});

test("how sure one beats the base stands in a table, and a bigger fire surely boils sooner", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  const cell = (line: string) => page.locator(`#wins [data-wins="${line}"][data-case="${fire}"]`).textContent();
  expect(await cell("minutes to the boil")).toBe("over 99 %");
  expect(await cell("freeboard")).toBe("hardly apart");
});

test("a supposed change is written by keyboard, undone by name, and still there after a reload", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  const before = await amount(page, "gas_burnt", base);
  expect(await amount(page, "gas_burnt", fire)).toBeCloseTo(1.4 * before, 6);
  await write(page, "fire against the log", fire, "1.2");
  await expect.poll(() => amount(page, "gas_burnt", fire), { timeout: 20_000 }).toBeCloseTo(1.2 * before, 6);
  await word(page, `Undo: fire against the log of ${fire} was 1.4`).click();
  await expect.poll(() => amount(page, "gas_burnt", fire), { timeout: 20_000 }).toBeCloseTo(1.4 * before, 6);
  await word(page, `Redo: fire against the log of ${fire} is 1.2`).click();
  await expect.poll(() => amount(page, "gas_burnt", fire), { timeout: 20_000 }).toBeCloseTo(1.2 * before, 6);
  await page.waitForFunction(() => /kept \d/.test(document.querySelector(".kept-at")?.textContent ?? ""));
  await page.reload();
  await worked(page);
  expect(await amount(page, "gas_burnt", fire)).toBeCloseTo(1.2 * before, 6);
  expect(await amount(page, "gas_burnt", base)).toBeCloseTo(before, 6);
});

test("a case from a setup is compared by handbook priors once its burner and depth are written", async () => {
  const page = await openPage("site", {}, place);
  await worked(page);
  await word(page, "add a case").click();
  const form = page.locator("#ask-case");
  await form.locator("[name=from]").selectOption("setup demo-setup-small");
  await form.getByRole("button", { name: "add it" }).click();
  const small = "Short tank on one burner";
  await write(page, "liquid depth", small, "3 in");
  await page.getByRole("button", { name: /lines seldom needed/ }).click();
  await write(page, "burner rate", small, "20,000 BTU/h");
  expect(await amount(page, "boil_off", small)).toBeGreaterThan(0);
  // 20,000 BTU/h, exact.
  expect(await amount(page, "gas_burnt", small)).toBeCloseTo((20_000 * 1055.05585262) / 3600, 6);
  await worked(page);
  expect(await barriers(page)).toEqual([]);
});
