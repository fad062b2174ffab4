import { html, type TemplateResult } from "lit-html";
import type { Run } from "../../lib/log/types.ts";
import { clockNow, type HandRow } from "./handWriting.ts";
import { rowForm } from "./rowForm.ts";
import type { System } from "./showValue.ts";

export interface AtTheTankProps {
  readonly what: "reading" | "water" | undefined;
  readonly system: System;
  readonly log: Run;
  readonly take: (what: "reading" | "water" | undefined) => void;
  readonly add: (row: HandRow) => void;
}

/** The two things done at the tank, under the thumb of a phone. */
export function atTheTank({ what, system, log, take, add }: AtTheTankProps): TemplateResult {
  if (what === undefined) {
    return html`<div class="at-the-tank"><div class="two">
      <button type="button" @click=${() => take("reading")}>Write a reading</button>
      <button type="button" @click=${() => take("water")}>Poured water</button>
    </div></div>`;
  }
  const usesClock = log.entries.length === 0 || log.entries.some(({ clock }) => /[ap]m/i.test(clock ?? ""));
  return html`<div class="at-the-tank">
    ${rowForm({ id: "tank", system, what, usesClock, time: usesClock ? clockNow(new Date()) : "", add })}
    <button class="word" type="button" @click=${() => take(undefined)}>done</button>
  </div>`;
}
