import { thisMoment } from "./thisMoment.ts";
import type { Moment, ShopRecord } from "./types.ts";

/**
 * An empty shop record, in US units.
 *
 * @param moment - when it is made and where its id comes from; the present by default.
 * @returns the record.
 * @example
 * newRecord().runs.length; // 0
 */
export function newRecord(moment: Moment = thisMoment()): ShopRecord {
  return {
    schema: 2,
    kind: "shop record",
    id: moment.newId(),
    saved: moment.now,
    settings: { units: "US", changed: moment.now },
    setups: [],
    baths: [],
    runs: [],
    notebooks: [],
  };
}
