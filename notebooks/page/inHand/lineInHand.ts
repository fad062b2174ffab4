import { html, type TemplateResult } from "lit-html";
import { ref } from "lit-html/directives/ref.js";
import { aboutLine } from "./aboutLine.ts";
import { facts } from "./facts.ts";
import { hasLine } from "./feedsOf.ts";
import { formulaField } from "./formulaField.ts";
import { givenField } from "./givenField.ts";
import { type Hold, holdOn, take } from "./hold.ts";
import type { InHandProps } from "./types.ts";

/** After a new name the hand stays where it was written; on another line it goes to what is written first. */
function settleFocus(root: Element | undefined, hold: Hold): void {
  if (!root || hold.wants === undefined) return;
  const { wants } = hold;
  hold.wants = undefined;
  const place = wants === "name" ? "#in-hand-name" : "input, select, button";
  queueMicrotask(() => root.querySelector<HTMLElement>(place)?.focus());
}

/** Escape where nothing is being put back closes the line; the grid does the same for its own. */
function onKey(event: KeyboardEvent, close: () => void): void {
  if (event.key !== "Escape" || event.defaultPrevented) return;
  event.preventDefault();
  event.stopPropagation();
  close();
}

/** What opens in place under a row, of the grid or of a ledger, while its line is in hand. */
export function lineInHand(props: InHandProps): TemplateResult {
  const { open, line, inCase, close } = props;
  if (!hasLine(open, line)) return html``;
  const hold = holdOn(open, line, inCase);
  const found = open.line(line);
  const goTo = (next: string): void => {
    if (!open.line(next).hidden) take(open, next, inCase).wants = "first";
    props.goTo(next);
  };
  return html`<section class="line-in-hand" aria-label="${line} in hand" @keydown=${(event: KeyboardEvent) => onKey(event, close)}
    ${ref((root) => settleFocus(root, hold))}>
    <div class="two">
      ${found.kind === "given" ? givenField(props, hold, found) : formulaField(props, hold)}
      ${facts({ ...props, goTo })}
    </div>
    ${aboutLine(props, hold)}
  </section>`;
}
