import { type CaseFrom, foldName, type Notebook, type OwnGiven } from "../../lib/lines/index.ts";
import { readQuantity } from "../../lib/measure/index.ts";
import { keyed, type ShopRecord } from "../../lib/record/index.ts";
import { lastFittedRun } from "../compare/start.ts";
import type { StartCases } from "../page/tool/types.ts";

/** Fire of the invented trough, which no log tells: invented, as the rest of it. */
const inventedFire = { burners: "2", jet: "0.03 in", "regulator pressure": "2 psi", "cylinder size": "20 lb" };
/** The tank, where no run of any kind is there: an open guess that the maker writes over. */
const handbookTank = {
  "tank length": "24 in",
  "tank width": "6 in",
  burners: "1",
  jet: "0.052 in",
  "regulator pressure": "2 psi",
  "heat known from": "the handbook",
};

/** Three tanks to begin with: the least that takes the part straight, along the diagonal, and longer with a burner more. */
export function startNewTank(book: Notebook, record: ShopRecord): StartCases {
  const run = lastFittedRun(record);
  const facts = new Map(Object.entries(run?.facts ?? {}).map(([name, fact]) => [foldName(name), fact]));
  const own: Record<string, OwnGiven> = {};
  for (const [name, line] of Object.entries(book.lines)) {
    const fact = facts.get(foldName(name));
    if (line.kind !== "given" || !fact || fact.text.trim() === "") continue;
    own[name] = { text: fact.text, ...(fact.known && { known: fact.known }) };
  }
  const text = (name: string): string | undefined => {
    const one = own[name];
    return typeof one === "string" ? one : one?.text;
  };
  if (!run) Object.assign(own, handbookTank);
  else if (run.invented) for (const [name, one] of Object.entries(inventedFire)) own[name] ??= one;
  const width = text("tank width");
  if (width) own["new width"] = width;
  const now = Number(text("burners") ?? 1);
  const base = "Straight";
  const shared = keyed(
    Object.entries(own).map(
      ([name, one]) => [name, { ...(typeof one === "string" ? { text: one } : one), sameAs: base }] as const,
    ),
  );
  const more = now + 1;
  const wider = widened(width);
  const cases: Readonly<Record<string, Readonly<Record<string, OwnGiven>>>> = {
    [base]: own,
    "On the diagonal": { ...shared, "way it lies": "along the floor's diagonal", "new width": wider },
    [`Longer, ${more} burners`]: { ...shared, "length to spare": "12 in", "new burners": String(more) },
  };
  const others = Object.keys(cases).filter((name) => name !== base);
  return {
    cases,
    base,
    casesFrom: keyed<CaseFrom>([
      ...(run
        ? [[base, { kind: "run", id: run.id, says: run.invented ? "invented run" : "fitted run" }] as const]
        : []),
      ...others.map((name) => [name, { kind: "case", id: base, says: "proposed" }] as const),
    ]),
  };
}

/** A diagonal pays in a wide tank only: half as wide again, in whole inches. */
function widened(width: string | undefined): string {
  const read = width === undefined ? undefined : readQuantity(width, { kind: "length", unit: "in" });
  const metres = read && "si" in read ? read.si : 7 * 0.0254;
  return `${Math.round((1.5 * metres) / 0.0254)} in`;
}
