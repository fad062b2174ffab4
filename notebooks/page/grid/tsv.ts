/** One line of a copied block, as it is shown. */
export interface CopiedLine {
  readonly name: string;
  readonly unit: string;
  /** By case: the number or words as shown, and the spread as shown ("±0.3"; "" for none). */
  readonly values: readonly { readonly number: string; readonly spread: string; readonly words?: boolean }[];
}

/** Texts that another program could take for a formula: they get a sign before them that makes them plain text. */
const couldBeFormula = /^[=+\-@\t\r]/u;

/** Two spreads that stand for one column: what heads the column of a case's spread. */
export const spreadHead = (inCase: string): string => (inCase === "" ? "± 95 %" : `${inCase} ± 95 %`);

/** A text as data: quoted where it holds a tab, a break or a quote, and never the beginning of a formula. */
function asData(text: string): string {
  const safe = couldBeFormula.test(text) ? `'${text}` : text;
  return /[\t\r\n"]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A number as other programs read it: a plain minus, no marks between thousands. */
function asNumber(shown: string): string {
  const plain = shown.replaceAll("\u2212", "-").replaceAll("\u00a0", " ");
  return /^-?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/u.test(plain) ? plain.replaceAll(",", "") : plain;
}

/**
 * A block as tab-separated text: a heading with the cases' names, then each line's name, unit, numbers and spreads in
 * words. Nothing in it can be taken for a formula.
 */
export function tsvOf(lines: readonly CopiedLine[], cases: readonly string[]): string {
  const head = [
    "line",
    "unit",
    ...cases.flatMap((one) => [asData(one === "" ? "value" : one), asData(spreadHead(one))]),
  ];
  const rows = lines.map(({ name, unit, values }) => [
    asData(name),
    asData(unit),
    ...values.flatMap(({ number, spread, words }) => [
      words || !/^[-\u2212]?[\d.]/u.test(number) ? asData(number) : asNumber(number),
      spread.replaceAll("\u2212", "-").replace(/^\+/u, "up "),
    ]),
  ]);
  return [head, ...rows].map((cells) => cells.join("\t")).join("\r\n");
}

/** A pasted text cut into its rows and values; quoted ones may hold tabs and breaks. Empty rows at the end are left out. */
export function cutTsv(text: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  const piece = /(?:"((?:[^"]|"")*)"|([^\t\r\n]*))(\t|\r\n|\n|\r|$)/gu;
  for (const [whole, quoted, plain = "", end] of text.matchAll(piece)) {
    if (whole === "" && row.length === 0) break;
    row.push((quoted === undefined ? plain : quoted.replaceAll('""', '"')).trim().replace(/^'(?=[=+\-@])/u, ""));
    if (end === "\t") continue;
    rows.push(row);
    row = [];
    if (end === "") break;
  }
  while (rows.length > 0 && rows.at(-1)?.every((value) => value === "")) rows.pop();
  return rows;
}
