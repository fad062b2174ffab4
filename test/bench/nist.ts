import { leastSquares } from "../../lib/fit/index.ts";
import { nistResiduals, nistSets } from "../published/nistModels.ts";

const problems = nistSets.flatMap((set) =>
  [set.start1, set.start2].map((start) => ({ residuals: nistResiduals(set), start, set })),
);

/** The 54 nonlinear regressions of NIST's Statistical Reference Datasets, one after the other. */
export function fitNist(): void {
  for (const { residuals, start, set } of problems) {
    const { converged, reason } = leastSquares({ residuals, start });
    if (!converged) throw new Error(`invalid fit: ${set.name}; ${reason}`);
  }
}
