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
