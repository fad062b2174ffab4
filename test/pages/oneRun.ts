import type { BrowserContextOptions, Locator, Page } from "playwright-core";
import { type KindOfPage, openPage, settle } from "./harness.ts";

/** A number as the page gives it to machines, in SI. */
export type Shown = { value: number; low: number; high: number };

/** The address of the notebook behind the page's own. */
export const oneRun = "#one-run";

/** Opens One run for a new visitor and waits until it has answered. */
export async function openOneRun(kind: KindOfPage, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await openPage(kind, options, oneRun);
  await answered(page);
  return page;
}

/** Waits until the answer has settled: a number of it stands, nothing is busy. */
export async function answered(page: Page): Promise<void> {
  await page.locator("main output[data-line][data-value]").first().waitFor();
  await settle(page);
}

/** The number of a line as it stands in the answer or among the lines. */
export async function number(page: Page, line: string): Promise<Shown> {
  const output = page.locator(`output[data-line="${line}"][data-value]`).first();
  await output.waitFor();
  const [value = Number.NaN, low = Number.NaN, high = Number.NaN] = await Promise.all(
    ["data-value", "data-low", "data-high"].map(async (name) =>
      Number((await output.getAttribute(name)) ?? Number.NaN),
    ),
  );
  return { value, low, high };
}

/** Waits until a line's value is no longer what it was, and gives the new one. */
export async function changed(page: Page, line: string, from: Shown): Promise<Shown> {
  await page.waitForFunction(
    ({ line, value }) => {
      const output = document.querySelector(`output[data-line="${line}"][data-value]`);
      const busy = document.querySelector('[aria-busy="true"]');
      return !busy && output && Number(output.getAttribute("data-value")) !== value;
    },
    { line, value: from.value },
  );
  return number(page, line);
}

/** The write-on blank of a given. */
export function blank(page: Page, line: string): Locator {
  return page.locator(`main :is(input, select)[data-line="${line}"]`);
}

/** Writes into the blank of a given and leaves it. */
export async function write(page: Page, line: string, text: string): Promise<void> {
  const field = blank(page, line);
  await field.scrollIntoViewIfNeeded();
  await field.fill(text);
  await field.press("Tab");
  await settle(page);
}

export type Row = { time: string; temperature?: string; water?: string; unit?: string; remark?: string };

/** Types a log row by row into the form of the page, as a maker does with a number pad. */
export async function typeRows(page: Page, rows: readonly Row[]): Promise<void> {
  const form = page.locator("#log form#row");
  for (const { time, temperature = "", water = "", unit, remark = "" } of rows) {
    await form.getByLabel("time").fill(time);
    await form.locator('[name="temperature"]').fill(temperature);
    await form.locator('[name="water"]').fill(water);
    if (unit) await form.locator('[name="waterUnit"]').selectOption(unit);
    await form.locator('[name="remark"]').fill(remark);
    await form.getByRole("button", { name: "write it down" }).click();
  }
  await settle(page);
}

/** Gives the page rows as a table copied elsewhere would be pasted. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((rows) => {
    const data = new DataTransfer();
    data.setData("text/plain", rows);
    const event = new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true });
    (document.activeElement ?? document.body).dispatchEvent(event);
  }, text);
}

/** Drops a file onto the middle of the page. */
export async function drop(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([name, text]) => {
      const data = new DataTransfer();
      data.items.add(new File([text ?? ""], name ?? "", { type: "text/csv" }));
      const target = document.querySelector("main") ?? document.body;
      for (const type of ["dragenter", "dragover", "drop"])
        target.dispatchEvent(new DragEvent(type, { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    [name, text],
  );
}
