import { isUnread, readQuantity } from "../measure/index.ts";
import { bareNumber } from "./amountReader.ts";
import type { Draft } from "./draft.ts";
import { measures } from "./measures.ts";
import { type Inquiry, type QuestionId, settle } from "./settle.ts";
import type { EntryKind } from "./types.ts";
import { writesUnit } from "./writesUnit.ts";

/** The unit to take for each kind where none is written. */
export type Units = ReadonlyMap<EntryKind, string>;

interface Usual {
  readonly kind: EntryKind;
  readonly id: QuestionId;
  readonly thing: string;
  readonly units: readonly string[];
  readonly likeliest: (numbers: readonly number[], metric: boolean) => string;
}

const largest = (numbers: readonly number[]) => numbers.reduce((most, number) => Math.max(most, number), 0);

/** Which unit is likeliest by the size of the numbers. Judgements, from what fits a shop's tank, cup and jug. */
const usual: readonly Usual[] = [
  {
    kind: "addition",
    id: "water unit",
    thing: "the water",
    units: ["fl oz", "cup", "pt", "qt", "ml", "l"],
    likeliest: (numbers, metric) => {
      const most = largest(numbers);
      if (metric) return most <= 5 ? "l" : "ml";
      return most <= 6 ? "cup" : most <= 130 ? "fl oz" : "ml";
    },
  },
  {
    kind: "depth",
    id: "depth unit",
    thing: "the depth",
    units: ["in", "cm", "mm"],
    likeliest: (numbers, metric) =>
      metric ? (largest(numbers) > 40 ? "mm" : "cm") : largest(numbers) > 24 ? "mm" : "in",
  },
  {
    kind: "level",
    id: "jug unit",
    thing: "the jug",
    units: ["gal", "qt", "fl oz", "l", "ml", "lb", "kg"],
    likeliest: (numbers, metric) =>
      metric ? (largest(numbers) > 40 ? "ml" : "l") : largest(numbers) > 12 ? "fl oz" : "gal",
  },
  {
    kind: "cylinder",
    id: "cylinder unit",
    thing: "the cylinder",
    units: ["lb", "kg"],
    likeliest: (_, metric) => (metric ? "kg" : "lb"),
  },
  {
    kind: "salt in",
    id: "salt unit",
    thing: "the salt",
    units: ["lb", "oz", "kg", "g"],
    likeliest: (numbers, metric) => (metric ? (largest(numbers) > 30 ? "g" : "kg") : "lb"),
  },
  {
    kind: "parts in",
    id: "parts unit",
    thing: "the parts",
    units: ["lb", "oz", "kg", "g"],
    likeliest: (_, metric) => (metric ? "kg" : "lb"),
  },
];

/**
 * The units of a log where nobody wrote them: those written elsewhere for the same kind, else the likeliest by the
 * size of the numbers, with a question for each.
 *
 * @param drafts the rows as read
 * @param decimalComma whether "144,5" is a decimal in this log
 * @param inquiry where answers come from and questions go to
 * @returns a unit by kind
 * @example
 * decideUnits(drafts, false, inquiry).get("reading") // "°F"
 */
export function decideUnits(drafts: readonly Draft[], decimalComma: boolean, inquiry: Inquiry): Units {
  const bare = new Map<EntryKind, { amount: string; number: number; line: number }[]>();
  const written = new Map<EntryKind, string>();
  for (const { findings, line, struck: crossed } of drafts) {
    for (const { kind, amount, unit, flow, struck } of findings) {
      if (amount === undefined || flow !== undefined || crossed !== undefined || struck) continue;
      const kept = kind === "parts out" ? "parts in" : kind;
      const named = unit ?? writesUnit(amount, kind);
      if (named !== undefined) {
        if (!written.has(kept) && isUnit(named, kept)) written.set(kept, named);
        continue;
      }
      const number = bareNumber(amount, decimalComma);
      if (!Number.isFinite(number)) continue;
      const list = bare.get(kept);
      if (list === undefined) bare.set(kept, [{ amount, number, line }]);
      else list.push({ amount, number, line });
    }
  }
  const units = new Map<EntryKind, string>();
  units.set("reading", written.get("reading") ?? temperatureUnit(bare.get("reading") ?? [], inquiry));
  const metric = units.get("reading") !== "°F";
  for (const { kind, id, thing, units: names, likeliest } of usual) {
    const list = bare.get(kind) ?? [];
    const first = list[0];
    const taken =
      written.get(kind) ??
      (first === undefined
        ? undefined
        : likeliest(
            list.map(({ number }) => number),
            metric,
          ));
    if (taken === undefined) continue;
    if (first === undefined) {
      units.set(kind, taken);
      continue;
    }
    const total = Math.round(list.reduce((sum, { number }) => sum + number, 0) * 100) / 100;
    const many =
      list.length > 1 && kind === "addition"
        ? `the ${list.length} pours would come to ${total}`
        : `it would be ${first.amount}`;
    const answer = settle(inquiry, {
      id,
      asks: `In what is ${thing} written, such as ${first.amount}?`,
      line: first.line,
      likeliest: taken,
      open: !written.has(kind),
      answers: names.map((unit) => ({
        answer: unit,
        says: `${first.amount} is ${first.amount} ${unit}.`,
        changes: unit === taken ? `As taken: ${first.amount} ${unit}.` : `Instead of ${taken}, ${many} ${unit}.`,
      })),
    });
    units.set(kind, answer);
  }
  units.set("parts out", units.get("parts in") ?? (metric ? "kg" : "lb"));
  return units;
}

function isUnit(name: string, kind: EntryKind): boolean {
  const measured = measures.get(kind);
  return measured !== undefined && !isUnread(readQuantity(`1 ${name}`, { kind: measured }));
}

function temperatureUnit(list: readonly { number: number; amount: string; line: number }[], inquiry: Inquiry): string {
  const first = list[0];
  if (first === undefined) return "°F";
  const sorted = list.map(({ number }) => number).sort((a, b) => a - b);
  const high = sorted[Math.floor(sorted.length * 0.9)] ?? first.number;
  // A bath is held between 240 and 330 °F (115 to 165 °C, 388 to 438 K): common practice, no source.
  const middle = sorted[Math.floor(sorted.length / 2)] ?? first.number;
  const likeliest = middle >= 378 && high < 445 ? "K" : high > 92 && high < 172 ? "°C" : "°F";
  const kelvin = high >= 350 && high < 470 ? ["K"] : [];
  const inF = (unit: string) =>
    Math.round(unit === "°F" ? high : unit === "°C" ? high * 1.8 + 32 : (high - 273.15) * 1.8 + 32);
  return settle(inquiry, {
    id: "temperature unit",
    asks: `Is ${first.amount} in Fahrenheit or in Celsius?`,
    line: first.line,
    likeliest,
    open: true,
    answers: ["°F", "°C", ...kelvin].map((unit) => ({
      answer: unit,
      says: `The readings are in ${unit}.`,
      changes:
        unit === likeliest
          ? `As taken: the hottest readings are about ${inF(unit)} °F.`
          : `The hottest readings would be about ${inF(unit)} °F instead of ${inF(likeliest)} °F.`,
    })),
  });
}
