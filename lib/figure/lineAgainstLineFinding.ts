import { caseAmount } from "./caseAmount.ts";
import { caseMark } from "./caseMark.ts";
import type { LineAgainstLineData } from "./caseTypes.ts";
import type { FigureOptions } from "./types.ts";
import { counted } from "./words.ts";

/**
 * What "a line against another" shows, in sentences: both numbers of each case with their 95 % spreads.
 * @example
 * const cases = [{ name: "Small tank", x: exact(4), y: exact(9) }];
 * lineAgainstLineFinding({ line: "Gas", unit: "", against: "blades", againstUnit: "", cases }, { system: "US" }) // "Gas against blades in one case. Small tank (dot): Gas 9 exactly, blades 4 exactly. …"
 */
export function lineAgainstLineFinding(data: LineAgainstLineData, { system }: Pick<FigureOptions, "system">): string {
  const { line, unit, against, againstUnit, cases } = data;
  if (cases.length === 0) return `${line} against ${against}. There is no case yet.`;
  const said = cases.map(({ name, x, y, says }, index) => {
    const who = `${name} (${caseMark(index).word})`;
    if (!x && !y) return `${who}: ${says ?? "no number"}.`;
    const up = y ? caseAmount(y, unit, system).text : (says ?? "no number");
    const along = x ? caseAmount(x, againstUnit, system).text : (says ?? "no number");
    return `${who}: ${line} ${up}, ${against} ${along}.`;
  });
  const end = "The bars are the 95 % spreads.";
  return [`${line} against ${against} in ${counted(cases.length, "case")}.`, ...said, end].join(" ");
}
