import { expect, test } from "vitest";
import { logsForFit } from "../../../data/generator/inventLogForFit.ts";
import { fitRun } from "../../../lib/fit/run/fitRun.ts";
import { readLog } from "../../../lib/log/index.ts";
import { measuredValue, type Value, winsOver } from "../../../lib/measure/index.ts";
import { givesForFit } from "./judgeGivens.ts";

/** What a log's fit says that holds the bath, and what truly does, kg/s. */
interface Fed {
  readonly said: Value;
  readonly truly: number;
}

// Held back: logs that nothing was tuned on. The generator is ours: a figure of honesty, no proof of the physics.
const fed: Fed[] = [];
for (const log of logsForFit(88_001, 116)) {
  const { value, standardUncertainty } = fitRun(readLog(log.text).run, givesForFit(log)).makeUp;
  const said = measuredValue(value, standardUncertainty, { mass: 1, time: -1 }, `log ${log.seed}`);
  fed.push({ said, truly: log.truth.makeUp });
  // A worker that never pauses looks dead to its parent.
  await new Promise((resolve) => setImmediate(resolve));
}
fed.sort((a, b) => a.said.value - b.said.value);

/** Setups whose answers lie near each other: 200 pairs, so many places apart. */
const pairs = [4, 8, 12]
  .flatMap((apart) =>
    fed.slice(0, -apart).flatMap((less, i) => {
      const more = fed[i + apart];
      return more ? [{ sure: winsOver(more.said, less.said), right: more.truly > less.truly }] : [];
    }),
  )
  .slice(0, 200);
const share = (list: typeof pairs) => list.filter(({ right }) => right).length / list.length;
const within = (low: number, high: number) => pairs.filter(({ sure }) => sure >= low && sure < high);
const from80 = within(0.8, 0.9);

test(`"A needs more feed than B": of ${pairs.length} pairs of fitted setups, those said with 80 to 90 % (${from80.length}) come true in ${(100 * share(from80)).toFixed(0)} %`, () => {
  expect(pairs).toHaveLength(200);
  expect(from80.length).toBeGreaterThan(20);
  expect(share(from80)).toBeGreaterThanOrEqual(0.72);
  expect(share(from80)).toBeLessThanOrEqual(0.96);
});

test("surer is truer", () => {
  expect(share(within(0.5, 0.7))).toBeLessThan(share(within(0.9, 1.01)));
  expect(share(within(0.9, 1.01))).toBeGreaterThan(0.85);
});
