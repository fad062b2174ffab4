import { expect, test } from "vitest";
import { openPage, settle } from "./harness.ts";

test("a held key asks the browser for no width at each step, and another width is still noticed", async () => {
  const page = await openPage("site", {}, "#my-question");
  await settle(page);
  await page.evaluate(() => {
    const root = document.documentElement;
    root.dataset.asked = "0";
    Object.defineProperty(root, "clientWidth", {
      configurable: true,
      get() {
        root.dataset.asked = String(Number(root.dataset.asked) + 1);
        return Math.round(root.getBoundingClientRect().width);
      },
    });
  });
  const asked = () => page.evaluate(() => Number(document.documentElement.dataset.asked));
  const cell = page.locator(
    '#lines [role=row]:has([data-line="gas_price"]) [role=gridcell][data-in-case="six blades"]',
  );
  await cell.focus();
  for (let step = 0; step < 10; step++) await page.keyboard.press("Alt+ArrowUp");
  await settle(page);
  // One reading is left for a scroll bar that came or went.
  expect(await asked()).toBeLessThanOrEqual(2);
  const width = () =>
    page
      .locator("figure svg")
      .first()
      .evaluate((svg) => svg.getBoundingClientRect().width);
  const wide = await width();
  await page.setViewportSize({ width: 600, height: 900 });
  await expect.poll(width).toBeLessThan(wide);
});
