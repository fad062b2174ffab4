import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { barriers, keepPicture, openPage, settle } from "./harness.ts";

const place = "#my-question";

/** The number of a line in a case as machines read it; SI. */
async function amount(page: Page, line: string, inCase: string): Promise<number> {
  const output = page.locator(`#lines output[data-line="${line}"][data-case="${inCase}"][data-value]`).first();
  await output.waitFor();
  return Number(await output.getAttribute("data-value"));
}

const word = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

async function ask(page: Page, question: string): Promise<void> {
  await word(page, "ask another question").click();
  await page.locator("#ask-another [name=asks]").fill(question);
  await page.locator("#ask-another").getByRole("button", { name: "ask it" }).click();
  await page.getByRole("heading", { name: question, level: 1 }).waitFor();
}

async function add(page: Page, name: string, kind: "given" | "worked", text: string, unit = ""): Promise<void> {
  await word(page, "add a line").click();
  const form = page.locator("#ask-line");
  await form.locator("[name=kind]").selectOption(kind);
  await form.locator("[name=name]").fill(name);
  await form.locator("[name=text]").fill(text);
  await form.locator("[name=unit]").fill(unit);
  await form.getByRole("button", { name: "add it" }).click();
}

const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<string>((done) => {
        const opening = indexedDB.open("steady-boil");
        opening.onsuccess = () => {
          const got = opening.result.transaction("shop").objectStore("shop").get("shop");
          got.onsuccess = () => done(JSON.stringify(got.result ?? ""));
        };
      }),
  );

test("a maker asks a question of their own, and it is still there after a reload", async () => {
  const page = await openPage("site", {}, place);
  await ask(page, "What does the gas cost for each blade?!");
  await add(page, "blades", "given", "6");
  await add(page, "gas price", "given", "1.20 $/lb", "$/lb");
  await add(page, "gas cost for each blade", "worked", "gas price * 3 lb / blades", "$");
  // 1.20 $/lb * 3 lb / 6, by hand.
  expect(await amount(page, "gas_cost_for_each_blade", "")).toBeCloseTo(0.6, 9);
  await page.waitForFunction(() => /kept \d/.test(document.querySelector(".kept-at")?.textContent ?? ""));
  await expect.poll(() => kept(page)).toContain("gas cost for each blade");
  await page.reload();
  expect(await amount(page, "gas_cost_for_each_blade", "")).toBeCloseTo(0.6, 9);
  await keepPicture(page, "my question, asked");
});

test("the invented question says that it is, and holds no barriers", async () => {
  const page = await openPage("site", {}, place);
  await settle(page);
  expect(await page.getByText("Invented data").count()).toBeGreaterThan(0);
  // (31.6 - 28.1) lb * 1.15 $/lb / 6 and (31.6 - 27.7) lb * 1.15 $/lb / 10, by hand.
  expect(await amount(page, "gas_cost_for_each_blade", "six blades")).toBeCloseTo(4.025 / 6, 9);
  expect(await amount(page, "gas_cost_for_each_blade", "full rack")).toBeCloseTo(0.4485, 9);
  expect(await barriers(page)).toEqual([]);
  await keepPicture(page, "my question, invented");
});
