import { html, nothing, type TemplateResult } from "lit-html";
import type { Charge } from "../../lib/bath/plan/index.ts";
import { formatQuantity, formatWithSpread, measuredValue } from "../../lib/measure/index.ts";
import type { Dimension } from "../../lib/measure/types.ts";
import { caution } from "../page/caution.ts";
import type { BathFacts, Elsewhere } from "./bathFacts.ts";
import type { System } from "./corrections.ts";

const mass: Dimension = { mass: 1 };
const reading: Dimension = { temperature: 1, point: true };

/** Numbers of the bath in a maker's units. */
function hand(system: System) {
  const us = system === "US";
  const degrees = us ? "°F" : "°C";
  return {
    salt: (kg: number) => formatQuantity(kg, us ? "lb" : "kg", { system, decimals: us ? 1 : 2 }),
    water: (kg: number) => formatQuantity(kg, us ? "gal" : "l", { system, dimension: mass, decimals: 2 }),
    small: (kg: number, u: number) =>
      formatWithSpread(measuredValue(kg, u, mass, "curve"), us ? "fl oz" : "ml", { system }).text,
    boil: (kelvin: number, u: number) =>
      formatWithSpread(measuredValue(kelvin, u, reading, "curve"), degrees, { system }).text,
    plain: (kelvin: number) => formatQuantity(kelvin, degrees, { system, dimension: reading }),
    step: (kelvin: number) => `${(kelvin * (us ? 1.8 : 1)).toFixed(0).replace("-", "−")} ${degrees}`,
    depth: (metres: number) => formatQuantity(metres, us ? "in" : "cm", { system, decimals: 1 }),
    ratio: (one: number) => formatQuantity(one, us ? "lb/gal" : "kg/l", { system, dimension: {}, digits: 3 }),
    height: (metres: number) =>
      us
        ? formatQuantity(Math.round(metres / 0.3048 / 100) * 30.48, "ft", { system, digits: 2 })
        : `${Math.round(metres)} m`,
    pressure: (pascal: number) =>
      us ? formatQuantity(pascal, "inHg", { system, decimals: 1 }) : `${Math.round(pascal / 100)} hPa`,
  };
}

/** The steps in which a charge goes into a cold tank. */
function steps({ steps: list }: Charge, system: System): TemplateResult {
  const { salt, water, step } = hand(system);
  return html`<div class="scrolls" tabindex="0" role="region" aria-label="steps of the charge"><table class="ledger-table">
    <thead><tr><th scope="col">into the cold tank, in this order</th><th scope="col">in all</th><th scope="col">lots</th><th scope="col">each lot warms it by at most</th></tr></thead>
    <tbody>${list.map(({ put, mass: all, lots, lot, warms, says }) => {
      const amount = put === "water" ? water : salt;
      return html`<tr><td>${says}</td><td class="number-cell">${amount(all)}</td><td class="number-cell">${lots === 1 ? "at once" : html`${lots} of ${amount(lot)}`}</td><td class="number-cell">${put === "water" ? "–" : warms < 0 ? "it cools" : step(warms)}</td></tr>`;
    })}</tbody></table></div>`;
}

const placeWords = ({ at }: Elsewhere, { height, pressure }: ReturnType<typeof hand>): string => {
  if ("altitude" in at) return at.altitude === 0 ? "at sea level" : `at ${height(at.altitude)}`;
  return `here, barometer ${pressure(Math.abs(at.barometer))} ${at.barometer > 0 ? "higher" : "lower"}`;
};

/** A new bath of the same salts. */
export function newBath(facts: BathFacts, system: System): TemplateResult {
  const { charge, depth } = facts;
  const { salt, water, boil, depth: deep, ratio, small } = hand(system);
  const { expected } = charge;
  return html`<p>For the target on this tank’s air, ${deep(depth)} deep: <b>${salt(charge.saltTotal)}</b> of salt in <b>${water(charge.water)}</b> of water, ${ratio(charge.ratio)}. It will first boil at ${boil(expected.boilingPoint, expected.standardUncertainty)}, and the water that brings it to the target is known no better than ${small(0, expected.waterUncertainty).replace(/^0\s*/, "")}.</p>
    ${caution(`Danger. ${charge.cautions.join(" ")}`)}
    ${steps(charge, system)}
    <p class="small">${expected.says} How much nitrate or nitrite alone moves the boil is known to a factor of six only: no advice is given on adding it by itself.</p>`;
}

/** The bath in the tank: where it boils, and what brings it to its target. */
export function thisBath(facts: BathFacts, system: System): TemplateResult {
  const { boils, boilsUncertainty, target, weaker, stronger, leaves, after, fitted } = facts;
  const { salt, water, boil, small } = hand(system);
  const unsure = Math.abs(boils - target) < 1.96 * boilsUncertainty;
  return html`<p>With the water given it boils at ${boil(boils, boilsUncertainty)}, by ${fitted ? "its own fitted log" : "the published curve"}${unsure ? ": whether that is above or below the target, can’t tell. Boil it and read." : "."}</p>
    ${
      weaker
        ? html`<p>To weaken it to its target: ${small(weaker.water, weaker.expected.waterUncertainty)}, cold before lighting, or at the boil as a thin steady feed.</p>${caution(`Danger. ${weaker.cautions.join(" ")}`)}`
        : nothing
    }
    ${
      leaves === undefined
        ? nothing
        : html`<p>It needs no salt: about ${water(leaves)} boils off by itself until it stands at its target.</p>`
    }
    ${
      stronger && leaves !== undefined
        ? html`<p>Only where the level is too low for that: ${salt(stronger.saltTotal)} of salt, as a charge to the cold bath, fire off, crust broken.</p>
          <details class="fold"><summary><h4>Strengthening the cold bath</h4><span>${salt(stronger.saltTotal)} of salt in small lots</span><span class="word shut">unfold</span><span class="word open">fold</span></summary><div class="prose">
          ${caution(`Danger. ${stronger.cautions.join(" ")}`)}${steps(stronger, system)}</div></details>`
        : nothing
    }
    ${
      after
        ? html`<p>After drag-out and sludge ${salt(Object.values(after.saltLost).reduce((sum: number, one: number | undefined) => sum + (one ?? 0), 0))} of salt and ${water(after.waterLost)} of water are gone. It still boils at ${boil(after.boilingPoint, boilsUncertainty)}; topped up to its level with water alone it would boil at ${boil(after.withWaterAlone, boilsUncertainty)}. To bring back level and strength: ${salt(Object.values(after.restore.salt).reduce((sum: number, one: number | undefined) => sum + (one ?? 0), 0))} of the same salt and ${water(after.restore.water)} of water, into the cold bath.</p>`
        : html`<p class="small">Write what was dragged out and taken out as sludge among the lines, to see what it takes to bring back level and strength.</p>`
    }`;
}

/** What the same bath, boiling at its target here, reads elsewhere. */
export function elsewhere({ elsewhere: list, target }: BathFacts, system: System): TemplateResult {
  const words = hand(system);
  const litre = (one: number) => `${one > 0 ? "lose" : "take"} ${(100 * Math.abs(one)).toFixed(1)} % of its water`;
  return html`<div class="scrolls" tabindex="0" role="region" aria-label="the same bath elsewhere"><table class="ledger-table">
    <caption>A bath that boils at ${words.plain(target)} on this air, nothing put in or taken out.</caption>
    <thead><tr><th scope="col">where</th><th scope="col">it boils at</th><th scope="col">to boil at the target there it must</th><th scope="col">salt to water then</th></tr></thead>
    <tbody>${list.map((one) => {
      const { boilingPoint, standardUncertainty, leaves, ratioWanted } = one.boils;
      return html`<tr><th scope="row">${placeWords(one, words)}</th><td class="number-cell">${words.boil(boilingPoint, standardUncertainty)}</td><td>${Math.abs(leaves) < 5e-4 ? "change nothing" : litre(leaves)}</td><td class="number-cell">${words.ratio(ratioWanted)}</td></tr>`;
    })}</tbody></table></div>
    <p class="small">Water goes in before lighting, or at the boil as a thin steady feed; water to be lost boils off by itself. A bath brought to the same reading higher up is stronger; whether the finish minds, no source says.</p>`;
}
