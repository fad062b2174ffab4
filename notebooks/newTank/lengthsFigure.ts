import { type SweepCase, sweepDrawn } from "../../lib/figure/index.ts";
import type { MeasurementWorth } from "../../lib/fit/index.ts";
import { interval95 } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import type { FireOverLengths } from "../aside/lengths.ts";
import { isValue } from "../page/shownIn.ts";
import type { BookFigureInput, BookFigureMaker } from "../page/tool/types.ts";
import { unitOf, written } from "../page/writtenAs.ts";
import { partIn, siIn } from "./readLine.ts";

const flow = { mass: 1, time: -1 } as const;
const inch = 0.0254;

export const counted = (burners: number): string => (burners === 1 ? "1 burner" : `${burners} burners`);

const baseOf = ({ open, shownCase, narrow }: BookFigureInput): string =>
  narrow ? shownCase : (open.cases().find(({ base }) => base)?.name ?? shownCase);

const firesOf = (input: BookFigureInput): readonly FireOverLengths[] =>
  (partIn(input.open, "fires over lengths", "fires", baseOf(input)) as readonly FireOverLengths[] | undefined) ?? [];

/** One fire as a course; where it hardly ever boils there is no number. */
function course(
  { burners, at }: FireOverLengths,
  now: { readonly x: number; readonly count: number } | undefined,
): SweepCase {
  const present = now?.count === burners ? { present: { x: now.x } } : {};
  return {
    name: counted(burners),
    points: at.map(({ length, boilOff, low, high, u, steadily }) => {
      if (steadily < 0.5) return { x: length, says: "does not boil steadily" };
      const y: Value = {
        value: boilOff,
        dimension: flow,
        components: new Map([[`lengths ${burners}`, u]]),
        interval95: [low, high],
      };
      return { x: length, y };
    }),
    ...present,
  };
}

const lengthText = (metres: number, { system }: BookFigureInput): string =>
  system === "US" ? `${Math.round(metres / inch)} in` : `${Math.round(100 * metres)} cm`;

/** Where each fire stalls, in words. */
function stalls(input: BookFigureInput): string {
  const says = firesOf(input).map(({ burners, stalls: { value, low, high } }) => {
    if (!Number.isFinite(value)) return `${counted(burners)} beyond ${lengthText(5, input)}`;
    const to = Number.isFinite(high) ? `to ${lengthText(high, input)}` : "or far longer";
    return `${counted(burners)} at ${lengthText(value, input)} (${lengthText(low, input)} ${to})`;
  });
  return says.length === 0
    ? ""
    : ` Past its stall length a fire no longer boils the bath steadily: ${says.join("; ")}.`;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

export const lengths: BookFigureMaker = {
  title: "Boil-off against the length of the tank",
  caption: (input) =>
    `For one to four burners like those under ${baseOf(input)}, its width and depth kept; fills are 95 % spreads.${stalls(input)}`,
  cautions: (input) => {
    const all = partIn(input.open, "scaled tank", "remarks", baseOf(input)) as readonly string[] | undefined;
    return (all ?? []).filter((says) => !/^(This fire keeps|Boil plain water)/.test(says));
  },
  draw(input) {
    const fires = firesOf(input);
    if (fires.length === 0) return undefined;
    const line = input.open.line("boil-off");
    const name = baseOf(input);
    const x = siIn(input.open, "new length", name);
    const count = siIn(input.open, "new burners", name) ?? siIn(input.open, "burners", name);
    const now = x === undefined || count === undefined ? undefined : { x, count };
    return sweepDrawn(
      {
        line: "boil-off",
        unit: unitOf(line, input.system),
        by: "length",
        byUnit: input.system === "US" ? "in" : "cm",
        cases: fires.map((fire) => course(fire, now)),
      },
      { document, width: input.width, system: input.system, narrow: input.narrow },
    );
  },
  beside(input) {
    const name = baseOf(input);
    const list = partIn(input.open, "scaled tank", "measurements", name) as readonly MeasurementWorth[] | undefined;
    if (!list) return undefined;
    const boilOff = partIn(input.open, "scaled tank", "boil-off", name);
    const unit = unitOf(input.open.line("boil-off"), input.system);
    const half = (left: number): string => {
      if (!isValue(boilOff)) return percent(left);
      const [low, high] = interval95(boilOff);
      const width = left * Math.max(boilOff.value - low, high - boilOff.value);
      const shown = { ...boilOff, interval95: [boilOff.value - width, boilOff.value + width] as const };
      return `${written(shown, unit, input.system).spread} ${unit}`;
    };
    return {
      title: `What would narrow it most in ${name}`,
      items: list
        .filter(({ gain }) => gain >= 0.01)
        .slice(0, 5)
        .map(({ what, how, gain }) => ({
          what: what[0]?.toUpperCase() + what.slice(1),
          how,
          gain: `It takes ${percent(gain)} off the doubt of the boil-off: ${half(1)} now, some ${half(1 - gain)} then.`,
        })),
    };
  },
};
