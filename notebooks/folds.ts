import { html, type TemplateResult } from "lit-html";
import type { Answer } from "../lib/bath/types.ts";
import type { Run } from "../lib/log/types.ts";
import { formatDuration, formatQuantity, formatWithSpread, widthFrom } from "../lib/measure/index.ts";
import { balanceOf, fitOf, readsHighBy } from "./figures/balanceOf.ts";
import oneRun from "./oneRun.ts";
import type { OpenedRun } from "./page/openedRun.ts";
import { plainSources } from "./page/plainSources.ts";
import { evened, type System, shownIn } from "./page/showValue.ts";
import { waysApart, whichToTrust } from "./twoWays.ts";
import { vocabulary } from "./vocabulary.ts";

export interface Fold {
  readonly name: string;
  readonly finding: string;
  readonly body: TemplateResult;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function widthFold(notebook: OpenedRun): Fold {
  const shown = shownIn(notebook.result("boil-off")) ?? shownIn(notebook.result("boil-off by water balance"));
  const parts = shown ? plainSources(widthFrom(shown.value)) : [];
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
  const remarks = fitOf({ notebook })?.remarks ?? balance?.remarks ?? [];
  return {
    name: "What the log told, and what it couldn't",
    finding: [remarks[0] ?? "nothing stood out", remarks.length > 1 ? ` And ${remarks.length - 1} more.` : ""].join(""),
    body: html`<ul>${remarks.map((remark) => html`<li>${remark}</li>`)}</ul>
      ${balance ? html`<p>The hold was taken from ${balance.hold.from}.</p>` : ""}`,
  };
}

const temperature = (kelvin: number, system: System, signed = false): string => {
  const shown = formatQuantity(kelvin, system === "US" ? "°F" : "°C", {
    system,
    dimension: { temperature: 1 },
    decimals: 1,
  });
  return signed && kelvin > 0 ? `+${shown}` : shown;
};

/** Rows of a table that are shown at most: a logger's file has thousands. */
const mostRows = 200;

function residualsFold(notebook: OpenedRun, run: Run, system: System): readonly Fold[] {
  const residuals = fitOf({ notebook })?.residuals;
  if (!residuals || residuals.points.length === 0) return [];
  const entries = new Map(run.entries.map((entry) => [entry.id, entry]));
  const shown = residuals.points.slice(0, mostRows);
  return [
    {
      name: "What the fitted bath misses",
      finding: residuals.finding,
      body: html`<p>Each reading less the fitted bath as the thermometer shows it. One reading is off by about ${temperature(residuals.noise, system)} by itself, as this log shows it.</p>
        <table class="troubles"><thead><tr><th scope="col">time</th><th scope="col">read</th><th scope="col">miss</th><th scope="col">in its own standard deviations</th></tr></thead>
        <tbody>${shown.map(({ id, time, residual, standardised }) => {
          const entry = entries.get(id);
          return html`<tr><td>${entry?.clock ?? formatDuration(time)}</td><td>${entry?.quantity ? formatQuantity(entry.quantity.si, system === "US" ? "°F" : "°C", { system, dimension: entry.quantity.dimension }) : ""}</td><td>${temperature(residual, system, true)}</td><td>${standardised.toFixed(1).replace("-", "\u2212")}</td></tr>`;
        })}</tbody></table>
        ${residuals.points.length > mostRows ? html`<p>and ${residuals.points.length - mostRows} more</p>` : ""}`,
    },
  ];
}

function twoWaysFold(notebook: OpenedRun, system: System): readonly Fold[] {
  const fit = fitOf({ notebook });
  const balance = balanceOf({ notebook });
  if (!fit || !balance) return [];
  const unit = system === "US" ? "fl oz/min" : "ml/min";
  const said = ({ measured, interval95 }: Answer) =>
    formatWithSpread(evened({ ...measured, interval95 }), unit, { system }).text;
  const rate = (perSecond: number) =>
    formatQuantity(perSecond, unit, { system, dimension: { mass: 1, time: -1 }, decimals: system === "US" ? 2 : 0 });
  const { difference, together, disagree } = waysApart(fit.boilOff, balance.boilOff);
  return [
    {
      name: "Two ways of working",
      finding: disagree ? "the fitted bath and the water balance disagree" : "both ways agree",
      body: html`<p>The fitted bath says ${said(fit.boilOff)}, the water balance alone ${said(balance.boilOff)}. They lie ${rate(Math.abs(difference))} apart; their half-widths together (root of the sum of squares) are ${rate(together)}${disagree ? ", less than that" : ""}.</p>
        <p>${whichToTrust(fit, balance) ?? "Where they agree the fitted bath is used: it also counts the heat-up, the burner, the tank and the thermometer's lag."}</p>
        <p>They share one log, so agreement is no proof of either.</p>`,
    },
  ];
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
    finding: "a bath fitted to the log, and a water balance beside it",
    body: html`<p>The fitted bath is a tank of boiling brine in numbers: heat goes into steam, into warming what is poured and into the bath; its boiling point follows its ratio; the thermometer lags and may read high; a pour mixes in slowly. Heat, water, curve, thermometer, mixing and cup are moved until that bath would have given these readings, each held by what was believed of it before the log.</p>
      <p>The water balance stands beside it and knows less: Salt does not boil off. So each reading at the boil says how much water is in the tank: the salt over the ratio that boils at that temperature under this air pressure. Water at the start, plus what was poured, less what is there now, is the water gone; against time it is nearly a straight line, and its slope is the boil-off. The line allows for the cup, late and unwritten pours, gusts of the fire, a slow thermometer and readings that do not belong.</p>
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

/** The vocabulary holds more than this notebook calls. */
const called = vocabulary.functions.filter(({ name }) =>
  Object.values(oneRun.lines).some((line) => line.kind !== "given" && line.formula.includes(`${name}(`)),
);

const sourcesFold: Fold = {
  name: "Sources",
  finding: `${sources.length} published tables and formulas`,
  body: html`<table class="troubles"><thead><tr><th scope="col">for</th><th scope="col">source</th></tr></thead>
    <tbody>${sources.map(([what, source]) => html`<tr><td>${what}</td><td>${source}</td></tr>`)}</tbody></table>
    <p>The curve of a hydroxide and nitrate bath near 292 °F is taken as good to about +2/−5 °F in itself; a maker's own readings narrow what matters here, the slope, but not the offset.</p>
    <ul>${called.map(({ name, says, source }) => html`<li><b>${name}</b>: ${says}${source ? ` (${source})` : ""}</li>`)}</ul>`,
};

/** What is folded away below the log: each with its finding in one line. */
export function folds(notebook: OpenedRun, run: Run, system: System): readonly Fold[] {
  return [
    remarksFold(notebook),
    ...residualsFold(notebook, run, system),
    ...twoWaysFold(notebook, system),
    widthFold(notebook),
    howFold(notebook, system),
    sourcesFold,
  ];
}
