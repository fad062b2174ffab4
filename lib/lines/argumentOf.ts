import { scale } from "../measure/arithmetic.ts";
import { sameDimension } from "../measure/dimension.ts";
import { dimensionName } from "../measure/dimensionName.ts";
import { dimensionOf } from "../measure/dimensionOf.ts";
import { kindFacts } from "../measure/kinds.ts";
import type { Dimension, Kind, Value } from "../measure/types.ts";
import { waterUnit } from "../measure/water.ts";
import { FormulaError } from "./FormulaError.ts";
import { isValue } from "./isValue.ts";
import { literalValue } from "./literal.ts";
import type { Tree } from "./tree.ts";
import type { Func } from "./types.ts";

/**
 * What a function is given, looked at before the call: an amount must measure what the function takes there. Beside a
 * kind that says so, a written number means what can be meant: `5 °F` a difference, `10 lb/gal` salt to water.
 * @param func The function.
 * @param index Which of its arguments, from 0.
 * @param thing What the argument came to.
 * @param piece The argument in the formula.
 * @param quoted The same as the maker wrote it.
 * @returns The argument for the call.
 * @throws FormulaError, at the argument: it names what is taken, what was expected and what came.
 * @example argumentOf(func, 0, exact(2, { mass: 1 }), piece, "salt") // throws: warm takes a temperature as its start: "salt" is a weight
 */
export function argumentOf(func: Func, index: number, thing: unknown, piece: Tree, quoted: string): unknown {
  const { name, kind } = func.takes[index] ?? { name: "argument" };
  if (kind === undefined && func.work) return thing;
  const refuse = (came: string): never => {
    const wanted = kind === undefined ? "an amount" : saysOf(kind);
    throw new FormulaError(`${func.name} takes ${wanted} as its ${name}: "${quoted}" is ${came}`, piece.from);
  };
  if (!isValue(thing)) {
    if (typeof thing === "string") return refuse("words");
    return refuse(typeof thing === "boolean" ? "yes or no" : "a thing that has parts");
  }
  if (kind === undefined || sameDimension(thing.dimension, dimensionOf(kind))) return thing;
  return writtenFor(kind, thing, piece) ?? refuse(dimensionName(thing.dimension));
}

const saysOf = (kind: Kind | Dimension): string =>
  typeof kind === "string" ? kindFacts(kind).says : dimensionName(kind);

/** A written number in the one other sense that its unit can have. Of a line's amount its own kind is known. */
function writtenFor(kind: Kind | Dimension, thing: Value, piece: Tree): Value | undefined {
  const number = piece.kind === "negative" ? piece.of : piece;
  if (number.kind !== "number") return undefined;
  const dimension = dimensionOf(kind);
  if (thing.dimension.point && sameDimension(dimension, { temperature: 1 }))
    return literalValue(piece === number ? number.value : -number.value, number.unit, false);
  if (typeof kind !== "string" || !kindFacts(kind).liquid) return undefined;
  const water = waterUnit({ symbol: "", dimension: thing.dimension, factor: 1 }, dimension);
  return water && { ...scale(thing, water.factor), dimension };
}
