import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { openPage, settle } from "./harness.ts";

const script = "<img src=x onerror=\"document.title='run'\">";

/** A shop record with a notebook that means no good: names of prototypes, rings, depth, script, words without an end. */
async function strangersRecord(): Promise<string> {
  const record = JSON.parse(await readFile(new URL("../../data/demoShop.json", import.meta.url), "utf8"));
  const lines = JSON.parse(
    '{"__proto__":{"kind":"given","text":"2"},"constructor":{"kind":"worked","formula":"__proto__ * 3"},"min":{"kind":"given","text":"3"}}',
  );
  for (let i = 0; i < 100; i++) lines[`ring ${i}`] = { kind: "worked", formula: `ring ${(i + 1) % 100} + 1` };
  lines.deep = { kind: "worked", formula: `${"(".repeat(3000)}1${")".repeat(3000)}` };
  lines[script] = { kind: "given", text: script };
  lines["long words"] = { kind: "given", text: "x".repeat(2000), takes: "words" };
  const notebook = {
    asks: `${script} ${"q".repeat(150)}`,
    lines,
    cases: JSON.parse('{"__proto__":{"__proto__":"5"},"constructor":{},"<b>bold</b>":{}}'),
    answer: ["{nope} {__proto__} {constructor} {"],
    figures: ["no such figure", { draws: "a line across cases", line: "nope" }],
    notes: [script, "n".repeat(2000)],
  };
  record.notebooks = [{ id: "strangers", changed: "2026-11-21T08:00:00.000Z", name: "A stranger's", notebook }];
  return JSON.stringify(record);
}

test.each([390, 1280])("a stranger's notebook is shown as text, within %i px, and runs nothing", async (width) => {
  const page = await openPage("site", { viewport: { width, height: 900 } }, "#shop");
  await settle(page);
  const buffer = Buffer.from(await strangersRecord());
  await page.locator("input[data-copy]").setInputFiles({ name: "copy.json", mimeType: "application/json", buffer });
  await page.getByText("1 notebook added").waitFor();
  await page.goto(page.url().replace(/#.*$/u, "#my-question/strangers"));
  await page.locator('#lines output[data-line="constructor"]').first().waitFor();
  await settle(page);
  // 2 * 3 in two cases, 5 * 3 in the one that has its own.
  const values = page.locator('#lines output[data-line="constructor"][data-value]');
  const found = await values.evaluateAll((all) => all.map((one) => Number(one.getAttribute("data-value"))));
  expect(found).toContain(15);
  await page.getByText("“min” is called “renamed line” here").waitFor();
  expect(await page.title()).not.toBe("run");
  expect(await page.locator("img").count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
});
