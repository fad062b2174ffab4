import type { Random } from "./random.ts";
import { type BathState, coldHeat, type RoughTank, startBath, stepBath, takeBrine } from "./roughBath.ts";

/** A gust: standard deviation as a share of the fire, and s after which it has forgotten itself. */
export interface Gust {
  readonly sd: number;
  readonly time: number;
}

/** A run of an invented bath on an invented fire. Times `since` count in s from the first boil. */
export interface RoughScenario {
  readonly tank: RoughTank;
  /** °C when the burner is lit. */
  readonly starts: number;
  /** W into the bath at full fire, before losses. */
  readonly fire: number;
  readonly gusts: readonly [short: Gust, long: Gust];
  /** Share of the fire that sludge and a cooling cylinder take each hour from the first boil on. */
  readonly fades: number;
  /** Bursts of wind that take 10 to 35 % of the fire for minutes; s between them on average, absent for none. */
  readonly windEvery?: number;
  /** Burner changes, as they truly were: share of full fire. */
  readonly burner: readonly { readonly since: number; readonly share: number }[];
  readonly parts?: {
    readonly goIn: number;
    readonly comeOut: number;
    readonly mass: number;
    /** Share of the brine that they carry out. */
    readonly dragOut: number;
  };
  /** Share of the brine that a hard boil throws out, all at once. */
  readonly splash?: { readonly since: number; readonly share: number };
  /** Share of the hydroxide that turns to carbonate, evenly over the hold. */
  readonly carbonate: number;
  /** The thermometer's tip is moved and reads differently from then on, K. */
  readonly tip?: { readonly since: number; readonly kelvin: number };
  /** s, the median over the pours. */
  readonly mixing: number;
  readonly lag: number;
  /** s from the first boil to the end, and °C shown at which the maker puts the fire out before that. */
  readonly holds: number;
  readonly hottest: number;
  /** True kg that the maker pours at this second; `since` is negative before the first boil. */
  readonly pours: (time: number, shown: number, since: number) => number;
}

export interface Burst {
  readonly from: number;
  readonly to: number;
  readonly share: number;
}

/** What happened, second by second from the burner's lighting, and in total. SI, °C. */
export interface RoughRun {
  readonly firstBoil: number;
  readonly end: number;
  /** kg of vapour that left from the first boil to the end, boiling or not. */
  readonly vapourFromBoil: number;
  readonly waterAtBoil: number;
  readonly waterAtEnd: number;
  /** s from the first boil on in which the bath stood below its boil. */
  readonly offBoil: number;
  readonly bath: readonly number[];
  /** What the thermometer stands at, without its fixed error. */
  readonly shown: readonly number[];
  /** kg in the tank, mixed in or not. */
  readonly water: readonly number[];
  /** W of the fire before losses, and W that walls and top lost. */
  readonly fire: readonly number[];
  readonly lost: readonly number[];
  readonly poured: readonly { readonly time: number; readonly mass: number }[];
  readonly bursts: readonly Burst[];
  readonly last: Readonly<BathState>;
  /** kg: start + poured - vapour - carried = end. */
  readonly waterAccount: Account<"start" | "poured" | "vapour" | "carried" | "end">;
  /** J: start + fire + poured - lost - vapour - parts - carried = end. */
  readonly heatAccount: Account<"start" | "fire" | "poured" | "lost" | "vapour" | "parts" | "carried" | "end">;
}

type Account<Name extends string> = Readonly<Record<Name, number>>;

/** s: no invented night is longer. */
const longest = 8 * 3600;
/** s that cold parts take to warm up, J/(kg K) of steel. */
const parts = { warm: 60, heat: 490 };

/** Runs the bath second by second: from cold, through warm-up and boil, pours and all that goes wrong, to the end. */
export function roughRun(s: RoughScenario, random: Random): RoughRun {
  const { tank } = s;
  const state = startBath(tank, s.starts);
  const gusts = s.gusts.map(() => random.normal());
  let shown = s.starts;
  let mixing = s.mixing;
  let firstBoil = -1;
  let waterAtBoil = 0;
  let vapourFromBoil = 0;
  let offBoil = 0;
  let burst: Burst | undefined;
  let coldParts = 0;
  const water = { start: tank.water, poured: 0, vapour: 0, carried: 0, end: 0 };
  const heat = { start: state.enthalpy, fire: 0, poured: 0, lost: 0, vapour: 0, parts: 0, carried: 0, end: 0 };
  const run = {
    bath: [] as number[],
    shown: [] as number[],
    water: [] as number[],
    fire: [] as number[],
    lost: [] as number[],
    poured: [] as { time: number; mass: number }[],
    bursts: [] as Burst[],
  };
  const carry = (share: number) => {
    const gone = takeBrine(tank, state, share);
    water.carried += gone.water;
    heat.carried += gone.heat;
  };
  for (let time = 0; time < longest; time++) {
    const since = firstBoil < 0 ? -1 : time - firstBoil;
    if (since >= s.holds || shown > s.hottest) break;
    s.gusts.forEach((gust, i) => {
      gusts[i] = (gusts[i] ?? 0) * (1 - 1 / gust.time) + Math.sqrt(2 / gust.time) * random.normal();
    });
    if (burst && time >= burst.to) burst = undefined;
    if (s.windEvery !== undefined && !burst && random.chance(1 / s.windEvery)) {
      burst = { from: time, to: time + Math.round(random.from(120, 420)), share: random.from(0.1, 0.35) };
      run.bursts.push(burst);
    }
    const poured = s.pours(time, shown + tipOf(s, since), since);
    if (poured > 0) {
      state.waiting += poured;
      water.poured += poured;
      heat.poured += poured * coldHeat(tank.tap);
      run.poured.push({ time, mass: poured });
      mixing = Math.max(5, s.mixing * Math.exp(0.2 * random.normal()));
    }
    if (s.parts && since === s.parts.goIn) coldParts += s.parts.mass * parts.heat * (state.T - tank.air);
    if (s.parts && since === s.parts.comeOut) carry(s.parts.dragOut);
    if (s.splash && since === s.splash.since) carry(s.splash.share);
    if (since > 0) state.active = 1 - (s.carbonate * since) / s.holds;
    const gust = 1 + s.gusts.reduce((sum, { sd }, i) => sum + sd * (gusts[i] ?? 0), 0);
    const fading = 1 - (s.fades * Math.max(0, since)) / 3600;
    const fire = s.fire * shareOf(s, since) * Math.max(0, gust * (1 - (burst?.share ?? 0)) * fading);
    const cool = coldParts / parts.warm;
    coldParts -= cool;
    const second = stepBath(tank, state, fire, cool, mixing);
    if (second.boils && firstBoil < 0) {
      firstBoil = time;
      waterAtBoil = state.water + state.waiting;
    } else if (firstBoil >= 0) {
      vapourFromBoil += second.vapour;
      if (!second.boils) offBoil++;
    }
    water.vapour += second.vapour;
    heat.fire += fire;
    heat.parts += cool;
    heat.lost += second.lost;
    heat.vapour += second.withVapour;
    shown += (state.T - shown) / s.lag;
    run.bath.push(state.T);
    run.shown.push(shown + tipOf(s, since));
    run.water.push(state.water + state.waiting);
    run.fire.push(fire);
    run.lost.push(second.lost);
  }
  const waterAtEnd = state.water + state.waiting;
  water.end = waterAtEnd;
  heat.end = state.enthalpy + state.waiting * coldHeat(tank.tap);
  const end = run.bath.length - 1;
  return {
    ...run,
    firstBoil,
    end,
    vapourFromBoil,
    waterAtBoil,
    waterAtEnd,
    offBoil,
    last: state,
    waterAccount: water,
    heatAccount: heat,
  };
}

function tipOf({ tip }: RoughScenario, since: number): number {
  return tip && since >= tip.since ? tip.kelvin : 0;
}

function shareOf({ burner }: RoughScenario, since: number): number {
  return burner.findLast((change) => since >= change.since)?.share ?? 1;
}

/** W of the fire less losses, mean over seconds of the run, [from, to]. */
export function meanHeat(run: RoughRun, from: number, to: number): number {
  let sum = 0;
  for (let time = from; time <= to; time++) sum += (run.fire[time] ?? 0) - (run.lost[time] ?? 0);
  return sum / (to - from + 1);
}
