import { FormulaError } from "./FormulaError.ts";
import { takenInWords } from "./functionHelp.ts";
import { isUnit } from "./isUnit.ts";
import { type Reader, WORDS } from "./Reader.ts";
import { scanNumber } from "./scanNumber.ts";
import { signAt, strangeSign } from "./strangeSign.ts";
import type { Tree } from "./tree.ts";
import type { Func } from "./types.ts";
import { unknownName } from "./unknownName.ts";

type Parse = (reader: Reader) => Tree;

/** Words up to an "of" that stands alone, none of them a word that joins conditions: what may be the name of a part. */
const PART =
  /((?!(?:when|otherwise|and|or|of)\s)[\p{L}\p{M}\p{Nd}_.'’]+(?:(?:-|[ \t]+(?!(?:when|otherwise|and|or|of)\s))[\p{L}\p{M}\p{Nd}_.'’]+)*)\s+of(?![\p{L}\p{M}\p{Nd}_-])/iuy;

/**
 * Reads one operand: a number with its unit, words in quotes, a line, a part of a thing, a function, or brackets.
 * @param reader The formula, at the operand.
 * @param parse Reads what stands in brackets.
 * @returns The operand; the reader is behind it.
 * @throws FormulaError where no operand stands.
 * @example parseOperand(new Reader("30 min", namesOf([])), parse) // { kind: "number", value: 30, unit: "min", from: 0, to: 6 }
 */
export function parseOperand(reader: Reader, parse: Parse): Tree {
  const from = reader.at;
  reader.operandFrom = from;
  const tree = bracketed(reader, parse) ?? number(reader) ?? quoted(reader) ?? named(reader, parse);
  if (tree === undefined) throw nothingHere(reader);
  return tree;
}

function bracketed(reader: Reader, parse: Parse): Tree | undefined {
  const from = reader.at;
  if (!reader.sign(["("])) return undefined;
  const open = reader.calls;
  reader.calls = 0;
  const inner = parse(reader);
  reader.calls = open;
  const to = reader.at + 1;
  if (!reader.sign([")"])) throw closing(reader, from);
  reader.operandFrom = from;
  return { ...inner, from, to };
}

function number(reader: Reader): Tree | undefined {
  const from = reader.at;
  const money = reader.text.charAt(from) === "$";
  const found = scanNumber(reader.text, money ? from + 1 : from, reader.calls > 0);
  if (found === undefined) return undefined;
  const unit = money ? { unit: "$", to: found.to } : reader.unit(found.to);
  const to = unit?.to ?? found.to;
  reader.moveTo(to);
  return { kind: "number", value: found.value, ...(unit && { unit: unit.unit }), from, to };
}

function quoted(reader: Reader): Tree | undefined {
  const from = reader.at;
  const found = /^(?:"([^"]*)"|“([^”]*)”)/u.exec(reader.text.slice(from));
  if (!found) return undefined;
  const to = from + found[0].length;
  reader.moveTo(to);
  return { kind: "words", words: found[1] ?? found[2] ?? "", from, to };
}

/** A line, a function or a part of a thing: whichever has the longest name wins. */
function named(reader: Reader, parse: Parse): Tree | undefined {
  const from = reader.at;
  const line = reader.line();
  const call = reader.call();
  const part = partAt(reader);
  if (part && part.partTo >= Math.max(line?.to ?? 0, call?.nameTo ?? 0)) {
    reader.moveTo(part.to);
    const of = reader.deeper(() => parseOperand(reader, parse));
    reader.operandFrom = from;
    return { kind: "part", part: part.name, of, from, to: of.to };
  }
  if (call && call.nameTo >= (line?.to ?? 0)) return called(reader, parse, call.func, call.to);
  if (!line) return undefined;
  reader.moveTo(line.to);
  return { kind: "line", name: line.name, from, to: line.to };
}

/**
 * The name of a part that stands at a character with its "of". A line's name that reaches up to an "of" is such a name too.
 * @param reader The formula.
 * @param from Character to look at, from 0.
 * @param lineTo End of the line's name that stands there, if one does.
 * @returns The part's name, the character after it, and the character after its "of"; undefined where none stands.
 * @example partAt(new Reader("boil-off of balance", names)) // { name: "boil-off", partTo: 8, to: 11 }
 */
export function partAt(reader: Reader, from = reader.at, lineTo = reader.line(from)?.to) {
  if (lineTo !== undefined) {
    const of = /^\s+of(?![\p{L}\p{M}\p{Nd}_-])/iu.exec(reader.text.slice(lineTo, lineTo + 40));
    if (of) return { name: reader.text.slice(from, lineTo), partTo: lineTo, to: lineTo + of[0].length };
  }
  PART.lastIndex = from;
  const found = PART.exec(reader.text.slice(0, from + 120));
  const name = found?.[1];
  if (!found || name === undefined || /^\d/u.test(name)) return undefined;
  return { name, partTo: from + name.length, to: from + found[0].length };
}

function called(reader: Reader, parse: Parse, func: Func, to: number): Tree {
  const from = reader.at;
  reader.moveTo(to);
  const args: Tree[] = [];
  const open = reader.calls;
  reader.calls = open + 1;
  if (reader.text.charAt(reader.at) !== ")") {
    do args.push(reader.deeper(() => parse(reader)));
    while (reader.sign([","]));
  }
  reader.calls = open;
  if (reader.text.charAt(reader.at) !== ")") throw closing(reader, to - 1);
  const end = reader.at + 1;
  reader.moveTo(end);
  const least = func.takes.filter((one) => !one.optional).length;
  if (args.length < least || args.length > func.takes.length) {
    const commas = /\d,\d/u.test(reader.text.slice(from, end)) ? "; a comma parts them, a number takes a point" : "";
    throw new FormulaError(`${func.name} takes ${takenInWords(func)}: ${args.length} written here${commas}`, from);
  }
  return { kind: "call", func, args, from, to: end };
}

function closing(reader: Reader, open: number): FormulaError {
  const comma = reader.text.charAt(reader.at) === ",";
  if (comma) return new FormulaError("a comma stands only between what a function is given", reader.at);
  return reader.atEnd()
    ? new FormulaError("this bracket is never closed: write )", open)
    : new FormulaError(strangeSign(reader.text, reader.at) ?? ") was expected here", reader.at);
}

function nothingHere(reader: Reader): FormulaError {
  const at = reader.at;
  if (reader.atEnd()) return new FormulaError("the formula stops short: a name, a number or ( was expected", at);
  const words = reader.wordsAt(at);
  if (words === "")
    return new FormulaError(
      strangeSign(reader.text, at) ?? `a name, a number or ( was expected here, not "${signAt(reader.text, at)}"`,
      at,
    );
  const first = words.split(/\s/u)[0] ?? words;
  if (WORDS.has(first.toLowerCase())) return new FormulaError(`a name or a number was expected before "${first}"`, at);
  const func = [...reader.names.functions.values()].find((one) =>
    words.toLowerCase().startsWith(one.name.toLowerCase()),
  );
  if (func) return new FormulaError(`${func.name} works on something: write it in brackets behind the name`, at);
  if (isUnit(words)) return new FormulaError(`"${words}" is a unit: write a number before it`, at);
  return unknownName(reader, words);
}
