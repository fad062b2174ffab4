import type { Finding } from "./finding.ts";
import type { TimeMark } from "./timeMark.ts";

/** A row as read, before the whole log has decided about times and units. */
export interface Draft {
  readonly line: number;
  readonly mark?: TimeMark;
  /** The time as written. */
  readonly clock?: string;
  readonly findings: readonly Finding[];
  /** A typed line as a whole, to keep where it has no time. */
  readonly words?: string;
  readonly struck?: string;
  /** A title, comment or heading: needs no time. */
  readonly aside?: true;
  /** A time that could not be read, as written. */
  readonly badTime?: string;
}
