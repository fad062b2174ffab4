import { afterEach, expect, test } from "vitest";
import { given, type Lines, notebook, openLines, worked } from "../../lib/lines/index.ts";
import { knownTrial } from "../../notebooks/page/trials/known.ts";
import { type Moments, trials } from "../../notebooks/page/trials/trials.ts";

/** Time that stands until it is told to go on; real turns of the thread pass between its steps. */
function clock() {
  let at = 0;
  let turns = 0;
  const due: { readonly when: number; readonly call: () => void }[] = [];
  const moments: Moments = {
    now: () => at,
    after: (ms, call) => void due.push({ when: at + ms, call }),
    idle: (call) => {
      turns += 1;
      due.push({ when: at, call: () => call(at) });
    },
  };
  async function pass(ms: number): Promise<void> {
    const until = at + ms;
    for (let none = 0; none < 20; ) {
      await new Promise((go) => setTimeout(go, 0));
      due.sort((a, b) => a.when - b.when);
      const next = due[0];
      if (!next || next.when > until) {
        none += 1;
        continue;
      }
      none = 0;
      due.shift();
      at = Math.max(at, next.when);
      next.call();
    }
    at = until;
  }
  return { moments, pass, turns: () => turns, waiting: () => due.length };
}

const open: Lines[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.close();
});

function opened(): Lines {
  const lines = openLines(
    notebook({
      asks: "?",
      lines: {
        x: given("3 lb ± 0.6 lb"),
        other: given("1"),
        bent: worked("1 / (x - 1 lb)", "1/lb"),
        straight: worked("2 * x", "lb"),
        bare: { ...worked("1 / (x - 1.01 lb)", "1/lb"), plain: true },
        unseen: worked("1 / (x - 1.02 lb)", "1/lb"),
      },
    }),
  );
  open.push(lines);
  return lines;
}

/** A page of some lines: what it shows, each time it is drawn. */
function page(lines: Lines, names: readonly string[], typing = () => false) {
  const time = clock();
  const says: string[][] = [];
  const work = trials(typing, () => draw(), time.moments);
  function draw(): void {
    work.drawn(() =>
      says.push(
        names.flatMap((name) =>
          work.of({ open: lines, line: name }, lines.line(name), lines.result(name)) ? [name] : [],
        ),
      ),
    );
  }
  return { ...time, work, draw, says, now: () => says.at(-1) };
}

const names = ["x", "bent", "straight", "bare"];

test("once the hand pauses for a second, what bends is shown by its trial, and only what is seen is tried", async () => {
  const lines = opened();
  await lines.settled();
  const { pass, draw, now, turns, waiting } = page(lines, names);
  draw();
  await pass(990);
  expect(turns()).toBe(0);
  expect(now()).toEqual([]);
  await pass(20);
  expect(now()).toEqual(["bent"]);
  expect(knownTrial(lines, "straight", "")).toEqual({ trial: undefined });
  expect(knownTrial(lines, "bare", "")).toBeUndefined();
  expect(knownTrial(lines, "unseen", "")).toBeUndefined();
  // Nothing is left to be done, and nothing looks for it.
  expect(waiting()).toBe(0);
  draw();
  expect(waiting()).toBe(0);
  // x is 3 ± 0.6 at 95 %, so 1 / (x - 1) lies from 1/2.6 to 1/1.4 with 95 %, by monotony; by slopes it would be 0.35 to 0.65.
  const ends = knownTrial(lines, "bent", "")?.trial?.value.interval95?.map((end) => end * 0.45359237) ?? [];
  expect(ends[0]).toBeCloseTo(1 / 2.6, 2);
  expect(ends[1]).toBeCloseTo(1 / 1.4, 2);
});

test("a hand that does not pause holds the work up, and nothing is lost of it", async () => {
  const lines = opened();
  await lines.settled();
  const { pass, draw, now, work, turns } = page(lines, names);
  draw();
  for (let i = 0; i < 30; i++) {
    await pass(100);
    work.hand();
  }
  expect(turns()).toBe(0);
  await pass(1000);
  expect(now()).toEqual(["bent"]);
});

test("nothing is tried while something typed is not taken yet", async () => {
  const lines = opened();
  await lines.settled();
  let typing = true;
  const { pass, draw, now, turns } = page(lines, names, () => typing);
  draw();
  await pass(5000);
  expect(turns()).toBe(0);
  typing = false;
  await pass(500);
  expect(now()).toEqual(["bent"]);
});

test("nothing is tried while lines are at work", async () => {
  const lines = opened();
  await lines.settled();
  let slow: readonly string[] = ["a fit"];
  const { pass, draw, now, turns } = page({ ...lines, atWork: () => slow }, names);
  draw();
  await pass(5000);
  expect(turns()).toBe(0);
  slow = [];
  await pass(500);
  expect(now()).toEqual(["bent"]);
});

test("an edit takes a trial away at once, and it comes back for the new amount", async () => {
  const lines = opened();
  await lines.settled();
  const { pass, draw, now } = page(lines, names);
  draw();
  await pass(1100);
  expect(now()).toEqual(["bent"]);
  const was = knownTrial(lines, "bent", "")?.trial;
  lines.set("x", { given: "4 lb ± 1.2 lb" });
  draw();
  expect(now()).toEqual([]);
  await lines.settled();
  draw();
  expect(now()).toEqual([]);
  await pass(1100);
  expect(now()).toEqual(["bent"]);
  expect(knownTrial(lines, "bent", "")?.trial).not.toBe(was);
  lines.set("x", { given: "400 lb ± 0.1 lb" });
  await lines.settled();
  draw();
  await pass(1100);
  expect(now()).toEqual([]);
});

test("a change of something else while it is tried ends nothing; what is no longer shown is not tried on", async () => {
  const lines = opened();
  await lines.settled();
  // Each idle turn an edit: of a line that bears on nothing shown.
  let edits = 0;
  const time = clock();
  const shown = { names: ["bent"] };
  const draw = () =>
    work.drawn(() => {
      for (const name of shown.names) work.of({ open: lines, line: name }, lines.line(name), lines.result(name));
    });
  const work = trials(() => false, draw, {
    ...time.moments,
    idle: (call) => {
      if (edits < 3) lines.set("other", { given: String(++edits + 1) });
      time.moments.idle(call);
    },
  });
  draw();
  await time.pass(1100);
  expect(edits).toBeGreaterThan(0);
  expect(knownTrial(lines, "bent", "")?.trial).toBeDefined();
  shown.names = ["unseen"];
  draw();
  shown.names = [];
  draw();
  await time.pass(3000);
  expect(knownTrial(lines, "unseen", "")).toBeUndefined();
  expect(time.waiting()).toBe(0);
});

test("a line that goes while it is waited for is let be", async () => {
  const lines = opened();
  await lines.settled();
  const { pass, work, turns, waiting } = page(lines, []);
  work.drawn(() => work.of({ open: lines, line: "bent" }, lines.line("bent"), lines.result("bent")));
  lines.remove("bent");
  await pass(3000);
  expect(turns()).toBe(1);
  expect(waiting()).toBe(0);
});
