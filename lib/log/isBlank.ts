/**
 * Whether a cell says that there is nothing: empty, dashes, "n/a", "none", a ditto mark apart.
 *
 * @param cell plain text of a cell
 * @returns true for a blank
 * @example
 * isBlank("n/a") // true
 */
export function isBlank(cell: string): boolean {
  return cell === "" || /^(?:[-—–._/\\*|~]+|n\.?\/?a\.?|nil|none|null|blank)$/i.test(cell);
}
