/** A page is named after its notebook in the address: "#one-run". It works from a file and under any path. */
export function routeOf(name: string): string {
  return `#${name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
}

/** The place that an address means, with what stands behind it ("#my-question/n1": the id of a notebook). */
export function placeIn(
  hash: string,
  names: readonly string[],
  otherwise: string,
): { readonly name: string; readonly id: string | undefined } {
  const [place, id] = hash.split("/");
  const name = names.find((one) => routeOf(one) === place) ?? otherwise;
  try {
    return { name, id: id === undefined ? undefined : decodeURIComponent(id) };
  } catch {
    return { name, id: undefined };
  }
}
