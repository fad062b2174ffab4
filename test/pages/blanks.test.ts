import { expect, test } from "vitest";
import { kindsOfPage, settle } from "./harness.ts";
import { blank, changed, number, openOneRun, write } from "./oneRun.ts";

for (const kind of kindsOfPage) {
  test(`${kind}: what is typed counts at a pause, and until then no number stands for machines`, async () => {
    const page = await openOneRun(kind);
    const before = await number(page, "ratio_start");
    await blank(page, "altitude").fill("7000");
    expect(await page.locator("output[data-line=ratio_start][data-value]").count()).toBe(0);
    expect(await page.locator('[aria-busy="true"]').count()).toBeGreaterThan(0);
    const after = await changed(page, "ratio_start", before);
    expect(after.value).toBeGreaterThan(before.value);
    expect(await blank(page, "altitude").inputValue()).toBe("7000");
  });

  test(`${kind}: givens of a new log are marked as carried over until they are looked at`, async () => {
    const page = await openOneRun(kind);
    expect(await page.getByText("carried over, check").count()).toBe(0);
    await page.getByRole("button", { name: "write one by hand" }).click();
    const marks = page.locator("#lines").getByText("carried over, check");
    await marks.first().waitFor();
    const carried = await marks.count();
    expect(await blank(page, "target").inputValue()).not.toBe("");
    await write(page, "altitude", "100 ft");
    expect(await marks.count()).toBe(carried - 1);
    // A thermometer check belongs to one thermometer: the invented one says nothing about the maker's.
    expect(await blank(page, "thermometer_in_boiling_water").inputValue()).toBe("");
    await page.getByRole("button", { name: "they hold for this run" }).click();
    await settle(page);
    expect(await marks.count()).toBe(0);
  });

  test(`${kind}: Esc puts back what stood in a blank`, async () => {
    const page = await openOneRun(kind);
    const was = await blank(page, "altitude").inputValue();
    await blank(page, "altitude").fill("9999");
    await blank(page, "altitude").press("Escape");
    await settle(page);
    expect(await blank(page, "altitude").inputValue()).toBe(was);
  });

  test(`${kind}: what can't be is refused beside its blank, which keeps it`, async () => {
    const page = await openOneRun(kind);
    await write(page, "sodium_hydroxide", "-5 lb");
    const field = blank(page, "sodium_hydroxide");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await field.inputValue()).toBe("-5 lb");
    expect(await page.locator("#said-sodium_hydroxide").textContent()).toContain("too low");
    await write(page, "sodium_hydroxide", "24 parsecs");
    expect(await field.inputValue()).toBe("24 parsecs");
  });

  test(`${kind}: a file that is no log leaves the open run as it was, and says why`, async () => {
    const page = await openOneRun(kind);
    const title = await page.getByRole("heading", { level: 1 }).textContent();
    const junk = {
      name: "holiday.csv",
      mimeType: "text/csv",
      buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]),
    };
    await page.locator("main input[type=file]").setInputFiles(junk);
    await page.getByText("reads as a log").waitFor();
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(title);
  });
}
