import { html, type TemplateResult } from "lit-html";
import type { GridProps } from "../grid/types.ts";
import { output, spreadMark, valueIn } from "../showValue.ts";
import { lineKey } from "../words.ts";
import { unitOfAmount } from "./amountText.ts";

/** Lines and cases as a plain table. */
export function plainLines(props: GridProps): TemplateResult {
  const { open, system } = props;
  const cases = open.cases().filter(({ hidden }) => !hidden);
  const one = (name: string, inCase: string) => {
    const line = open.line(name);
    const result = open.result(name, inCase);
    const value = valueIn(result);
    const unit = value ? unitOfAmount(line, value, system) : "";
    const blank =
      line.kind === "given"
        ? html`<input class="blank" aria-label=${`${name} ${inCase}`} .value=${open.text(name, inCase)} @change=${(
            event: Event,
          ) =>
            event.target instanceof HTMLInputElement &&
            open.set(name, { given: event.target.value }, inCase === "" ? undefined : inCase)} />`
        : "";
    const says =
      result.state === "stopped" ? result.says : result.state === "waits" ? `waits for ${result.for}` : result.state;
    return html`<td>${blank}${value ? html`<span data-case=${inCase}>${output(lineKey(name, line), value, unit, system)}</span>${spreadMark(value, unit, system)} ${unit}` : says}</td>`;
  };
  return html`<table class="plain-lines"><thead><tr><td></td>${cases.map(({ name }) => html`<th scope="col">${name} ${props.caseActions(name)}</th>`)}</tr></thead>
    <tbody>${open.names().map((name) => html`<tr><th scope="row">${name}</th>${cases.map((each) => one(name, each.name))}</tr>`)}</tbody></table>${props.footer}`;
}
