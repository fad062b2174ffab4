import { isValue, type Lines } from "../../../lib/lines/index.ts";

/** What was said of an amount, by the name of its line and its case: an amount that is worked anew is another object. */
const said = new WeakMap<object, Map<string, Promise<string | undefined>>>();

/**
 * What a trial by drawing says of a line in a case, where its ± is not good enough; nothing where it is. Each amount is
 * tried once, and only where a cheap look says that it may be worth it.
 */
export function trialWords(open: Lines, line: string, inCase: string): Promise<string | undefined> {
  const result = open.result(line, inCase);
  if (result.state !== "settled" || !isValue(result.value)) return Promise.resolve(undefined);
  const ofValue = said.get(result.value) ?? new Map<string, Promise<string | undefined>>();
  said.set(result.value, ofValue);
  const key = `${line}\n${inCase}`;
  const words = ofValue.get(key) ?? tried(open, line, inCase);
  ofValue.set(key, words);
  return words;
}

async function tried(open: Lines, line: string, inCase: string): Promise<string | undefined> {
  try {
    if (await open.isStraight(line, inCase)) return undefined;
    const trial = await open.trial(line, inCase);
    return "stopped" in trial || trial.goodEnough ? undefined : trial.says;
  } catch {
    // The line went while it was tried.
    return undefined;
  }
}
