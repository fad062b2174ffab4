import { expect, test } from "vitest";
import { given, type Job, notebook, openLines, worked } from "../../../lib/lines/index.ts";

interface Call {
  readonly job: Job;
  readonly log: unknown;
  readonly end: (value: number) => void;
  stopped: number;
}

/** A notebook with one slow function, whose calls the test ends itself. */
function slowBook() {
  const calls: Call[] = [];
  const fit = {
    name: "fit",
    takes: [{ name: "log" }],
    says: "",
    work: () => {
      throw new Error("the slow way was to be taken");
    },
    slow: (job: Job, log: unknown) =>
      new Promise<number>((end) => {
        const call: Call = { job, log, end, stopped: 0 };
        job.onStop(() => {
          call.stopped++;
        });
        calls.push(call);
      }),
  };
  const lines = openLines(
    notebook({
      asks: "?",
      lines: {
        log: given("a", undefined, { takes: "words" }),
        other: given("1"),
        found: worked("fit(log)"),
        twice: worked("2 * found"),
      },
    }),
    { vocabulary: { functions: [fit] } },
  );
  return { lines, calls };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 2));

test("a slow function tells how far it is, and its line is at work until it ends", async () => {
  const { lines, calls } = slowBook();
  await turn();
  expect(lines.atWork()).toEqual(["found"]);
  calls[0]?.job.says("fitting 12 readings", 0.25);
  expect(lines.result("found")).toEqual({ state: "working", says: "fitting 12 readings", share: 0.25 });
  calls[0]?.end(3);
  expect(await lines.value("twice")).toMatchObject({ value: 6 });
  expect(lines.atWork()).toEqual([]);
  expect(calls[0]?.stopped).toBe(0);
  lines.close();
});

test("a newer edit ends the older work, and what was found before stays at hand", async () => {
  const { lines, calls } = slowBook();
  await turn();
  calls[0]?.end(3);
  await lines.settled();
  lines.set("log", { given: "b" });
  expect(lines.result("twice")).toMatchObject({ state: "working", before: { value: 6 } });
  await turn();
  lines.set("log", { given: "c" });
  expect(calls[1]?.stopped).toBe(1);
  await turn();
  expect(calls.map(({ log }) => log)).toEqual(["a", "b", "c"]);
  calls[1]?.end(100);
  await turn();
  expect(lines.result("twice")).toMatchObject({ state: "working", before: { value: 6 } });
  calls[2]?.end(5);
  expect(await lines.value("twice")).toMatchObject({ value: 10 });
  expect(calls[2]?.stopped).toBe(0);
  lines.close();
});

test("an edit that the slow line does not use leaves its work alone", async () => {
  const { lines, calls } = slowBook();
  await turn();
  lines.set("other", { given: "2" });
  await turn();
  expect(calls).toHaveLength(1);
  expect(calls[0]?.stopped).toBe(0);
  lines.close();
});

test("work stopped by hand leaves the line stopped, and it can be done again", async () => {
  const { lines, calls } = slowBook();
  await turn();
  lines.stop("found");
  await lines.settled();
  expect(calls[0]?.stopped).toBe(1);
  expect(lines.result("found")).toEqual({ state: "stopped", says: "stopped by you", byYou: true });
  expect(lines.result("twice")).toEqual({ state: "waits", for: "found" });
  // What the ended work would have found comes to nothing.
  calls[0]?.end(3);
  await turn();
  expect(lines.result("found").state).toBe("stopped");
  lines.again("found");
  expect(lines.result("twice").state).toBe("working");
  await turn();
  calls[1]?.end(4);
  expect(await lines.value("twice")).toMatchObject({ value: 8 });
  lines.close();
});

test("a change after a stop works the line again", async () => {
  const { lines, calls } = slowBook();
  await turn();
  lines.stop("found");
  await lines.settled();
  lines.set("log", { given: "b" });
  await turn();
  calls[1]?.end(1);
  expect(await lines.value("found")).toMatchObject({ value: 1 });
  lines.close();
});

test("closing a notebook ends its work", async () => {
  const { lines, calls } = slowBook();
  await turn();
  lines.close();
  expect(calls[0]?.stopped).toBe(1);
});

test("what a slow function fails with is said of its line", async () => {
  const lines = openLines(notebook({ asks: "?", lines: { found: worked("fit()") } }), {
    vocabulary: {
      functions: [
        { name: "fit", takes: [], says: "", work: () => 1, slow: () => Promise.reject(new Error("too few readings")) },
      ],
    },
  });
  expect(await lines.value("found")).toMatchObject({ stopped: "too few readings" });
});
