import { expect, test } from "vitest";
import { barriers, keepPicture, kindsOfPage, openPage, schemes, widths } from "./harness.ts";
import { answered } from "./oneRun.ts";

const places = ["#one-run", "#shop"] as const;

for (const kind of kindsOfPage) {
  for (const place of places) {
    for (const colorScheme of schemes) {
      for (const width of widths) {
        test(`${kind}: ${place} bars nobody's way at ${width} px, ${colorScheme}`, async () => {
          const viewport = { width, height: width === 390 ? 844 : 900 };
          const page = await openPage(kind, { colorScheme, viewport }, place);
          await answered(page);
          const picture = await keepPicture(page, `${kind} ${place} ${width} ${colorScheme}`);
          expect(picture.length).toBeGreaterThan(20_000);
          expect(await barriers(page)).toEqual([]);
          const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
          expect(overflow).toBeLessThanOrEqual(0);
        });
      }
    }
  }
}
