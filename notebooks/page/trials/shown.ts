import { html, nothing, type TemplateResult } from "lit-html";
import type { Trial } from "../../../lib/lines/index.ts";
import { interval95 } from "../../../lib/measure/index.ts";
import type { Value } from "../../../lib/measure/types.ts";

/** The amount to be shown: the trial's where there is one. What a log told of it stays with it. */
export function shownByTrial<T extends Value>(value: T, trial: Trial | undefined): T {
  return trial ? { ...value, ...trial.value } : value;
}

/** The trial, where its safe end is the safer one: a limit that protects somebody is never let out by a trial. */
export function saferTrial(value: Value, trial: Trial | undefined, safe: "at most" | "at least"): Trial | undefined {
  if (!trial) return undefined;
  const [is, tried] = [interval95(value), interval95(trial.value)];
  return (safe === "at most" ? tried[0] < is[0] : tried[1] > is[1]) ? trial : undefined;
}

/** Beside a spread that was found by trial, in words, with what the trial says. */
export function byTrial(trial: Trial | undefined): TemplateResult | typeof nothing {
  return trial ? html`<span class="by-trial" title=${trial.says}>by trial</span>` : nothing;
}

/** What the mark means, once for all lines that wear it. */
export function byTrialMeans(some: boolean): TemplateResult | typeof nothing {
  return some
    ? html`<p class="small faint means-by-trial"><span class="by-trial">by trial</span>: the line bends within its doubt and a ± by its slope will not do, so it was worked anew for many draws of all that it rests on. The opened line says more.</p>`
    : nothing;
}
