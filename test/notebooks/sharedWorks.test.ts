import { expect, test } from "vitest";
import { asideFunction } from "../../notebooks/aside/asideFunction.ts";
import { SharedWorks } from "../../notebooks/aside/shared.ts";

const twice = asideFunction<{ readonly x: number }, number>({
  name: "twice",
  waits: "waiting",
  work: ([x]) => ({ x: Number(x) }),
  does: ({ x }) => 2 * x,
  parts: (found) => found,
  same: (a, b) => a.x === b.x,
});

function setUp() {
  const started: { data: unknown; resolve: (found: unknown) => void; stopped: boolean }[] = [];
  const works = new SharedWorks((_, data) => {
    const one = { data, resolve: (_: unknown) => {}, stopped: false };
    started.push(one);
    const found = new Promise<unknown>((resolve, reject) => {
      one.resolve = resolve;
      setTimeout(() => one.stopped && reject(new Error("stopped")));
    });
    return {
      found,
      stop: () => {
        one.stopped = true;
      },
    };
  });
  return { works, started };
}

test("two cases that come to the same work have one job, also after it is done", async () => {
  const { works, started } = setUp();
  const a = works.start(twice, { x: 2 }, () => {});
  const b = works.start(twice, { x: 2 }, () => {});
  works.start(twice, { x: 3 }, () => {});
  expect(started.map(({ data }) => data)).toEqual([{ x: 2 }, { x: 3 }]);
  started[0]?.resolve(4);
  expect(await Promise.all([a.found, b.found])).toEqual([4, 4]);
  expect(await works.start(twice, { x: 2 }, () => {}).found).toBe(4);
  expect(started.length).toBe(2);
});

test("a job ends when nobody waits for it any more, and is then begun anew", () => {
  const { works, started } = setUp();
  const a = works.start(twice, { x: 2 }, () => {});
  const b = works.start(twice, { x: 2 }, () => {});
  a.found.catch(() => {});
  a.stop();
  a.stop();
  expect(started[0]?.stopped).toBe(false);
  b.stop();
  expect(started[0]?.stopped).toBe(true);
  works.start(twice, { x: 2 }, () => {}).found.catch(() => {});
  expect(started.length).toBe(2);
});
