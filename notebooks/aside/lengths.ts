import { boilOffAt, stallLength } from "../../lib/fit/index.ts";
import { exact, measuredValue } from "../../lib/measure/index.ts";
import { asideFunction } from "./asideFunction.ts";
import { type ScaleWork, scaleWork } from "./newTank.ts";

/** A length, m, with the boil-off there, kg/s, and how likely the fire boils steadily. */
export interface AtLength {
  readonly length: number;
  readonly boilOff: number;
  readonly low: number;
  readonly high: number;
  readonly u: number;
  readonly steadily: number;
}

/** One number of burners over the lengths; `stalls` in m, `Infinity` for longer than 5 m. */
export interface FireOverLengths {
  readonly burners: number;
  readonly at: readonly AtLength[];
  readonly stalls: { readonly value: number; readonly low: number; readonly high: number };
}

export const most = 4;
const inch = 0.0254;
const points = 9;
/** Draws at one length: what a picture shows of them is some 2 % of the width off. */
const draws = 400;

/** m: from half the length that is asked for to twice it, in even shares. */
export function lengthsRound(length: number): readonly number[] {
  const low = Math.max(0.3, length / 2);
  const high = Math.min(5, Math.max(2 * length, low * 1.5));
  return Array.from({ length: points }, (_, i) => low * (high / low) ** (i / (points - 1)));
}

interface LengthsWork extends ScaleWork {
  /** Burners of the new fire, whose stall is asked for in any case. */
  readonly asked: number;
}

/** One fire over the lengths. */
export function fireOverLengths({ fit, from, to, options }: ScaleWork, burners: number): FireOverLengths {
  const fire = { ...to.burners, count: burners };
  const stalls = stallLength(fit, from, { tank: to.tank, burners: fire }, { ...options, draws: 200 });
  const round = lengthsRound(to.tank.length);
  // A course is drawn up to where it ends, not to the last length before.
  const end = 0.98 * stalls.value;
  const inside = end > (round[0] as number) && end < (round.at(-1) as number);
  const at = (inside ? [...round, end].sort((a, b) => a - b) : round).map((length): AtLength => {
    const { boilOff, boilsSteadily } = boilOffAt(
      fit,
      from,
      { tank: { ...to.tank, length }, burners: fire },
      { ...options, draws },
    );
    const [low, high] = boilOff.interval95;
    return { length, boilOff: boilOff.value, low, high, u: boilOff.standardUncertainty, steadily: boilsSteadily };
  });
  return { burners, at, stalls: { value: stalls.value, low: stalls.interval95[0], high: stalls.interval95[1] } };
}

/** Boil-off against length for one to four burners. */
export const boilOffOverLengths = asideFunction<LengthsWork, readonly FireOverLengths[]>({
  name: "boil-off over lengths",
  waits: "waiting to be worked over a range of lengths",
  work(given) {
    const work = scaleWork(given);
    return { ...work, asked: work.to.burners.count };
  },
  does(work, says) {
    const counts = [...new Set([1, 2, 3, 4, work.asked])].sort((a, b) => a - b);
    return counts.map((burners, i) => {
      says(`boil-off of ${burners} ${burners === 1 ? "burner" : "burners"} over lengths`, i / counts.length);
      return fireOverLengths(work, burners);
    });
  },
  parts(found, { asked }) {
    const own = found.find(({ burners }) => burners === asked)?.stalls;
    const finite = own && [own.value, own.low, own.high].every(Number.isFinite);
    return new Map<string, unknown>([
      ["fires", found.filter(({ burners }) => burners <= most || burners === asked)],
      [
        "stall length",
        finite
          ? {
              ...measuredValue(own.value, (own.high - own.low) / 3.92, { length: 1 }, "stall length"),
              interval95: [own.low, own.high],
            }
          : undefined,
      ],
      [
        "why not",
        { "stall length": "in some of the worlds that fit what is known it stalls nowhere short of 16 ft (5 m)" },
      ],
      [
        "stalls no sooner than",
        own && Number.isFinite(own.low) ? exact(inch * Math.floor(own.low / inch), { length: 1 }) : undefined,
      ],
    ]);
  },
  same: (a, b) => JSON.stringify(a) === JSON.stringify(b),
});
