import { answerOf } from "../../bath/answer.ts";
import { steamAsked } from "../../bath/asked.ts";
import { at } from "../../bath/at.ts";
import { boilOffOf, ratiosOf } from "../../bath/boilOffOf.ts";
import { fitLine } from "../../bath/fitLine.ts";
import { holdOf } from "../../bath/holdOf.ts";
import { atBoil } from "../../bath/pointsOf.ts";
import { type Prepared, prepare } from "../../bath/prepare.ts";
import { type Asked, type ReadOff, readOff, underEach } from "../../bath/readOff.ts";
import type { Answer } from "../../bath/types.ts";
import { fitUnsaid } from "../../bath/unsaidFire.ts";
import type { Run } from "../../log/types.ts";
import type { Dimension } from "../../measure/types.ts";
import { courseOfFit } from "./courseOfFit.ts";
import { covarianceOf } from "./covarianceOf.ts";
import { burnerFact, depthFacts, fireSuspect, warmRows } from "./factsOf.ts";
import { afterWarmUp, fireLine } from "./fireLine.ts";
import { gasBurnt, wallsAndTop } from "./heatLost.ts";
import { heatWent } from "./heatWent.ts";
import { heldBy, irregular, type Known, lineKnowing, withFire } from "./knownOf.ts";
import { logNextOf } from "./logNextOf.ts";
import { parametersAsked, parametersOf } from "./parametersOf.ts";
import { tooThin, untilOut, waterToTarget } from "./questions.ts";
import { residualsOf } from "./residualsOf.ts";
import { stretch } from "./stretch.ts";
import { probablyMisread, probablyUnwritten } from "./suspected.ts";
import type { FitGivens, FittedParameter, FittedRun } from "./types.ts";
import { whenRead } from "./whenRead.ts";

function plainAnswer(read: ReadOff, dimension: Dimension, least: number): Answer {
  const within = (x: number) => Math.max(least, x);
  return answerOf(within(read.median), [within(read.low), within(read.high)], dimension, read.sources);
}

/** Time in the band as far as it may be below the band already: out of it is 0. */
function orBelow(above: Answer, thin: ReadOff): Answer {
  const [low, high] = above.interval95;
  if (thin.low > 0) return answerOf(0, [0, 0], above.measured.dimension, new Map());
  const value = thin.median > 0 ? 0 : above.value;
  return answerOf(value, [thin.high > 0 ? 0 : low, high], above.measured.dimension, above.measured.components);
}

/** The fire flickers on: what it does next is known no better than its gusts. */
function withGusts(asked: Asked, read: ReadOff): ReadOff {
  const u = 0.1 * Math.abs(asked.value);
  const widen = Math.hypot(1, u / Math.max(1e-9, read.u));
  return {
    median: read.median,
    u: read.u * widen,
    low: read.median + widen * (read.low - read.median),
    high: read.median + widen * (read.high - read.median),
    sources: new Map([...read.sources, ["fire", Math.hypot(read.sources.get("fire") ?? 0, u)]]),
  };
}

function answerNamed(parameters: readonly FittedParameter[], name: FittedParameter["name"]): Answer {
  const found = parameters.find((one) => one.name === name);
  if (!found) throw new Error(`missing parameter: ${name}`);
  return found.answer;
}

/**
 * The fit of `fitRun` with things in it that no log tells, to see how much of its doubt comes from not knowing them.
 * Parameters that are known are left out of the result.
 *
 * @param run a log
 * @param givens as for `fitRun`
 * @param known what is known besides; nothing makes it `fitRun`
 * @example fitKnowing(run, givens, { lag: 12, noise: 0.2 }).boilOff.interval95
 */
export function fitKnowing(run: Run, givens: FitGivens, known: Known): FittedRun {
  const boiling = afterWarmUp(withFire(prepare(run, givens), known), givens.water !== undefined);
  const fit = (prepared: Prepared) => {
    const free = fireLine(prepared);
    const held = heldBy(free, known);
    const line = lineKnowing(free, held);
    const burner = burnerFact(prepared, line, givens);
    const fitted = fitLine(prepared, {
      // Gusts play on the boil-off: a fire whose gusts are known already has none left to play on it.
      line: known.fire ? { ...line, rate: () => 0 } : line,
      rows: [...warmRows(line), ...burner, ...depthFacts(prepared, line, givens)],
      suspects: fireSuspect(line),
      ...(known.noise === undefined ? {} : { noise: known.noise }),
      ...(known.rhythm === undefined ? {} : { rhythm: known.rhythm === "irregular" ? irregular : known.rhythm }),
    });
    return { held, line, burner, fitted };
  };
  const { left } = boiling;
  const { prepared, held, line, burner, fitted } = fitUnsaid(boiling.prepared, fit);
  const said = boilOffOf(prepared, fitted, atBoil(fitted, prepared), stretch);
  const asked = parametersAsked(prepared, fitted, line, burner, left).filter(({ asked: { by } }) =>
    [...held.keys()].every((k) => at(by, k) === 0),
  );
  const under = asked.map((one) => underEach(one.asked, fitted.trial.solved));
  const parameters = parametersOf(asked, fitted, line, under);
  const ask = (one: Asked) => readOff(one, fitted.trial, line.doubts, stretch);
  const { start, end } = prepared.line;
  const toTarget = () => waterToTarget(prepared, fitted, line, givens.target);
  return whenRead<Omit<FittedRun, Later>, Pick<FittedRun, Later>>(
    {
      boilOff: said.boilOff,
      water: answerNamed(parameters, "water at the start"),
      boilingPointOffset: answerNamed(parameters, "boiling point offset"),
      parameters,
      covariance: { names: parameters.map(({ name }) => name), matrix: covarianceOf(asked, fitted, under) },
      makeUp: said.makeUp,
      probablyUnwritten: probablyUnwritten(run, prepared, fitted),
      probablyMisread: probablyMisread(run, prepared, fitted),
      firstBoil: prepared.boil.time,
      remarks: said.remarks,
    },
    {
      waterToTarget: () => plainAnswer(ask(toTarget()), { mass: 1 }, -Infinity),
      untilOutOfBand: () => {
        const out = untilOut(prepared, fitted, line, givens.target + givens.band);
        return orBelow(
          plainAnswer(withGusts(out, ask(out)), { time: 1 }, 0),
          ask(tooThin(prepared, fitted, line, givens.target - givens.band)),
        );
      },
      residuals: () => residualsOf(prepared, fitted, line),
      logNext: () =>
        logNextOf(prepared, fitted, line, givens, {
          lnBoilOff: steamAsked(fitted, start, end),
          waterToTarget: toTarget(),
        }),
      course: () => courseOfFit(prepared, fitted, line),
      heat: () => {
        // Without a band the hold is all that boiled, or the time the parts were in.
        const hold = holdOf(prepared, { salts: givens.salts, pressure: givens.pressure });
        const { boilOff, poured } = said;
        const balance = { boilOff, poured, ...ratiosOf(prepared, fitted, hold, stretch) };
        return heatWent(prepared, line, balance, wallsAndTop(prepared, givens), gasBurnt(prepared, givens));
      },
    },
  );
}

/** What is worked out when it is first read: a fit that is asked for its boil-off need not wait for it. */
type Later = "waterToTarget" | "untilOutOfBand" | "residuals" | "logNext" | "course" | "heat";
