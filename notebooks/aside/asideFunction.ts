export type Says = (words: string, share?: number) => void;

/** A function of the vocabulary that takes so long that it is worked off the page's thread, in three steps. */
export interface AsideSpec<Work, Found> {
  /** Its name in the vocabulary. */
  readonly name: string;
  /** Said while other work is done first. */
  readonly waits: string;
  /** Its arguments as plain data, which can be sent to a worker. Throws where they will not do. */
  readonly work: (given: readonly unknown[]) => Work;
  /** The work itself; its result is plain data, too. */
  readonly does: (work: Work, says: Says) => Found;
  /** The result under the names that formulas call its parts by. */
  readonly parts: (found: Found, work: Work) => unknown;
  /** Whether two works are one and the same: cases that share a log are fitted once. Never, if left out. */
  readonly same?: (a: Work, b: Work) => boolean;
}

/** The same for a list of unlike functions. */
export type AsideFunction = AsideSpec<unknown, unknown>;

/**
 * A function as a list of unlike ones takes it: what comes back from a worker is of the type that was sent there.
 *
 * @example asideFunction({ name: "twice", waits: "waiting", work: ([x]) => Number(x), does: (x) => 2 * x, parts: (x) => x })
 */
export function asideFunction<Work, Found>(spec: AsideSpec<Work, Found>): AsideFunction {
  const { name, waits, work, does, parts, same } = spec;
  return {
    name,
    waits,
    work,
    does: (data, says) => does(data as Work, says),
    parts: (found, data) => parts(found as Found, data as Work),
    ...(same && { same: (a: unknown, b: unknown) => same(a as Work, b as Work) }),
  };
}

/** The function as it is worked on this thread. */
export const workedHere =
  ({ work, does, parts }: AsideFunction) =>
  (...given: readonly unknown[]): unknown => {
    const data = work(given);
    return parts(
      does(data, () => {}),
      data,
    );
  };
