import { answerOf, symmetric } from "../../bath/answer.ts";
import type { Prepared } from "../../bath/prepare.ts";
import type { Answer, WaterBalance } from "../../bath/types.ts";
import { waterEnthalpy, waterInBrineEnthalpy } from "../../physics/index.ts";
import type { Brine } from "../../physics/types.ts";
import type { FireLine } from "./fireLine.ts";
import type { HeatWent } from "./types.ts";

const energy = { mass: 1, length: 2, time: -2 } as const;
/** K of tap water and of parts before they go in (a judgement). */
const cold = 289;
/** J/(kg K) of steel near room heat, and the share by which parts and their weight are doubted. */
const steel = 490;

function times(answer: Answer, factor: number): Answer {
  const [low, high] = answer.interval95;
  const ends: readonly [number, number] = factor < 0 ? [factor * high, factor * low] : [factor * low, factor * high];
  return answerOf(
    factor * answer.value,
    ends,
    energy,
    new Map([...answer.measured.components].map(([source, u]) => [source, factor * u])),
  );
}

function together(list: readonly Answer[]): Answer {
  const components = new Map<string, number>();
  for (const { measured } of list)
    for (const [source, u] of measured.components) components.set(source, (components.get(source) ?? 0) + u);
  return symmetric(
    list.reduce((sum, { value }) => sum + value, 0),
    energy,
    components,
  );
}

/**
 * Where the heat went from the first boil to the end of the log: into steam, into the water that was poured, into parts
 * and into the bath itself as its boiling point climbed.
 *
 * @param prepared the log
 * @param line its line
 * @param balance what the fit said of its water
 * @param walls lost by walls and top, W, if the tank's size is known
 * @param gas burnt, W, if the burner is known
 * @example heatWent(prepared, line, balance).steam.value // J
 */
export function heatWent(
  prepared: Prepared,
  line: FireLine,
  balance: Pick<WaterBalance, "boilOff" | "poured" | "ratioStart" | "ratioEnd">,
  walls?: Answer,
  gas?: Answer,
): HeatWent {
  const { salts, facts, line: g } = prepared;
  const duration = Math.max(1, g.end - g.start);
  const ratio = Math.min(Math.exp(salts.curve.end.lnRatio), balance.ratioEnd.value);
  const brine = Object.fromEntries(
    Object.entries(salts.masses).map(([kind, kg]) => [kind, (kg / salts.total) * ratio]),
  ) as Brine;
  const T = salts.curve.boils(Math.log(ratio));
  const perPour = waterInBrineEnthalpy(brine, T) - waterEnthalpy(cold);
  const steam = times(balance.boilOff, line.heats.evaporation * duration);
  const makeUpWater = times(balance.poured, perPour);
  const into = facts.parts.filter((part) => part.goesIn && part.time > g.start);
  const perKilogram = steel * (T - cold);
  const mass = into.reduce((sum, part) => sum + (part.mass ?? 0), 0);
  const unknown = into.filter((part) => part.mass === undefined).length;
  const parts = symmetric(
    mass * perKilogram,
    energy,
    new Map([["parts", Math.hypot(0.1 * mass, 0.5 * unknown) * perKilogram]]),
    0,
  );
  const climb =
    salts.curve.boils(Math.log(balance.ratioEnd.value)) - salts.curve.boils(Math.log(balance.ratioStart.value));
  const bath = symmetric(
    line.heats.capacity * climb,
    energy,
    new Map([["warming of the bath", line.heats.capacity * 0.5]]),
  );
  const seconds = (power: Answer | undefined) => (power ? times(power, duration) : undefined);
  const wallsAndTop = seconds(walls);
  const burnt = seconds(gas);
  return {
    from: g.start,
    to: g.end,
    steam,
    makeUpWater,
    parts,
    bath,
    intoBath: together([steam, makeUpWater, parts, bath]),
    ...(wallsAndTop ? { wallsAndTop } : {}),
    ...(burnt ? { gas: burnt } : {}),
  };
}
