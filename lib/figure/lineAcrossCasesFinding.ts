import { subtract } from "../measure/arithmetic.ts";
import { interval95 } from "../measure/standardUncertainty.ts";
import type { Value } from "../measure/types.ts";
import { caseAmount } from "./caseAmount.ts";
import { caseMark } from "./caseMark.ts";
import type { LineAcrossCasesData } from "./caseTypes.ts";
import type { FigureOptions } from "./types.ts";
import { counted } from "./words.ts";

/**
 * What "a line across cases" shows, in sentences: each case's number with its 95 % spread, and how it stands to the
 * base, what the two share cancelled: more, less, the same, or *can't tell* where the difference's spread reaches zero.
 * @example
 * const cases = [{ name: "Small tank", value: exact(4) }, { name: "Longer tank", value: exact(6) }];
 * lineAcrossCasesFinding({ line: "Burners", unit: "", cases, base: "Small tank" }, { system: "US" }) // "Burners across two cases. Small tank (dot, base): 4 exactly. Longer tank (square): 6 exactly, 2 exactly more than the base. …"
 */
export function lineAcrossCasesFinding(data: LineAcrossCasesData, { system }: Pick<FigureOptions, "system">): string {
  const { line, unit, cases, base } = data;
  if (cases.length === 0) return `${line} across cases. There is no case yet.`;
  const baseValue = cases.find((one) => one.name === base)?.value;
  const said = cases.map((one, index) => {
    const isBase = one.name === base;
    const who = `${one.name} (${caseMark(index).word}${isBase ? ", base" : ""})`;
    if (!one.value) return `${who}: ${one.says ?? "no number"}.`;
    const number = caseAmount(one.value, unit, system).text;
    const against = baseValue && !isBase ? `, ${difference(one.value, baseValue, unit, system)}` : "";
    return `${who}: ${number}${against}.`;
  });
  return [`${line} across ${counted(cases.length, "case")}.`, ...said, "The bars are the 95 % spread."].join(" ");
}

function difference(value: Value, base: Value, unit: string, system: "US" | "metric"): string {
  const less = subtract(value, base);
  const [low, high] = interval95(less);
  if (low === 0 && high === 0) return "the same as the base";
  if (low <= 0 && high >= 0) return "can't tell it from the base";
  const [size, word] = less.value < 0 ? [subtract(base, value), "less"] : [less, "more"];
  return `${caseAmount(size, unit, system).text} ${word} than the base`;
}
