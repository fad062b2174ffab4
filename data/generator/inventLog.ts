import type { Random } from "./random.ts";
import { random as seeded } from "./random.ts";
import { type Scenario, simulate, type Truth } from "./simulate.ts";

/** A row as the invented maker wrote it. */
export interface InventedRow {
  /** s as written. */
  readonly time: number;
  readonly fahrenheit?: string;
  /** fl oz, as written. */
  readonly water?: string;
  readonly note?: string;
}

export interface InventedLog {
  readonly rows: readonly InventedRow[];
  readonly text: string;
  readonly truth: Truth;
  /** kg/s from the first boil to the last row. */
  readonly boilOff: number;
  /** What the maker believes: salts weighed a little wrong, water measured a little wrong. */
  readonly told: {
    readonly hydroxide: number;
    readonly nitrate: number;
    readonly water: number | undefined;
    readonly pressure: number;
  };
  readonly faults: readonly string[];
}

const flOz = 0.0295735295625 * 0.9982;

/** An invented run from a seed: another tank, fire, maker and scrap of paper each time. */
export function inventLog(seed: number): InventedLog {
  const r = seeded(seed);
  const gallons = Math.exp(r.from(Math.log(2), Math.log(10)));
  const water = gallons * 3.785 * r.from(0.8, 1);
  const feet = r.chance(0.5) ? r.from(0, 800) : r.from(800, 7000);
  const pressure = 101_325 * (1 - (0.0065 * feet * 0.3048) / 288.15) ** 5.2559 * (1 + 0.005 * r.normal());
  const share = r.from(0.62, 0.85);
  const strength = r.from(1.02, 1.4) * (0.8 / (share + 0.145 * (1 - share)));
  const trueSalt = water * strength;
  const departure = { offset: -0.4 + 1.5 * r.normal(), scale: 1 + 0.06 * r.normal() };
  const boilOffGuess = water * r.from(0.003, 0.011);
  const heat = (boilOffGuess / 60) * 2.56e6;
  const cup = 0.03 * r.normal();
  const holds = 60 * r.from(25, 100);
  const habit = r.pick(["steady", "by eye", "by eye", "rare"] as const);
  const slug = Math.max(4, Math.round((boilOffGuess * r.from(2, 7)) / flOz / 2) * 2);
  const interval = ((slug * flOz) / boilOffGuess) * 60 * r.from(0.9, 1.15);
  const rare = habit === "rare";
  let next = r.from(0.3, 1.2) * interval;
  let target = Number.NaN;
  const written: { time: number; ounces: number }[] = [];
  const ownMass = (ounces: number) => ounces * flOz * (1 + cup) * (1 + 0.05 * r.normal());
  const drip = r.chance(0.15);
  const scenario: Scenario = {
    hydroxide: trueSalt * share * (1 + 0.01 * r.normal()),
    nitrate: trueSalt * (1 - share) * (1 + 0.01 * r.normal()),
    water: water * (1 + 0.05 * r.normal()),
    pressure,
    departure,
    starts: r.chance(0.5) ? r.from(105, 122) : r.from(15, 60),
    heat,
    sag: 0.08 * r.normal(),
    gusts: [r.from(0.03, 0.1), r.from(0.04, 0.14)],
    wind: r.chance(0.2),
    cold: r.from(0.1e6, 0.52e6),
    mixing: r.from(10, 40),
    lag: r.from(6, 30),
    burner: r.chance(0.25)
      ? [
          [0, 1],
          [60 * r.from(30, 80), r.pick([0.75, 0.5, 0.85])],
        ]
      : [[0, 1]],
    parts: [],
    holds,
    pours: (time, shown, since) => {
      if (since < 0) return 0;
      if (Number.isNaN(target)) target = shown + r.from(0, 2.5);
      if (rare && since > holds * 0.6) return 0;
      const due =
        habit === "steady"
          ? since >= next
          : since >= next * 0.6 && shown > target + 0.5 && since >= next - interval * 0.7;
      if (!due) return 0;
      next = since + interval * Math.exp((drip ? 0.05 : 0.18) * r.normal());
      const ounces = Math.max(2, r.chance(0.8) ? slug : Math.round((slug * r.from(0.5, 1.8)) / 2) * 2);
      written.push({ time, ounces });
      return ownMass(ounces);
    },
  };
  const partsIn = r.chance(0.6) ? 60 * r.from(3, 15) : undefined;
  const truth = simulateWithParts(scenario, partsIn, r.from(0.5, 4), seed, r);
  return writeDown(r, truth, written, partsIn, scenario, {
    hydroxide: trueSalt * share,
    nitrate: trueSalt * (1 - share),
    water: r.chance(0.75) ? water : undefined,
    pressure: pressure * (1 + 0.004 * r.normal()),
  });
}

function simulateWithParts(
  scenario: Scenario,
  partsIn: number | undefined,
  mass: number,
  seed: number,
  r: Random,
): Truth {
  if (partsIn === undefined) return simulate(scenario, r);
  // Parts go in some time after the first boil, which only a first pass without them knows.
  const warm = simulate({ ...scenario, holds: 2, pours: () => 0 }, seeded(seed + 77));
  return simulate({ ...scenario, parts: [[warm.firstBoil + Math.round(partsIn), mass]] }, r);
}

function writeDown(
  r: Random,
  truth: Truth,
  written: readonly { time: number; ounces: number }[],
  partsIn: number | undefined,
  scenario: Scenario,
  told: InventedLog["told"],
): InventedLog {
  const faults: string[] = [];
  const bias = 0.7 * r.normal();
  const minutes = r.chance(0.5);
  const clock = (time: number) =>
    minutes ? 60 * Math.round(time / 60) : Math.max(0, Math.round(time + 2 * r.normal()));
  const rounding = r.pick([1, 1, 0.5]);
  const noise = r.from(0.2, 0.8);
  const every = 60 * r.from(1.5, 5);
  const from = r.chance(0.6)
    ? Math.max(0, truth.firstBoil - 60 * r.from(2, 14))
    : Math.max(0, truth.firstBoil + 60 * r.from(-1, 2));
  let wander = 0.15 * r.normal();
  let slow = from;
  const reading = (time: number) => {
    const decay = Math.exp(-Math.abs(time - slow) / 480);
    wander = wander * decay + 0.15 * Math.sqrt(1 - decay * decay) * r.normal();
    slow = time;
    const f =
      (truth.shown[Math.min(truth.end, Math.round(time))] ?? 0) * 1.8 + 32 + bias * 1.8 + noise * r.normal() + wander;
    return Math.round(f / rounding) * rounding;
  };
  const rows: { time: number; order: number; row: Omit<InventedRow, "time"> }[] = [];
  const forgets = r.chance(0.33);
  const slips = r.chance(0.33);
  if (partsIn !== undefined) rows.push({ time: clock(truth.firstBoil + partsIn), order: 2, row: { note: "parts in" } });
  const aside = r.chance(0.4);
  for (const pour of written) {
    if (pour.time > truth.end) continue;
    if (forgets && r.chance(0.12)) {
      faults.push("unwritten pour");
      continue;
    }
    const late = r.chance(0.05) ? r.from(20, 60) : 0;
    const time = clock(Math.min(truth.end, pour.time + late));
    const withReading = aside && r.chance(0.6);
    rows.push({
      time,
      order: 1,
      row: withReading
        ? { fahrenheit: text(reading(pour.time - 1)), water: String(pour.ounces) }
        : { water: String(pour.ounces) },
    });
  }
  for (let time = from; time <= truth.end; time += every * Math.exp(0.25 * r.normal())) {
    let f = reading(time);
    if (slips && r.chance(0.03)) {
      f += r.pick([-10, 10, -6, 6, 20, -20, 8]);
      faults.push("misread");
    }
    rows.push({ time: clock(time), order: 0, row: { fahrenheit: text(f) } });
  }
  if (r.chance(0.3)) rows.push({ time: clock(truth.firstBoil), order: 1, row: { note: "boils" } });
  for (const [time, share] of scenario.burner.slice(1)) {
    if (time > truth.firstBoil && time < truth.end)
      rows.push({ time: clock(time), order: 3, row: { note: `burner to ${Math.round(share * 100)} %` } });
  }
  rows.push({ time: minutes ? 60 * Math.floor(truth.end / 60) : truth.end, order: 9, row: { note: "end" } });
  rows.sort((a, b) => a.time - b.time || a.order - b.order);
  const zero = rows[0]?.time ?? 0;
  const last = Math.min(truth.end, rows.at(-1)?.time ?? truth.end);
  const out: InventedRow[] = rows.map(({ time, row }) => ({ time: time - zero, ...row }));
  const lines = out.map(({ time, fahrenheit, water, note }) =>
    [mss(time), fahrenheit ?? "", water ?? "", note ?? ""].join(","),
  );
  return {
    rows: out,
    text: `time,temp (°F),water (fl oz),note\n${lines.join("\n")}\n`,
    truth,
    boilOff: truth.steam / (last - truth.firstBoil > 0 ? truth.end - truth.firstBoil : 1),
    told,
    faults,
  };
}

function text(f: number): string {
  return Number.isInteger(f) ? String(f) : f.toFixed(1);
}

function mss(time: number): string {
  const s = Math.round(time);
  return s >= 3600
    ? `${Math.floor(s / 3600)}:${String(Math.floor((s % 3600) / 60)).padStart(2, "0")}:${String(s % 60).padStart(2, "0")}`
    : `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`;
}
