import type { Func } from "../../lib/lines/index.ts";
import { workedHere } from "../aside/asideFunction.ts";
import { firstPlanOfHold, limitsOfHold, planOfHold, turnDownOfHold } from "../aside/planOfHold.ts";
import { holdWanted, setupAndBath } from "../hold/planWork.ts";

const taken = (needed: readonly string[], optional: readonly string[]) => [
  ...needed.map((name) => ({ name })),
  ...optional.map((name) => ({ name, optional: true })),
];

const planTaken = taken(["hold wanted", "setup and bath"], ["fitted bath"]);
const source = "Simulated holds of a boiling brine; how people and instruments err is a judgement";

/** How to feed a hold, out of simulated holds. */
export const planning: readonly Func[] = [
  {
    name: "hold wanted",
    takes: taken(
      ["target", "band", "hold time"],
      ["weight of the parts", "temperature of the parts", "feeding", "measure of one pour"],
    ),
    says: "What is wanted of a hold, to plan it by: band, time, parts, and how the water is to go in.",
    work: holdWanted,
  },
  {
    name: "setup and bath",
    takes: [
      ...taken(
        ["tank length", "tank width", "tank depth"],
        ["burner rate", "burner's flame", "thermometer error", "cup"],
      ),
      ...taken(["air temperature", "air pressure", "salts"], ["water when lit"]),
      ...taken(["temperature when lit"], ["liquid depth"]),
    ],
    says: "The tank, its fire, its bath and the instruments, to plan a hold by. Without a burner rate a fitted run is needed.",
    work: setupAndBath,
  },
  {
    name: "first plan of hold",
    takes: planTaken,
    says: "How sure a hold is, by its first 300 simulated holds, before any search.",
    source,
    work: workedHere(firstPlanOfHold),
  },
  {
    name: "plan of hold",
    takes: planTaken,
    says: "The feed with which most simulated holds of this bath stay in the band, when to start, what to do at readings, and how sure it is. A hold counts when the true temperature is in the band for 95 % of it.",
    source,
    work: workedHere(planOfHold),
  },
  {
    name: "turn-down of hold",
    takes: planTaken,
    says: "What a smaller fire would do to the same hold: its feed, its promises, and whether it still boils steadily.",
    source,
    work: workedHere(turnDownOfHold),
  },
  {
    name: "limits of hold",
    takes: planTaken,
    says: "What holds the promise of a hold back: each doubt halved by itself, and how many more holds would stay in the band.",
    source,
    work: workedHere(limitsOfHold),
  },
];
