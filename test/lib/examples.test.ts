import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { differs, examplesOf, programOf } from "../support/examples.ts";

const top = fileURLToPath(new URL("../../", import.meta.url));
const files = readdirSync(`${top}lib`, { recursive: true, encoding: "utf8" })
  .map((path) => `lib/${path.replaceAll("\\", "/")}`)
  .filter((path) => path.endsWith(".ts") && !/(^|\/)types\.ts$/.test(path))
  .sort();

const modules = new Map<string, Record<string, unknown>>();
const names = new Map<string, unknown>();
for (const file of files) {
  const module: Record<string, unknown> = await import(pathToFileURL(top + file).href);
  modules.set(file, module);
  for (const [name, value] of Object.entries(module)) names.set(name, value);
}
const indexes = files.filter((file) => file.endsWith("/index.ts"));
const givenOut = new Set(indexes.flatMap((file) => Object.keys(modules.get(file) ?? {})));
const { document } = parseHTML("<!doctype html><html><body></body></html>");
names.set("document", document);

const examples = files.flatMap((file) => examplesOf(file, readFileSync(top + file, "utf8")));

test.each(examples)("$file:$line the example of $name holds", async ({ name, file, steps }) => {
  const wrongs: (string | undefined)[] = [];
  const given = async (index: number, work: () => unknown): Promise<void> => {
    const gives = steps[index]?.gives ?? "";
    const [, message] = /^(?:throws|Error|\w+Error)\b:?\s*(.*)$/.exec(gives) ?? [];
    if (message === undefined) return void wrongs.push(differs(await work(), gives));
    const wanted = message.replace(/^\w*Error:?\s*/, "").replace(/^["']|["']$/g, "");
    try {
      await work();
      wrongs.push(`it does not throw: ${wanted}`);
    } catch (problem) {
      if (problem instanceof ReferenceError) throw problem;
      if (!String(problem).includes(wanted.replace(/…$/, ""))) wrongs.push(`it throws: ${problem}`);
    }
  };
  // An example sees all of lib, its own file's names first.
  const seen = new Map([...names, ...Object.entries(modules.get(file) ?? {}), ["theExample", given]]);
  const run = new Function(...seen.keys(), `"use strict"; return (async () => {{${programOf(steps)}\n}})();`);
  try {
    await run(...seen.values());
  } catch (problem) {
    // What no index gives out may be shown with names that stand for something; what it shows is checked all the same.
    if (givenOut.has(name) || !(problem instanceof ReferenceError)) throw problem;
  }
  expect(wrongs.filter((wrong) => wrong !== undefined)).toEqual([]);
});

test.each(indexes)("every function that %s gives out has an example", (file) => {
  const explained = new Set(examples.map(({ name }) => name));
  const bare = Object.entries(modules.get(file) ?? {}).filter(
    ([name, value]) => typeof value === "function" && !explained.has(name),
  );
  expect(bare.map(([name]) => name)).toEqual([]);
});
