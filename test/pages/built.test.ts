import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, inject, test } from "vitest";
import { inlineScript } from "../../notebooks/oneFile.ts";

const folder = dirname(fileURLToPath(inject("oneFileAddress")));
const oneFile = readFileSync(`${folder}/steady-boil.html`, "utf8");
const site = readFileSync(`${folder}/index.html`, "utf8");
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => name.replaceAll("\\", "/"));

/** Every address that a page's markup asks for. */
const addressesIn = (html: string) =>
  [...html.replace(/<(script|style)\b([^>]*)>[\s\S]*?<\/\1>/g, "<$1$2>").matchAll(/\s(?:src|href)="([^"]*)"/g)].map(
    ([, address]) => address ?? "",
  );

test("the build leaves one page, its hashed assets and the one file", () => {
  const others = files.filter((name) => !/^(index\.html|steady-boil\.html|assets)$/.test(name));
  expect(files).toEqual(expect.arrayContaining(["index.html", "steady-boil.html"]));
  for (const name of others) expect(name).toMatch(/^assets\/[\w.-]+-[\w-]{8,}\.(js|css|woff2|svg|png)$/);
});

test("the site asks for its assets by relative addresses, so that it works under any path", () => {
  const addresses = addressesIn(site).filter((address) => !address.startsWith("data:"));
  expect(addresses.length).toBeGreaterThan(0);
  for (const address of addresses) expect(address).toMatch(/^\.\/assets\//);
});

test("the one file asks for nothing", () => {
  expect(addressesIn(oneFile).filter((address) => !/^(data:|#)/.test(address))).toEqual([]);
  const sheets = [...oneFile.matchAll(/<style\b[^>]*>([\s\S]*?)<\/style>/g)].map(([, sheet]) => sheet ?? "").join("\n");
  expect(sheets).toContain("@font-face");
  expect(sheets).not.toMatch(/@import|url\((?!["']?(?:data:|#))/);
});

test("the one file's policy names the hash of the script that stands in it", () => {
  const scripts = [...oneFile.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].map(([, code]) => code ?? "");
  expect(scripts).toHaveLength(1);
  const hash = createHash("sha256").update(scripts.join("")).digest("base64");
  expect(oneFile).toContain(`script-src 'sha256-${hash}'`);
});

test("neither page names a place on the machine that built it", () => {
  for (const name of files.filter((one) => /\.(html|js|css)$/.test(one))) {
    expect(readFileSync(`${folder}/${name}`, "utf8").includes(dirname(folder))).toBe(false);
  }
});

test.each([
  ['a = "</script>"', 'a = "<\\/script>"'],
  ["a = `</SCRIPT >`", "a = `<\\/SCRIPT >`"],
  ['a = "<!--"', 'a = "\\x3C!--"'],
  ["a\r\nb", "a\nb"],
])("inlineScript(%j) cannot end its own tag", (code, safe) => {
  expect(inlineScript(code)).toBe(safe);
});
