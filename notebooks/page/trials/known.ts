import { isValue, type Line, type Lines, type Trial, type TrialOptions } from "../../../lib/lines/index.ts";

/** What was found of one amount. */
interface Found {
  /** The line as it was: another formula or unit is another question. */
  readonly line: Line;
  /** Known once the trial is over: the trial where the ± is not good enough, nothing where it will do. */
  over?: { readonly trial: Trial | undefined };
  /** A trial at work that nobody can hold up. */
  atWork?: Promise<Trial | undefined>;
}

/** By amount, and for each by line and case: what is worked anew is another object, so that an edit forgets by itself. */
const found = new WeakMap<object, Map<string, Found>>();

function foundOf(open: Lines, line: string, inCase: string): Found | undefined {
  const result = open.result(line, inCase);
  if (result.state !== "settled" || !isValue(result.value)) return undefined;
  const ofValue = found.get(result.value) ?? new Map<string, Found>();
  found.set(result.value, ofValue);
  const key = `${line}\n${inCase}`;
  const now = open.line(line);
  const known = ofValue.get(key);
  if (known?.line === now) return known;
  const next: Found = { line: now };
  ofValue.set(key, next);
  return next;
}

/** What is known of an amount by now; undefined where it was not tried yet. */
export function knownTrial(
  open: Lines,
  line: string,
  inCase: string,
): { readonly trial: Trial | undefined } | undefined {
  return foundOf(open, line, inCase)?.over;
}

/**
 * The trial of a line in a case, where its ± is not good enough; nothing where it is. Each amount is tried once, and only
 * where a cheap look says that it may be worth it.
 * @param rest What holds the work up between slices; it rejects to end it, and then so does this. Without it the work is
 * shared by all who ask.
 */
export function triedTrial(
  open: Lines,
  line: string,
  inCase: string,
  rest?: TrialOptions["rest"],
): Promise<Trial | undefined> {
  const mine = foundOf(open, line, inCase);
  if (!mine) return Promise.resolve(undefined);
  if (mine.atWork) return mine.atWork;
  const work = mine.over ? Promise.resolve(mine.over.trial) : tried(open, line, inCase, mine, rest);
  if (!rest) mine.atWork = work;
  return work;
}

async function tried(
  open: Lines,
  line: string,
  inCase: string,
  mine: Found,
  rest: TrialOptions["rest"],
): Promise<Trial | undefined> {
  let changed = false;
  let ended: { readonly why: unknown } | undefined;
  const forget = open.observe(() => {
    changed = true;
  });
  const held =
    rest &&
    (() =>
      rest().catch((why: unknown) => {
        ended = { why };
        throw why;
      }));
  const options = held ? { rest: held } : {};
  let trial: Trial | undefined;
  try {
    if (!(await open.isStraight(line, inCase, options))) {
      const came = await open.trial(line, inCase, options);
      if (!("stopped" in came) && !came.goodEnough) trial = came;
      // Stopped by an edit: nothing is known of it.
      if ("stopped" in came && changed) {
        delete mine.atWork;
        return undefined;
      }
    }
  } catch {
    if (ended) throw ended.why;
    // The line went while it was tried.
  } finally {
    forget();
  }
  mine.over ??= { trial };
  return mine.over.trial;
}
