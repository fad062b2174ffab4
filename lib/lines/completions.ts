import { functionHelp } from "./functionHelp.ts";
import { inWords } from "./inWords.ts";
import { FIT, fitOf, foldTyped, loosened } from "./matching.ts";
import type { Names } from "./names.ts";
import { nearestName } from "./nearestName.ts";
import { LONGEST_FORMULA } from "./Reader.ts";
import { unitsFor } from "./unitsFor.ts";
import { wordsFor } from "./wordsFor.ts";
import { type WrittenAt, writtenAt } from "./writtenAt.ts";

const LETTER = /[\p{L}\p{M}\p{Nd}_]/u;

export type CompletionKind = "line" | "function" | "word" | "unit" | "part";

/** Something that could be written: `insert` in place of the characters `from` up to, not including, `to`. */
export interface Completion {
  readonly name: string;
  readonly kind: CompletionKind;
  /** A sentence for who does not know it. */
  readonly says: string;
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

export interface CompletionOptions {
  /** The names of the parts of what a line came to; none for an amount. */
  readonly partsOf?: (line: string) => readonly string[];
  /** What is said of a line: its value, or what it is. */
  readonly says?: (line: string) => string | undefined;
  /** How many are given back, 8 if left out. */
  readonly most?: number;
}

interface Phrase {
  readonly name: string;
  readonly folded: string;
  readonly loose: string;
  readonly kind: "line" | "function" | "part";
  readonly insert: string;
  readonly says: string;
}

interface Found extends Completion {
  readonly fit: number;
}

const ORDER: readonly CompletionKind[] = ["line", "part", "function", "unit", "word"];

/**
 * What could be written at a character of a formula, the likeliest first: by the start of a name, then by the start of
 * any of its words, then by a slip of the hand. Units are offered behind numbers alone, names never behind a number.
 * @param text The formula as far as it is written; it may be wrong.
 * @param caret The character, from 0.
 * @param names Lines and functions that it may name.
 * @param options Parts of lines, what is said of lines, how many at most.
 * @returns Completions, none inside quotes or where nothing fits.
 * @example completions("2 * gas fo", 10, namesOf(["gas", "gas for the run"]))[0]?.insert // "gas for the run"
 */
export function completions(
  text: string,
  caret: number,
  names: Names,
  options: CompletionOptions = {},
): readonly Completion[] {
  if (text.length > LONGEST_FORMULA) return [];
  const at = writtenAt(text, caret, names);
  if (!at) return [];
  const fitting = [...named(text, caret, at, names, options), ...units(text, caret, at), ...words(text, caret, at)];
  const found = fitting.length > 0 ? fitting : slips(text, caret, at, names, options);
  const most = Math.max(0, options.most ?? 8);
  const seen = new Set<string>();
  return found
    .sort((a, b) => a.fit - b.fit || ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
    .filter((one) => {
      const key = `${one.kind} ${one.name}`;
      const first = !seen.has(key);
      seen.add(key);
      return first;
    })
    .slice(0, most)
    .map(({ fit: _, ...one }) => one);
}

function named(text: string, caret: number, at: WrittenAt, names: Names, options: CompletionOptions): Found[] {
  if (at.starts.length === 0) return [];
  const phrases = phrasesOf(names, options, at);
  const found = at.starts.flatMap((from) => {
    const typed = foldTyped(text.slice(from, caret));
    // With nothing typed of it yet, a name would grow onto the word before.
    if (typed.trim() === "")
      return from < caret || !LETTER.test(text.charAt(from - 1)) ? begun(phrases, at, text, from, caret) : [];
    const last = from === at.starts.at(-1);
    const asked = { folded: typed, loose: loosened(typed) };
    return phrases.flatMap((phrase) => {
      const fit = fitOf(asked, phrase);
      if (fit === undefined || (!last && fit > FIT.looseStart) || isDone(typed, phrase)) return [];
      return [made(phrase, fit, text, from, caret)];
    });
  });
  // Where a name with a hyphen is being typed, what lies inside other names is not meant.
  const hyphened = found.some((one) => one.from < (at.starts.at(-1) ?? 0));
  return found
    .filter((one) => !hyphened || one.fit <= FIT.looseStart)
    .sort((a, b) => a.fit - b.fit || a.from - b.from || (a.from < caret ? a.name.length - b.name.length : 0));
}

/** A name that is there to its end; a function still wants its bracket. */
function isDone(typed: string, phrase: Phrase): boolean {
  return phrase.kind !== "function" && typed === phrase.folded;
}

/** All that could begin here. Things with parts are no amounts, so that they come behind. */
function begun(phrases: readonly Phrase[], at: WrittenAt, text: string, from: number, caret: number): Found[] {
  if (at.after !== undefined || LETTER.test(text.charAt(caret))) return [];
  return phrases.filter((one) => one.kind !== "part" || at.part).map((one) => made(one, FIT.start, text, from, caret));
}

/** Names that are a slip of the hand away from what was typed, or from as much of them. */
function slips(text: string, caret: number, at: WrittenAt, names: Names, options: CompletionOptions): Found[] {
  const phrases = phrasesOf(names, options, at);
  for (const from of new Set([at.starts[0], at.starts.at(-1)])) {
    const typed = foldTyped(text.slice(from, caret)).trimEnd();
    if (from === undefined || typed.length < 3 || phrases.some((one) => one.folded === typed)) continue;
    const all = phrases.filter((one) => one.kind !== "part" && !typed.startsWith(`${one.folded} `));
    const near = nearestName(
      typed,
      all.map((one) => one.folded),
    );
    // A name of which as much is typed, give or take the letter that slipped.
    const begun = [0, 1, -1].map((more) => {
      const starts = all.map((one) => one.folded.slice(0, typed.length + more));
      return { to: typed.length + more, start: nearestName(typed, starts) };
    });
    const meant = all.filter(
      (one) => one.folded === near || begun.some(({ to, start }) => one.folded.slice(0, to) === start),
    );
    if (meant.length > 0) return meant.map((one) => made(one, FIT.slip, text, from, caret));
  }
  return [];
}

function phrasesOf(names: Names, { partsOf, says }: CompletionOptions, at: WrittenAt): Phrase[] {
  const lines = [...names.lines].filter(([folded]) => folded !== names.except).map(([, name]) => name);
  const functions = [...names.functions.values()].map((func): Phrase => {
    const { call, says: does } = functionHelp(func);
    const insert = func.takes.length === 0 ? `${func.name}()` : `${func.name}(`;
    return { name: func.name, ...foldedOf(func.name), kind: "function", insert, says: `${call}: ${does}` };
  });
  const asLine = (name: string, does = "A line."): Phrase => {
    return { name, ...foldedOf(name), kind: "line", insert: name, says: says?.(name) ?? does };
  };
  const parts = partsOf
    ? lines.flatMap((line) =>
        partsOf(line).map((part): Phrase => {
          const name = `${inWords(part)} of ${line}`;
          return { name, ...foldedOf(name), kind: "part", insert: name, says: `A part of ${line}.` };
        }),
      )
    : [];
  if (!at.part) return [...lines.map((line) => asLine(line)), ...parts, ...functions];
  // Behind "boil-off of" only what has that part is any use, if that is known.
  const asked = plain(at.part.name);
  const having = lines.filter((line) => partsOf?.(line).some((part) => plain(part) === asked));
  return having.length > 0 ? having.map((line) => asLine(line)) : [...lines.map((line) => asLine(line)), ...functions];
}

function foldedOf(name: string): { readonly folded: string; readonly loose: string } {
  const folded = foldTyped(name);
  return { folded, loose: loosened(folded) };
}

function plain(part: string): string {
  return foldTyped(inWords(part)).replace(/[\s\-_.']/gu, "");
}

function made(phrase: Phrase, fit: number, text: string, from: number, caret: number): Found {
  const to = endOf(text, from, caret, phrase.name);
  const open = phrase.kind === "function" && /^\s*\(/u.test(text.slice(to, to + 40));
  const { name, kind, says } = phrase;
  return { name, kind, says, from, to, insert: open ? name : phrase.insert, fit };
}

/** A caret inside a name: the rest of the word goes, and what stands behind it of the name already. */
function endOf(text: string, from: number, caret: number, name: string): number {
  const inWord = caret > from && LETTER.test(text.charAt(caret - 1));
  const word = inWord ? (/^[\p{L}\p{M}\p{Nd}_]*/u.exec(text.slice(caret, caret + 60))?.[0].length ?? 0) : 0;
  const rest = name.slice(caret - from).toLowerCase();
  const there = text.slice(caret + word, caret + word + rest.length + 1).toLowerCase();
  for (let at = 0; at < rest.length; at++) {
    if (at > 0 && /[\p{L}\p{M}\p{Nd}_]/u.test(rest.charAt(at))) continue;
    const length = wholeWordsAlike(rest.slice(at), there);
    // Words that go on into others are not this name's: they only begin alike.
    const over = at + length === rest.length || !/^\s*[\p{L}\p{M}\p{Nd}_]/u.test(there.slice(length));
    if (length > 0 && over) return caret + word + length;
  }
  return caret + word;
}

/** How far two texts are alike, in whole words. */
function wholeWordsAlike(a: string, b: string): number {
  let to = 0;
  while (to < a.length && a.charAt(to) === b.charAt(to)) to++;
  while (to > 0 && (LETTER.test(b.charAt(to)) || !LETTER.test(b.charAt(to - 1)))) to--;
  return to;
}

function units(text: string, caret: number, at: WrittenAt): Found[] {
  if (!at.unit) return [];
  const begins = at.unit.from;
  const typed = text.slice(begins, caret);
  const from = begins + (typed.length - typed.trimStart().length);
  return unitsFor(typed).map(({ unit, fit }) => ({
    name: unit,
    kind: "unit",
    says: "A unit.",
    from,
    to: caret,
    insert: from === begins ? ` ${unit}` : unit,
    // Behind a bar with blanks a line is likelier than a longer unit.
    fit: fit + (at.unit?.joined ? (/[/*·×]\s/u.test(typed) ? 0.5 : -0.5) : 0),
  }));
}

function words(text: string, caret: number, at: WrittenAt): Found[] {
  const start = at.starts.at(-1);
  const typing = start !== undefined && (at.after === undefined || at.after === caret);
  const from = typing ? start : at.after;
  // A word cannot grow onto what stands before it.
  if (from === undefined || (from === caret && /[\p{L}\p{M}\p{Nd}_.)]/u.test(text.charAt(caret - 1)))) return [];
  const typed = text.slice(from, caret);
  const begins = from + (typed.length - typed.trimStart().length);
  const asked = foldTyped(typed);
  if (/[^\p{L} ]/u.test(asked)) return [];
  return wordsFor(at, typing).flatMap(({ word, says, insert }): Found[] => {
    if (!word.startsWith(asked) || word === asked) return [];
    return [{ name: word, kind: "word", says, from: begins, to: caret, insert, fit: FIT.start }];
  });
}
