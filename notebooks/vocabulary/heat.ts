import type { FastFunc } from "../../lib/lines/index.ts";
import { measuredValue } from "../../lib/measure/index.ts";
import { brineVapourPressure, steelHeat, surfaceLoss, wallLoss } from "../../lib/physics/index.ts";
import { brineOf, sharesSaid, sharesTaken } from "./salts.ts";

/** Of the walls' and the top's loss: 35 %, a judgement. Draughts and flue gas are not in the law. */
const wallDoubt = measuredValue(1, 0.35, {}, "heat loss of a wall in still air");
const surfaceDoubt = measuredValue(1, 0.35, {}, "heat loss of a surface in still air");
/** Handbooks lie within 3 % of the curve. */
const steelDoubt = measuredValue(1, 0.015, {}, "published heat of steel");

/** Slope of `steelHeat`, J/(kg K): the middle of a step of 1 K, as far as the range goes. */
const specific = (T: number): number => {
  const [low, high] = [Math.max(T - 0.5, 273.15), Math.min(T + 0.5, 873.15)];
  return steelHeat(1, low, high) / (high - low);
};

const conductivity = { mass: 1, length: 1, time: -3, temperature: -1 };

/** Where a tank's heat goes, for a maker's own lines. */
export const heat: readonly FastFunc[] = [
  {
    name: "heat to warm steel",
    takes: [
      { name: "weight of steel", kind: "mass" },
      { name: "from", kind: "temperature" },
      { name: "to", kind: "temperature" },
    ],
    gives: "energy",
    says: "Heat that parts, or the tank itself, of plain carbon steel take up, 32 to 1,112 °F; below zero where they cool.",
    source: "EN 1993-1-2:2005, 3.4.1.2",
    besides: [steelDoubt],
    numbers: (weight, from, to, off = 1) => off * steelHeat(weight, from, to),
    partials: (weight = 0, from = 0, to = 0, off = 1) => [
      off * steelHeat(1, from, to),
      -off * weight * specific(from),
      off * weight * specific(to),
      steelHeat(weight, from, to),
    ],
  },
  {
    name: "heat loss of wall",
    takes: [
      { name: "wall temperature", kind: "temperature" },
      { name: "air temperature", kind: "temperature" },
      { name: "wall height", kind: "length" },
      { name: "wall length", kind: "length" },
      { name: "insulation thickness", kind: "length", optional: true },
      { name: "insulation's conductivity", kind: conductivity, optional: true },
      { name: "air pressure", kind: "pressure", optional: true },
    ],
    gives: "power",
    says: "Heat that one upright side of a tank loses to still air, painted or oxidised, bare or insulated; 2 in to 10 ft high. Wind takes more; hot flue gas along the wall can turn it round. Known to ± 70 % only, a judgement.",
    source: "Incropera and DeWitt, free convection at an upright plate; Stefan and Boltzmann's law",
    besides: [wallDoubt],
    numbers: (wall, around, height, length, thickness?: number, conducts?: number, pressure?: number, off = 1) => {
      if ((thickness === undefined) !== (conducts === undefined))
        throw new Error("missing insulation: both its thickness and its conductivity are needed, or neither");
      const insulation =
        thickness === undefined || conducts === undefined ? {} : { insulation: { thickness, conductivity: conducts } };
      const flux = wallLoss({
        wall,
        air: around,
        height,
        ...insulation,
        ...(pressure === undefined ? {} : { pressure }),
      });
      return off * flux * height * length;
    },
  },
  {
    name: "heat loss of surface",
    takes: [
      { name: "bath temperature", kind: "temperature" },
      { name: "air temperature", kind: "temperature" },
      { name: "tank length", kind: "length" },
      { name: "tank width", kind: "length" },
      { name: "salt to water", kind: "salt to water" },
      { name: "air pressure", kind: "pressure" },
      ...sharesTaken,
    ],
    gives: "power",
    says: `Heat that the open top of a bath below its boil loses to still air: by air, by radiation and by what evaporates. 4 in to 16 ft each way. Of a bath that boils it says nothing: there the heat sets how much water leaves. Known to ± 70 % only, a judgement. ${sharesSaid}`,
    source: "A handbook's table of open water tanks; Incropera and DeWitt, free convection above a level plate",
    besides: [surfaceDoubt],
    numbers: (bath, around, length, width, ratio, pressure, hydroxide, nitrite, potassium, off = 1) => {
      const vapourPressure = brineVapourPressure(brineOf(ratio, hydroxide, nitrite, potassium), bath);
      const loss = surfaceLoss({ surface: bath, air: around, length, width, vapourPressure, pressure });
      return off * (loss.convection + loss.radiation + loss.evaporation) * length * width;
    },
  },
  {
    name: "dry heat loss of surface",
    takes: [
      { name: "bath temperature", kind: "temperature" },
      { name: "air temperature", kind: "temperature" },
      { name: "tank length", kind: "length" },
      { name: "tank width", kind: "length" },
      { name: "air pressure", kind: "pressure" },
    ],
    gives: "power",
    says: "Heat that the open top of a bath loses to still air by air and radiation alone: what a boiling bath loses there beside its steam. 4 in to 16 ft each way. Known to ± 70 % only, a judgement.",
    source: "Incropera and DeWitt, free convection above a level plate; Stefan and Boltzmann's law",
    besides: [surfaceDoubt],
    numbers: (bath, around, length, width, pressure, off = 1) => {
      const loss = surfaceLoss({ surface: bath, air: around, length, width, vapourPressure: 0, pressure });
      return off * (loss.convection + loss.radiation) * length * width;
    },
  },
];
