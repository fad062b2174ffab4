import { formatWithSpread, type Shown } from "../measure/formatWithSpread.ts";
import type { Dimension } from "../measure/types.ts";
import type { Hatch } from "./hatch.ts";
import type { FigureOptions, HeatAmount, WhereHeatWentData } from "./types.ts";

const energy: Dimension = { mass: 1, length: 2, time: -2 };
const power: Dimension = { mass: 1, length: 2, time: -3 };

/** What stands beside one piece: its name, then a number with its spread, or words where no number can be given. */
export interface HeatLabel {
  readonly name: string;
  readonly number?: string;
  /** Spread and unit: "±300 BTU". */
  readonly spread?: string;
  readonly words: readonly string[];
}

/** One piece of the bar: its length in J, how it is lined, what is written beside it. */
export interface HeatPiece {
  readonly kind: string;
  readonly length: number;
  readonly hatch: Hatch;
  readonly label: HeatLabel;
}

/** The bar cut up: pieces in their order, all of them together in J, and what is no piece of it in words. */
export interface HeatSplit {
  readonly pieces: readonly HeatPiece[];
  /** J that the whole bar stands for. */
  readonly stock: number;
  readonly total?: HeatAmount;
  /** Gas burnt and what of it went past the tank, where both are more than nothing. */
  readonly fire?: { readonly burnt: HeatAmount; readonly past: HeatPiece };
  readonly notes: readonly string[];
}

const kinds = [
  { key: "steam", name: "steam", long: "into steam", hatch: "rising" },
  { key: "makeUpWater", name: "make-up water", long: "warming make-up water", hatch: "water" },
  { key: "wallsAndTop", name: "walls and top", long: "walls and top", hatch: "section" },
  { key: "parts", name: "parts", long: "parts", hatch: "steel" },
  { key: "bath", name: "the bath itself", long: "warming the bath itself", hatch: "liquid" },
] as const;

/** Writes amounts of heat of one figure, all in one unit: BTU, or MJ (kJ where the largest is below 10 MJ). */
export function heatWriter(data: WhereHeatWentData, { system }: Pick<FigureOptions, "system">) {
  const amounts = [data.total, data.fire, ...kinds.map(({ key }) => data[key])].filter((one) => one !== undefined);
  const most = Math.max(0, ...amounts.map((one) => Math.abs(one.value)));
  const unit = system === "US" ? "BTU" : most < 1e7 ? "kJ" : "MJ";
  const shown = ({ value, low, high }: HeatAmount, dimension: Dimension, name: string): Shown =>
    formatWithSpread(
      { value, dimension, components: new Map([["spread", (high - low) / 4]]), interval95: [low, high] },
      name,
      { system },
    );
  const plain = (text: string) => text.replaceAll("\u00a0", " ");
  const of = (amount: HeatAmount) => shown(amount, energy, unit);
  return {
    of,
    text: (amount: HeatAmount): string => plain(of(amount).text),
    /** "can't tell, up to 700 BTU", "can't tell, −200 to 700 BTU": the two halves. */
    untold: (amount: HeatAmount): readonly [string, string] => {
      const { low, high } = of(amount);
      return ["can't tell", amount.low === 0 ? `up to ${high} ${unit}` : `${low} to ${high} ${unit}`];
    },
    /** The mean over `seconds`. */
    mean: ({ value, low, high }: HeatAmount, seconds: number): string =>
      plain(
        shown(
          { value: value / seconds, low: low / seconds, high: high / seconds },
          power,
          system === "US" ? "BTU/h" : Math.abs(value / seconds) < 1e4 ? "W" : "kW",
        ).text,
      ),
  };
}

// A joule is nothing to a bath, and what rounding leaves of a zero is less.
const isNone = (one: HeatAmount): boolean => Math.max(Math.abs(one.low), Math.abs(one.high)) < 1;
const isUntold = (one: HeatAmount): boolean => one.low <= 0 && one.high >= 0;

/** All that is known to have gone into the bath; the sum's spread is the widest that its amounts allow. */
export function heatTotal(data: WhereHeatWentData): HeatAmount | undefined {
  if (data.total) return data.total;
  const known = kinds.map(({ key }) => data[key]).filter((one) => one !== undefined);
  if (known.length === 0) return undefined;
  const sum = (pick: (one: HeatAmount) => number) => known.reduce((all, one) => all + pick(one), 0);
  return { value: sum((one) => one.value), low: sum((one) => one.low), high: sum((one) => one.high) };
}

/**
 * The heat of one run as pieces of a bar to scale, and in words what is no piece: none, not known, given back, or
 * too doubtful to tell. Throws a RangeError where an amount's limits do not hold its value between them.
 * @example heatSplit({ start: 0, end: 60, parts: { value: 0, low: 0, high: 0 } }, { system: "US" }).notes[0] // "none: parts"
 */
export function heatSplit(data: WhereHeatWentData, options: Pick<FigureOptions, "system">): HeatSplit {
  const write = heatWriter(data, options);
  for (const key of [...kinds.map((one) => one.key), "total", "fire", "pastTank"] as const) {
    const one = data[key];
    if (one && !(one.low <= one.value && one.value <= one.high))
      throw new RangeError(
        `invalid heat ${key}: ${one.value} between ${one.low} and ${one.high}; low <= value <= high`,
      );
  }
  const pieces: HeatPiece[] = [];
  const words: string[] = [];
  const none: string[] = [];
  const unknown: string[] = [];
  let known = 0;
  for (const { key, name, hatch } of kinds) {
    const amount = data[key];
    if (!amount) unknown.push(name);
    else if (isNone(amount)) none.push(name);
    else {
      known += amount.value;
      if (amount.value > 0) pieces.push(pieceOf(key, name, hatch, amount, write));
      else if (isUntold(amount)) words.push(`${name}: ${write.untold(amount).join(", ")}`);
      else words.push(`${name} gave back ${write.text(turned(amount))}`);
    }
  }
  const total = heatTotal(data);
  const rest = (total?.value ?? 0) - known;
  if (unknown.length > 0 && total && rest > 0.01 * total.value) {
    const name = unknown.length === 1 ? (unknown[0] ?? "") : "the rest";
    pieces.push({ kind: "rest", length: rest, hatch: "open", label: { name, words: ["not known"] } });
  }
  const notes = [
    ...words,
    ...(none.length > 0 ? [`none: ${none.join(", ")}`] : []),
    ...(unknown.length > 0 ? [`not known: ${unknown.join(", ")}`] : []),
  ];
  const past = pastTank(data, total);
  const split = { pieces, stock: pieces.reduce((sum, one) => sum + one.length, 0), ...(total ? { total } : {}) };
  if (!data.fire || !past) return { ...split, notes };
  const burnt = `gas burnt ${write.text(data.fire)}`;
  if (past.high < 0) return { ...split, notes: [...notes, `${burnt}, less than went into the bath: one is wrong`] };
  if (past.value <= 0 || !(total && total.value > 0))
    return { ...split, notes: [...notes, `${burnt}; past the tank: ${write.untold(past).join(", ")}`] };
  // What is not known of the bath's share is still in what the gas left over.
  const name = pastName(data);
  const piece = pieceOf("past the tank", name, "lost fire", past, write);
  return { ...split, fire: { burnt: data.fire, past: piece }, notes };
}

const turned = ({ value, low, high }: HeatAmount): HeatAmount => ({ value: -value, low: -high, high: -low });

function pieceOf(
  kind: string,
  name: string,
  hatch: Hatch,
  amount: HeatAmount,
  write: ReturnType<typeof heatWriter>,
): HeatPiece {
  if (isUntold(amount)) {
    return { kind, length: amount.value, hatch: "open", label: { name, words: write.untold(amount) } };
  }
  const { number, spread, unit } = write.of(amount);
  const label = { name, number, spread: spread === "exactly" ? `${unit} exactly` : `${spread} ${unit}`, words: [] };
  return { kind, length: amount.value, hatch, label };
}

/** "past the tank", or what else may be in it while a share of the bath is not known. */
export function pastName(data: WhereHeatWentData): string {
  const open = !data.total && !data.pastTank && kinds.some(({ key }) => data[key] === undefined);
  return open ? "past the tank or not known" : "past the tank";
}

/** What of the gas went past the tank; nothing where the gas or the heat into the bath is not known. */
export function pastTank(data: WhereHeatWentData, total = heatTotal(data)): HeatAmount | undefined {
  if (data.pastTank) return data.pastTank;
  if (!data.fire || !total) return undefined;
  const { fire } = data;
  return { value: fire.value - total.value, low: fire.low - total.high, high: fire.high - total.low };
}

/** The five kinds in their order, with the words of the finding. */
export const heatKinds: readonly { readonly key: (typeof kinds)[number]["key"]; readonly long: string }[] = kinds;
export { isNone, isUntold };
