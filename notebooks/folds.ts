import { html, type TemplateResult } from "lit-html";
import { formatQuantity, widthFrom } from "../lib/measure/index.ts";
import type { Value } from "../lib/measure/types.ts";
import { balanceOf, readsHighBy } from "./figures/balanceOf.ts";
import type { OpenedRun } from "./page/openedRun.ts";
import type { System } from "./page/showValue.ts";
import { vocabulary } from "./vocabulary.ts";

export interface Fold {
  readonly name: string;
  readonly finding: string;
  readonly body: TemplateResult;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function widthFold(notebook: OpenedRun): Fold {
  const result = notebook.result("boil-off");
  const parts = result.state === "settled" ? widthFrom(result.value as Value) : [];
  const first = parts[0];
  return {
    name: "What the give or take comes from",
    finding: first ? `most of the boil-off's: ${first.source}, ${percent(first.share)}` : "no number yet",
    body: html`<table class="troubles"><thead><tr><th scope="col">source</th><th scope="col">share of the boil-off's variance</th></tr></thead>
      <tbody>${parts.filter(({ share }) => share >= 0.005).map(({ source, share }) => html`<tr><td>${source}</td><td>${percent(share)}</td></tr>`)}</tbody></table>
      <p>± is the 95 % half-width: about two standard uncertainties, added up along independent sources (JCGM 100:2008).</p>`,
  };
}

function remarksFold(notebook: OpenedRun): Fold {
  const balance = balanceOf({ notebook });
  const remarks = balance?.remarks ?? [];
  return {
    name: "What the log told, and what it couldn't",
    finding: [remarks[0] ?? "nothing stood out", remarks.length > 1 ? ` And ${remarks.length - 1} more.` : ""].join(""),
    body: html`<ul>${remarks.map((remark) => html`<li>${remark}</li>`)}</ul>
      ${balance ? html`<p>The hold was taken from ${balance.hold.from}.</p>` : ""}`,
  };
}

function howFold(notebook: OpenedRun, system: System): Fold {
  const high = readsHighBy({ notebook });
  const shift = formatQuantity(Math.abs(high), system === "US" ? "°F" : "°C", {
    system,
    dimension: { temperature: 1 },
    decimals: 1,
  });
  const formulas = [...notebook.lines].filter(([, line]) => line.kind !== "given");
  return {
    name: "How it was worked out",
    finding: "a water balance over the boiling curve of the brine",
    body: html`<p>Salt does not boil off. So each reading at the boil says how much water is in the tank: the salt over the ratio that boils at that temperature under this air pressure. Water at the start, plus what was poured, less what is there now, is the water gone; against time it is nearly a straight line, and its slope is the boil-off. The line allows for the cup, late and unwritten pours, gusts of the fire, a slow thermometer and readings that do not belong.</p>
      ${high === 0 ? "" : html`<p>Readings count less the ${shift} that the thermometer reads ${high > 0 ? "high" : "low"}.</p>`}
      <p>Below the first boil the readings only say that the bath was still warming.</p>
      <table class="troubles"><thead><tr><th scope="col">line</th><th scope="col">formula</th></tr></thead>
      <tbody>${formulas.map(([name, line]) => html`<tr><td>${name}</td><td>${line.kind === "given" ? "" : line.formula}</td></tr>`)}</tbody></table>`,
  };
}

const sources: readonly (readonly [what: string, source: string])[] = [
  ["Boiling line of water", "IAPWS R7-97, industrial formulation 1997, region 4"],
  ["Air pressure against altitude", "ICAO standard atmosphere (ISO 2533:1975)"],
  [
    "Sodium hydroxide: vapour pressure, density, enthalpy",
    "Olsson, Jernqvist and Aly, Int. J. Thermophys. 18 (1997) 779",
  ],
  ["Sodium nitrate: water activity", "Zaveri et al., J. Geophys. Res. 113 (2008) D13204"],
  [
    "Nitrite and potassium nitrate: ratios to sodium nitrate",
    "saturated solutions' boiling points and Pitzer parameters; coarse, good for a minor part only",
  ],
  ["Mixing", "Zdanovskii-Stokes-Robinson rule; its doubt is carried in the curve's offset and slope"],
  ["Thermometer limits", "ASTM E230, IEC 60584, IEC 60751"],
  ["Uncertainty", "JCGM 100:2008, Guide to the expression of uncertainty in measurement"],
];

const sourcesFold: Fold = {
  name: "Sources",
  finding: `${sources.length} published tables and formulas`,
  body: html`<table class="troubles"><thead><tr><th scope="col">for</th><th scope="col">source</th></tr></thead>
    <tbody>${sources.map(([what, source]) => html`<tr><td>${what}</td><td>${source}</td></tr>`)}</tbody></table>
    <p>The curve of a hydroxide and nitrate bath near 292 °F is taken as good to about +2/−5 °F in itself; a maker's own readings narrow what matters here, the slope, but not the offset.</p>
    <ul>${vocabulary.functions.map(({ name, says, source }) => html`<li><b>${name}</b>: ${says}${source ? ` (${source})` : ""}</li>`)}</ul>`,
};

/** What is folded away below the log: each with its finding in one line. */
export function folds(notebook: OpenedRun, system: System): readonly Fold[] {
  return [remarksFold(notebook), widthFold(notebook), howFold(notebook, system), sourcesFold];
}
