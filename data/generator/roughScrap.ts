import type { InventedRow } from "./inventLog.ts";
import type { Random } from "./random.ts";
import type { RoughRun } from "./roughRun.ts";
import type { RoughOptions, RoughShop } from "./roughShop.ts";

/** A pour that was made: s from the first row, kg that truly went in, and what was written of it. */
export interface TruePour {
  readonly time: number;
  readonly mass: number;
  readonly ounces: number;
  /** s as written; absent where it was not written down. */
  readonly written?: number;
  readonly fault?: "unwritten" | "late" | "a row late";
}

/** A reading that was misread: s as written and what was written too much, °F. */
export interface TrueMisread {
  readonly time: number;
  readonly by: number;
}

export interface RoughScrap {
  readonly rows: readonly InventedRow[];
  readonly text: string;
  /** s from lighting the burner to the log's first row. */
  readonly zero: number;
  readonly warmUp: "from cold" | "its end" | "not seen";
  readonly wholeMinutes: boolean;
  readonly poured: readonly TruePour[];
  readonly misread: readonly TrueMisread[];
  readonly readings: number;
  /** °F: of one reading by itself before rounding, of its slow wander (480 s), and the step it is rounded to. */
  readonly noise: { readonly sd: number; readonly wander: number; readonly rounding: number };
  /** Share of this maker's pours that are forgotten, before chance. */
  readonly forgets: number;
}

type Row = { time: number; true: number; row: Omit<InventedRow, "time"> };
const wander = 0.15;

/** What the maker writes of a run: readings with their errors, pours that are late, missing or rounded, notes. */
export function roughScrap(shop: RoughShop, run: RoughRun, r: Random, options: RoughOptions): RoughScrap {
  const { faults, maker, scenario, thermometer } = shop;
  const wholeMinutes = r.chance(0.5);
  const clock = (time: number) =>
    wholeMinutes ? 60 * Math.round(time / 60) : Math.max(0, Math.round(time + 2 * r.normal()));
  const rounding = r.pick([1, 1, 0.5]);
  const sd = r.from(0.3, 0.9);
  const every = 60 * r.from(1.5, 5);
  const cold = scenario.starts < 90;
  const seen = r.even();
  const warmUp = options.warmUp ?? (cold && seen < 0.35 ? "from cold" : seen < 0.72 ? "its end" : "not seen");
  const { firstBoil, end } = run;
  const firstPour = Math.min(maker.made[0]?.time ?? Infinity, maker.drips[0]?.on ?? Infinity);
  const before = warmUp === "from cold" ? firstBoil : 60 * (warmUp === "its end" ? r.from(2, 14) : r.from(-2, 1));
  const from = Math.max(0, Math.min(Math.round(firstBoil - before), firstPour - 1));

  const times: number[] = [];
  for (let time = from; time <= end; time += every * Math.exp(0.25 * r.normal())) times.push(Math.round(time));
  const rows: Row[] = [];
  const poured: TruePour[] = [];
  const beside: { time: number; row: Row }[] = [];
  const forgets = faults.has("forgets pours") ? (options.forgets ?? r.from(0.03, 0.09)) : 0;
  const aside = r.chance(0.4);
  for (const pour of maker.made) {
    const { time, mass, ounces } = pour;
    const next = times.find((at) => at > time);
    if (r.chance(forgets)) {
      poured.push({ time, mass, ounces, fault: "unwritten" });
      continue;
    }
    const isRowLate = faults.has("pour a row late") && r.chance(0.12) && next !== undefined;
    const isLate = !isRowLate && faults.has("writes late") && r.chance(0.15);
    const writtenAt = isRowLate ? next : Math.min(end, isLate ? time + r.from(20, 90) : time);
    const written = clock(writtenAt);
    const row: Row = { time: written, true: writtenAt + 0.5, row: { water: String(ounces) } };
    rows.push(row);
    const fault = isRowLate ? "a row late" : isLate ? "late" : undefined;
    poured.push({ time, mass, ounces, written, ...(fault ? { fault } : {}) });
    if (aside && !fault && r.chance(0.6)) beside.push({ time: time - 1, row });
  }
  maker.drips.forEach(({ on, ouncesPerMinute, rate, off }) => {
    const written = clock(on);
    rows.push({ time: written, true: on, row: { note: `drip on ${ouncesPerMinute} fl oz/min` } });
    const ran = Math.min(off, end + 1) - on;
    poured.push({ time: on, mass: rate * ran, ounces: (ouncesPerMinute * ran) / 60, written });
  });

  const misread: TrueMisread[] = [];
  const slipRate = faults.has("misreads") ? 0.035 : 0.005;
  const drift = { value: wander * r.normal(), time: from };
  const readingAt = (time: number): string => {
    const decay = Math.exp(-(time - drift.time) / 480);
    drift.value = drift.value * decay + wander * Math.sqrt(1 - decay * decay) * r.normal();
    drift.time = time;
    const shown = (run.shown[time] ?? 0) + thermometer.high;
    const f = shown * 1.8 + 32 + sd * r.normal() + drift.value;
    return String(Math.round(f / rounding) * rounding);
  };
  const slots = [
    ...times.map((time) => ({ time, row: undefined as Row | undefined })),
    ...beside.map(({ time, row }) => ({ time, row: row as Row | undefined })),
  ].sort((a, b) => a.time - b.time);
  for (const { time, row } of slots) {
    let fahrenheit = readingAt(time);
    const written = row?.time ?? clock(time);
    if (r.chance(slipRate)) {
      const by = Math.round(12 * r.normal());
      fahrenheit = String(Number(fahrenheit) + by);
      misread.push({ time: written, by });
    }
    if (row) row.row = { fahrenheit, ...row.row };
    else rows.push({ time: written, true: time, row: { fahrenheit } });
  }
  rows.push(...notes(shop, run, from, clock, r.chance(0.3)));
  rows.push({ time: wholeMinutes ? 60 * Math.floor(end / 60) : end, true: end + 1, row: { note: "end" } });
  const last = rows.at(-1)?.time ?? end;
  for (const row of rows) row.time = Math.min(row.time, last);
  rows.sort((a, b) => a.time - b.time || a.true - b.true);
  const zero = rows[0]?.time ?? 0;
  const out: InventedRow[] = rows.map(({ time, row }) => ({ time: time - zero, ...row }));
  const since = (time: number) => time - zero;
  return {
    rows: out,
    text: textOf(out),
    zero,
    warmUp,
    wholeMinutes,
    poured: poured.map((pour) => ({
      ...pour,
      time: since(pour.time),
      ...(pour.written === undefined ? {} : { written: Math.min(since(pour.written), since(last)) }),
    })),
    misread: misread.map(({ time, by }) => ({ time: Math.min(since(time), since(last)), by })),
    readings: slots.length,
    noise: { sd, wander, rounding },
    forgets,
  };
}

function notes(
  { scenario, burnerTold }: RoughShop,
  { firstBoil, end }: RoughRun,
  from: number,
  clock: (time: number) => number,
  boils: boolean,
): Row[] {
  const { parts, burner } = scenario;
  const at = (time: number, note: string): Row => ({ time: clock(time), true: time + 0.2, row: { note } });
  const list: (Row | undefined)[] = [
    boils && from <= firstBoil ? at(firstBoil, "boils") : undefined,
    parts && firstBoil + parts.goIn < end ? at(firstBoil + parts.goIn, "parts in") : undefined,
    parts && firstBoil + parts.comeOut < end ? at(firstBoil + parts.comeOut, "parts out") : undefined,
    ...burner.map(({ since }, i) =>
      firstBoil + since < end
        ? at(firstBoil + since, `burner to ${Math.round((burnerTold[i] ?? 1) * 100)} %`)
        : undefined,
    ),
  ];
  return list.filter((row) => row !== undefined);
}

const two = (n: number) => String(n).padStart(2, "0");

/** m:ss, from an hour on h:mm:ss. */
export function clockText(time: number): string {
  const s = Math.round(time);
  const hours = Math.floor(s / 3600);
  const minutes = Math.floor((s % 3600) / 60);
  return hours > 0 ? `${hours}:${two(minutes)}:${two(s % 60)}` : `${minutes}:${two(s % 60)}`;
}

export function textOf(rows: readonly InventedRow[]): string {
  const lines = rows.map(({ time, fahrenheit, water, note }) =>
    [clockText(time), fahrenheit ?? "", water ?? "", note ?? ""].join(","),
  );
  return `time,temp (°F),water (fl oz),note\n${lines.join("\n")}\n`;
}
