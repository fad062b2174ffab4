import { Runtime, type Variable } from "@observablehq/runtime";
import { given, type Line, notebook, openLines, worked } from "../../lib/lines/index.ts";

/** Eight sources of doubt; one of them is edited. */
const sources = ["salt", "water", "tank length", "tank width", "depth", "boil-off", "gas", "time lit"] as const;
const texts = [
  "24 ±0.2 lb",
  "2.3 ±0.1 gal",
  "24 ±0.2 in",
  "6 ±0.1 in",
  "5 ±0.1 in",
  "4.6 ±0.3 fl oz/min",
  "9 ±0.5 lb",
  "70 ±1 min",
];
const letters = (i: number) =>
  [676, 26, 1].map((size) => String.fromCharCode(97 + (Math.floor(i / size) % 26))).join("");
const nameOf = (i: number) => `amount ${letters(i)}`;

/** Lines that hang on one another in a chain, each on two sources too; every one is a mass. */
function formulaOf(i: number): string {
  const before = i === 0 ? "salt" : nameOf(i - 1);
  const [a, b] = [i % 3, i % 4];
  const factor = ["tank length / tank width", "depth / tank width", "gas / salt"][a];
  const term = ["water", "boil-off * time lit", "salt", "gas"][b];
  return `(${before} * 3 + ${term} * ${factor}) / 4`;
}

/** The same arithmetic on plain numbers. */
function numberOf(i: number): (before: number, a: number, b: number, c: number, d: number) => number {
  if (i % 4 === 1) return (before, a, b, c, d) => (before * 3 + (a * b * c) / d) / 4;
  return (before, a, _, c, d) => (before * 3 + (a * c) / d) / 4;
}

function inputsOf(i: number): readonly string[] {
  const before = i === 0 ? "salt" : nameOf(i - 1);
  const [over, under] =
    [
      ["tank length", "tank width"],
      ["depth", "tank width"],
      ["gas", "salt"],
    ][i % 3] ?? [];
  const [a, b] =
    [
      ["water", "water"],
      ["boil-off", "time lit"],
      ["salt", "salt"],
      ["gas", "gas"],
    ][i % 4] ?? [];
  return [before, a ?? "", b ?? "", over ?? "", under ?? ""];
}

function linesOf(count: number, formula: (i: number) => string): Record<string, Line> {
  const lines: Record<string, Line> = { extra: given("1 ±0.1 lb") };
  sources.forEach((name, i) => {
    lines[name] = given(texts[i] ?? "");
  });
  for (let i = 0; i < count; i += 1) lines[nameOf(i)] = worked(formula(i), "lb");
  return lines;
}

/** An edit of a given that `dependents` lines hang on, awaited until all is settled; their number is checked each time. */
async function edited(lines: Record<string, Line>, caseCount: number, which: string, dependents: number) {
  const cases = Object.fromEntries(
    Array.from({ length: caseCount }, (_, i) => [`case ${letters(i)}`, { depth: `${5 + i} ±0.1 in` }]),
  );
  const open = openLines(notebook({ asks: "How long is the chain?", lines, ...(caseCount > 1 && { cases }) }));
  await open.settled();
  let amount = 20;
  const edit = async () => {
    amount = amount === 20 ? 21 : 20;
    const before = open.worked();
    open.set(which, { given: `${amount} ±0.2 lb` });
    await open.settled();
    const count = open.worked() - before;
    if (count !== dependents * caseCount)
      throw new Error(`invalid count: ${count} lines were worked; ${dependents * caseCount} hang on the edit`);
  };
  await edit();
  return { edit };
}

/** An edit of the head of a chain: every line in every case hangs on it. */
export function editLines(lineCount: number, caseCount: number) {
  return edited(linesOf(lineCount, formulaOf), caseCount, "salt", lineCount);
}

/** An edit that the last ten of so many lines hang on. */
export function editTen(lineCount: number) {
  const lines = linesOf(lineCount, (i) => formulaOf(i) + (i === lineCount - 10 ? " + extra" : ""));
  return edited(lines, 1, "extra", 10);
}

/** Opens a notebook of so many lines and waits until all are worked. */
export async function openOnly(lineCount: number): Promise<void> {
  const open = openLines(notebook({ asks: "How long is the chain?", lines: linesOf(lineCount, formulaOf) }));
  await open.settled();
  open.close();
}

/** The same graph of plain numbers on the bare runtime, driven by hand so that no frame is waited for. */
export async function editNumbers(lineCount: number, caseCount: number) {
  const runtime = new Runtime(null, (name) => {
    throw new Error(`unknown name: ${name}`);
  });
  runtime._computeSoon = async () => undefined;
  const module = runtime.module();
  let waiting = 0;
  const heads: Variable[] = [];
  for (let c = 0; c < caseCount; c += 1) {
    const idOf = (name: string) => `${name}|${c}`;
    sources.forEach((name, i) => {
      const node = module.variable({});
      node.define(idOf(name), [], () => i + 1 + c);
      if (i === 0) heads.push(node);
    });
    for (let i = 0; i < lineCount; i += 1) {
      const done = () => {
        waiting -= 1;
      };
      module
        .variable({ fulfilled: done, rejected: done })
        .define(idOf(nameOf(i)), inputsOf(i).map(idOf), numberOf(i) as (...inputs: readonly unknown[]) => unknown);
    }
  }
  const settle = async () => {
    waiting = lineCount * caseCount;
    await runtime._computeNow();
    for (let wait = 0; waiting > 0; wait += 1) {
      if (wait > 1_000_000) throw new Error("invalid graph: it does not settle");
      await Promise.resolve();
    }
  };
  await settle();
  let edit = 20;
  return async () => {
    edit += 1;
    const now = edit;
    heads.forEach((head, c) => void head.define(`salt|${c}`, [], () => now));
    await settle();
  };
}
