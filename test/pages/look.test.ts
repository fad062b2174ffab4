import { expect, test } from "vitest";
import { barriers, keepPicture, kindsOfPage, openPage, schemes, settle, widths } from "./harness.ts";

for (const kind of kindsOfPage) {
  for (const colorScheme of schemes) {
    for (const width of widths) {
      test(`${kind}: nothing in the way at ${width} px, ${colorScheme}`, async () => {
        const viewport = { width, height: width === 390 ? 844 : 900 };
        const page = await openPage(kind, { colorScheme, viewport });
        await settle(page);
        const picture = await keepPicture(page, `${kind} ${width} ${colorScheme}`);
        expect(picture.length).toBeGreaterThan(1000);
        expect(await barriers(page)).toEqual([]);
        const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(overflow).toBeLessThanOrEqual(0);
      });
    }
  }
}
