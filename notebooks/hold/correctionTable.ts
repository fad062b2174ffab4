import { html, nothing, type TemplateResult } from "lit-html";
import { holdsWords } from "../../lib/figure/index.ts";
import { caution } from "../page/caution.ts";
import { corrections, mostAtOnce, type System } from "./corrections.ts";
import type { ShownPlan } from "./shownPlan.ts";
import { doesWords, rangeWords, timeWords } from "./words.ts";

/** The correction table of a plan: readings, what to do, whether the feed stands, when to read again. */
export function correctionTableShown(shown: ShownPlan, system: System): TemplateResult {
  const { plan, work } = shown;
  const { table } = plan;
  const steady = work.givens.pours === "steady";
  const unit = system === "US" ? "°F" : "°C";
  const rows = corrections(shown, system);
  const limit = mostAtOnce(shown, system);
  const share = (one: number) => holdsWords(100 * one);
  return html`${caution(`Danger. ${table.slugLimit.caution}`)}
    <div class="scrolls" tabindex="0" role="region" aria-label="correction table">
    <table class="ledger-table corrections">
      <caption>What to do at a reading, every ${timeWords(table.readEvery)}${table.ignoreUntil > 0 ? html`, the first not before ${timeWords(Math.ceil(table.ignoreUntil / 30) * 30)} from parts in` : nothing}. Readings are this thermometer's own.</caption>
      <thead><tr><th scope="col">reads, ${unit}</th><th scope="col">do this</th><th scope="col">the feed by the clock</th><th scope="col">read again after</th></tr></thead>
      <tbody>${rows.map((row) => {
        const { does, feed } = doesWords(row.does, { steady, system, limit });
        return html`<tr class=${row.does.kind === "stop" ? "stop" : row.does.kind === "nothing" ? "inside" : ""}><th scope="row">${rangeWords(row)}</th><td>${does}</td><td>${feed}</td><td>${timeWords(row.again)}</td></tr>`;
      })}</tbody>
    </table></div>
    <p class="small">Worked on ${plan.simulated.toLocaleString("en-US")} simulated holds: with this table ${share(plan.inBandCorrected)} in 100 stay in the band, nobody correcting ${share(plan.inBand)}${table.inBand.full === null ? nothing : html`, pouring the full correction each time ${share(table.inBand.full)}`}. Each row makes some ${Math.round(100 * table.gain)} % of the full correction, since a part of every reading is the thermometer's own wandering. Act once on every reading, then wait. It never asks for salt: that goes into a cold bath only.</p>`;
}
