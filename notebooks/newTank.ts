import { type Line, notebook } from "../lib/lines/index.ts";
import { answers } from "./newTank/answers.ts";
import { givens } from "./newTank/givens.ts";
import { sizes } from "./newTank/sizes.ts";
import { brimful, headingsInOrder } from "./newTank/words.ts";
import oneRun from "./oneRun.ts";

/** Hidden lines of One run that a fit needs; the others are about the log's own hold. */
const keptHidden = new Set(["log", "salts known", "fitted bath"]);
/** Headings of One run that would be taken for the new tank's. */
const headings: ReadonlyMap<string, string> = new Map([
  ["Salts in the bath", "Salts in the bath that was logged"],
  ["Tank, inside", "The tank that was logged, inside"],
  ["Fire", "Fire and gas"],
]);

/** The lines of a run that its fit needs: here they tell of the tank that was logged. */
const ofTheRun: Readonly<Record<string, Line>> = Object.fromEntries(
  Object.entries(oneRun.lines).flatMap(([name, line]): (readonly [string, Line])[] => {
    if (line.hidden ? !keptHidden.has(name) : line.kind !== "given" && line.group !== "Conditions") return [];
    const heading = headings.get(line.group ?? "");
    return [[name, heading === undefined ? line : { ...line, group: heading }]];
  }),
);

/** Lines of one heading stand together, the headings in the order of the words; what is hidden has no place. */
function inOrder(lines: Readonly<Record<string, Line>>): Readonly<Record<string, Line>> {
  const all = Object.entries(lines);
  const seen = [...new Set(all.map(([, { group = "" }]) => group))];
  const order = [...headingsInOrder, ...seen.filter((group) => !headingsInOrder.includes(group))];
  const place = ([, { group = "" }]: readonly [string, Line]) => order.indexOf(group);
  return Object.fromEntries(all.toSorted((a, b) => place(a) - place(b)));
}

/** A longer tank: what fits it, what it needs, what it will do on a fire, and what would make that surer. */
export default notebook({
  name: "New tank",
  asks: "What will a new tank take, and what will it do?",
  lines: inOrder({ ...givens, ...sizes, ...answers, ...ofTheRun }),
  answer: [
    {
      says: "A tank {new length} long, {new width, bare} by {new depth} of liquid, takes it, with {salt in all} of salt and {water in all} of water.",
      otherwise: "No tank can be sized yet.",
      caution: [brimful, "Full to its brim, with all that is in it, it weighs {weight on the stand brimful}."],
    },
    {
      says: "It boils off {boil-off} a minute, stands 10 °F (5.6 °C) below its boil after {minutes to just below the boil}, and boils steadily with a probability of {boils steadily}.",
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
