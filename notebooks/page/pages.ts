import type { Notebook } from "../../lib/lines/index.ts";
import type { Run } from "../../lib/log/types.ts";
import type { KeptRun, Setup } from "../../lib/record/index.ts";
import type { FrontPage } from "../shop.ts";
import type { OpenedRun } from "./openedRun.ts";
import type { System } from "./showValue.ts";
import type { Suspect } from "./suspectList.ts";
import type { ToolNotebook } from "./tool/types.ts";

/** What the notebooks hand to the page: data, and the drawings that know which lines they draw. */
export interface Pages {
  readonly book: Notebook;
  readonly front: FrontPage;
  /** Notebooks that come with the tool beside One run, in the order of their places. */
  readonly tools: readonly ToolNotebook[];
  /** Name of the place where the maker's own notebooks are. */
  readonly ownQuestions: string;
  readonly strip: (notebook: OpenedRun, run: KeptRun, system: System) => Element | undefined;
  readonly tank: (setup: Setup, system: System) => Element | undefined;
  /** Readings that the notebook's working sets apart, by id, with the reason. */
  readonly apart: (notebook: OpenedRun) => ReadonlyMap<string, string>;
  /** What the log has probably left out or got wrong. */
  readonly suspects: (notebook: OpenedRun, run: Run, system: System) => readonly Suspect[];
  readonly folds: (
    notebook: OpenedRun,
    run: KeptRun,
    system: System,
  ) => readonly { readonly name: string; readonly finding: string; readonly body: unknown }[];
}
