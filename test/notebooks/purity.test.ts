import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import type { Notebook } from "../../lib/lines/index.ts";
import oneRun from "../../notebooks/oneRun.ts";
import { tools } from "../../notebooks/tools.ts";

const folder = fileURLToPath(new URL("../../notebooks/page/", import.meta.url));
const sources = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.(ts|css)$/.test(name))
  .map((name) => ({
    file: `notebooks/page/${name.replaceAll("\\", "/")}`,
    source: readFileSync(folder + name, "utf8"),
  }));

/** Ways in which code could mean one line of a notebook: its name or its key as a whole text, or in a selector. */
function namedLines(source: string, names: readonly string[]): string[] {
  const bare = source.replace(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/[^\n]*/g, "");
  return names.filter((name) => {
    const safe = name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
    return new RegExp(`(["'\`])${safe}\\1|data-line[~|^$*]?=\\\\?["']?${safe}["'\\]]|\\{${safe}\\}`).test(bare);
  });
}

/** Names of more than one word, and keys: a word that stands alone ("log", "target") is also plain English. */
function unmistakable(book: Notebook): string[] {
  return Object.entries(book.lines)
    .flatMap(([name, line]) => [name, line.key ?? name.replace(/[^a-z0-9]+/gi, "_")])
    .filter((name) => /[ _-]/.test(name));
}

test("the page names no line of a notebook", () => {
  const names = [...new Set([oneRun, ...tools.map(({ book }) => book)].flatMap(unmistakable))];
  expect(names.length).toBeGreaterThan(20);
  expect(sources.length).toBeGreaterThan(5);
  const found = sources.flatMap(({ file, source }) => namedLines(source, names).map((name) => `${file}: ${name}`));
  expect(found).toEqual([]);
});

test.each([
  ['const rate = result("boil-off");', "boil-off"],
  ["page.querySelector('[data-line=boil_off]')", "boil_off"],
  ['output[data-line="boil_off"] { color: red }', "boil_off"],
  ["const says = 'It took {make-up water}';", "make-up water"],
])("namedLines finds the line in %j", (source, name) => {
  expect(namedLines(source, ["boil-off", "boil_off", "make-up water"])).toEqual([name]);
});

test("namedLines passes over words of prose and comments", () => {
  const source = '// result("boil-off")\nconst says = "The boil-off of this bath";';
  expect(namedLines(source, ["boil-off"])).toEqual([]);
});
