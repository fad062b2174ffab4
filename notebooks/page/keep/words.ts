import type { Difference, ListName } from "../../../lib/record/index.ts";
import { Unreadable } from "./stored.ts";

const oneOf: Record<ListName | "settings", string> = {
  setups: "setup",
  baths: "bath",
  runs: "run",
  notebooks: "notebook",
  settings: "settings",
};

/** A number of items in words: `3 runs`, `1 setup`. */
export function count(n: number, list: ListName): string {
  return `${n} ${n === 1 ? oneOf[list] : list}`;
}

/** What another tab put in place of something written here, as one sentence. */
export function sayReplaced({ list, name, what, was, now }: Difference): string {
  const where = list === "settings" ? what : `${what} of the ${oneOf[list]} “${name}”`;
  const [stands, gone] = [now === undefined ? "Its version stands" : `“${now}” stands`, was && `“${was}”`];
  return `Another open tab changed ${where}. ${stands} in place of ${gone ?? "what was here"}.`;
}

/** Why nothing can be kept at the moment, in plain words. */
export function whyNotKept(error: unknown): string {
  if (error instanceof Unreadable) return error.message;
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") return "The browser has no room left for this page.";
  if (
    name === "SecurityError" ||
    name === "InvalidStateError" ||
    name === "ReferenceError" ||
    name === "UnknownError"
  ) {
    return "The browser does not let this page keep anything: a private window, or a setting.";
  }
  if (error instanceof RangeError) return `Something in the record cannot be written down: ${error.message}.`;
  return `The browser did not keep it: ${error instanceof Error ? error.message : String(error)}.`;
}

/** What to do while nothing is kept. */
export const saveACopy = "All goes on while this page stays open; save a copy before you close it.";

/** The local date of a moment: `2026-11-25`. */
export function localDay(instant: string): string {
  const date = new Date(instant);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** `steady-boil-shop-2026-11-25.json`, by the local date. */
export function copyName(now: string): string {
  return `steady-boil-shop-${localDay(now)}.json`;
}
