import { type Line, worked } from "../../lib/lines/index.ts";
import { brimful, fits, holds, inside, long, pounds, tank, water, workTaken } from "./words.ts";

const fill =
  "target, pressure at the tank, boiling point offset of bath and fire known, boiling curve scale of bath and fire known, hydroxide of salts by share, nitrite of salts by share, potassium of salts by share";

/** What fits a tank, what it holds and weighs. */
export const sizes: Readonly<Record<string, Line>> = {
  "bath and fire known": worked(
    'fitted bath when heat known from is "its log", otherwise handbook bath(salts known)',
    undefined,
    { hidden: true },
  ),
  "salts by share": worked("salt shares(salts known)", undefined, { hidden: true }),

  "least length": worked(`least length for part(${workTaken}, way it lies, new width, new depth)`, "in", {
    ...long,
    group: fits,
  }),
  "new length": worked("length wanted when length wanted is given, otherwise least length + length to spare", "in", {
    ...long,
    group: tank,
  }),
  freeboard: worked("freeboard wanted when freeboard wanted is given, otherwise usual freeboard(new depth)", "in", {
    ...long,
    group: tank,
  }),
  "what fits it": worked(`longest in tank(${workTaken}, ${inside})`, undefined, { hidden: true }),
  "longest straight": worked("straight of what fits it", "in", { ...long, group: fits }),
  "longest along the floor's diagonal": worked("floor diagonal of what fits it", "in", { ...long, group: fits }),
  "longest tilted": worked("tilted of what fits it", "in", {
    ...long,
    group: fits,
    about: "What comes out slantwise drains to one end: mind where hot caustic runs.",
  }),
  "longest along the space's diagonal": worked("space diagonal of what fits it", "in", { ...long, group: fits }),

  "volume at working depth": worked("new length * new width * new depth", "gal", {
    ...water,
    plain: true,
    group: holds,
  }),
  "weight of the work": worked("part length * part width * part thickness * how many * 7.85 kg/l", "lb", {
    ...pounds,
    group: holds,
    about: "As solid bars: at most so much.",
  }),
  "displaced by the work": worked("(weight of the work + weight of hangers) / 7.85 kg/l", "gal", {
    ...water,
    group: holds,
  }),
  "level falls by": worked("displaced by the work / (new length * new width)", "in", {
    metricUnit: "cm",
    group: holds,
    about: "When work and hangers come out.",
  }),
  "bath to fill it": worked("volume at working depth - displaced by the work", "gal", { ...water, group: holds }),
  "salt in all": worked(`salt to fill(bath to fill it, ${fill})`, "lb", {
    ...pounds,
    group: holds,
    about: "By this bath's own proportions and boiling curve, at this altitude.",
  }),
  "water in all": worked(`water to fill(bath to fill it, ${fill})`, "gal", { ...water, group: holds }),
  "salt to buy": worked("salt in all - salt on hand", "lb", {
    ...pounds,
    group: holds,
    below: "salt left over",
    caution:
      "Salt goes into cold water in small lots, stirred, as its safety data sheet says: never water onto salt, never salt into a hot bath.",
  }),
  "weight on the stand brimful": worked(
    `brimful weight(${inside}, freeboard, plate thickness, weight of the work + weight of hangers, density of fill(bath to fill it, ${fill}))`,
    "lb",
    { ...pounds, group: holds, caution: brimful },
  ),
  "plate to cut": worked(`plate of tank(${inside}, freeboard, plate thickness)`, "ft²", {
    metricUnit: "m²",
    plain: true,
    group: holds,
    about: "Without waste, rim or skirt.",
  }),
  "weight of plate": worked("plate to cut * plate thickness * 7.85 kg/l", "lb", {
    ...pounds,
    plain: true,
    group: holds,
  }),
};
