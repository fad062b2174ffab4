import { expect, test } from "vitest";
import { type LogForFit, logsForFit } from "../../data/generator/inventLogForFit.ts";
import { slips, strangers } from "../../data/generator/roughShop.ts";

// What goes wrong in the invented logs truly happens, at the sizes that are stated: means and deviations over 300 logs.
const flOz = 0.0295735295625 * 0.9982;

/** What the checks need of a log; its second-by-second truth is too large to keep three hundred times. */
function summary({ run, scenario, scrap, told, truth, kind, rows }: LogForFit) {
  const { bath: _, shown, water: __, fire, lost: ___, ...totals } = run;
  const calm = !kind.faults.includes("wind bursts");
  const seconds = !scrap.wholeMinutes && !kind.faults.includes("tip moved");
  const misread = new Set(truth.misread.map(({ time }) => time));
  // Readings at the boil, by how much they are off what the thermometer stood at; pours move it within the jitter.
  const poured = truth.poured.map(({ time }) => time);
  const off = rows.flatMap(({ time, fahrenheit }) => {
    const quiet = poured.every((at) => time < at - 10 || time > at + 200);
    if (!seconds || !quiet || fahrenheit === undefined || misread.has(time) || time < truth.firstBoil + 60) return [];
    const stood = ((shown[Math.round(time + scrap.zero)] ?? 0) + truth.thermometer.high) * 1.8 + 32;
    return [(Number(fahrenheit) - stood) / Math.hypot(truth.noise.sd * 1.8, truth.noise.wander * 1.8)];
  });
  const fireAtBoil = calm ? (fire[run.firstBoil] ?? 0) / scenario.fire : undefined;
  return { totals, scenario, scrap, told, truth: { ...truth, fire: [] }, kind, off, fireAtBoil };
}

const logs = Array.from(logsForFit(30_001, 300), summary);
const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / list.length;
const deviation = (list: readonly number[]) => Math.sqrt(mean(list.map((x) => (x - mean(list)) ** 2)));
const within = (value: number, low: number, high: number) => {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
};
const all = <T>(of: (log: (typeof logs)[number]) => readonly T[]) => logs.flatMap(of);
const having = (fault: LogForFit["kind"]["faults"][number]) => logs.filter(({ kind }) => kind.faults.includes(fault));
const lacking = (fault: LogForFit["kind"]["faults"][number]) => logs.filter(({ kind }) => !kind.faults.includes(fault));

test.each([...strangers, ...slips])("a third of the logs have: %s", (fault) => {
  within(having(fault).length / logs.length, 0.25, 0.42);
});

test("gusts: 7 % over 200 s and 10 % over 1,500 s at least, on average, and the fire moves by as much", () => {
  const [short = 0, long = 0] = [0, 1].map((i) => mean(logs.map(({ scenario }) => scenario.gusts[i]?.sd ?? 0)));
  within(short, 0.07, 0.085);
  within(long, 0.1, 0.12);
  expect(logs.every(({ scenario }) => scenario.gusts[0].time === 200 && scenario.gusts[1].time === 1500)).toBe(true);
  const stated = Math.sqrt(mean(logs.map(({ scenario: { gusts } }) => gusts[0].sd ** 2 + gusts[1].sd ** 2)));
  const fires = logs.flatMap(({ fireAtBoil }) => (fireAtBoil === undefined ? [] : [fireAtBoil]));
  within(deviation(fires) / stated, 0.85, 1.15);
  within(mean(fires), 0.96, 1.05);
});

test("cup: 3 % all night and 5 % a pour", () => {
  within(deviation(logs.map(({ truth }) => truth.cup)), 0.026, 0.034);
  within(mean(logs.map(({ truth }) => truth.cup)), -0.006, 0.006);
  const pours = logs.filter(({ kind }) => kind.habit !== "drip");
  const each = pours.flatMap(({ truth }) => truth.poured.map((p) => p.mass / (p.ounces * flOz) / (1 + truth.cup) - 1));
  expect(each.length).toBeGreaterThan(1000);
  within(deviation(each), 0.047, 0.053);
  within(mean(each), -0.005, 0.005);
});

test("told salts are 2 % off, told water 5 to 10 %, and the doubt that is told with it is true", () => {
  within(deviation(logs.map(({ told, truth }) => told.hydroxide / truth.hydroxide)), 0.017, 0.023);
  within(deviation(logs.map(({ told, truth }) => told.nitrate / truth.nitrate)), 0.017, 0.023);
  const waters = logs.flatMap(({ told, scenario }) =>
    told.water ? [{ off: told.water.value / scenario.tank.water - 1, share: told.water.share }] : [],
  );
  within(waters.length / logs.length, 0.6, 0.8);
  within(deviation(waters.map(({ off }) => off)), 0.06, 0.09);
  within(deviation(waters.map(({ off, share }) => off / share)), 0.85, 1.15);
});

test("boiling curve: 1.5 K of offset and 7 % of scale", () => {
  within(deviation(logs.map(({ truth }) => truth.departure.offset)), 1.3, 1.7);
  within(deviation(logs.map(({ truth }) => truth.departure.scale)), 0.06, 0.08);
});

test("thermometer: within its kind's tolerance, 6 to 40 s of lag; mixing takes 10 to 60 s", () => {
  for (const { truth, told } of logs) {
    const tolerance = told.thermometer.standardUncertainty * Math.sqrt(3);
    expect(Math.abs(truth.thermometer.high - truth.thermometer.moved)).toBeLessThanOrEqual(tolerance + 1e-9);
    within(truth.lag, 6, 40);
    within(truth.mixing, 10, 60);
  }
  // ASTM E230: 2.2 °C for type K wire by standard limits, 1.1 °C by special ones.
  const tolerances = new Map(
    logs.map(({ told: { thermometer: t } }) => [t.kind, t.standardUncertainty * Math.sqrt(3)]),
  );
  expect(tolerances.get("type K")).toBeCloseTo(2.2, 9);
  expect(tolerances.get("type K special")).toBeCloseTo(1.1, 9);
});

test("readings are off by the noise that the truth states, rounding and slow wander included", () => {
  const off = all((log) => log.off);
  expect(off.length).toBeGreaterThan(500);
  within(deviation(off), 0.9, 1.12);
  within(mean(off), -0.1, 0.1);
  for (const { scrap } of logs) within(scrap.noise.sd, 0.3, 0.9);
});

test("1.5 % of readings are misread, by 12 °F", () => {
  const misread = all(({ truth }) => truth.misread);
  const readings = logs.reduce((sum, { kind }) => sum + kind.readings, 0);
  within(misread.length / readings, 0.01, 0.02);
  within(deviation(misread.map(({ by }) => by)), 10, 14);
});

test("who forgets leaves out about 6 % of the pours, nobody else leaves out any", () => {
  const pours = having("forgets pours").flatMap(({ truth, kind }) => (kind.habit === "drip" ? [] : truth.poured));
  within(pours.filter(({ fault }) => fault === "unwritten").length / pours.length, 0.045, 0.085);
  expect(lacking("forgets pours").every(({ kind }) => kind.unwritten === 0)).toBe(true);
});

test("half of the logs keep time to the minute", () => {
  within(mean(logs.map(({ scrap }) => (scrap.wholeMinutes ? 1 : 0))), 0.42, 0.58);
  for (const { scrap } of logs)
    if (scrap.wholeMinutes) expect(scrap.rows.every(({ time }) => time % 60 === 0)).toBe(true);
});

test("pours are written up to a minute and a half late, or at the next reading, by the makers who do so", () => {
  const written = (fault: string) => all(({ truth }) => truth.poured.filter((pour) => pour.fault === fault));
  for (const pour of written("late")) within((pour.written ?? 0) - pour.time, -40, 125);
  within(mean(written("late").map((pour) => (pour.written ?? 0) - pour.time)), 45, 65);
  const rowLate = written("a row late");
  expect(rowLate.length).toBeGreaterThan(30);
  within(mean(rowLate.map((pour) => (pour.written ?? 0) - pour.time)), 50, 250);
  expect(
    lacking("pour a row late")
      .flatMap(({ truth }) => truth.poured)
      .some((p) => p.fault === "a row late"),
  ).toBe(false);
  expect(
    lacking("writes late")
      .flatMap(({ truth }) => truth.poured)
      .some((p) => p.fault === "late"),
  ).toBe(false);
});

test("burner changes are truly off what was written by 20 % in ln", () => {
  const shares = logs.flatMap(({ scenario, scrap }) => {
    const told = scrap.rows.flatMap(({ note }) => /^burner to (\d+) %$/.exec(note ?? "")?.[1] ?? []);
    return told.map((percent, i) => Math.log((scenario.burner[i]?.share ?? Number.NaN) / (Number(percent) / 100)));
  });
  expect(shares.length).toBeGreaterThan(50);
  within(deviation(shares), 0.16, 0.24);
});

test("wind takes 10 to 35 % of the fire for 2 to 7 minutes, some four times an hour, where it blows", () => {
  const bursts = all(({ totals }) => totals.bursts);
  for (const { from, to, share } of bursts) {
    within(to - from, 120, 420);
    within(share, 0.1, 0.35);
  }
  const seconds = having("wind bursts").reduce((sum, { totals }) => sum + totals.end, 0);
  within((bursts.length / seconds) * 3600, 2.5, 4);
  expect(lacking("wind bursts").every(({ totals }) => totals.bursts.length === 0)).toBe(true);
});

test("parts and splashes carry out 0.3 to 2 % and 0.5 to 1.5 % of the brine, and nothing else does", () => {
  for (const { totals, kind, scenario } of logs) {
    const { carried, start } = totals.waterAccount;
    const due = (scenario.splash ? scenario.splash.share : 0) + (scenario.parts ? scenario.parts.dragOut : 0);
    const most = start + totals.waterAccount.poured;
    within(carried, 0, due * most + 1e-12);
    if (!kind.faults.includes("splash") && !kind.faults.includes("drag-out")) expect(carried).toBe(0);
    if (scenario.splash) within(scenario.splash.share, 0.005, 0.015);
    if (kind.faults.includes("drag-out")) within(scenario.parts?.dragOut ?? 0, 0.003, 0.02);
  }
  const carriers = logs.filter(({ totals }) => totals.waterAccount.carried > 0);
  within(carriers.length / logs.length, 0.4, 0.65);
});

test("a tip that is moved steps by 0.5 K, carbonate takes 0.5 to 1.5 % of the hydroxide", () => {
  within(deviation(having("tip moved").map(({ truth }) => truth.thermometer.moved)), 0.4, 0.6);
  expect(lacking("tip moved").every(({ truth }) => truth.thermometer.moved === 0)).toBe(true);
  for (const { totals } of having("carbonate")) within(1 - totals.last.active, 0, 0.0151);
  within(mean(having("carbonate").map(({ totals }) => 1 - totals.last.active)), 0.008, 0.0115);
  expect(lacking("carbonate").every(({ totals }) => totals.last.active === 1)).toBe(true);
});

test("the logs are of every sort: habits, warm-ups, told and untold water, short and long holds", () => {
  const share = (of: (log: (typeof logs)[number]) => boolean) => logs.filter(of).length / logs.length;
  for (const habit of ["steady", "by eye", "few", "none", "drip"]) {
    expect(share(({ kind }) => kind.habit === habit)).toBeGreaterThan(0.05);
  }
  for (const warmUp of ["from cold", "its end", "not seen"]) {
    expect(share(({ kind }) => kind.warmUp === warmUp)).toBeGreaterThan(0.15);
  }
  within(
    share(({ kind }) => kind.waterTold),
    0.6,
    0.8,
  );
  const minutes = logs.map(({ totals }) => (totals.end - totals.firstBoil) / 60);
  within(Math.max(...minutes), 80, 100.1);
  within(mean(minutes), 45, 65);
  expect(logs.every(({ totals }) => totals.firstBoil > 0)).toBe(true);
});
