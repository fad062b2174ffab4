import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { kindsOfPage, openPage, settle, visitor } from "./harness.ts";
import { evening } from "./logs.ts";
import { answered, changed, number, oneRun, openOneRun, typeRows, write } from "./oneRun.ts";

/** Readings every two minutes and a pour every ten, 24 fl oz each; the one at 30 minutes is not written. Invented. */
function forgottenPour(): string {
  const rows = ["time,temp F,water fl oz,remark"];
  let temperature = 288;
  for (let minute = 0; minute <= 58; minute += 2) {
    const pours = minute > 0 && minute % 10 === 0;
    rows.push(
      `${minute}:00,${Math.round(temperature)},${pours && minute !== 30 ? "24" : ""},${minute === 0 ? "boils" : ""}`,
    );
    temperature += pours ? -4 : 1;
  }
  return `${rows.join("\n")}\n`;
}

/** Nothing moves at all: a reading every three minutes, no water written. Invented. */
const steady = `time,temp F,remark\n${Array.from({ length: 16 }, (_, i) => `${3 * i}:00,291,${i === 0 ? "boils" : ""}`).join("\n")}\n`;

const allBlank = `time,temp F,water fl oz\n${Array.from({ length: 12 }, (_, i) => `${3 * i}:00,${Math.round(285 + 0.55 * i)},`).join("\n")}\n`;

const three = "time,temp F,remark\n0:00,287,boils\n10:00,290,\n20:00,292,\n";

let given = 0;

async function give(page: Page, text: string): Promise<void> {
  given += 1;
  const before = await page.getByRole("heading", { level: 1 }).textContent();
  await page
    .locator('main input[type="file"]')
    .setInputFiles({ name: `tonight ${given}.csv`, mimeType: "text/csv", buffer: Buffer.from(text) });
  await page.waitForFunction((was) => document.querySelector("h1")?.textContent !== was, before);
  await settle(page);
  expect(await page.getByText("could not be drawn").count()).toBe(0);
}

/** A page whose workers take their time before they hear of a job. */
async function openSlow(kind: (typeof kindsOfPage)[number], ms: number): Promise<Page> {
  const context = await visitor(kind);
  await context.addInitScript((delay) => {
    const send = Worker.prototype.postMessage;
    const slow = { on: false };
    Object.assign(window, { slowWorkers: slow });
    Worker.prototype.postMessage = function (this: Worker, message: unknown) {
      setTimeout(() => send.call(this, message), slow.on ? delay : 0);
    };
  }, ms);
  const page = await context.newPage();
  const fresh = await openPage(kind);
  await page.goto(fresh.url().split("#")[0] + oneRun);
  await answered(page);
  return page;
}

const slow = (page: Page, on: boolean) =>
  page.evaluate(
    (value) => Object.assign((window as unknown as { slowWorkers: object }).slowWorkers, { on: value }),
    on,
  );

for (const kind of kindsOfPage) {
  test(`${kind}: given, fitted and worked stand as three ledgers, each fitted line with what the log told`, async () => {
    const page = await openOneRun(kind);
    expect(await page.locator("#lines .ledger .title h3").allTextContents()).toEqual(["Given", "Fitted", "Worked"]);
    const rows = page.locator('#lines .line[data-kind="fitted"]');
    expect(await rows.count()).toBeGreaterThanOrEqual(7);
    for (const text of await rows.locator(".told").allTextContents()) expect(text).toMatch(/nothing|some|much/);
    expect(await rows.locator(".told svg").count()).toBe(await rows.count());
    for (const line of ["heat_into_the_bath", "boiling_point_offset", "water_to_come_back_to_target"]) {
      const { value, low, high } = await number(page, line);
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    }
    expect(await page.getByText("no number").count()).toBe(0);
  });

  test(`${kind}: a fit is done in a worker, and where none is allowed on the page's own thread`, async () => {
    const page = await openOneRun(kind);
    expect(page.workers().length).toBe(1);
    const usual = await number(page, "heat_into_the_bath");
    const context = await visitor(kind);
    await context.addInitScript(() => {
      window.Worker = class {
        constructor() {
          throw new DOMException("refused", "SecurityError");
        }
      } as unknown as typeof Worker;
    });
    const alone = await context.newPage();
    await alone.goto(page.url());
    await answered(alone);
    expect(alone.workers().length).toBe(0);
    expect(await number(alone, "heat_into_the_bath")).toEqual(usual);
  });

  test(`${kind}: while it is worked again the last answer stays, marked as before, and can be stopped`, async () => {
    const page = await openSlow(kind, 4000);
    const before = await number(page, "heat_into_the_bath");
    const shown = await page.locator('#lines output[data-line="heat_into_the_bath"]').textContent();
    await slow(page, true);
    const altitude = page.locator('main input[data-line="altitude"]');
    await altitude.fill("9000");
    await altitude.press("Tab");
    const stop = page.getByRole("button", { name: /^stop:/ });
    await stop.waitFor();
    expect(await page.locator("#answer [aria-busy=true]").count()).toBe(1);
    expect(await page.locator('output[data-line="heat_into_the_bath"][data-value]').count()).toBe(0);
    expect(await page.locator('#lines output[data-line="heat_into_the_bath"].before').textContent()).toBe(shown);
    expect(await page.locator("#answer").textContent()).toContain("before");
    // A figure half new and half old would mislead: it stays whole, and says that it is from before.
    expect(await page.locator("figure.stale").count()).toBeGreaterThan(0);
    await stop.click();
    await settle(page);
    expect(await page.locator("#at-work").textContent()).toContain("stopped by you");
    // The water balance is no slow work: its boil-off goes on standing in the answer.
    expect(await page.locator("#answer").textContent()).toContain("By its water balance alone it boiled off");
    await slow(page, false);
    await page.getByRole("button", { name: /^work again:/ }).click();
    const after = await changed(page, "heat_into_the_bath", before);
    expect(await page.locator("figure.stale").count()).toBe(0);
    expect(after.value).not.toBe(before.value);
    expect(await page.locator("#at-work").textContent()).not.toContain("stopped");
  });

  test(`${kind}: a newer edit ends the older work`, async () => {
    const page = await openSlow(kind, 4000);
    const before = await number(page, "heat_into_the_bath");
    await write(page, "altitude", "9000 ft");
    const high = await number(page, "heat_into_the_bath");
    await slow(page, true);
    const altitude = page.locator('main input[data-line="altitude"]');
    await altitude.fill("5000");
    await altitude.press("Tab");
    await page.getByRole("button", { name: /^stop:/ }).waitFor();
    await slow(page, false);
    await altitude.fill("9000");
    await altitude.press("Tab");
    await settle(page);
    expect(await number(page, "heat_into_the_bath")).toEqual(high);
    expect(high).not.toEqual(before);
  });

  test(`${kind}: a struck-out row is fitted without at once`, async () => {
    const page = await openOneRun(kind);
    await give(page, evening);
    const before = await number(page, "heat_into_the_bath");
    await page.getByRole("button", { name: "change the row at 8:16 pm" }).click();
    await page.getByRole("button", { name: /^strike out 291/ }).click();
    const after = await changed(page, "heat_into_the_bath", before);
    await page.getByRole("button", { name: /^Undo:/ }).click();
    expect(await changed(page, "heat_into_the_bath", after)).toEqual(before);
  });

  test(`${kind}: a pour that was probably not written is named, written with one word, and undone`, async () => {
    const page = await openOneRun(kind);
    await give(page, forgottenPour());
    const list = page.locator(".suspects");
    expect(await list.textContent()).toMatch(/made and not written, between the rows at 30:00 and 32:00|between/);
    const before = await number(page, "boil_off");
    const poured = await number(page, "poured_in_all");
    await list
      .getByRole("button", { name: /^write the pour of/ })
      .first()
      .click();
    await changed(page, "boil_off", before);
    // About one more pour of 24 fl oz: 24 x 0.0295735 l (NIST Handbook 44) at 0.998 kg/l.
    const more = (await number(page, "poured_in_all")).value - poured.value;
    expect(more).toBeGreaterThan(0.5 * 24 * 0.0295);
    expect(more).toBeLessThan(2 * 24 * 0.0295);
    await page.getByRole("button", { name: /^Undo: the pour of .* was not written/ }).click();
    await settle(page);
    expect(await number(page, "poured_in_all")).toEqual(poured);
  });

  test(`${kind}: a reading that is probably misread is named and struck out with one word`, async () => {
    const page = await openOneRun(kind);
    // Ten degrees off, as a 9 is read for a 0.
    await give(page, evening.replace("8:16 pm,291", "8:16 pm,281"));
    const list = page.locator(".suspects");
    await list.getByRole("button", { name: /^strike out 281/ }).click();
    await settle(page);
    expect(await page.locator("#log s", { hasText: "281" }).count()).toBe(1);
    expect(await page.locator(".suspects", { hasText: "281" }).count()).toBe(0);
    await page.getByRole("button", { name: /^Undo:/ }).click();
    await settle(page);
    expect(await page.locator("#log s").count()).toBe(0);
  });

  test(`${kind}: what to log next is ranked, each with what it would gain`, async () => {
    const page = await openOneRun(kind);
    await give(page, evening);
    const items = page.locator(".ranked li");
    expect(await items.count()).toBeGreaterThan(0);
    for (const text of await items.locator(".gain").allTextContents())
      expect(text).toMatch(/^Would narrow the (boil-off|water to come back to target) from ±[\d.,]+.* to ±[\d.,]+/);
  });

  test.each([
    ["a hold that never moves", steady],
    ["a water column that is blank all the way", allBlank],
    ["three readings", three],
  ])(`${kind}: %s gives a useful page`, async (_, log) => {
    const page = await openOneRun(kind);
    await give(page, log);
    const { low, high } = await number(page, "boil_off");
    expect(low).toBeGreaterThanOrEqual(0);
    expect(high).toBeGreaterThan(low);
    expect(await page.locator("figure svg").count()).toBeGreaterThanOrEqual(2);
    expect(await page.locator("#answer").textContent()).not.toContain("stopped");
    // No more minutes in the band than the hold has.
    const inBand = Number(await page.locator("#answer output[data-line=minutes_in_band]").textContent());
    const hold = Number(await page.locator("#answer output[data-line=hold_time]").textContent());
    expect(inBand).toBeLessThanOrEqual(hold);
  });

  test(`${kind}: the two ways of working are named where they disagree, with which to trust; else one fold says they agree`, async () => {
    const page = await openOneRun(kind);
    await give(page, evening);
    const fold = page.locator("details.fold", { has: page.locator("h3", { hasText: "Two ways of working" }) });
    expect(await fold.locator("summary").textContent()).toContain("both ways agree");
    expect(await page.locator("#answer").textContent()).not.toContain("disagree");
    // A fire of 59 kW under a bath whose boiling point stands still: the setup and the readings can't both be right.
    await give(page, steady.replace("remark", "note"));
    await write(page, "burner_rate", "200000");
    const answer = page.locator("#answer");
    expect(await answer.textContent()).toContain("The two ways of working disagree");
    expect(await answer.textContent()).toMatch(/Trust the (fitted bath|water balance):/);
    expect(await answer.locator('output[data-line="boil_off_by_water_balance"]').count()).toBe(1);
    expect(await fold.locator("summary").textContent()).toContain("disagree");
    const [fitted, balance] = [await number(page, "boil_off"), await number(page, "boil_off_by_water_balance")];
    const half = ({ low, high }: { low: number; high: number }) => (high - low) / 2;
    expect(Math.abs(fitted.value - balance.value)).toBeGreaterThan(Math.hypot(half(fitted), half(balance)));
  });

  test(`${kind}: remarks that makers write at the tank become events, or are asked about`, async () => {
    const page = await openOneRun(kind);
    await page.getByRole("button", { name: "write one by hand" }).click();
    const remarks = [
      "boils",
      "parts in 4 lb",
      "burner to 3/4",
      "drip on 5 fl oz/min",
      "drip off",
      "burner to 70 %",
      "parts out",
      "burner down",
    ];
    await typeRows(
      page,
      remarks.map((remark, i) => ({ time: `${3 * i}:00`, temperature: `${287 + (i % 3)}`, remark })),
    );
    const drawn = await page.locator("figure svg").first().textContent();
    for (const event of ["parts in", "parts out", "burner to 3/4"]) expect(drawn).toContain(event);
    // The drip ran for three minutes: 15 fl oz of 29.5735 ml (NIST Handbook 44) at 0.998 kg/l.
    expect((await number(page, "poured_in_all")).value).toBeCloseTo(15 * 0.0295735 * 0.998, 2);
    expect(await page.locator("#open-ends").textContent()).toContain("how far the burner is open");
    expect(await page.locator("#lines").textContent()).toContain("first burner change");
  });

  test(`${kind}: a log with one reading says what is missing, and the page stays`, async () => {
    const page = await openOneRun(kind);
    await page
      .locator('main input[type="file"]')
      .setInputFiles({ name: "short.csv", mimeType: "text/csv", buffer: Buffer.from("time,temp F\n0:00,287\n") });
    await page.getByRole("heading", { level: 1, name: "short" }).waitFor();
    await settle(page);
    expect(await page.locator("#answer").textContent()).toMatch(/stopped.*reading/);
    expect(await page.locator("#lines .ledger").count()).toBe(3);
    expect(await page.locator("#log tbody tr").count()).toBe(1);
  });
}
