import {
  type AfterDragOut,
  afterDragOut,
  type BoilElsewhere,
  boilElsewhere,
  type Charge,
  chargeFor,
  type StandingBath,
  strengthen,
  type Weakening,
  weaken,
} from "../../lib/bath/plan/index.ts";
import { usualFreeboard } from "../../lib/bath/sizing/tankHolds.ts";
import { departedBoilingPoint, standardPressure } from "../../lib/physics/index.ts";
import type { Brine } from "../../lib/physics/types.ts";
import type { PlanWork } from "./planWork.ts";

/** The same bath under other air. */
export interface Elsewhere {
  /** m above the sea, or Pa by which the barometer of the day differs. */
  readonly at: { readonly altitude: number } | { readonly barometer: number };
  readonly boils: BoilElsewhere;
}

/** What there is to say of the salts and the water. */
export interface BathFacts {
  readonly target: number;
  readonly pressure: number;
  readonly charge: Charge;
  /** m, how deep the new bath stands. */
  readonly depth: number;
  readonly standing: StandingBath;
  /** K, where the bath in the tank boils by its own departure, and the standard uncertainty of that. */
  readonly boils: number;
  readonly boilsUncertainty: number;
  /** Whether its own log told where it boils. */
  readonly fitted: boolean;
  readonly weaker?: Weakening;
  readonly stronger?: Charge;
  /** kg that boil off by themselves until it boils at the target. */
  readonly leaves?: number;
  readonly after?: AfterDragOut;
  readonly elsewhere: readonly Elsewhere[];
}

/** Of the depth, where nobody said how deep the bath stands. */
const usualDepth = 0.6;
const altitudes = [0, 610, 1219, 1829, 2438];
/** Pa: half an inch of mercury, a wide swing of the weather. */
const swing = 1693;

const perKilogram = (salts: Brine, water: number): Brine =>
  Object.fromEntries(Object.entries(salts).map(([kind, mass]) => [kind, (mass ?? 0) / water]));

/** What a plan's bath is, and what a new one of the same salts would be. Undefined without a bath. */
export function bathFacts(
  { givens, readyMixed }: PlanWork,
  left: { readonly dragOut: number; readonly sludge: number; readonly depth: number | undefined },
): BathFacts | undefined {
  const { bath, target, pressure, setup, fit } = givens;
  if (!bath) return undefined;
  const { tank } = setup;
  const depth =
    left.depth ??
    Math.max(0.3 * tank.depth, Math.min(usualDepth * tank.depth, tank.depth - usualFreeboard(0.6 * tank.depth)));
  const charge = chargeFor({
    salts: bath.salts,
    target,
    pressure,
    liquid: tank.length * tank.width * depth,
    readyMixed,
  });
  const departure = bath.departure ?? { offset: 0, scale: 1 };
  const standing: StandingBath = { water: bath.water, salts: bath.salts, departure };
  const boils = departedBoilingPoint(perKilogram(bath.salts, bath.water), pressure, departure);
  const near = 0.05;
  const at = { bath: standing, target, pressure };
  return {
    target,
    pressure,
    charge,
    depth,
    standing,
    boils,
    boilsUncertainty: departure.offsetUncertainty ?? 1.7,
    fitted: fit !== undefined,
    ...(boils > target + near ? { weaker: weaken(at) } : {}),
    ...(boils < target - near ? { stronger: strengthen({ ...at, readyMixed }), leaves: leavesUntil(at) } : {}),
    ...(left.dragOut + left.sludge > 0
      ? { after: afterDragOut({ ...at, dragOut: left.dragOut, sludge: left.sludge, readyMixed }) }
      : {}),
    elsewhere: elsewhereOf(bath.salts, target, pressure, departure),
  };
}

/** kg of water that have to leave a bath until it boils at the target: by what its salts ask for there. */
function leavesUntil({ bath, target, pressure }: { bath: StandingBath; target: number; pressure: number }): number {
  let [low, high] = [0.2 * bath.water, bath.water];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const boils = departedBoilingPoint(
      perKilogram(bath.salts, middle),
      pressure,
      bath.departure ?? { offset: 0, scale: 1 },
    );
    if (boils > target) low = middle;
    else high = middle;
  }
  return bath.water - (low + high) / 2;
}

function elsewhereOf(
  salts: Brine,
  boils: number,
  from: number,
  departure: StandingBath["departure"],
): readonly Elsewhere[] {
  const places: readonly Elsewhere["at"][] = [
    { barometer: swing },
    { barometer: -swing },
    ...altitudes.map((altitude) => ({ altitude })),
  ];
  return places.flatMap((at): readonly Elsewhere[] => {
    const to = "altitude" in at ? standardPressure(at.altitude) : from + at.barometer;
    try {
      return [{ at, boils: boilElsewhere({ salts, boils, from, to, ...(departure ? { departure } : {}) }) }];
    } catch {
      // Beyond the range of the curves nothing is said.
      return [];
    }
  });
}
