import { subtract } from "../measure/arithmetic.ts";
import { interval95 } from "../measure/standardUncertainty.ts";
import { caseAmount } from "./caseAmount.ts";
import { caseMark } from "./caseMark.ts";
import type { SweepCase, SweepDrawnData, SweepPoint } from "./caseTypes.ts";
import { sweepLines, sweptText } from "./sweepFrame.ts";
import type { FigureOptions } from "./types.ts";
import { counted } from "./words.ts";

type System = FigureOptions["system"];
type Known = SweepPoint & { readonly y: NonNullable<SweepPoint["y"]> };

/**
 * What "a sweep" shows, in sentences: the range of the given, and for each case where the line begins and ends, whether
 * it rises, falls or *can't tell*, what lies higher or lower in between, where it stands now, and where it has no number.
 * @example
 * const points = [{ x: 1, y: exact(2) }, { x: 3, y: exact(6) }];
 * sweepDrawnFinding({ line: "Gas", unit: "", by: "blades", byUnit: "", cases: [{ name: "Small tank", points }] }, { system: "US" }) // "Gas over blades, 1 to 3, in one case. Small tank (dot): 2 exactly at 1, rises to 6 exactly at 3. …"
 */
export function sweepDrawnFinding(data: SweepDrawnData, { system }: Pick<FigureOptions, "system">): string {
  const { line, by, cases } = data;
  const xs = cases.flatMap((one) => one.points.map(({ x }) => x));
  if (xs.length === 0) return `${line} over ${by}. Nothing is swept yet.`;
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const range =
    low === high
      ? `at ${sweptText(low, data, system)}`
      : `${sweptText(low, data, system)} to ${sweptText(high, data, system)}`;
  const gaps = sweepLines(data, system).map((one) => one.gaps);
  const said = cases.map((one, index) => {
    const missing = (gaps[index] ?? []).map((gap) => gap.says);
    return `${one.name} (${caseMark(index).word}): ${[course(one, data, system), now(one, data, system)].filter((part) => part !== "").join("; ")}.${without(missing)}`;
  });
  const wanted = data.strip
    ? [
        `Wanted: ${[data.strip.low, data.strip.high].map((end) => caseAmount(end, data.unit, system).number).join(" to ")} ${data.unit}.`,
      ]
    : [];
  return [
    `${line} over ${by}, ${range}, in ${counted(cases.length, "case")}.`,
    ...wanted,
    ...said,
    "The fill is the 95 % spread.",
  ].join(" ");
}

function course(one: SweepCase, data: SweepDrawnData, system: System): string {
  const known = one.points.filter((point): point is Known => point.y !== undefined).toSorted((a, b) => a.x - b.x);
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last) return "no number";
  const at = (point: Known) => `${caseAmount(point.y, data.unit, system).text} at ${sweptText(point.x, data, system)}`;
  if (first === last) return at(first);
  const values = known.map((point) => point.y.value);
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const between = (value: number, word: string) => {
    const point = known.find((each) => each.y.value === value);
    return point && value !== first.y.value && value !== last.y.value ? `, ${word} ${at(point)}` : "";
  };
  return `${at(first)}, ${way(first, last)} ${at(last)}${between(highest, "highest")}${between(lowest, "lowest")}`;
}

/** Rising or falling only where the difference of the two ends, what they share cancelled, is clear of zero. */
function way(first: Known, last: Known): string {
  const [low, high] = interval95(subtract(last.y, first.y));
  if (low === 0 && high === 0) return "is the same:";
  if (low > 0) return "rises to";
  return high < 0 ? "falls to" : "can't tell it from";
}

function now({ present }: SweepCase, data: SweepDrawnData, system: System): string {
  if (!present) return "";
  const at = sweptText(present.x, data, system);
  return present.y ? `now ${caseAmount(present.y, data.unit, system).text} at ${at}` : `now at ${at}`;
}

function without(says: readonly string[]): string {
  if (says.length === 0) return "";
  const reasons = [...new Set(says)].filter((one) => one !== "no number");
  return ` No number in ${counted(says.length, "stretch", "stretches")}${reasons.length > 0 ? `: ${reasons.join("; ")}` : ""}.`;
}
