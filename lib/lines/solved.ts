import type { Value } from "../measure/types.ts";

/** What `solve` found: the amount with what its width comes from, or why there is none, or the several there are. */
export type Solved =
  | {
      readonly value: number;
      readonly standardUncertainty: number;
      readonly text: string;
      readonly widthFrom: readonly { readonly source: string; readonly share: number }[];
      /** The amount itself, to be taken as the given. */
      readonly amount: Value;
    }
  | { readonly stopped: string; readonly found?: readonly Value[] };
