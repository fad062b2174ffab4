/** The value itself where it is a finite number in [low, high], otherwise the package's one kind of range error. */
export function needNumber(what: string, value: number, low: number, high: number, unit: string, where = ""): number {
  if (value >= low && value <= high) return value;
  const limits = `${plain(low)} to ${plain(high)} ${unit} ${where}`.trimEnd();
  throw new RangeError(`invalid ${what}: ${plain(value)} ${unit}; ${limits}`);
}

/** A number as an error message shows it: grouped by thousands, at most four decimals. */
export function plain(value: number): string {
  return typeof value === "number" && Number.isFinite(value)
    ? value.toLocaleString("en-US", { maximumFractionDigits: 4 })
    : String(value);
}
