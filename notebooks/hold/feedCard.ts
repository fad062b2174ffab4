import { html, nothing, type TemplateResult } from "lit-html";
import { correctionRule, correctionSize, minuteRule, ruleSize } from "./cardDrawn.ts";
import { cardFacts } from "./cardFacts.ts";
import type { System } from "./corrections.ts";
import type { ShownPlan } from "./shownPlan.ts";

/** Which tank, bath and day a card is for. */
export interface CardFor {
  readonly setup: string;
  readonly bath: string;
  readonly invented: boolean;
  /** What it was worked from, in words. */
  readonly from: string;
}

/** Prints one part of the page alone: everything else is left out until the printing is over. */
export function printOnly(card: HTMLElement | null): void {
  if (!card) return;
  const { documentElement: root } = document;
  const done = () => {
    root.classList.remove("prints-card");
    window.removeEventListener("afterprint", done);
  };
  root.classList.add("prints-card");
  window.addEventListener("afterprint", done);
  window.print();
}

/** The feed card: one page for the wall by the tank, and the word that prints it alone. */
export function feedCard(shown: ShownPlan, system: System, { setup, bath, invented, from }: CardFor): TemplateResult {
  const facts = cardFacts(shown, system);
  const { readEvery } = shown.plan.table;
  return html`<p><button class="word" type="button" @click=${() => printOnly(document.querySelector("#feed-card-page"))}>print the feed card</button>
      <span class="faint">one page for the wall by the tank, to be read at 6 ft</span></p>
    <article id="feed-card-page" class="feed-card" aria-label="the feed card">
      <p class="card-for"><span>${setup}${bath === "" ? nothing : html`, ${bath}`}</span>${invented ? html`<span class="card-boxed">Invented data</span>` : nothing}</p>
      <p class="card-danger"><b>Danger.</b> Never more than <b>${facts.most}</b> at once, as a thin steady stream at the far end, shield down. More can stop the boil, then flash to steam and throw caustic.</p>
      <p class="card-order">${facts.order.map((piece, i) => (i % 2 === 1 ? html`<b>${piece}</b>` : piece))}</p>
      <p class="card-start"><b>${facts.start}</b></p>
      <p class="card-hold">${facts.hold} ${facts.promise}</p>
      <div class="card-rules">
        <svg class="card-minutes" viewBox="0 0 ${ruleSize.width} ${ruleSize.height}" role="img" aria-label=${`Minutes from parts in: ${facts.minutes.map(({ clock, says }) => `${clock} ${says}`).join(", ")}.`}>${minuteRule(facts)}</svg>
        <div class="card-corrections">
          <p class="card-title">If it reads, do this</p>
          <p class="card-note">${facts.unit}, every ${facts.readEvery}${facts.ignoreUntil === undefined ? nothing : html`, not before ${facts.ignoreUntil}`}; ${facts.steady ? "the drip goes on" : "pours stand"} unless it says so</p>
          <svg viewBox="0 0 ${correctionSize.width} ${correctionSize.height}" role="img" aria-label="The correction rule; the same rows stand in the correction table.">${correctionRule(facts, readEvery, system)}</svg>
        </div>
      </div>
      <p class="card-caution"><b>Goggles under a face shield, gauntlets, apron. Never salt into a hot bath.</b> Eyewash within ten seconds. Dry the parts. The salt’s safety data sheet and your local rules come first.</p>
      <p class="card-write">Read <u></u> at parts in ${facts.toWrite.map((minute) => html`<span><u></u> at ${minute}</span> `)}<span><u></u> at parts out</span></p>
      <p class="card-write"><span>Tank <u class="wide"></u></span> <span>Day <u class="wide"></u></span> <span>Barometer <u></u></span></p>
      <p class="card-foot">${from} Your own bath may hold more or less often than said. Not for another tank, bath, fire or day’s air without working it again.</p>
    </article>`;
}
