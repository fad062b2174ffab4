import { expect, test } from "vitest";
import { kindsOfPage, settle } from "./harness.ts";
import { copiedRows, evening } from "./logs.ts";
import { answered, blank, changed, drop, number, openOneRun, paste, typeRows, write } from "./oneRun.ts";

const fileOf = (text: string) => ({ name: "evening.csv", mimeType: "text/csv", buffer: Buffer.from(text) });

/** Water boils off a tank on a propane fire at some tenths of a gram to some tens of grams a second, whatever its size. */
const aBoilOff = { least: 1e-4, most: 5e-2 };

for (const kind of kindsOfPage) {
  test(`${kind}: a first visit to One run shows the invented run, worked out and marked as invented`, async () => {
    const page = await openOneRun(kind);
    for (const line of ["boil_off", "make_up", "minutes_in_band", "ratio_start", "ratio_end"]) {
      const { value, low, high } = await number(page, line);
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    }
    expect(await page.locator("main").textContent()).toContain("Invented data");
    expect(await page.locator("figure svg").count()).toBeGreaterThan(0);
  });

  test(`${kind}: the notebooks are reached by links that bear their names`, async () => {
    const page = await openOneRun(kind);
    await page.getByRole("link", { name: "Shop", exact: true }).first().click();
    await page.getByRole("heading", { level: 1, name: "Shop" }).waitFor();
    await page.getByRole("link", { name: "One run", exact: true }).first().click();
    await answered(page);
    expect(await page.locator("main").textContent()).toContain("Invented data");
  });

  test(`${kind}: a chosen CSV file is answered at once, and is still there after a reload`, async () => {
    const page = await openOneRun(kind);
    const demo = await number(page, "boil_off");
    expect(await page.locator('main input[type="file"]').count()).toBe(1);
    await page.locator('main input[type="file"]').setInputFiles(fileOf(evening));
    const mine = await changed(page, "boil_off", demo);
    expect(mine.value).toBeGreaterThan(aBoilOff.least);
    expect(mine.value).toBeLessThan(aBoilOff.most);
    expect(await page.locator("h1").textContent()).not.toBe("");
    expect(await page.locator("main").textContent()).toContain("carried over, check");
    await page.getByText(/^kept \d\d:\d\d$/).waitFor();
    await page.reload();
    await answered(page);
    expect(await number(page, "boil_off")).toEqual(mine);
  });

  test(`${kind}: a CSV file dropped anywhere on the page is answered`, async () => {
    const page = await openOneRun(kind);
    const demo = await number(page, "boil_off");
    await drop(page, "evening.csv", evening);
    const { value } = await changed(page, "boil_off", demo);
    expect(value).toBeGreaterThan(aBoilOff.least);
  });

  test(`${kind}: rows copied from a table and pasted anywhere are answered`, async () => {
    const page = await openOneRun(kind);
    const demo = await number(page, "boil_off");
    await paste(page, copiedRows);
    const { value } = await changed(page, "boil_off", demo);
    expect(value).toBeGreaterThan(aBoilOff.least);
  });

  test(`${kind}: a log typed row by row at 390 px is answered`, async () => {
    const page = await openOneRun(kind, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    await page.getByRole("button", { name: "write one by hand" }).click();
    await typeRows(page, [
      { time: "740", temperature: "289", remark: "boils" },
      { time: "746", temperature: "292", remark: "parts in" },
      { time: "750", temperature: "294" },
      { time: "751", water: "24", unit: "fl oz" },
      { time: "755", temperature: "291" },
      { time: "800", temperature: "293" },
      { time: "801", water: "24" },
      { time: "806", temperature: "291" },
      { time: "811", temperature: "294", remark: "end" },
    ]);
    const { value, low, high } = await number(page, "boil_off");
    expect(value).toBeGreaterThan(aBoilOff.least);
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    expect(await page.locator("#log tbody tr").count()).toBe(9);
  });

  test(`${kind}: a changed given changes the answer, and undo brings both back`, async () => {
    const page = await openOneRun(kind);
    const before = await number(page, "ratio_start");
    const was = await blank(page, "altitude").inputValue();
    await write(page, "altitude", "9000 ft");
    const after = await changed(page, "ratio_start", before);
    // Less air above the bath: the same reading is a stronger brine.
    expect(after.value).toBeGreaterThan(before.value);
    await page.getByRole("button", { name: /^Undo: altitude was/ }).click();
    expect(await changed(page, "ratio_start", after)).toEqual(before);
    expect(await blank(page, "altitude").inputValue()).toBe(was);
  });

  test(`${kind}: metric shows the same run in metric units, and the numbers for machines stay`, async () => {
    const page = await openOneRun(kind);
    const us = await number(page, "boil_off");
    expect(await page.locator("#answer").textContent()).toContain("°F");
    await page.locator("label", { hasText: "metric" }).click();
    await settle(page);
    const words = await page.locator("#answer").textContent();
    expect(words).toContain("°C");
    expect(words).not.toMatch(/°F|fl oz|\bgal\b|\blb\b/);
    expect(await number(page, "boil_off")).toEqual(us);
    await page.locator("label", { hasText: /^US$/ }).click();
    expect(await page.locator("#answer").textContent()).toContain("°F");
  });

  test(`${kind}: a row that is struck out leaves the answer and stays legible`, async () => {
    const page = await openOneRun(kind);
    const demo = await number(page, "boil_off");
    await page.locator('main input[type="file"]').setInputFiles(fileOf(evening));
    const before = await changed(page, "boil_off", demo);
    await page.getByRole("button", { name: "change the row at 8:24 pm" }).click();
    await page.getByRole("button", { name: /^strike out 294/ }).click();
    const after = await changed(page, "boil_off", before);
    expect(await page.locator("#log s", { hasText: "294" }).count()).toBe(1);
    // The keyboard goes on where it was: on the words that would put it back.
    await page.waitForFunction(() => document.activeElement?.textContent?.includes("put back"));
    await page.getByRole("button", { name: /^Undo:/ }).click();
    expect(await changed(page, "boil_off", after)).toEqual(before);
  });

  test(`${kind}: a second open tab shows what the first one changed`, async () => {
    const page = await openOneRun(kind);
    const second = await page.context().newPage();
    await second.goto(page.url());
    await answered(second);
    const before = await number(second, "ratio_start");
    await write(page, "altitude", "9000 ft");
    await changed(page, "ratio_start", before);
    expect(await changed(second, "ratio_start", before)).toEqual(await number(page, "ratio_start"));
  });
}
