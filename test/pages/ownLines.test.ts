import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { barriers, keepPicture, settle } from "./harness.ts";
import { answered, blank, changed, number, openOneRun, write } from "./oneRun.ts";

const word = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function add(page: Page, name: string, kind: "given" | "worked", text: string, unit = ""): Promise<void> {
  await word(page, "add a line").click();
  const form = page.locator("#ask-line");
  await form.locator("[name=kind]").selectOption(kind);
  await form.locator("[name=name]").fill(name);
  await form.locator("[name=text]").fill(text);
  await form.locator("[name=unit]").fill(unit);
  await form.getByRole("button", { name: "add it" }).click();
}

const another = (page: Page, run: string) => page.getByLabel("another run").selectOption({ label: run });

test("lines of the maker's own stand in One run, for every run, each with its own givens", async () => {
  const page = await openOneRun("site");
  const boilOff = (await number(page, "boil_off")).value;
  await add(page, "jugs an hour", "worked", "boil-off * 1 h / jug", "");
  await add(page, "jug", "given", "1 qt");
  // A US quart of water at the density of cold water: kg of water that a jug holds (0.946352946 l by NIST HB 44, appendix C).
  const jugs = (await number(page, "jugs_an_hour")).value;
  const quart = (boilOff * 3600) / jugs;
  expect(quart).toBeGreaterThan(0.94);
  expect(quart).toBeLessThan(0.95);
  await write(page, "jug", "2 qt");
  await expect.poll(async () => (await number(page, "jugs_an_hour")).value / jugs).toBeCloseTo(0.5, 9);
  // Another run: the line is there, worked with what holds there; what was written for this run stays with it.
  await another(page, "Windy night (invented data)");
  await answered(page);
  const other = (await number(page, "boil_off")).value;
  expect(((await number(page, "jugs_an_hour")).value * quart) / (other * 3600)).toBeCloseTo(1, 9);
  await page.reload();
  await answered(page);
  expect(((await number(page, "jugs_an_hour")).value * quart) / (other * 3600)).toBeCloseTo(1, 9);
  await another(page, "Four camp knives (invented data)");
  await answered(page);
  expect((await number(page, "jugs_an_hour")).value / jugs).toBeCloseTo(0.5, 9);
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, "one run, own lines");
});

test("every line of a ledger opens in its place: ours is read and stays, the maker's own is changed", async () => {
  const page = await openOneRun("site");
  const before = await number(page, "boil_off");
  const hand = page.locator("#lines .line-in-hand");
  const opened = async (name: string) => {
    await page.locator("#lines").getByRole("button", { name, exact: true }).first().click();
    await hand.waitFor();
  };
  await opened("boil-off");
  await hand.locator("input.writing").fill("boil-off of fitted bath * 2");
  await hand.locator("input.writing").press("Enter");
  await page.getByText("comes with One run").first().waitFor();
  expect((await number(page, "boil_off")).value).toBe(before.value);
  await keepPicture(page, "one run, line opened");
  // What was refused is still there to be read; the first Esc puts it back, the next closes the line.
  expect(await hand.locator("input.writing").inputValue()).toBe("boil-off of fitted bath * 2");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await hand.waitFor({ state: "detached" });
  await add(page, "half of it", "worked", "boil-off / 2");
  await expect.poll(async () => (await number(page, "half_of_it")).value).toBeCloseTo(before.value / 2, 12);
  await opened("half of it");
  await hand.locator("input.writing").fill("boil-off / 4");
  await hand.locator("input.writing").press("Enter");
  await expect.poll(async () => (await number(page, "half_of_it")).value).toBeCloseTo(before.value / 4, 12);
  await page.getByRole("button", { name: "Undo: half of it was boil-off / 2" }).click();
  await expect.poll(async () => (await number(page, "half_of_it")).value).toBeCloseTo(before.value / 2, 12);
});

test("another run is put beside the one that is open: a grid in place of the ledgers", async () => {
  const page = await openOneRun("site");
  const here = (await number(page, "boil_off")).value;
  await word(page, "put another run beside it").click();
  await page.locator("#ask-case [name=from]").selectOption("run demo-run-windy");
  await page.locator("#ask-case").getByRole("button", { name: "put it beside" }).click();
  const inGrid = async (run: string) => {
    const output = page.locator(`#lines output[data-line="boil_off"][data-case="${run}"][data-value]`);
    await output.waitFor();
    return Number(await output.getAttribute("data-value"));
  };
  expect(await inGrid("Four camp knives")).toBeCloseTo(here, 12);
  const windy = await inGrid("Windy night");
  expect(windy).not.toBeCloseTo(here, 6);
  await settle(page);
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, "one run, beside another");
  await page.reload();
  expect(await inGrid("Windy night")).toBeCloseTo(windy, 12);
  // The other run by itself comes to the same.
  await another(page, "Windy night (invented data)");
  await expect.poll(async () => (await number(page, "boil_off")).value).toBeCloseTo(windy, 12);
});

test("a copy of One run is a question of the maker's own, with the run as its case", async () => {
  const page = await openOneRun("site");
  const here = await number(page, "boil_off");
  await word(page, "copy this notebook as a question of my own").click();
  await page
    .locator(`#lines output[data-line="boil_off"][data-case="Four camp knives"][data-value="${here.value}"]`)
    .waitFor();
  expect(await page.locator("h1").first().textContent()).toContain("How did that run go?");
});

test("a given changed in One run is still the run's, and undone by its name", async () => {
  const page = await openOneRun("site");
  const before = await number(page, "ratio_start");
  await write(page, "water_start", "3");
  await changed(page, "ratio_start", before);
  await page.getByRole("button", { name: /^Undo: water at the start was/ }).click();
  await expect.poll(async () => (await number(page, "ratio_start")).value).toBe(before.value);
  expect(await blank(page, "water_start").inputValue()).toBe("2.7");
});
