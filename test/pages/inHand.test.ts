import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Lines } from "../../lib/lines/index.ts";
import { serveGrid } from "../support/grid/serveGrid.ts";
import { barriers, keepPicture, openPage, schemes, settle, visitor, widths } from "./harness.ts";

declare global {
  interface Window {
    readonly lines: Lines;
  }
}

let site: Awaited<ReturnType<typeof serveGrid>>;
beforeAll(async () => {
  site = await serveGrid();
});
afterAll(() => site.end());

const panel = (page: Page) => page.locator(".line-in-hand");
const formula = (page: Page) => page.getByRole("combobox", { name: / is$/ });
const options = (page: Page) => page.getByRole("option").allTextContents();
const word = (page: Page, name: string) => panel(page).getByRole("button", { name, exact: true });
const said = (page: Page) => page.locator("#said").textContent();
const kept = (page: Page, line: string, inCase?: string) =>
  page.evaluate(([name = "", one]) => window.lines.text(name, one), [line, inCase] as const);
const facts = async (page: Page, name: string): Promise<string> => {
  const row = panel(page).locator("dl > div", { has: page.locator("dt", { hasText: name }) });
  return ((await row.first().locator("dd").textContent()) ?? "").replaceAll("\u00a0", " ");
};

/** The page with a line in hand, as a maker takes it: a click on its name. */
async function inHand(line: string, more: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await visitor("site", more, site.address)).newPage();
  await page.goto(site.address);
  await page.locator('.grid output[data-case="Small tank"]').first().waitFor();
  await page.locator(`[data-name="${line}"] > .name`).click();
  await panel(page).waitFor();
  return page;
}

for (const colorScheme of schemes)
  for (const width of widths)
    test(`the line in hand bars nobody's way at ${width} px, ${colorScheme}`, async () => {
      const page = await inHand("salt for each gallon", { colorScheme, viewport: { width, height: 900 } });
      await settle(page);
      expect(await barriers(page)).toEqual([]);
      await formula(page).fill("salt in the bath / li");
      await page.getByRole("option").first().waitFor();
      await keepPicture(page, `in hand ${width} ${colorScheme}`);
      expect(await barriers(page)).toEqual([]);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
      await page.locator('[data-name="blades"] > .name').click();
      await panel(page).getByText("Ctrl+Enter").waitFor({ state: "attached" });
      await keepPicture(page, `in hand given ${width} ${colorScheme}`);
      expect(await barriers(page)).toEqual([]);
    });

test("the line opens in place under its row, says its numbers in its case, and names what feeds it and what it feeds", async () => {
  const page = await inHand("salt for each blade");
  expect(await page.locator('[data-name="salt for each blade"] + .panel').count()).toBe(1);
  // 24 lb ÷ 9, by hand: 2.67 lb.
  expect(await facts(page, "Small tank")).toMatch(/^24 lb ÷ 9 is 2\.6\d* ±/);
  expect(await facts(page, "Its width")).toBe("salt in the bath 100 %");
  expect(await facts(page, "Fed by")).toBe("salt in the bath, blades");
  expect(await page.locator('[data-name="blades"] .relation').textContent()).toBe("feeds");
  await word(page, "blades").click();
  await panel(page).getByLabel("blades of Small tank is").waitFor();
  expect(await facts(page, "It feeds")).toBe("salt for each blade, cost of a batch");
  expect(await page.locator('[data-name="salt for each blade"] .relation').textContent()).toBe("fed");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-hand-given");
  await word(page, "salt for each blade").click();
  await formula(page).waitFor();
});

// Keys of an editable combobox with list autocomplete in the W3C's ARIA Authoring Practices Guide, from memory.
test("completions: arrows choose, Enter and Tab write, Esc closes the list and then puts the formula back", async () => {
  const page = await inHand("salt for each gallon");
  const field = formula(page);
  await field.fill("salt in the bath / li");
  await page.getByRole("option").first().waitFor();
  expect((await options(page)).map((text) => text.replaceAll("\u00a0", " "))).toEqual([
    "lid height given: not given",
    expect.stringMatching(/^liquid volume worked: 3\.1\d* gal$/),
  ]);
  expect(await field.getAttribute("aria-expanded")).toBe("true");
  const active = async () =>
    page
      .locator(`#${await field.getAttribute("aria-activedescendant")}`)
      .locator(".offer")
      .textContent();
  expect(await active()).toBe("lid height");
  await page.keyboard.press("ArrowDown");
  await expect.poll(active).toBe("liquid volume");
  await page.keyboard.press("ArrowUp");
  await expect.poll(active).toBe("lid height");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  expect(await field.inputValue()).toBe("salt in the bath / liquid volume");
  await expect.poll(() => field.getAttribute("aria-expanded")).toBe("false");
  await field.fill("salt in the bath / de");
  await page.getByRole("option").first().waitFor();
  await page.keyboard.press("Tab");
  expect(await field.inputValue()).toBe("salt in the bath / depth");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-hand-formula");
  await field.fill("salt in the bath / bla");
  await page.getByRole("option").first().waitFor();
  await page.keyboard.press("Escape");
  await expect.poll(() => page.getByRole("option").count()).toBe(0);
  expect(await field.inputValue()).toBe("salt in the bath / bla");
  await page.keyboard.press("Escape");
  await expect.poll(() => field.inputValue()).toBe("salt in the bath / liquid volume");
  expect(await kept(page, "salt for each gallon")).toBe("salt in the bath / liquid volume");
  await page.keyboard.press("Escape");
  await panel(page).waitFor({ state: "detached" });
  expect(await page.evaluate(() => document.activeElement?.closest("[data-name]")?.getAttribute("data-name"))).toBe(
    "salt for each gallon",
  );
});

test("Enter keeps the formula in every case and says so; undo brings the old one back", async () => {
  const page = await inHand("salt for each gallon");
  await formula(page).fill("2 * salt in the bath / liquid volume");
  await page.keyboard.press("Enter");
  await expect.poll(() => said(page)).toContain("kept in every case");
  expect(await kept(page, "salt for each gallon", "Longer tank")).toBe("2 * salt in the bath / liquid volume");
  await page.evaluate(() => window.lines.undo());
  await expect.poll(() => formula(page).inputValue()).toBe("salt in the bath / liquid volume");
});

test("what is wrong is pointed at with a caret while it is typed, and the word that was meant is there to press", async () => {
  const page = await inHand("salt for each gallon");
  await formula(page).fill("salt in the bath / dept");
  await page.keyboard.press("Escape");
  await expect.poll(() => panel(page).locator(".wrong").textContent()).toContain("Did you mean");
  expect(await panel(page).locator(".wrong .at").textContent()).toBe("d");
  expect(
    await panel(page)
      .locator(".wrong .at")
      .evaluate((at) => getComputedStyle(at, "::after").content),
  ).toBe('"^"');
  expect(await formula(page).getAttribute("aria-invalid")).toBe("true");
  expect(await kept(page, "salt for each gallon")).toBe("salt in the bath / liquid volume");
  await keepPicture(page, "in hand wrong");
  await word(page, "depth").click();
  expect(await formula(page).inputValue()).toBe("salt in the bath / depth");
  await expect.poll(() => panel(page).locator(".wrong").count()).toBe(0);
  await formula(page).fill("cost of a batch + salt for each gallon");
  await expect.poll(() => panel(page).locator(".wrong").textContent()).toContain("cannot be worked from itself");
});

test("a given: for its case alone, for all at once, as in all cases, and how it is known", async () => {
  const page = await inHand("depth");
  const field = panel(page).getByLabel("depth of Small tank is");
  await field.fill("6");
  await page.keyboard.press("Enter");
  await expect.poll(() => said(page)).toContain("for Small tank alone");
  expect(await kept(page, "depth", "Small tank")).toBe("6 in");
  expect(await kept(page, "depth", "Longer tank")).toBe("5 in");
  await expect
    .poll(() => panel(page).textContent())
    .toContain("Small tank has its own; all others that have none share: 5 in.");
  await word(page, "as in all cases").click();
  await expect.poll(() => field.inputValue()).toBe("5 in");
  await field.fill("7 in");
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => kept(page, "depth", "Longer tank")).toBe("7 in");
  await panel(page).getByLabel("known how").selectOption("guessed");
  const known = await page.evaluate(() => {
    const line = window.lines.line("depth");
    return line.kind === "given" ? line.known : undefined;
  });
  expect(known).toBe("guessed");
  await field.fill("8 in");
  await page.keyboard.press("Escape");
  await expect.poll(() => field.inputValue()).toBe("7 in");
});

test("a name is refused with its reason, a good one is taken in every formula, and the hand stays", async () => {
  const page = await inHand("depth");
  const name = panel(page).getByLabel("name", { exact: true });
  await name.fill("min");
  await page.keyboard.press("Enter");
  await expect.poll(() => panel(page).getByRole("alert").textContent()).toContain("is a unit");
  expect(await name.inputValue()).toBe("min");
  expect(await barriers(page)).toEqual([]);
  await name.fill("liquid depth");
  await page.keyboard.press("Enter");
  await page.locator('[data-name="liquid depth"] + .panel').waitFor();
  expect(await kept(page, "twice the depth")).toBe("2 * liquid depth");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-hand-name");
});

test("a unit of something else is refused, one of the same kind is shown; removing a line can be undone by name", async () => {
  const page = await inHand("twice the depth");
  const unit = panel(page).getByLabel("unit", { exact: true });
  await unit.fill("lb");
  await page.keyboard.press("Enter");
  await expect.poll(() => panel(page).getByRole("alert").textContent()).toContain("measures something else");
  await unit.fill("cm");
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator('[data-name="twice the depth"] > .unit').textContent()).toBe("cm");
  await word(page, "remove this line").click();
  await page.locator('[data-name="twice the depth"]').waitFor({ state: "detached" });
  expect(await page.evaluate(() => window.lines.undoName())).toBe("Undo: removing twice the depth");
  expect(await panel(page).count()).toBe(0);
});

test("by touch: keep in every case and put back are words, large enough for a finger", async () => {
  const page = await inHand("salt for each gallon", { viewport: { width: 390, height: 844 }, hasTouch: true });
  await formula(page).fill("salt in the bath / depth");
  await word(page, "put back").tap();
  await expect.poll(() => formula(page).inputValue()).toBe("salt in the bath / liquid volume");
  await formula(page).fill("salt in the bath / de");
  await page.getByRole("option", { name: /^depth / }).tap();
  expect(await formula(page).inputValue()).toBe("salt in the bath / depth");
  const box = await word(page, "keep in every case").boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  await word(page, "keep in every case").tap();
  await expect.poll(() => kept(page, "salt for each gallon")).toBe("salt in the bath / depth");
});

test("what is typed and kept before the page is drawn again is kept", async () => {
  const page = await inHand("salt for each gallon");
  await formula(page).evaluate((field) => {
    if (!(field instanceof HTMLInputElement)) return;
    field.value = "salt in the bath / depth";
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
  });
  expect(await kept(page, "salt for each gallon")).toBe("salt in the bath / depth");
});

test("a line says what the functions that it calls do, and takes another unit on My question, kept through undo", async () => {
  const page = await inHand("slow volume");
  expect(await facts(page, "slowly(amount)")).toBe("The amount itself, after a while.");
  const own = await openPage("site", {}, "#my-question");
  await own.locator('[data-name="gas burned"] > .name').click();
  await panel(own).waitFor();
  expect(await facts(own, "six blades")).toMatch(/^31\.6 lb − 28\.1 lb is 3\.5/);
  await panel(own).getByLabel("unit", { exact: true }).fill("oz");
  await own.keyboard.press("Enter");
  await expect.poll(() => own.locator('[data-name="gas burned"] > .unit').textContent()).toBe("oz");
  await own.getByRole("button", { name: /unit of gas burned was lb/ }).click();
  await expect.poll(() => own.locator('[data-name="gas burned"] > .unit').textContent()).toBe("lb");
  expect(await panel(own).count()).toBe(1);
  expect(await barriers(own)).toEqual([]);
  await settle(own);
  await keepPicture(own, "in hand on my question");
});
