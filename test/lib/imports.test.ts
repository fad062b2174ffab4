import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { breachesOf, importsOf } from "../support/importRules.ts";

const top = fileURLToPath(new URL("../../", import.meta.url));
const sources = readdirSync(`${top}lib`, { recursive: true, encoding: "utf8" })
  .map((path) => `lib/${path.replaceAll("\\", "/")}`)
  .filter((path) => path.endsWith(".ts"));

const wrongs = (file: string, source: string) => breachesOf(file, source).map(({ wrong }) => wrong);

test("lib keeps its rules", () => {
  expect(sources.length).toBeGreaterThan(0);
  expect(sources.flatMap((path) => breachesOf(path, readFileSync(top + path, "utf8")))).toEqual([]);
});

const allowed: [file: string, source: string][] = [
  ["lib/physics/water.ts", 'import { inUnit } from "../measure/index.ts";'],
  ["lib/bath/waterBalance.ts", 'import type { Run } from "../log/types.ts";'],
  ["lib/bath/waterBalance.ts", 'import { boilingPoint } from "../physics/boilingPoint.ts";'],
  ["lib/record/types.ts", 'import type { Run } from "../log/types.ts";'],
  ["lib/log/readRows.ts", 'import Papa from "papaparse";'],
  ["lib/figure/strip.ts", "export const strip = (document: Document) => document.createElementNS(svg, 'g');"],
  ["lib/log/words.ts", '/** Never eval("x"), any window.open or fetch(x). */\nexport const says = "eval(1) as any";'],
  ["lib/index.ts", 'export { boilingPoint } from "./physics/index.ts";\nexport type { Run } from "./log/index.ts";'],
  ["lib/lines/open.ts", "import {\n  type Value,\n  add,\n} from '../measure/index.ts';"],
];

test.each(allowed)("%s may say %j", (file, source) => {
  expect(wrongs(file, source)).toEqual([]);
});

const refused: [file: string, source: string, wrong: RegExp][] = [
  ["lib/measure/unit.ts", 'import { boilingPoint } from "../physics/index.ts";', /imports lib\/physics/],
  ["lib/physics/water.ts", 'import { fit } from "../fit/index.ts";', /imports lib\/fit/],
  ["lib/log/readLog.ts", 'import type { Brine } from "../physics/types.ts";', /imports lib\/physics/],
  ["lib/bath/waterBalance.ts", 'import { readLog } from "../log/readLog.ts";', /more than types/],
  ["lib/bath/waterBalance.ts", 'import { type Run, readLog } from "../log/index.ts";', /more than types/],
  ["lib/bath/waterBalance.ts", 'import { openLines } from "../lines/index.ts";', /imports lib\/lines/],
  ["lib/lines/open.ts", 'export * from "../bath/index.ts";', /imports lib\/bath/],
  ["lib/figure/strip.ts", "const bath = await import('../bath/index.ts');", /imports lib\/bath/],
  ["lib/figure/strip.ts", "import {\n  readLog,\n} from '../log/index.ts';", /imports lib\/log/],
  ["lib/physics/water.ts", 'import { all } from "../index.ts";', /gathers every folder/],
  ["lib/physics/water.ts", 'import { page } from "../../notebooks/oneRun.ts";', /outside lib/],
  ["lib/physics/water.ts", 'import { all } from "lib/measure/index.ts";', /package "lib\/measure/],
  ["lib/physics/water.ts", 'import * as d3 from "d3";', /package "d3"; none is allowed/],
  ["lib/physics/water.ts", 'import { readFileSync } from "node:fs";', /package "node:fs"/],
  ["lib/physics/water.ts", 'import table from "./table.csv?raw";', /one bundler/],
  ["lib/physics/water.ts", 'import { a } from "./other";', /without the ending/],
  ["lib/other/water.ts", 'import { a } from "./other.ts";', /unknown folder/],
  ["lib/physics/water.ts", "const mode = import.meta.env.MODE;", /import\.meta/],
  ["lib/physics/water.ts", "const width = window.innerWidth;", /browser's globals/],
  ["lib/figure/strip.ts", "const g = document.createElement('g');", /browser's globals/],
  ["lib/physics/water.ts", "const root = process.cwd();", /Node's globals/],
  ["lib/physics/water.ts", "const a = eval('1');", /eval/],
  ["lib/physics/water.ts", "const f = new Function('a', 'return a');", /Function/],
  ["lib/physics/water.ts", "export const f = (a: any) => a;", /"any"/],
  ["lib/physics/water.ts", "const rows = text as any;", /"any"/],
  ["lib/physics/water.ts", "const chance = Math.random();", /chance/],
  ["lib/physics/index.ts", 'export { a } from "./a.ts";\nexport const b = 2;', /more than re-export/],
];

test.each(refused)("%s may not say %j", (file, source, wrong) => {
  expect(wrongs(file, source).join("\n")).toMatch(wrong);
});

test("a file of lib may be 300 lines long, not 301", () => {
  expect(wrongs("lib/physics/water.ts", "const a = 1;\n".repeat(300))).toEqual([]);
  expect(wrongs("lib/physics/water.ts", "const a = 1;\n".repeat(301))).toEqual(["is 301 lines long; 300 are allowed"]);
});

test("importsOf(source) passes over what only a comment says", () => {
  expect(importsOf('// import { a } from "./a.ts";\n/* import "./b.ts" */\nimport "./c.ts";')).toEqual([
    { from: "./c.ts", typesOnly: false },
  ]);
});
