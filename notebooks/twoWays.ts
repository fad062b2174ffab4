import type { Answer, WaterBalance } from "../lib/bath/types.ts";
import type { FittedRun } from "../lib/fit/index.ts";

export interface Apart {
  /** kg/s: fitted bath less water balance. */
  readonly difference: number;
  /** kg/s: root of the sum of squares of the two 95 % half-widths. */
  readonly together: number;
  /** Whether they differ by more than that. */
  readonly disagree: boolean;
}

const half = ({ interval95: [low, high] }: Answer): number => (high - low) / 2;

/** How far two boil-offs of one log lie apart, beside their half-widths together. */
export function waysApart(fitted: Answer, balance: Answer): Apart {
  const difference = fitted.value - balance.value;
  const together = Math.hypot(half(fitted), half(balance));
  return { difference, together, disagree: Math.abs(difference) > together };
}

const unexplained: Partial<Record<FittedRun["residuals"]["pattern"], string>> = {
  "a drift": "what its readings miss drifts from one end to the other",
  "a bend": "what its readings miss bends",
  "steps at the pours": "what its readings miss steps at the pours",
  "neighbours agree": "neighbouring readings miss it the same way",
};

/** Which of the two ways of working to trust, and why; undefined where they agree. */
export function whichToTrust(
  fit: Pick<FittedRun, "boilOff" | "residuals">,
  balance: Pick<WaterBalance, "boilOff">,
): string | undefined {
  if (!waysApart(fit.boilOff, balance.boilOff).disagree) return undefined;
  const left = unexplained[fit.residuals.pattern];
  return left
    ? `Trust the water balance: the fitted bath leaves something unexplained, ${left}.`
    : "Trust the fitted bath: it also counts the heat-up and what the setup tells, and its readings leave nothing unexplained.";
}
