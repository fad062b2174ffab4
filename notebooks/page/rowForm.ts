import { html, nothing, type TemplateResult } from "lit-html";
import type { HandRow } from "./handWriting.ts";
import type { System } from "./showValue.ts";

export interface RowFormProps {
  readonly id: string;
  readonly system: System;
  /** A whole row; or, at the tank, the reading or the water alone. */
  readonly all?: boolean;
  readonly what?: "reading" | "water";
  readonly usesClock: boolean;
  /** What the time's blank holds to begin with. */
  readonly time?: string;
  readonly add: (row: HandRow) => void;
}

const units = {
  US: ["fl oz", "cups", "pt", "qt", "gal", "lb", "ml", "l"],
  metric: ["ml", "l", "kg", "fl oz", "cups"],
} as const;

const typed = (form: HTMLFormElement, name: string): string => {
  const field = form.elements.namedItem(name);
  return field instanceof HTMLInputElement || field instanceof HTMLSelectElement ? field.value : "";
};

/** One blank row: each blank calls up the pad that it needs. After it is written the time has the focus again. */
export function rowForm({ id, system, all, what, usesClock, time = "", add }: RowFormProps): TemplateResult {
  const degrees = system === "US" ? "°F" : "°C";
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const form = event.currentTarget;
    if (!(form instanceof HTMLFormElement)) return;
    const row = {
      time: typed(form, "time"),
      temperature: typed(form, "temperature"),
      water: typed(form, "water"),
      waterUnit: typed(form, "waterUnit"),
      remark: typed(form, "remark"),
    };
    if (row.temperature + row.water + row.remark === "") return;
    add(row);
    for (const name of ["time", "temperature", "water", "remark"]) {
      const field = form.elements.namedItem(name);
      if (field instanceof HTMLInputElement) field.value = "";
    }
    form.querySelector<HTMLInputElement>("input")?.focus();
  };
  return html`<form class="row" id=${id} @submit=${submit} novalidate>
    <label for="${id}-time">time<input class="blank" id="${id}-time" name="time" inputmode="decimal" autocomplete="off" placeholder=${usesClock ? "7:46" : "m:ss"} .value=${time} /></label>
    ${
      all || what === "reading"
        ? html`<label for="${id}-temperature">${degrees}<input class="blank" id="${id}-temperature" name="temperature" inputmode="decimal" autocomplete="off" /></label>`
        : nothing
    }
    ${
      all || what === "water"
        ? html`<label for="${id}-water">water<input class="blank" id="${id}-water" name="water" inputmode="decimal" autocomplete="off" /></label>
          <label for="${id}-unit">unit<select class="blank" id="${id}-unit" name="waterUnit">${units[system].map((unit) => html`<option>${unit}</option>`)}</select></label>`
        : nothing
    }
    ${
      all
        ? html`<label class="remark" for="${id}-remark">remark<input class="blank" id="${id}-remark" name="remark" list="${id}-remarks" autocomplete="off" /></label>
          <datalist id="${id}-remarks"><option>boils</option><option>parts in</option><option>parts out</option><option>burner to 3/4</option><option>end</option></datalist>`
        : nothing
    }
    <button class="keep" type="submit">write it down</button>
  </form>`;
}
