import { html, type TemplateResult } from "lit-html";
import type { Lines } from "../../lib/lines/index.ts";
import { interval95, subtract, winsOver } from "../../lib/measure/index.ts";
import type { Value } from "../../lib/measure/types.ts";
import { valueIn } from "../page/showValue.ts";
import type { Extra } from "../page/tool/types.ts";

/** Lines in which one case can beat another, and which way is better. */
export const contests: readonly { readonly line: string; readonly better: "most" | "least"; readonly says: string }[] =
  [
    { line: "minutes to the boil", better: "least", says: "boils sooner" },
    { line: "drift left alone", better: "least", says: "drifts less left alone" },
    { line: "a pour may be late by", better: "most", says: "lets a pour be later" },
    { line: "make-up water", better: "least", says: "needs less feed" },
    { line: "dip when parts go in", better: "least", says: "dips less" },
    { line: "time to come back", better: "least", says: "comes back sooner" },
    { line: "heat to spare", better: "most", says: "is surer to boil" },
    { line: "gas for a firing", better: "least", says: "burns less gas" },
    { line: "draw against its limit", better: "least", says: "draws less on its cylinder" },
    { line: "freeboard", better: "most", says: "has more freeboard" },
  ];

/** A probability as it can be said: never surer than what it was worked from. */
export function inWords(probability: number): string {
  if (probability > 0.99) return "over 99 %";
  if (probability < 0.01) return "under 1 %";
  return `${Math.round(100 * probability)} %`;
}

/** Amounts that differ by less than this share of themselves, and surely so, are not worth a contest. */
const hardly = 0.01;

/** The probability that a case beats the base in a line; "hardly apart" where no more than a hair parts them for sure. */
export function beats(a: Value, base: Value, better: "most" | "least"): string {
  const apart = subtract(a, base);
  const [low, high] = interval95(apart);
  const size = (Math.abs(a.value) + Math.abs(base.value)) / 2;
  if (Math.max(Math.abs(low), Math.abs(high)) <= hardly * size) return "hardly apart";
  return inWords(winsOver(a, base, better));
}

/** A table of how sure each case beats the base in what a maker compares. */
export function winsTable(open: Lines): TemplateResult | undefined {
  const cases = open.cases().filter(({ hidden }) => !hidden);
  const base = cases.find((one) => one.base);
  const others = cases.filter((one) => !one.base);
  if (!base || others.length === 0) return undefined;
  const names = new Set(open.names());
  const value = (line: string, name: string) => valueIn(open.result(line, name));
  const rows = contests.filter(({ line }) => names.has(line));
  return html`<p>Out of 100 such pairs, in how many the case is truly better than ${base.name}. What both share (the log, the salts' curve, the losses' law) cancels.</p>
    <div class="wide-table" tabindex="0" role="region" aria-label="how sure a case beats the base"><table class="troubles wins"><thead><tr><th scope="col">it</th>${others.map(({ name }) => html`<th scope="col">${name}</th>`)}</tr></thead>
      <tbody>${rows.map(
        ({ line, better, says }) =>
          html`<tr><th scope="row">${says}</th>${others.map(({ name }) => {
            const [one, that] = [value(line, name), value(line, base.name)];
            return html`<td data-wins=${line} data-case=${name}>${one && that ? beats(one, that, better) : "no number yet"}</td>`;
          })}</tr>`,
      )}</tbody></table></div>`;
}

/** What the comparison adds to its page. */
export function compareExtras({ open }: { readonly open: Lines }): readonly Extra[] {
  const body = winsTable(open);
  return body ? [{ id: "wins", title: "How sure one beats the base", body }] : [];
}
