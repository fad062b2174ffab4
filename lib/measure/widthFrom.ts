import type { Value } from "./types.ts";

/**
 * What a value's width comes from: each source's share of the variance, largest first; the shares sum to 1. Empty for
 * an exact value.
 *
 * @example
 * widthFrom(measuredValue(10, 0.1, { mass: 1 }, "scale")) // [{ source: "scale", share: 1 }]
 */
export function widthFrom(value: Value): readonly { readonly source: string; readonly share: number }[] {
  const largest = Math.max(0, ...[...value.components.values()].map(Math.abs));
  if (largest === 0) return [];
  const parts = [...value.components].map(([source, component]) => ({ source, variance: (component / largest) ** 2 }));
  const all = parts.reduce((total, { variance }) => total + variance, 0);
  return parts
    .filter(({ variance }) => variance > 0)
    .map(({ source, variance }) => ({ source, share: variance / all }))
    .sort((a, b) => b.share - a.share || a.source.localeCompare(b.source, "en"));
}
