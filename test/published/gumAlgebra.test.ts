import { expect, test } from "vitest";
import { algebraOf } from "../../lib/lines/algebra.ts";
import { namesOf } from "../../lib/lines/index.ts";
import { parseFormula } from "../../lib/lines/parseFormula.ts";
import { correlated, type Value } from "../../lib/measure/index.ts";

/** A formula by the quick way, with the lines it names in their order. */
function quickly(formula: string, lines: Readonly<Record<string, Value>>): readonly [value: number, u: number] {
  const names = Object.keys(lines);
  const parsed = parseFormula(formula, namesOf(names));
  if (!("tree" in parsed)) throw new Error(`not read: ${formula}`);
  const work = algebraOf(parsed.tree, new Map(names.map((name, i) => [name, i])));
  const made = work?.(Object.values(lines).map((value) => ({ value })));
  if (!made) throw new Error(`not worked: ${formula}`);
  return [made.value, Math.hypot(...made.components.values())];
}

// JCGM 100:2008, H.2, tables H.2 and H.3: V = 4.9990 V (0.0032), I = 19.661 mA (0.0095), r(V, I) = -0.36; Z = V/I is
// 254.26 Ω (0.236). The signs of both slopes count: with either turned about its uncertainty would be 0.17.
test("GUM H.2: Z = V/I by the quick way of plain formulas, from the means as printed", () => {
  const [uV, uI] = [0.0032, 0.0095e-3];
  const both = -0.36 * uV * uI;
  const [V, I] = correlated(
    [4.999, 19.661e-3],
    [
      [uV ** 2, both],
      [both, uI ** 2],
    ],
    "H.2",
  );
  if (!V || !I) throw new Error("two values expected");
  for (const formula of ["V / I", "1 / (I / V)", "V * (1 / I)"]) {
    const [Z, u] = quickly(formula, { V, I });
    expect(Z, formula).toBeCloseTo(254.26, 2);
    expect(Math.abs(u - 0.236), formula).toBeLessThan(0.001);
  }
});
