import { expect, test } from "vitest";
import { type AsideBack, type AsideSent, aside } from "../../notebooks/page/aside.ts";

/** A worker whose answers the test gives itself. */
class Scripted {
  onmessage: ((event: { data: AsideBack<number> }) => void) | null = null;
  onerror: (() => void) | null = null;
  readonly sent: AsideSent<number>[] = [];
  ended = false;

  postMessage(sent: AsideSent<number>): void {
    this.sent.push(sent);
  }

  terminate(): void {
    this.ended = true;
  }

  back(back: AsideBack<number>): void {
    this.onmessage?.({ data: back });
  }
}

function scripted() {
  const workers: Scripted[] = [];
  const jobs = aside<number, number>(
    () => {
      const worker = new Scripted();
      workers.push(worker);
      return worker as unknown as Worker;
    },
    (work) => {
      if (work < 0) throw new Error("below 0");
      return 2 * work;
    },
  );
  return { workers, jobs };
}

test("jobs go to one worker one after another, each with its own progress and result", async () => {
  const { workers, jobs } = scripted();
  const heard: string[] = [];
  const one = jobs.start(1, (words, share) => heard.push(`${words} ${share}`));
  const two = jobs.start(2);
  expect(workers[0]?.sent.map(({ work }) => work)).toEqual([1]);
  workers[0]?.back({ id: 1, says: "half", share: 0.5 });
  workers[0]?.back({ id: 1, found: 10 });
  expect(await one.found).toBe(10);
  expect(heard).toEqual(["half 0.5"]);
  expect(workers[0]?.sent.map(({ work }) => work)).toEqual([1, 2]);
  workers[0]?.back({ id: 2, error: "too few readings" });
  await expect(two.found).rejects.toThrow("too few readings");
  expect(workers).toHaveLength(1);
  expect(workers[0]?.ended).toBe(false);
});

test("stopping the running job ends its worker, and the next job gets a new one", async () => {
  const { workers, jobs } = scripted();
  const one = jobs.start(1);
  const two = jobs.start(2);
  one.stop();
  await expect(one.found).rejects.toThrow("stopped");
  expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
  // What the ended worker may still have sent is nobody's.
  workers[0]?.back({ id: 1, found: 1 });
  workers[1]?.back({ id: 2, found: 4 });
  expect(await two.found).toBe(4);
});

test("a job that waits is stopped without a word to the worker, and one that is done stays done", async () => {
  const { workers, jobs } = scripted();
  const one = jobs.start(1);
  const two = jobs.start(2);
  two.stop();
  await expect(two.found).rejects.toThrow("stopped");
  workers[0]?.back({ id: 1, found: 3 });
  expect(await one.found).toBe(3);
  one.stop();
  expect(workers[0]?.ended).toBe(false);
  expect(workers[0]?.sent).toHaveLength(1);
});

test("where a worker is refused, at once or later, jobs are done here", async () => {
  const refusing = aside<number, number>(
    () => {
      throw new Error("not allowed");
    },
    (work) => 2 * work,
  );
  expect(await Promise.all([1, 2].map((work) => refusing.start(work).found))).toEqual([2, 4]);
  const { workers, jobs } = scripted();
  const all = [1, -1, 3].map((work) => jobs.start(work).found);
  workers[0]?.onerror?.();
  expect(await Promise.allSettled(all)).toMatchObject([
    { status: "fulfilled", value: 2 },
    { status: "rejected", reason: { message: "below 0" } },
    { status: "fulfilled", value: 6 },
  ]);
  expect(workers).toHaveLength(1);
});
