import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serveGrid } from "../support/grid/serveGrid.ts";
import { barriers, settle, visitor } from "./harness.ts";

let site: Awaited<ReturnType<typeof serveGrid>>;
beforeAll(async () => {
  site = await serveGrid();
});
afterAll(() => site.end());

async function openGrid(options: BrowserContextOptions = {}, place = ""): Promise<Page> {
  const page = await (await visitor("site", options, site.address)).newPage();
  await page.goto(site.address + place);
  await page.locator('.grid output[data-case="Small tank"], .grid output[data-case="case 1"]').first().waitFor();
  return page;
}

for (const width of [768, 1280])
  test(`six cases scroll in a named box of their own at ${width} px, and the hand is never under what stays`, async () => {
    const page = await openGrid({ viewport: { width, height: 900 } }, "#long=60");
    const box = page.getByRole("region", { name: "Lines and cases, more to the side" });
    await box.waitFor();
    expect(await box.getAttribute("tabindex")).toBe("0");
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await settle(page);
    expect(await barriers(page)).toEqual([]);
    const row = page.locator('[data-name="source 2 of it"]');
    await row.locator('[data-in-case="case 1"]').focus();
    for (const key of [...Array(5).fill("ArrowRight"), ...Array(5).fill("ArrowLeft")]) {
      await page.keyboard.press(key);
      await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
      const [here, name, outer] = await Promise.all([
        page.locator(":focus").boundingBox(),
        row.locator(".name").boundingBox(),
        box.boundingBox(),
      ]);
      if (!here || !name || !outer) throw new Error("nothing has the focus");
      expect(here.x).toBeGreaterThanOrEqual(name.x + name.width);
      expect(here.x + here.width).toBeLessThanOrEqual(outer.x + outer.width);
      expect(name.x).toBeGreaterThanOrEqual(outer.x);
    }
    expect(await page.locator(":focus").getAttribute("data-in-case")).toBe("case 1");
  });

// A sheet of US letter or A4 less a browser's usual margins and the page's own: common practice, no source.
test("on paper six cases break into blocks of three, each number with its case's name", async () => {
  const page = await openGrid({ viewport: { width: 670 + 96, height: 900 } }, "#long=60");
  await page.emulateMedia({ media: "print" });
  await settle(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  const row = page.locator('[data-name="source 2 of it"]');
  const places = await Promise.all(
    [1, 3, 4, 6].map((one) => row.locator(`[data-in-case="case ${one}"]`).boundingBox()),
  );
  const [first, third, fourth, sixth] = places;
  expect(fourth?.x).toBe(first?.x);
  expect(sixth?.x).toBe(third?.x);
  expect(fourth?.y ?? 0).toBeGreaterThanOrEqual((first?.y ?? 0) + (first?.height ?? 0));
  const edge = await row.boundingBox();
  expect((sixth?.x ?? 0) + (sixth?.width ?? 0)).toBeLessThanOrEqual((edge?.x ?? 0) + (edge?.width ?? 0));
});

test("money has its sign before the number, and words have a blank as wide as they are", async () => {
  const page = await openGrid();
  await page.evaluate(() => window.lines.set("cost for each blade", { worked: "salt for each blade * salt price" }));
  const cost = page.locator('output[data-line="cost_for_each_blade"][data-case="Small tank"][data-value]');
  await cost.waitFor();
  expect(await cost.textContent()).toMatch(/^\$\d/u);
  await page.evaluate(() => window.lines.set("burners", { given: "two rings" }));
  const blank = page.locator('[data-name="burners"] > [data-in-case="Longer tank"] .blank');
  await page.waitForFunction(() => document.querySelector('[data-name="burners"]')?.textContent?.includes("two rings"));
  const wide = await blank.evaluate((one) => {
    const words = document.createRange();
    words.selectNodeContents(one);
    return {
      words: words.getBoundingClientRect().width,
      blank: one.clientWidth,
      rule: getComputedStyle(one).backgroundSize,
    };
  });
  expect(wide.blank).toBeGreaterThanOrEqual(wide.words);
  expect(wide.rule).toBe("100% 2px");
});
