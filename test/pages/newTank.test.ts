import { expect, test } from "vitest";
import { barriers, keepPicture, openPage, schemes, settle, widths } from "./harness.ts";

const place = "#new-tank";

test.each(widths.flatMap((width) => schemes.map((scheme) => ({ width, scheme }))))(
  "it opens on the invented run with tanks proposed, $width px, $scheme, without barriers",
  async ({ width, scheme }) => {
    const page = await openPage("site", { viewport: { width, height: 900 }, colorScheme: scheme }, place);
    await page.getByRole("heading", { name: "What will a new tank take, and what will it do?", level: 1 }).waitFor();
    await page.locator('#lines output[data-line="boil_off"][data-value]').first().waitFor();
    await page.locator('svg[data-figure="a sweep"]').waitFor();
    await settle(page);
    expect(await page.getByText("Invented data").count()).toBeGreaterThan(0);
    expect(await page.locator('svg[data-figure="the tanks to scale"] [data-part="part"]').count()).toBe(
      width < 640 ? 2 : 6,
    );
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await barriers(page)).toEqual([]);
    await keepPicture(page, `new tank ${width} ${scheme}`);
  },
);
