import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DOMParser } from "linkedom";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { kindsOfPage } from "./harness.ts";
import { openOneRun } from "./oneRun.ts";

async function save(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  const folder = await mkdtemp(join(tmpdir(), "steady-boil-picture-"));
  await download.saveAs(join(folder, "picture"));
  const bytes = await readFile(join(folder, "picture"));
  await rm(folder, { recursive: true });
  return { name: download.suggestedFilename(), bytes };
}

/** Width and height out of the header chunk of a PNG (PNG specification, 3rd edition, 11.2.2). */
function sizeOfPng(bytes: Buffer): [number, number] {
  expect(bytes.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  expect(bytes.subarray(12, 16).toString("latin1")).toBe("IHDR");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

for (const kind of kindsOfPage) {
  test(`${kind}: every figure is saved as a PNG that stands alone`, async () => {
    const page = await openOneRun(kind);
    const figures = await page.locator("figure").count();
    expect(figures).toBeGreaterThan(0);
    for (let figure = 1; figure <= figures; figure += 1) {
      const { name, bytes } = await save(page, `save figure ${figure} as PNG`);
      const [width, height] = sizeOfPng(bytes);
      expect(name).toMatch(/^[\w.-]+\.png$/);
      expect(width).toBeGreaterThanOrEqual(1200);
      expect(height).toBeGreaterThan(200);
      expect(bytes.length).toBeGreaterThan(10_000);
    }
  });

  test(`${kind}: every figure is saved as an SVG that stands alone`, async () => {
    const page = await openOneRun(kind);
    const figures = await page.locator("figure").count();
    for (let figure = 1; figure <= figures; figure += 1) {
      const { name, bytes } = await save(page, `save figure ${figure} as SVG`);
      const text = bytes.toString("utf8").replace(/data:[\w/+-]+;base64,[\w+/=]+/g, "data:");
      const root = new DOMParser().parseFromString(text, "image/svg+xml").documentElement;
      expect(name).toMatch(/^[\w.-]+\.svg$/);
      expect(root?.localName).toBe("svg");
      expect(root?.getAttribute("xmlns")).toBe("http://www.w3.org/2000/svg");
      expect(text).not.toMatch(/var\(--|NaN|undefined|<script/);
      expect(text).not.toMatch(/(?:href|src)="(?!#|data:)|url\((?!["']?(?:#|data:))/);
      expect(text).toContain("Invented data");
    }
  });
}
