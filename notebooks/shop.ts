import type { Clause } from "../lib/lines/index.ts";

/** The front page: what it says of the run that was fired last, and which lines stand beside each run's strip. */
export interface FrontPage {
  readonly name: string;
  readonly asks: string;
  readonly answer: readonly Clause[];
  readonly columns: readonly string[];
}

export default {
  name: "Shop",
  asks: "What do you want to know?",
  answer: [
    {
      says: "Last time out it stood in its band, {lower limit, bare} to {upper limit}, for {minutes in the band, bare} of the {hold time}, and boiled off {boil-off} a minute.",
      otherwise: {
        says: "Last time out it stood in its band, {lower limit, bare} to {upper limit}, for {minutes in the band, bare} of the {hold time}, and by its water balance alone boiled off {boil-off by water balance} a minute.",
        otherwise: "The run you fired last has no answer yet.",
      },
    },
  ],
  columns: ["minutes in the band", "boil-off"],
} satisfies FrontPage;
