import type { Drawn } from "./drawsOf.ts";
import type { ScaledAnswer, ScaledSetup, ScaleOptions } from "./types.ts";

const percent = (share: number) => `${Math.round(100 * share)} %`;

/** Share of the draws that agree with what was measured, and weight of the best of them, below which none is believed. */
const tooFew = 0.02;
const tooFar = 0.02;

/**
 * What a maker should hear beside the answers, where the sources end first of all.
 *
 * @param drawn the draws
 * @param answers of the scaling
 * @param options as handed in
 * @param cylinder what it gives off, if one was given
 * @example remarksOf(drawn, answers, { pressure: 101_325 }).length
 */
export function remarksOf(
  drawn: Drawn,
  answers: Pick<ScaledSetup, "boilsSteadily" | "cylinderDraw">,
  options: ScaleOptions,
  cylinder?: ScaledAnswer & { readonly published: boolean },
): readonly string[] {
  const { scene, draws, worth, best } = drawn;
  const { from, to, known } = scene;
  const served = to.tank.length / to.burners.count / (from.tank.length / from.burners.count);
  const says: (readonly [when: boolean, what: string])[] = [
    [
      !known,
      "Nothing was logged on the old tank: these are handbook figures, and a log of your own tank would narrow them.",
    ],
    [
      answers.boilsSteadily < 0.975,
      `This fire keeps the bath at a steady boil with a probability of ${percent(answers.boilsSteadily)}.`,
    ],
    [
      served > 1.6 || served < 0.6,
      `Each burner serves ${served.toFixed(1)} times the length that it served on the old tank: that is a long way from what was measured.`,
    ],
    [!scene.depthKnown, "How deep the liquid will stand was not given: the heat-up and the drift are wider for it."],
    [
      options.plainWaterLog === undefined,
      "Boil plain water in the new tank for half an hour, with the cylinder weighed, before any salt is bought: it narrows this more than anything else.",
    ],
    [
      worth < tooFew * draws.length || best < tooFar,
      "What was logged hardly agrees with the old tank's fit and the jets: look for a slip in either before believing this.",
    ],
    [
      cylinder !== undefined && !cylinder.published,
      "No published figure was found for what a cylinder of this size gives off: ours is reckoned from the 100 lb cylinder's. Ask your gas dealer.",
    ],
    [
      cylinder !== undefined && answers.cylinderDraw.value > cylinder.interval95[0],
      "The fire may draw more than the cylinder gives off without end: after about an hour it chills, and the flame sinks.",
    ],
  ];
  return says.filter(([when]) => when).map(([, what]) => what);
}
