import { changeSettings, type ShopRecord } from "../../lib/record/index.ts";
import { browserStorage } from "./keep/browserStorage.ts";
import { openShopIn } from "./keep/shop.ts";
import type { Shop } from "./keep/types.ts";
import { download as downloadBlob } from "./savePicture.ts";

export type { Earlier } from "./keep/earlier.ts";
export type { How } from "./keep/takeCopy.ts";
export type { News, NotKept, Shop, Taken } from "./keep/types.ts";

/** Opens the shop record that this browser keeps, or the demo on a first visit. Never fails: see `shop.problem`. */
export function openShop(options: { readonly demo?: ShopRecord }): Promise<Shop> {
  return openShopIn({ ...options, storage: browserStorage() });
}

/** Hands a text to the browser to be kept under a name; `type` is the media type of the file. */
export function download(name: string, text: string, type = "application/json"): void {
  downloadBlob(new Blob([text], { type }), name);
}

/**
 * Saves a copy of the shop record as one file, `steady-boil-shop-2026-11-25.json`, and notes when in
 * `settings.copied`: browsers drop what they keep when room is short, and some after weeks without a visit.
 */
export function saveCopy(shop: Shop): void {
  shop.change((record, { now }) => changeSettings(record, { copied: now }, now), undefined);
  const { name, text } = shop.copy();
  download(name, text);
}
