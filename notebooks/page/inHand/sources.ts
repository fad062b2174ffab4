import { type FunctionHelp, functionHelp, functionsIn, type Names, parseFormula } from "../../../lib/lines/index.ts";

/** What is said of the functions that a formula calls; none where it cannot be read. */
export function sources(formula: string, names: Names): readonly FunctionHelp[] {
  const parsed = parseFormula(formula, names);
  return "tree" in parsed ? functionsIn(parsed.tree).map(functionHelp) : [];
}
