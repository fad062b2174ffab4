import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Lines } from "../../lib/lines/index.ts";
import { serveGrid } from "../support/grid/serveGrid.ts";
import { barriers, keepPicture, schemes, settle, takeComplaints, visitor, widths } from "./harness.ts";

declare global {
  interface Window {
    /** The notebook that the page of these tests has open, and how often it was drawn. */
    readonly lines: Lines;
    readonly timesDrawn: () => number;
  }
}

let site: Awaited<ReturnType<typeof serveGrid>>;
beforeAll(async () => {
  site = await serveGrid();
});
afterAll(() => site.end());

async function openGrid(options: BrowserContextOptions = {}, place = ""): Promise<Page> {
  const page = await (await visitor("site", options, site.address)).newPage();
  await page.goto(site.address + place);
  await page.locator('.grid output[data-case="Small tank"], .grid output[data-case="case 1"]').first().waitFor();
  return page;
}

/** A place as "line | case or column", of what has the focus. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const cell = document.activeElement?.closest<HTMLElement>("[data-at]");
    const row = cell?.closest<HTMLElement>("[data-name], [data-head]");
    return cell ? `${row?.dataset.name ?? "heading"} | ${cell.dataset.inCase ?? cell.dataset.at}` : "elsewhere";
  });
const said = (page: Page) => page.locator("#said").textContent();
const cell = (page: Page, line: string, inCase: string) =>
  page.locator(`[data-name="${line}"] > [data-in-case="${inCase}"]`);
const textOf = (page: Page, line: string, inCase: string) =>
  page.evaluate(([one, other]) => window.lines.text(one ?? "", other), [line, inCase]);

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    await page.keyboard.press(key);
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  }
}

for (const colorScheme of schemes)
  for (const width of widths)
    test(`the grid bars nobody's way at ${width} px, ${colorScheme}`, async () => {
      const page = await openGrid({ colorScheme, viewport: { width, height: 900 } });
      await settle(page);
      await keepPicture(page, `grid ${width} ${colorScheme}`);
      expect(await barriers(page)).toEqual([]);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
      await cell(page, "tank length", "Small tank").click();
      await page.locator("[data-blank]").waitFor();
      expect(await barriers(page)).toEqual([]);
    });

// The keys of the data grid in the W3C's ARIA Authoring Practices Guide, from memory.
test("arrows, Home, End and pages walk through the grid; it is one tab stop", async () => {
  const page = await openGrid();
  await press(page, "Tab");
  expect(await focused(page)).toBe("tank length | Small tank");
  await press(page, "ArrowRight", "ArrowDown");
  expect(await focused(page)).toBe("tank width | Bigger fire");
  await press(page, "Home");
  expect(await focused(page)).toBe("tank width | 1");
  await press(page, "End");
  expect(await focused(page)).toBe("tank width | 7");
  await press(page, "Control+End");
  expect(await focused(page)).toContain("slow volume");
  await press(page, "Control+Home");
  expect(await focused(page)).toBe("tank length | 1");
  await press(page, "ArrowUp");
  expect(await focused(page)).toBe("heading | 1");
  await press(page, "ArrowDown", "PageDown");
  expect(await focused(page)).not.toBe("tank length | 1");
  await press(page, "PageUp");
  expect(await focused(page)).toBe("tank length | 1");
  expect(await page.locator('.grid [data-at][tabindex="0"]').count()).toBe(1);
  await press(page, "Tab");
  expect(await focused(page)).toBe("elsewhere");
  await press(page, "Shift+Tab");
  expect(await focused(page)).toBe("tank length | 1");
});

test("a given is changed in its place: Enter keeps it for its case, Esc puts it back, Ctrl+Enter is for all", async () => {
  const page = await openGrid();
  await press(page, "Tab", "ArrowRight", "3");
  await page.keyboard.type("0.5");
  await press(page, "Escape");
  expect(await textOf(page, "tank length", "Bigger fire")).toBe("24 in");
  expect(await focused(page)).toBe("tank length | Bigger fire");
  await press(page, "3");
  await page.keyboard.type("0.5");
  await press(page, "Enter");
  expect(await textOf(page, "tank length", "Bigger fire")).toBe("30.5 in");
  expect(await textOf(page, "tank length", "Small tank")).toBe("24 in");
  expect(await said(page)).toContain("tank length of Bigger fire is 30.5 in");
  await page.waitForFunction(() => document.querySelector('[data-name="tank length"]')?.textContent?.includes("+6.5"));
  await press(page, "Delete");
  expect(await textOf(page, "tank length", "Bigger fire")).toBe("24 in");
  await press(page, "F2");
  await page.keyboard.type("2 ft");
  await press(page, "Control+Enter");
  for (const inCase of ["Small tank", "Bigger fire", "Longer tank"])
    expect(await textOf(page, "tank length", inCase)).toBe("2 ft");
  await page.evaluate(() => window.lines.undo());
  expect(await textOf(page, "tank length", "Longer tank")).toBe("42 in");
});

test("leaving a blank by Tab keeps what stands in it", async () => {
  const page = await openGrid();
  await press(page, "Tab", "7", "Tab");
  expect(await textOf(page, "tank length", "Small tank")).toBe("7 in");
  expect(await textOf(page, "tank length", "Bigger fire")).toBe("24 in");
});

test("what can't be read stays in its blank and says why", async () => {
  const page = await openGrid();
  await press(page, "Tab", "n");
  await page.keyboard.type("ine parsecs");
  await press(page, "Enter");
  expect(await cell(page, "tank length", "Small tank").getAttribute("aria-invalid")).toBe("true");
  expect(await cell(page, "tank length", "Small tank").textContent()).toContain("nine parsecs");
  expect(await page.locator('[data-name="tank length"] .note').textContent()).toContain("a length");
});

test("Alt with an arrow steps a given by its last digit, and a held key is one step to undo", async () => {
  const page = await openGrid();
  await press(page, "Tab");
  await page.keyboard.down("Alt");
  for (let times = 0; times < 10; times += 1) await page.keyboard.down("ArrowUp");
  await page.keyboard.up("ArrowUp");
  await page.keyboard.up("Alt");
  expect(await textOf(page, "tank length", "Small tank")).toBe("34 in");
  expect(await focused(page)).toBe("tank length | Small tank");
  await page.evaluate(() => window.lines.undo());
  expect(await textOf(page, "tank length", "Small tank")).toBe("24 in");
});

test("Enter opens a worked line in its place; Esc closes it and the focus is back", async () => {
  const page = await openGrid();
  await cell(page, "twice the depth", "Longer tank").focus();
  await press(page, "Enter");
  await page.getByRole("combobox", { name: "twice the depth is" }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-hand-formula");
  expect(await page.locator('[data-name="depth"] .relation').textContent()).toBe("feeds");
  await press(page, "Escape");
  await page.locator(".panel").waitFor({ state: "detached" });
  expect(await focused(page)).toBe("twice the depth | Longer tank");
});

test("a stopped line says where and offers the word; a waiting one leads to the line it waits for", async () => {
  const page = await openGrid();
  const stopped = page.locator('[data-name="cost for each blade"]');
  expect(await stopped.locator(".at").textContent()).toBe("s");
  await page.getByRole("button", { name: "cost for each blade" }).click();
  expect(await focused(page)).toContain("cost for each blade");
  await stopped.getByRole("button", { name: "salt price" }).click();
  await page.locator('output[data-line="cost_of_a_batch"][data-case="Small tank"][data-value]').waitFor();
  expect(await stopped.locator(".note").count()).toBe(0);
});

test("while a slow line is worked again its last number stays, said to be from before, and machines find none", async () => {
  const page = await openGrid();
  await page.locator('output[data-line="slow_volume"][data-case="Small tank"][data-value]').waitFor();
  await page.evaluate(() => window.lines.set("depth", { given: "6 in" }));
  await page.locator('[data-name="slow volume"]').getByText("before").first().waitFor();
  expect(await page.locator('output[data-line="slow_volume"][data-value]').count()).toBe(0);
  expect(await page.locator('.grid[aria-busy="true"]').count()).toBe(1);
  await page.locator('output[data-line="slow_volume"][data-case="Small tank"][data-value]').waitFor();
});

test("a marked block is copied as a table, changed elsewhere and pasted back as one step to undo", async () => {
  const page = await openGrid();
  await press(page, "Tab", "Shift+ArrowDown", "Shift+ArrowRight", "Shift+ArrowRight");
  expect(await said(page)).toBe("marked: 2 lines, 3 cases; copy takes them");
  expect(await page.locator('[aria-selected="true"]').count()).toBe(6);
  const clip = await page.evaluate(() => {
    const data = new DataTransfer();
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("copy", { clipboardData: data, bubbles: true, cancelable: true }),
    );
    return data.getData("text/plain");
  });
  const rows = clip.split("\r\n").map((row) => row.split("\t"));
  expect(rows[0]?.slice(0, 4)).toEqual(["line", "unit", "Small tank", "Small tank ± 95 %"]);
  expect(rows[1]?.slice(0, 3)).toEqual(["tank length", "in", "24"]);
  const paste = (text: string) =>
    page.evaluate((words) => {
      const data = new DataTransfer();
      data.setData("text/plain", words);
      document.activeElement?.dispatchEvent(
        new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
      );
    }, text);
  await paste(clip);
  expect(await said(page)).toBe("Nothing was changed, 6 stood there already.");
  await paste(
    "line\tunit\tSmall tank\tLonger tank\ntank length\tcm\t61\t100\ntwice the depth\tin\t1\t2\nsalt in the bath\tlb\t25\tfive",
  );
  expect(await said(page)).toMatch(/^3 values taken; 3 left out\. twice the depth, Small tank: /u);
  expect(await textOf(page, "tank length", "Longer tank")).toBe("100 cm");
  expect(await textOf(page, "salt in the bath", "Small tank")).toBe("25 lb");
  expect(await page.evaluate(() => window.lines.undoName())).toBe("Undo: 3 values were pasted");
  await page.evaluate(() => window.lines.undo());
  expect(await textOf(page, "tank length", "Longer tank")).toBe("42 in");
  expect(await textOf(page, "salt in the bath", "Small tank")).toBe("24 lb");
});

test("on a phone one case is seen at a time, and words keep and put back", async () => {
  const page = await openGrid({ viewport: { width: 390, height: 844 }, hasTouch: true });
  await settle(page);
  expect(await cell(page, "liquid volume", "Longer tank").isVisible()).toBe(false);
  const word = page.getByRole("button", { name: "Longer tank" });
  const box = await word.boundingBox();
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(56);
  await word.tap();
  await cell(page, "liquid volume", "Longer tank").waitFor();
  expect(await cell(page, "liquid volume", "Small tank").isVisible()).toBe(false);
  expect(await cell(page, "liquid volume", "Longer tank").textContent()).toContain("+2.3");
  const drawing = await page.locator('[data-name="liquid volume"] .intervals').boundingBox();
  expect(drawing?.width).toBe(390 - 32);
  await cell(page, "tank length", "Longer tank").tap();
  await page.locator("[data-blank]").fill("50");
  const keep = page.getByRole("button", { name: "keep", exact: true });
  expect((await keep.boundingBox())?.height).toBeGreaterThanOrEqual(56);
  await keep.tap();
  expect(await textOf(page, "tank length", "Longer tank")).toBe("50 in");
  await cell(page, "tank length", "Longer tank").tap();
  await page.locator("[data-blank]").fill("60");
  await page.getByRole("button", { name: "put back" }).tap();
  expect(await textOf(page, "tank length", "Longer tank")).toBe("50 in");
  await page.locator("[data-blank]").waitFor({ state: "detached" });
});

test("of 300 lines in 6 cases only the rows that changed are drawn again", async () => {
  const page = await openGrid({}, "#long=300");
  expect(await page.locator(".grid [data-name]").count()).toBe(300);
  const touched = await page.evaluate(async () => {
    await window.lines.settled();
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    const rows = new Set<string>();
    const watch = new MutationObserver((changes) => {
      for (const { target } of changes) {
        const element = target instanceof Element ? target : target.parentElement;
        rows.add(element?.closest<HTMLElement>("[data-name]")?.dataset.name ?? "");
      }
    });
    const grid = document.querySelector(".grid");
    if (grid) watch.observe(grid, { subtree: true, childList: true, characterData: true });
    // The last line of the chain that it feeds: itself and the ones behind it alone.
    window.lines.set("sum 290 so far", { worked: "sum 289 so far + 1 lb" });
    await window.lines.settled();
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
    await new Promise((drawn) => setTimeout(drawn, 150));
    watch.disconnect();
    rows.delete("");
    return [...rows];
  });
  expect(touched.sort()).toEqual(["sum 290 so far", "sum 291 so far", "sum 292 so far"]);
  expect(takeComplaints(page)).toEqual([]);
});
