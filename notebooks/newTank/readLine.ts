import type { Lines, Result } from "../../lib/lines/index.ts";
import { isValue } from "../page/shownIn.ts";

/** What a line came to in a case, or what it came to before where it is being worked again. */
export function thingIn(result: Result): unknown {
  if (result.state === "settled") return result.value;
  return result.state === "working" ? result.before : undefined;
}

/** A line's amount in SI. */
export function siIn(open: Lines, line: string, inCase: string): number | undefined {
  const thing = thingIn(open.result(line, inCase));
  return isValue(thing) ? thing.value : undefined;
}

/** A part of a line that is a thing of parts. */
export function partIn(open: Lines, line: string, part: string, inCase: string): unknown {
  const thing = thingIn(open.result(line, inCase));
  return thing instanceof Map ? thing.get(part) : undefined;
}
