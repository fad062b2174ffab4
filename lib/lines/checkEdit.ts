import { isValue } from "./isValue.ts";

/**
 * Refuses what is no edit, before anything is changed: other programs hand over what they like.
 * @param edit What a line is to be set to.
 * @throws Error `invalid edit: …`, and says what is allowed.
 * @example checkEdit({ given: "24 lb" }) // undefined
 */
export function checkEdit(edit: unknown): void {
  if (typeof edit === "object" && edit !== null) {
    if ("value" in edit || "unit" in edit) return;
    if ("given" in edit && (typeof edit.given === "string" || isValue(edit.given))) return;
    if ("worked" in edit && typeof edit.worked === "string") return;
    if ("fitted" in edit && typeof edit.fitted === "string") return;
  }
  throw new Error(
    `invalid edit: ${JSON.stringify(edit)?.slice(0, 80)}; { given: a text or an amount }, { worked: a formula }, { fitted: a formula }, { unit } or { value } is allowed`,
  );
}
