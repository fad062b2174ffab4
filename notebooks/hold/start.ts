import type { Notebook, OwnGiven } from "../../lib/lines/index.ts";
import { keyed, type ShopRecord } from "../../lib/record/index.ts";
import { startFrom } from "../compare/start.ts";
import type { StartCases } from "../page/tool/types.ts";

/** What the run said of its day goes to the lines of that run; what stays is the next hold's. */
const ofThatRun: Readonly<Record<string, string>> = { "air pressure": "barometer then" };
/** What holds for both: that run's, and the next hold's until the maker says otherwise. */
const ofBoth: Readonly<Record<string, string>> = {
  target: "target then",
  band: "band then",
  "water at the start": "water when lit",
};

/** The case to start with: the last fitted run's setup and bath, its own day told apart from the day of the hold. */
export function startHold(book: Notebook, record: ShopRecord): StartCases {
  const { cases = {}, ...rest } = startFrom(book, record, []);
  const next = Object.entries(cases).map(([name, own]) => {
    const mine: [string, OwnGiven][] = [];
    for (const [line, one] of Object.entries(own)) {
      const then = ofThatRun[line];
      const both = ofBoth[line];
      mine.push([then ?? line, one]);
      if (both !== undefined) mine.push([both, one]);
    }
    const known = new Set(mine.map(([line]) => line));
    const barometer = mine.find(([line]) => line === "barometer then");
    // Without an altitude the day of that run is the best guess at the pressure.
    if (barometer && !known.has("altitude")) mine.push(["air pressure", barometer[1]]);
    return [name, keyed(mine)] as const;
  });
  return { ...rest, cases: keyed(next) };
}
