interface Share {
  readonly source: string;
  readonly share: number;
}

/** Sources of doubt as a maker reads them: which log one belongs to is said only where two logs are in it. */
export function plainSources(shares: readonly Share[]): readonly Share[] {
  const plain = ({ source }: Share) => source.replace(/, log of .*$/u, "");
  const seen = new Map<string, number>();
  for (const one of shares) seen.set(plain(one), (seen.get(plain(one)) ?? 0) + 1);
  return shares.map((one) => ((seen.get(plain(one)) ?? 0) > 1 ? one : { ...one, source: plain(one) }));
}
