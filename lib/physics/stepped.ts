/** Value of the last step that begins at or below x: how the sources give their ranges of validity. */
export function stepped(steps: readonly (readonly [from: number, value: number])[], x: number): number {
  let value = Number.NaN;
  for (const [from, here] of steps) if (x >= from) value = here;
  return value;
}
