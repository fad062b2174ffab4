/** A page is named after its notebook in the address: "#one-run". It works from a file and under any path. */
export function routeOf(name: string): string {
  return `#${name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}`;
}
