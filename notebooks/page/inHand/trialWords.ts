import type { Lines } from "../../../lib/lines/index.ts";

/** What looking at a line by trial says of it in a case, where an open notebook can look at lines so. */
export function trialWords(open: Lines, line: string, inCase: string): string | undefined {
  if (!("trial" in open) || typeof open.trial !== "function") return undefined;
  const said: unknown = open.trial(line, inCase);
  if (typeof said === "string") return said === "" ? undefined : said;
  if (typeof said !== "object" || said === null || !("says" in said)) return undefined;
  return typeof said.says === "string" ? said.says : undefined;
}
