const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

function ordinal(n: number): string {
  const tens = n % 100;
  const ending = tens > 10 && tens < 14 ? "th" : (["th", "st", "nd", "rd"][n % 10] ?? "th");
  return `${n}${ending}`;
}

// A step that is one of the record's own field names is said bare, the maker's words are quoted.
const isOurs = /^(schema|kind|id|saved|settings|setups|baths|runs|notebooks|facts|hints|log|entries|account|history)$/;

/** A place of the record as RFC 6901 writes it: `/runs/2/facts/altitude`. */
export function pointerTo(path: readonly (string | number)[]): string {
  return path.map((step) => `/${String(step).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

/**
 * A place in a shop record in words.
 *
 * @param root - the parsed file, from which names are taken.
 * @param path - the keys and indices that lead there.
 * @returns words, "the whole file" for the empty path.
 * @example
 * whereInRecord({ runs: [{ name: "Tuesday" }] }, ["runs", 0, "facts"]); // 'runs, 1st ("Tuesday"), facts'
 */
export function whereInRecord(root: unknown, path: readonly (string | number)[]): string {
  if (path.length === 0) return "the whole file";
  let at: unknown = root;
  return path
    .map((step) => {
      at = isObject(at) && Object.hasOwn(at, step) ? at[step] : undefined;
      if (typeof step === "number") {
        const name = isObject(at) && typeof at.name === "string" ? ` ("${at.name}")` : "";
        return `${ordinal(step + 1)}${name}`;
      }
      return isOurs.test(step) ? step : `"${step}"`;
    })
    .join(", ");
}
