import { configureGlobal } from "fast-check";

/** The same cases in every run, so that a red test stays red until it is mended. `SEED=7 npm test` tries others. */
configureGlobal({ seed: Number(process.env.SEED ?? 1) });
