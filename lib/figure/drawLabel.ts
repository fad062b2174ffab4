import type { PlacedLabel } from "./placeLabels.ts";
import { linePath, svg } from "./svg.ts";

/**
 * A label that found its room, as text with its leader.
 * @example group.append(drawLabel(document, placed))
 */
export function drawLabel(document: Document, { label, spot, box }: PlacedLabel): SVGElement {
  const leading = label.leading ?? label.size * 1.25;
  const words = spot.lines ?? label.lines;
  const lines = words.map((line, index) =>
    svg(
      document,
      "text",
      {
        x: spot.x,
        // The baseline lies about 0.82 of the size below the top of the letters' box.
        y: box.y + label.size * 0.82 + leading * index,
        "text-anchor": spot.anchor,
        "font-size": label.size,
        "font-weight": line.weight ?? 400,
        fill: line.colour ?? "var(--ink)",
      },
      [line.text],
    ),
  );
  const leader = spot.leader
    ? [svg(document, "path", { d: linePath(spot.leader), stroke: "var(--ink)", "stroke-width": 0.9, fill: "none" })]
    : [];
  return svg(document, "g", { "data-label": words.map((line) => line.text).join(" ") }, [...leader, ...lines]);
}
