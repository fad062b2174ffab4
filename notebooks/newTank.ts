import { type Line, notebook } from "../lib/lines/index.ts";
import { answers } from "./newTank/answers.ts";
import { givens } from "./newTank/givens.ts";
import { sizes } from "./newTank/sizes.ts";
import { brimful } from "./newTank/words.ts";
import oneRun from "./oneRun.ts";

/** The lines of a run that its fit needs: here they tell of the tank that was logged. */
const ofTheRun: readonly (readonly [string, Line])[] = Object.entries(oneRun.lines).filter(
  ([, line]) => line.kind === "given" || line.hidden === true || line.group === "Conditions",
);
/** Hidden lines that are about the log's own hold and nothing here. */
const keptHidden = new Set(["log", "salts known", "fitted bath"]);

/** A longer tank: what fits it, what it needs, what it will do on a fire, and what would make that surer. */
export default notebook({
  name: "New tank",
  asks: "What will a new tank take, and what will it do?",
  lines: {
    ...givens,
    ...Object.fromEntries(
      ofTheRun.filter(([name, line]) => line.kind === "given" || !line.hidden || keptHidden.has(name)),
    ),

    ...sizes,
    ...answers,
  },
  answer: [
    {
      says: "A tank {new length} long, {new width, bare} by {new depth} of liquid, takes it, with {salt in all} of salt and {water in all} of water.",
      otherwise: "No tank can be sized yet.",
      caution: brimful,
    },
    {
      says: "It boils off {boil-off} a minute, stands 10 °F below its boil after {minutes to just below the boil}, and boils steadily with a probability of {boils steadily}.",
      otherwise: {
        says: "It boils steadily with a probability of {boils steadily}, at {boil-off} a minute.",
        otherwise: {
          says: "It boils steadily with a probability of {boils steadily}.",
          otherwise: "What it will do can't be said yet.",
        },
      },
    },
    {
      says: "What would make it surer before any salt is bought is {surest measurement}: it takes some {doubt it takes off} off the doubt of the boil-off.",
      otherwise: "What would narrow it can't be said yet.",
    },
  ],
  figures: ["the tanks to scale", "boil-off over lengths"],
});
