import type { Caution } from "./types.ts";

const practice = "common practice, no source";
const chemistry = "general chemistry, from memory; the salt's safety data sheet lists the metals it must not touch";

/** What no bath of hot caustic may stand in, nor its hangers, solder, fittings and spoons be made of. */
export const neverOf: readonly Caution[] = [
  { what: "Aluminium: caustic eats it at once and makes hydrogen, which burns and explodes.", source: chemistry },
  { what: "Zinc and anything galvanised: dissolves, makes hydrogen, spoils the bath.", source: chemistry },
  { what: "Tin, tinned sheet and soft solder: dissolve; soldered seams open.", source: chemistry },
  { what: "Brass, bronze and copper: attacked, and copper in the bath plates onto the work.", source: practice },
  { what: "Lead: dissolves, and is poisonous.", source: chemistry },
  { what: "Magnesium: not in a bath that also holds nitrate; hot, it can burn.", source: practice },
  { what: "Glass, glazed ware and enamel: hot caustic etches them until they break or leak.", source: chemistry },
  { what: "Plastics and wood: soften, char or burn at bath heat; nitrate makes them burn fiercely.", source: practice },
];

/** What is used, and where the sources end. */
export const madeOf: readonly Caution[] = [
  { what: "Mild or black steel, welded, is what shops use; nothing plated or painted inside.", source: practice },
  {
    what: "Welded carbon steel can crack at its welds in hot caustic: about 150 °F is given as safe without more, and a bath is far hotter. Ask a welding engineer about stress relief; look the seams over before each firing, and keep a steel tray under the tank that holds all of it.",
    source: "an online corrosion dictionary's article on caustic soda (read in part)",
  },
  {
    what: "Stainless steel is attacked too, and can crack: trouble is told of from about 250 °F, below a bath's heat.",
    source: "an online corrosion dictionary's article on caustic soda (read in part); that it cracks from memory",
  },
  { what: "How thick a plate must be, no source here says.", source: "none was found" },
];

/** Where somebody licensed, or the local code, decides and not this tool. */
export const askFirst: readonly Caution[] = [
  { what: "Gas piping, hoses, regulators and manifolds: a licensed gas fitter and the local code.", source: practice },
  {
    what: "Propane cylinders indoors: most codes forbid or limit it; the local code and the fire authority decide.",
    source: practice,
  },
  {
    what: "Welding on a tank that has held caustic: empty it, rinse it with much water and dry it first, never with acid (nitrite gives off poisonous gas); a competent welder decides.",
    source: practice,
  },
  {
    what: "Ventilation, and where caustic rinse water may go: the local code and the sewer's or waste authority.",
    source: practice,
  },
  {
    what: "A stand that carries a long tank of hot caustic over a fire: someone who can work it out, and the local code.",
    source: practice,
  },
];
