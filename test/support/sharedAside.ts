import type { Vocabulary } from "../../lib/lines/index.ts";
import { asideFunctions } from "../../notebooks/aside/functions.ts";

/** A work that was done: which function, on what, and what it found. */
export interface DoneAside {
  readonly name: string;
  readonly data: unknown;
  readonly found: unknown;
}

/** The vocabulary with what the page works aside worked here, and the same work done once, as the page does it. */
export function sharedAside(vocabulary: Vocabulary): Vocabulary & { readonly done: readonly DoneAside[] } {
  const done: DoneAside[] = [];
  const functions = vocabulary.functions.map((func) => {
    const slow = asideFunctions.find(({ name }) => name === func.name);
    if (!func.work || !slow) return func;
    return {
      ...func,
      work: (...given: readonly unknown[]) => {
        const data = slow.work(given);
        const before = done.find((one) => one.name === slow.name && slow.same?.(one.data, data));
        const found = before ? before.found : slow.does(data, () => {});
        if (!before) done.push({ name: slow.name, data, found });
        return slow.parts(found, data);
      },
    };
  });
  return { functions, done };
}
