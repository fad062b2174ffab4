import { html, nothing, type TemplateResult } from "lit-html";
import { routeOf } from "./route.ts";
import type { System } from "./showValue.ts";

export interface ShellProps {
  readonly pages: readonly string[];
  readonly open: string;
  readonly system: System;
  readonly kept: TemplateResult | string;
  readonly setUnits: (system: System) => void;
  readonly content: unknown;
  /** The two things done at the tank, under the thumb; only where a log can be written to. */
  readonly atTheTank: unknown;
}

const notices = html`<footer class="foot">
  <p class="caution danger"><strong>Danger.</strong> A blackening bath is strong caustic far above the boil of water. Face shield over goggles, gauntlets, apron, long sleeves, closed shoes; eyewash within ten seconds. Water goes in as a thin steady feed, never a dump; salt goes only into a cold bath. Never ammonium salts, never acid near the bath or its sludge, never aluminium, zinc or tin in it. Propane burns outdoors or well ventilated.</p>
  <p>Local codes, the salt's own safety data sheet and licensed practice come before anything this page says. Numbers are worked from what was typed in and published curves; ± is the 95 % spread.</p>
</footer>`;

/** The frame of every page: notebooks as words along the top edge (the bottom one on a phone), units, when it was kept. */
export function shell({ pages, open, system, kept, setUnits, content, atTheTank }: ShellProps): TemplateResult {
  return html`<a class="skip" href="#content" @click=${(event: Event) => {
    event.preventDefault();
    document.querySelector<HTMLElement>("main")?.focus();
  }}>Skip to the answer</a>
    <header class="running">
      <nav aria-label="Notebooks"><ul>
        ${pages.map((name) => html`<li><a href=${routeOf(name)} aria-current=${name === open ? "page" : nothing}>${name}</a></li>`)}
      </ul></nav>
      <div class="aside">
        <fieldset class="units"><legend class="hidden-from-sight">Units</legend>
          <label><input type="radio" name="units" value="US" .checked=${system === "US"} @change=${() => setUnits("US")} /><span>US</span></label>
          <span class="faint" aria-hidden="true">/</span>
          <label><input type="radio" name="units" value="metric" .checked=${system === "metric"} @change=${() => setUnits("metric")} /><span>metric</span></label>
        </fieldset>
        <button class="word" type="button" @click=${() => window.print()}>print</button>
        <span class="kept-at">${kept}</span>
      </div>
    </header>
    <main id="content" tabindex="-1">${content}</main>
    ${notices}
    ${atTheTank}`;
}
