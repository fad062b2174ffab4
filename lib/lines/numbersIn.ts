import type { Names } from "./names.ts";
import { parseFormula } from "./parseFormula.ts";
import { childrenOf, type Tree } from "./tree.ts";

/** A piece of a formula with numbers put in. */
export interface NumberPiece {
  /** What is shown: words of the formula, a sign, or the value of a line. */
  readonly text: string;
  /** The line that the text is the value of. */
  readonly line?: string;
  /** What the maker wrote in its place, where that is something else. */
  readonly written?: string;
}

/** Signs as they are shown, by how they may be written. */
const SIGNS: ReadonlyMap<string, string> = new Map([
  ...["*", "·", "⋅"].map((sign) => [sign, "×"] as const),
  ...["/", "∕"].map((sign) => [sign, "÷"] as const),
  ...["-", "–"].map((sign) => [sign, "−"] as const),
  ["<=", "≤"],
  [">=", "≥"],
]);

interface Swap extends NumberPiece {
  readonly from: number;
  readonly to: number;
}

/**
 * A formula with the values of its lines in place of their names: "9.4 lb ÷ 9" for "gas for the run / blades". A value
 * that would be misread beside a sign (a minus, a ±, a unit under a power) stands in brackets.
 * @param formula The formula.
 * @param names Lines and functions that it may name.
 * @param shown The text of a line's value; undefined for one that has none to show, whose name then stays.
 * @returns Pieces in order, to be shown one behind the other; none where the formula cannot be read.
 * @example
 * const shown = (name) => (name === "gas" ? "9.4 lb" : "9");
 * numbersIn("gas / blades", namesOf(["gas", "blades"]), shown).map((piece) => piece.text).join("") // "9.4 lb ÷ 9"
 */
export function numbersIn(
  formula: string,
  names: Names,
  shown: (name: string) => string | undefined,
): readonly NumberPiece[] {
  const parsed = parseFormula(formula, names);
  if (!("tree" in parsed)) return [];
  const swaps = swapsIn(parsed.tree, formula, shown).sort((a, b) => a.from - b.from);
  const pieces: NumberPiece[] = [];
  let at = 0;
  for (const { from, to, ...piece } of swaps) {
    if (from > at) pieces.push({ text: formula.slice(at, from) });
    pieces.push(piece);
    at = to;
  }
  if (at < formula.length) pieces.push({ text: formula.slice(at) });
  return pieces;
}

function swapsIn(tree: Tree, formula: string, shown: (name: string) => string | undefined): Swap[] {
  const found: Swap[] = [];
  const left: { readonly tree: Tree; readonly under?: Tree }[] = [{ tree }];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    const { tree: one, under } = next;
    if (one.kind === "line") {
      // A bracket of the maker's own is part of the piece's place, and stays.
      const inner = withoutBrackets(one, formula);
      const text = shown(one.name);
      if (text !== undefined)
        found.push({
          ...inner,
          text: inner.from === one.from && needsBrackets(text, one, under) ? `(${text})` : text,
          line: one.name,
          written: formula.slice(inner.from, inner.to),
        });
    }
    const at =
      one.kind === "sign" || one.kind === "compare"
        ? one.at
        : one.kind === "negative"
          ? withoutBrackets(one, formula).from
          : undefined;
    const sign = at === undefined ? undefined : signAt(formula, at);
    if (sign) found.push(sign);
    for (const child of childrenOf(one)) left.push({ tree: child, under: one });
  }
  return found;
}

function withoutBrackets({ from, to }: Tree, formula: string): { readonly from: number; readonly to: number } {
  let [start, end] = [from, to];
  while (/[\s(]/u.test(formula.charAt(start))) start++;
  while (end > start && /[\s)]/u.test(formula.charAt(end - 1))) end--;
  return { from: start, to: end };
}

function signAt(formula: string, from: number): Swap | undefined {
  for (const length of [2, 1]) {
    const written = formula.slice(from, from + length);
    const text = SIGNS.get(written);
    if (text !== undefined) return { from, to: from + length, text, written };
  }
  return undefined;
}

function needsBrackets(text: string, piece: Tree, under: Tree | undefined): boolean {
  if (!under || (under.kind !== "sign" && under.kind !== "negative")) return false;
  if (/±/u.test(text)) return true;
  if (/^\s*[-−–]/u.test(text)) return under.kind === "negative" || under.right === piece || under.sign === "^";
  if (under.kind === "negative") return false;
  if (under.sign === "^") return /[^\d.,]/u.test(text);
  return false;
}
