import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { FireLine } from "./fireLine.ts";
import type { FittedRun, PatternName } from "./types.ts";

type Residuals = FittedRun["residuals"];

const findings: Readonly<Record<PatternName, string>> = {
  none: "the readings scatter about the fitted bath without a pattern",
  "too few to tell": "too few readings to see a pattern",
  "a drift": "the readings drift away from the fitted bath: the fire grew or sagged, or a pour is missing",
  "a bend": "the readings bend away from the fitted bath in the middle: the fire changed, or the curve is off",
  "steps at the pours": "readings soon after a pour stand off: pour times, or reading before against after the pour",
  "neighbours agree": "neighbouring readings stand off together: gusts of the fire, or a slow thermometer",
};

function mean(list: readonly number[]): number {
  return list.reduce((sum, x) => sum + x, 0) / Math.max(1, list.length);
}

/** Correlation of residuals with a shape, in standard deviations of what chance gives. */
function against(values: readonly number[], shape: readonly number[]): number {
  const a = values.map((x) => x - mean(values));
  const b = shape.map((x) => x - mean(shape));
  const norm = Math.sqrt(a.reduce((s, x) => s + x * x, 0) * b.reduce((s, x) => s + x * x, 0));
  if (!(norm > 0)) return 0;
  const r = a.reduce((s, x, i) => s + x * at(b, i), 0) / norm;
  return r * Math.sqrt(values.length);
}

function patternOf(values: readonly number[], times: readonly number[], afterPour: readonly boolean[]): PatternName {
  if (values.length < 8) return "too few to tell";
  const span = Math.max(1, (times.at(-1) ?? 0) - (times[0] ?? 0));
  const x = times.map((time) => (2 * (time - (times[0] ?? 0))) / span - 1);
  const near = values.filter((_, i) => afterPour[i]);
  if (near.length >= 3 && Math.abs(mean(near)) * Math.sqrt(near.length) > 3) return "steps at the pours";
  if (Math.abs(against(values, x)) > 3) return "a drift";
  if (
    Math.abs(
      against(
        values,
        x.map((one) => one * one),
      ),
    ) > 3
  )
    return "a bend";
  const neighbours = against(values.slice(1), values.slice(0, -1));
  return neighbours > 3 ? "neighbours agree" : "none";
}

/**
 * What is left of the readings, and whether it has a pattern.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @example residualsOf(prepared, fitted, line).finding
 */
export function residualsOf(prepared: Prepared, fitted: FittedLine, line: FireLine): Residuals {
  const likely = fitted.trial.explanations[0];
  const solved = fitted.trial.solved[likely?.noise ?? 0];
  const sigma = solved?.sigma ?? 0.33;
  const { straight, trial, z } = fitted;
  const blocks = prepared.line.blocks;
  const points: { id: string; time: number; residual: number; standardised: number }[] = [];
  straight.rows.forEach((row, i) => {
    if (row.kind !== "reading") return;
    const warm = line.warming.blocks.find((block) => block.time === row.time && block.order === row.order);
    const id = i < blocks.length ? blocks[i]?.id : warm?.id;
    if (id === undefined) return;
    let residual = at(straight.r, i);
    const by = straight.slopes[i] as Float64Array;
    for (let k = 0; k < z.length; k++) residual -= at(by, k) * at(z, k);
    likely?.guilty.forEach((a, m) => {
      if (trial.suspects[a]?.kind !== "misread")
        residual -= at(likely.amounts, m) * at(trial.suspects[a]?.column ?? [], i);
    });
    points.push({ id, time: row.time, residual, standardised: residual / Math.sqrt(sigma * sigma + row.extra) });
  });
  points.sort((a, b) => a.time - b.time);
  const boiling = points.filter(({ time, standardised }) => time >= prepared.line.start && Math.abs(standardised) < 5);
  const pattern = patternOf(
    boiling.map(({ standardised }) => standardised),
    boiling.map(({ time }) => time),
    boiling.map(({ time }) => prepared.line.pours.some((pour) => time > pour.time && time < pour.time + 90)),
  );
  return { points, pattern, finding: findings[pattern], noise: sigma };
}
