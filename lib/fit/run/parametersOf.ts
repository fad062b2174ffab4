import { answerOf } from "../../bath/answer.ts";
import { at } from "../../bath/at.ts";
import type { FittedLine } from "../../bath/fitLine.ts";
import type { Fact } from "../../bath/gaussianLine.ts";
import type { Prepared } from "../../bath/prepare.ts";
import { type Asked, readOff, type Under } from "../../bath/readOff.ts";
import { before } from "../../bath/waterLine.ts";
import type { Dimension } from "../../measure/types.ts";
import type { FireLine } from "./fireLine.ts";
import { doubtAsked } from "./questions.ts";
import { stretch } from "./stretch.ts";
import { told } from "./told.ts";
import type { FittedParameter, ParameterName } from "./types.ts";

/** A parameter as a number that hangs on the doubts: its ln where it cannot be below 0. */
export interface ParameterAsked {
  readonly name: ParameterName;
  readonly asked: Asked;
  readonly logarithm: boolean;
  readonly dimension: Dimension;
  /** Before the log spoke, of the ln where `logarithm`. */
  readonly prior: { readonly value: number; readonly u: number; readonly from: string };
}

/**
 * The parameters of a fitted run, as questions to the fit.
 *
 * @param prepared the log
 * @param fitted its fit
 * @param line its line
 * @param burner what the burner's size says, if it is known
 * @param left kg that left before the boil
 * @example parametersAsked(prepared, fittedLine, line, [], 0).map(({ name }) => name)
 */
export function parametersAsked(
  prepared: Prepared,
  fitted: FittedLine,
  line: FireLine,
  burner: readonly Fact[],
  left: number,
): readonly ParameterAsked[] {
  const { index } = line;
  const g = prepared.line;
  const heat = Math.log(g.rate.value * line.heats.evaporation * (1 + line.heats.climbing));
  const early = prepared.facts.pours
    .filter(({ time }) => time < g.start - 1e-9)
    .reduce((sum, { mass }) => sum + mass, 0);
  const first = Math.max(0.1 * g.water.value, g.water.value + left - early);
  const one = (
    name: ParameterName,
    doubt: number,
    value: number,
    u: number,
    from: string,
    dimension: Dimension,
    logarithm: boolean,
  ): ParameterAsked => ({
    name,
    asked: doubtAsked(fitted, doubt, value, u),
    logarithm,
    dimension,
    prior: { value, u, from },
  });
  const [size] = burner;
  const byBurner =
    size === undefined
      ? {}
      : {
          prior: {
            value: size.y + Math.log(line.heats.evaporation * (1 + line.heats.climbing)),
            u: Math.sqrt(size.extra),
            from: "the burner's size and what an open flame gives a tank",
          },
        };
  return [
    {
      ...one(
        "heat into the bath",
        index.rate,
        heat,
        g.rate.relative,
        "nothing: any heat would do",
        { mass: 1, length: 2, time: -3 },
        true,
      ),
      ...byBurner,
    },
    one(
      "water at the start",
      index.water,
      Math.log(first),
      (g.water.relative * g.water.value) / first,
      prepared.salts.water ? "the depth in the tank" : "what was given, or else the first reading at the boil",
      { mass: 1 },
      true,
    ),
    one(
      "boiling point offset",
      index.offset,
      before.curveOffset.value,
      before.curveOffset.u,
      "the published curves' own doubt",
      { temperature: 1 },
      false,
    ),
    one("boiling curve scale", index.scale, 1, before.curveScale, "the published curves' own doubt", {}, false),
    one(
      "thermometer lag",
      index.lag,
      Math.log(before.lag.value),
      before.lag.u,
      "thermometers of that size",
      { time: 1 },
      true,
    ),
    one(
      "mixing time",
      index.mixing,
      Math.log(before.mixing.value),
      before.mixing.u,
      "boiling baths of that size",
      { time: 1 },
      true,
    ),
    one("cup", index.cup, 1, g.cup.allNight, "what the water was measured with", {}, false),
    ...g.fire.told.map(({ lnFactor, u, unsaid }, i) => {
      const from = unsaid ? "the readings alone: no change is written" : "what the log says of the burner";
      return one(`burner change ${i + 1}`, at(index.fire, i), lnFactor, u, from, {}, true);
    }),
  ];
}

function numberOf(
  asked: ParameterAsked,
  fitted: FittedLine,
  line: FireLine,
  under: readonly Under[] | undefined,
): FittedParameter {
  const { name, logarithm, dimension, prior } = asked;
  const read = readOff(asked.asked, fitted.trial, line.doubts, stretch, under);
  const out = logarithm ? Math.exp : (x: number) => x;
  const value = out(read.median);
  const per = logarithm ? value : 1;
  const answer = answerOf(
    value,
    [out(read.low), out(read.high)],
    dimension,
    new Map([...read.sources].map(([source, u]) => [source, per * u])),
  );
  const priorValue = out(prior.value);
  return {
    name,
    value,
    standardUncertainty: answer.standardUncertainty,
    interval95: answer.interval95,
    dimension,
    prior: {
      value: priorValue,
      standardUncertainty: prior.u * (logarithm ? priorValue : 1),
      interval95: [out(prior.value - 1.96 * prior.u), out(prior.value + 1.96 * prior.u)],
      from: prior.from,
    },
    told: told(read.u, prior.u),
    answer,
  };
}

/**
 * The parameters of a fitted run with their doubts, and how far the log drew each from its prior.
 *
 * @param asked the parameters, as questions
 * @param fitted the fit
 * @param line its line
 * @param under each of them under each noise, where it is at hand
 * @example parametersOf(parametersAsked(prepared, fittedLine, line, [], 0), fitted, line)[0].told.word
 */
export function parametersOf(
  asked: readonly ParameterAsked[],
  fitted: FittedLine,
  line: FireLine,
  under: readonly (readonly Under[])[] = [],
): readonly FittedParameter[] {
  return asked.map((one, i) => numberOf(one, fitted, line, under[i]));
}
