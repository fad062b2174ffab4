import type { Line, Lines, Notebook, OwnGiven } from "../../../lib/lines/index.ts";
import { same } from "../../../lib/record/index.ts";

type Make = (open: Lines) => void;

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The edit from one line to another of its name, where texts, formulas and how it is known are all that differ. */
function lineEdit(name: string, from: Line, to: Line): Make | undefined {
  if (from.kind === "given" && to.kind === "given") {
    const { text, known } = to;
    if (known === undefined && from.known !== undefined) return undefined;
    if (
      !alike({ ...from, text, ...(known && { known }) }, to) &&
      !alike({ ...from, text: "", known: "" }, { ...to, text: "", known: "" })
    )
      return undefined;
    return (open) => open.set(name, { given: text, known });
  }
  if (from.kind === "given" || to.kind === "given") return undefined;
  const { formula } = to;
  if (!alike({ ...from, kind: "", formula: "" }, { ...to, kind: "", formula: "" })) return undefined;
  return (open) => open.set(name, to.kind === "fitted" ? { fitted: formula } : { worked: formula });
}

function ownEdit(line: string, inCase: string, from: OwnGiven | undefined, to: OwnGiven | undefined): Make | undefined {
  if (to === undefined) return (open) => open.putBack(line, inCase);
  const { text, known, sameAs } =
    typeof to === "string" ? { text: to } : { sameAs: undefined, known: undefined, ...to };
  // A reading that is another case's very own can only be opened so.
  if (sameAs !== undefined || (typeof from === "object" && from.sameAs !== undefined)) return undefined;
  if (known === undefined && typeof from === "object" && from.known !== undefined) return undefined;
  return (open) => open.set(line, { given: text, known }, inCase);
}

/** The same with what is understood written out: the first case is the base, a text alone is a reading. */
function writtenOut(book: Notebook): Notebook {
  if (!book.cases) return book;
  const cases = Object.entries(book.cases).map(([name, own]) => {
    const mine = Object.entries(own).map(([line, given]) => [
      line,
      typeof given === "string" ? { text: given } : given,
    ]);
    return [name, Object.fromEntries(mine)];
  });
  const [first] = Object.keys(book.cases);
  const { base = first, ...rest } = book;
  return { ...rest, cases: Object.fromEntries(cases), ...(base !== undefined && { base }) };
}

/**
 * The edits that lead from one notebook to another, so that only what differs is worked again.
 * @returns undefined where lines or cases were added, removed, renamed or moved: it must be opened anew.
 */
export function differing(from: Notebook, to: Notebook): readonly Make[] | undefined {
  const { lines: a, cases: b = {}, ...restA } = writtenOut(from);
  const { lines: c, cases: d = {}, ...restB } = writtenOut(to);
  const { asks, name, figures, notes, answer, ...rest } = restB;
  const { asks: _1, name: _2, figures: _3, notes: _4, answer: _5, ...restBefore } = restA;
  if (!alike(Object.keys(a), Object.keys(c)) || !alike(Object.keys(b), Object.keys(d)) || !same(restBefore, rest))
    return undefined;
  const edits: (Make | undefined)[] = [];
  for (const [line, next] of Object.entries(c)) {
    const before = a[line];
    if (before && !alike(before, next)) edits.push(lineEdit(line, before, next));
  }
  for (const [inCase, own] of Object.entries(d)) {
    const before = b[inCase] ?? {};
    for (const line of new Set([...Object.keys(before), ...Object.keys(own)]))
      if (!alike(before[line], own[line])) edits.push(ownEdit(line, inCase, before[line], own[line]));
  }
  const about = { asks, name, figures, notes, answer };
  if (!alike({ asks: _1, name: _2, figures: _3, notes: _4, answer: _5 }, about)) {
    // A part that is gone cannot be set to nothing.
    if (
      Object.values(about).filter((part) => part !== undefined).length <
      [_1, _2, _3, _4, _5].filter((part) => part !== undefined).length
    )
      return undefined;
    const part = Object.fromEntries(Object.entries(about).filter(([, value]) => value !== undefined));
    edits.push((open) => open.setRest("", part));
  }
  return edits.every((edit) => edit !== undefined) ? edits : undefined;
}
