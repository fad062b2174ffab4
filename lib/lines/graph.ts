import { Runtime, type Variable } from "@observablehq/runtime";

/** Work that follows from other work: one node for each line, worked again when and only when something it uses was. */
export interface Graph {
  /** Makes a node, or gives it other inputs or other work. Its dependents are worked again with it. */
  define(node: string, inputs: readonly string[], work: (...inputs: readonly unknown[]) => unknown): void;
  delete(node: string): void;
  /** Whether a node still has to be worked. */
  pending(node: string): boolean;
  /** Settles when one node is worked, or all are; it waits for no frame of a screen. */
  settled(node?: string): Promise<void>;
  close(): void;
}

/** A node: the runtime's variable, and where it stands. */
interface Held {
  readonly variable: Variable;
  /** It still has to be worked. */
  waiting: boolean;
  gone: boolean;
}

/** What work that was ended for a newer edit comes to: nobody is told of it. */
export const superseded = Object.freeze({ state: "stopped", says: "a newer edit came" } as const);

/**
 * A graph of work on @observablehq/runtime 6.0.1, and the one place that knows of it.
 *
 * All that is defined in one go is worked once, in the next microtask: the runtime would wait for an animation frame,
 * and a hidden tab has none. A name that is not defined is an error; the runtime would look for it among the page's globals.
 * @param done Told of each node that was worked, with what it came to.
 * @returns An empty graph.
 * @example
 * const found = new Map();
 * const graph = openGraph((node, value) => found.set(node, value));
 * graph.define("a", [], () => 2);
 * graph.define("b", ["a"], (a) => Number(a) + 1);
 * await graph.settled();
 * found.get("b") // 3
 */
export function openGraph(done: (node: string, value: unknown) => void): Graph {
  const runtime = new Runtime(null, (name) => {
    throw new Error(`unknown line: ${name}; a line is defined before it is used`);
  });
  if (typeof runtime._computeSoon !== "function" || typeof runtime._computeNow !== "function")
    throw new Error("unknown @observablehq/runtime; version 6.0.1 is needed");
  const module = runtime.module();
  const held = new Map<string, Held>();
  /** How many nodes still have to be worked. */
  let left = 0;
  let scheduled = false;
  let closed = false;
  let waiters: { readonly node: string | undefined; readonly go: () => void }[] = [];

  runtime._computeSoon = async () => {
    scheduled = true;
    await Promise.resolve();
    scheduled = false;
    if (!closed) await runtime._computeNow();
    wake();
  };

  const ready = (node: string | undefined) =>
    closed || (!scheduled && (node === undefined ? left === 0 : held.get(node)?.waiting !== true));

  function wake(): void {
    if (!waiters.some(({ node }) => ready(node))) return;
    const now = waiters.filter(({ node }) => ready(node));
    waiters = waiters.filter((waiter) => !now.includes(waiter));
    for (const { go } of now) go();
  }

  function due(one: Held): void {
    if (!one.waiting) left += 1;
    one.waiting = true;
  }

  function awaited(one: Held): void {
    if (one.waiting) left -= 1;
    one.waiting = false;
  }

  function observe(node: string): Held {
    const finish = (value: unknown) => {
      // A deleted node reports once more, maybe when another was made under its name.
      if (closed || value === superseded || one.gone) return;
      awaited(one);
      try {
        done(node, value);
      } finally {
        wake();
      }
    };
    const variable: Variable = module.variable({
      pending: () => {
        if (!one.gone) due(one);
      },
      fulfilled: finish,
      rejected: finish,
    });
    const one: Held = { variable, waiting: false, gone: false };
    return one;
  }

  return {
    define(node, inputs, work) {
      const one = held.get(node) ?? observe(node);
      held.set(node, one);
      due(one);
      one.variable.define(node, inputs, work);
    },
    delete(node) {
      const one = held.get(node);
      if (!one) return;
      held.delete(node);
      awaited(one);
      one.gone = true;
      one.variable.delete();
    },
    pending: (node) => held.get(node)?.waiting === true,
    settled: (node) =>
      new Promise((go) => {
        waiters.push({ node, go });
        wake();
      }),
    close() {
      closed = true;
      runtime.dispose();
      wake();
    },
  };
}
