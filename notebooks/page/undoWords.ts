import { html, nothing, type TemplateResult } from "lit-html";
import { download, type Shop } from "./keep.ts";

/** Undo and redo, saying in words what they would bring back. */
export function undoWords(shop: Shop): TemplateResult {
  return html`<span class="undo small">
    ${shop.undoName ? html`<button class="word" type="button" @click=${() => shop.undo()}>Undo: ${shop.undoName}</button>` : nothing}
    ${shop.redoName ? html`<button class="word" type="button" @click=${() => shop.redo()}>Redo: ${shop.redoName}</button>` : nothing}
  </span>`;
}

const hourMinute = new Intl.DateTimeFormat("en-US", { hour: "2-digit", minute: "2-digit", hour12: false });

/** When the record was kept, or why it was not and what to do. */
export function keptWords(shop: Shop, saveCopy: () => void): TemplateResult | string {
  const { unreadable } = shop;
  if (unreadable !== undefined) {
    return html`<b>not kept:</b> ${shop.problem?.because}
      <button class="word" type="button" @click=${() => download("steady-boil-shop-as-it-lay.json", unreadable)}>save it as it lies there</button>
      <button class="word" type="button" @click=${() => void shop.startAfresh()}>put it aside and start afresh</button>`;
  }
  if (shop.problem) {
    return html`<b>not kept:</b> ${shop.problem.because} <button class="word" type="button" @click=${saveCopy}>save a copy</button>`;
  }
  return shop.keptAt ? `kept ${hourMinute.format(new Date(shop.keptAt))}` : "nothing kept yet";
}
