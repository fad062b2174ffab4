import { expect, test } from "vitest";
import { kindsOfPage, settle } from "./harness.ts";
import { number, openOneRun } from "./oneRun.ts";

/** Two and a half hours of a logger at 1 Hz: a saw of pours, in seconds and °F; invented for this test. */
function loggerFile(): string {
  const rows = ["seconds,temp F,water fl oz"];
  for (let s = 0; s <= 9000; s++) {
    const since = s % 600;
    const pour = s > 0 && since === 0 ? "12" : "";
    rows.push(`${s},${(288 + (3.2 * since) / 600 + 0.3 * Math.sin(s * 7.1)).toFixed(1)},${pour}`);
  }
  return rows.join("\n");
}

for (const kind of kindsOfPage) {
  test(`${kind}: a logger's file is read in a worker and answered`, async () => {
    const page = await openOneRun(kind);
    const workers: string[] = [];
    page.on("worker", (worker) => workers.push(worker.url()));
    await page
      .locator("main input[type=file]")
      .setInputFiles({ name: "logger.csv", mimeType: "text/csv", buffer: Buffer.from(loggerFile()) });
    await page.getByRole("heading", { level: 1, name: "logger" }).waitFor();
    await settle(page);
    expect(workers.length).toBe(1);
    const { value, low, high } = await number(page, "boil_off");
    // 14 pours of 12 fl oz keep an even saw for 150 minutes: 1.1 to 1.2 fl oz a minute went in and out.
    const ounceAMinute = 0.0295735 / 60;
    expect(low).toBeLessThan(1.2 * ounceAMinute);
    expect(high).toBeGreaterThan(1.1 * ounceAMinute);
    expect(value).toBeGreaterThan(low);
    expect(await page.locator("#log tbody tr").count()).toBeLessThan(200);
  });
}
