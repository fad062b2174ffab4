/** One breach of the rules for lib/: where, and what is wrong. */
export type Breach = { file: string; wrong: string };

type Folder = { own: readonly string[]; types: readonly string[]; packages: readonly string[] };

/** What each folder of lib/ may import: other folders whole, other folders for their types alone, npm packages. */
export const folders: ReadonlyMap<string, Folder> = new Map([
  ["measure", { own: [], types: [], packages: [] }],
  ["physics", { own: ["measure"], types: [], packages: [] }],
  ["log", { own: ["measure"], types: [], packages: ["papaparse"] }],
  ["bath", { own: ["measure", "physics"], types: ["log"], packages: ["ml-matrix"] }],
  ["fit", { own: ["measure", "physics", "bath"], types: ["log"], packages: ["ml-matrix"] }],
  ["season", { own: ["measure", "physics", "bath", "fit"], types: [], packages: ["arquero"] }],
  ["record", { own: ["measure"], types: ["log", "lines"], packages: ["valibot"] }],
  ["lines", { own: ["measure"], types: [], packages: ["@observablehq/runtime"] }],
  ["figure", { own: ["measure"], types: [], packages: ["@observablehq/plot", "d3"] }],
]);

const longest = 300;

/** The source with its comments and the insides of its texts blanked, line for line. */
export function codeOnly(source: string): string {
  const tokens =
    /\/\/[^\n]*|\/\*[\s\S]*?\*\/|"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|(?<=[=(,:?[!&|;{}\n]\s*)\/(?![*/])(?:[^/\\\n[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\/[dgimsuvy]*/g;
  const blank = (text: string) => text.replace(/[^\n]/g, " ");
  return source.replace(tokens, (token) => (/^["']/.test(token) ? `"${blank(token.slice(1, -1))}"` : blank(token)));
}

type Import = { from: string; typesOnly: boolean };

/** Every module that a source imports or re-exports, and whether it takes types alone. */
export function importsOf(source: string): Import[] {
  const bare = source.replace(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/[^\n]*/g, "");
  const statements = [
    ...bare.matchAll(/^\s*(import|export)\s+(type\s+)?(?:[\w*{][^"';]*?\sfrom\s*)?["']([^"'\n]+)["']/gm),
  ];
  const calls = [...bare.matchAll(/\b(?:import|require)\s*\(\s*["'`]([^"'`\n]+)["'`]/g)];
  return [
    ...statements.map(([, , typesOnly, from]) => ({ from: from ?? "", typesOnly: typesOnly !== undefined })),
    ...calls.map(([, from]) => ({ from: from ?? "", typesOnly: false })),
  ];
}

function packageOf(from: string): string {
  const [first = "", second = ""] = from.split("/");
  return first.startsWith("@") ? `${first}/${second}` : first;
}

/** The path that a relative import leads to; it starts with ".." when it leaves the project. */
function target(file: string, from: string): string {
  const steps = file.split("/").slice(0, -1);
  for (const step of from.split("/")) {
    if (step === "..") {
      if (steps.length === 0 || steps.at(-1) === "..") steps.push("..");
      else steps.pop();
    } else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}

function wrongImport(file: string, { from, typesOnly }: Import): string | undefined {
  const [, home = ""] = file.split("/");
  const isTop = file.split("/").length === 2;
  const folder = folders.get(home);
  if (!isTop && !folder) return `unknown folder: lib/${home}; allowed are ${[...folders.keys()].join(", ")}`;
  if (!from.startsWith(".")) {
    const allowed = folder?.packages ?? [];
    if (allowed.includes(packageOf(from))) return undefined;
    return `imports the package "${from}"; ${allowed.length > 0 ? `allowed are ${allowed.join(", ")}` : "none is allowed"}`;
  }
  if (/[?#]/.test(from)) return `imports "${from}", which belongs to one bundler`;
  if (!/\.(ts|json)$/.test(from)) return `imports "${from}" without the ending .ts`;
  const [top, there = "", ...rest] = target(file, from).split("/");
  if (top !== "lib") return `imports "${from}", outside lib/`;
  if (isTop || there === home) return undefined;
  if (rest.length === 0) return `imports "${from}", which gathers every folder`;
  if (folder?.own.includes(there)) return undefined;
  if (folder?.types.includes(there))
    return typesOnly ? undefined : `imports more than types from lib/${there}; "import type" is allowed`;
  return `imports lib/${there}; lib/${home} may import ${folder?.own.join(", ") || "no other folder"}`;
}

const forbidden: readonly [pattern: RegExp, wrong: string][] = [
  [/\bimport\.meta\.(env|hot|glob)/, "uses import.meta of one bundler"],
  [/\beval\s*\(/, "makes code from text with eval"],
  [/\bnew\s+Function\b|\bFunction\s*\(/, "makes code from text with Function"],
  [/(?::|<|\bas|,|\|)\s*any\b(?!\s*[:(.])/, 'says "any"'],
  [
    /(?<![.\w])(window|document|navigator|localStorage|sessionStorage|indexedDB|requestAnimationFrame|XMLHttpRequest)\s*[.([]/,
    "uses the browser's globals",
  ],
  [/(?<![.\w])(process|Buffer|__dirname|require)\s*[.([]/, "uses Node's globals"],
  [/(?<![.\w])(fetch|alert)\s*\(/, "asks the network or the person"],
  [/\bMath\.random\s*\(/, "leans on chance; take a seeded generator as an argument"],
];

/** A name that the source itself declares is its own, whatever a browser calls the same. */
function declares(code: string, name: string): boolean {
  return new RegExp(`\\b(?:const|let|function)\\s+${name}\\b|[({,]\\s*${name}\\s*[,:})=]`).test(code);
}

/** Everything that one file of lib/ does against the rules; `file` is its path from the top, with "/". */
export function breachesOf(file: string, source: string): Breach[] {
  const wrongs = importsOf(source).map((one) => wrongImport(file, one));
  const code = codeOnly(source);
  for (const [pattern, wrong] of forbidden) {
    const found = pattern.exec(code);
    if (!found || (found[1] && declares(code, found[1]))) continue;
    wrongs.push(`line ${code.slice(0, found.index).split("\n").length} ${wrong}: ${found[0].trim()}`);
  }
  const length = source.trimEnd().split("\n").length;
  if (length > longest) wrongs.push(`is ${length} lines long; ${longest} are allowed`);
  if (/(^|\/)index\.ts$/.test(file) && code.replace(/^\s*export\s[^;]*?from\s*"\s*";/gm, "").trim() !== "")
    wrongs.push("does more than re-export");
  return wrongs.filter((wrong) => wrong !== undefined).map((wrong) => ({ file, wrong }));
}
