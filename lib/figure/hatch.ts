import { svg } from "./svg.ts";
import type { Box } from "./types.ts";

/** How a cut piece is lined, as a shop drawing lines materials; each differs from the others in shape. */
export type Hatch = "rising" | "water" | "section" | "steel" | "liquid" | "open" | "fire" | "lost fire";

/**
 * A piece of stock in its outline with its lining. Lines are cut by reckoning, not by a clip or a pattern: those need
 * ids, and ids clash when several figures stand on one page. Box in px.
 * @example group.append(hatched(document, "section", { x: 0, y: 0, width: 40, height: 20 }))
 */
export function hatched(document: Document, hatch: Hatch, box: Box): SVGElement {
  const fills: Partial<Record<Hatch, string>> = {
    water: "var(--water)",
    steel: "var(--ground)",
    fire: "var(--fire)",
    rising: "var(--ground)",
    section: "var(--ground)",
    liquid: "var(--ground)",
  };
  const line = (x1: number, y1: number, x2: number, y2: number, more: Readonly<Record<string, string | number>>) =>
    svg(document, "line", { x1, y1, x2, y2, ...more });
  const outline = svg(document, "rect", {
    ...box,
    fill: fills[hatch] ?? "none",
    stroke: "var(--ink)",
    "stroke-width": 1,
    ...(hatch === "open" || hatch === "lost fire" ? { "stroke-dasharray": "6 3" } : {}),
  });
  const right = box.x + box.width;
  const foot = box.y + box.height;
  const lines: SVGElement[] = [];
  if (hatch === "rising") {
    for (let x = box.x + 5; x < right - 2; x += 8)
      lines.push(
        line(x, foot - 2, x, box.y + 3, {
          stroke: "var(--water)",
          "stroke-width": 1.6,
          "stroke-dasharray": "7 4",
          "stroke-dashoffset": (Math.round((x - box.x) / 8) % 2) * 5,
        }),
      );
  }
  if (hatch === "liquid") {
    for (let y = box.y + 6, row = 0; y < foot - 2; y += 6, row += 1)
      lines.push(
        line(box.x + 3, y, Math.max(box.x + 3, right - 3), y, {
          stroke: "var(--ink)",
          "stroke-width": 0.9,
          "stroke-dasharray": "10 5",
          "stroke-dashoffset": (row % 2) * 7,
        }),
      );
  }
  if (hatch === "steel") {
    // Steel is lined in pairs, falling, so that it is not taken for the walls beside it.
    for (let from = box.x - box.height + 3; from < right; from += 8)
      for (const shift of [0, 2.5]) {
        const start = Math.max(box.x, from + shift);
        const end = Math.min(right, from + shift + box.height);
        if (end > start)
          lines.push(
            line(start, box.y + start - from - shift, end, box.y + end - from - shift, {
              stroke: "var(--ink)",
              "stroke-width": 0.9,
            }),
          );
      }
  }
  if (hatch === "section" || hatch === "lost fire") {
    const lost = hatch === "lost fire";
    for (let sum = box.x + box.y + 5; sum < right + foot; sum += lost ? 9 : 6) {
      const [from, to] = [Math.max(box.x, sum - foot), Math.min(right, sum - box.y)];
      if (to > from)
        lines.push(
          line(from, sum - from, to, sum - to, {
            stroke: lost ? "var(--fire)" : "var(--ink)",
            "stroke-width": lost ? 1.2 : 0.8,
          }),
        );
    }
  }
  return svg(document, "g", { "data-hatch": hatch }, [outline, ...lines]);
}
