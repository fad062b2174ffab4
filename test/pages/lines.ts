import type { Locator, Page } from "playwright-core";
import { settle } from "./harness.ts";

/** A button by its words. */
export const word = (page: Page, name: string | RegExp): Locator =>
  page.getByRole("button", { name, exact: typeof name === "string" });

/** The number of a line in a case as machines read it, SI, with the ends of its interval; once it is worked. */
export async function amount(page: Page, line: string, inCase: string): Promise<readonly [number, number, number]> {
  const output = page.locator(`#lines output[data-line="${line}"][data-case="${inCase}"][data-value]`).first();
  await output.waitFor({ timeout: 40_000 });
  const [value, low, high] = await Promise.all(
    ["value", "low", "high"].map((end) => output.getAttribute(`data-${end}`)),
  );
  return [Number(value), Number(low), Number(high)];
}

/** Waits until nothing is being worked out any more. */
export async function worked(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector("#at-work .at-work") === null, undefined, {
    timeout: 40_000,
  });
  await settle(page);
}

/** Writes over a given in a case by keyboard alone, once the page is there. */
export async function write(page: Page, line: string, inCase: string, text: string): Promise<void> {
  const cell = page.locator(`#lines [data-name="${line}"] [role=gridcell][data-in-case="${inCase}"]`);
  await cell.focus();
  await page.keyboard.press("Enter");
  await cell.locator("[data-blank]").fill(text);
  await page.keyboard.press("Enter");
}
