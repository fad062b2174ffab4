/**
 * Throws a RangeError if any number within `data` is not finite, naming where it stands; a drawing with a hole in
 * it is worse than none. Looks into arrays and plain objects, leaves functions alone.
 * @example assertFinite({ time: 3 }, "reading")
 */
export function assertFinite(data: unknown, name: string): void {
  if (typeof data === "number") {
    if (!Number.isFinite(data)) throw new RangeError(`invalid ${name}: ${data}; a finite number in SI units`);
  } else if (Array.isArray(data)) {
    data.forEach((one, index) => {
      assertFinite(one, `${name} ${index + 1}`);
    });
  } else if (data !== null && typeof data === "object") {
    for (const [key, one] of Object.entries(data)) assertFinite(one, `${name} ${key}`);
  }
}

/** Throws a RangeError for a width that no figure can have. */
export function assertWidth(width: number): void {
  if (!(Number.isFinite(width) && width >= 200 && width <= 10000)) {
    throw new RangeError(`invalid figure width: ${width}; 200 to 10,000 px`);
  }
}
