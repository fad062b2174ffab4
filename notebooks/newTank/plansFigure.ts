import { type TankPlanData, tankPlan, tankPlanFinding } from "../../lib/figure/index.ts";
import { cornersOf, longestPart, type Pose } from "../../lib/index.ts";
import type { BookFigureInput, BookFigureMaker } from "../page/tool/types.ts";
import { batches, ways } from "../vocabulary/sizing.ts";
import { siIn, thingIn } from "./readLine.ts";

const svgName = "http://www.w3.org/2000/svg";

/** The part as it lies: along the longest that the tank takes that way, in its middle. Undefined where it does not fit. */
function lying(
  input: BookFigureInput,
  inCase: string,
): { readonly pose?: Pose; readonly tank: TankPlanData } | undefined {
  const of = (line: string) => siIn(input.open, line, inCase);
  const [length, width, depth, freeboard, clearance] = [
    of("new length"),
    of("new width"),
    of("new depth"),
    of("freeboard"),
    of("room at the walls"),
  ];
  if (length === undefined || width === undefined || depth === undefined || clearance === undefined) return undefined;
  const tank = { length, width, depth, clearance, ...(freeboard === undefined ? {} : { freeboard }) };
  const [long, wide, thick, many] = [of("part length"), of("part width"), of("part thickness"), of("how many")];
  const way = ways.get(String(thingIn(input.open.result("way it lies", inCase))));
  if (long === undefined || wide === undefined || thick === undefined || many === undefined || !way) return { tank };
  const poses = batches({ length: long, width: wide, thickness: thick }, many, clearance).flatMap((bar) => {
    const pose = longestPart(tank, bar, clearance).poses[way];
    return pose && pose.length >= long * (1 - 1e-9) ? [{ ...pose, length: long }] : [];
  });
  return poses[0] ? { tank, pose: poses[0] } : { tank };
}

function planOf(input: BookFigureInput, inCase: string): TankPlanData | undefined {
  const found = lying(input, inCase);
  if (!found?.pose) return found?.tank;
  const { tank, pose } = found;
  const many = siIn(input.open, "how many", inCase) ?? 1;
  const way = String(thingIn(input.open.result("way it lies", inCase)));
  const lies = many > 1 ? `${way}, all ${many} with the room between them drawn as one` : way;
  const { length, width, thickness } = pose;
  return { ...tank, part: { length, width, thickness, lies, corners: cornersOf(pose) } };
}

/** The cases that are drawn: all on a desk, the one that is looked at on a phone. */
const casesOf = ({ open, narrow, shownCase }: BookFigureInput): readonly string[] =>
  open
    .cases()
    .filter(({ hidden, name }) => !hidden && (!narrow || name === shownCase))
    .map(({ name }) => name);

/** px: between tanks that stand side by side, for the name above each, and that the dimensions take beside a tank. */
const gap = 28;
const head = 26;
const beside = 90;

/** An element of a drawing. */
function made(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const element = document.createElementNS(svgName, name) as SVGElement;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

function drawn(input: BookFigureInput): SVGSVGElement | undefined {
  const { system, width, narrow } = input;
  const all = casesOf(input).flatMap((name) => {
    const plan = planOf(input, name);
    return plan ? [{ name, plan }] : [];
  });
  if (all.length === 0) return undefined;
  const longest = Math.max(...all.map(({ plan }) => plan.length));
  const columns = Math.max(1, Math.min(all.length, Math.floor(width / 340)));
  // Within the sheet's margins, nearly.
  const margin = Math.max(14, Math.round(0.075 * width));
  const column = (width - 2 * margin - gap * (columns - 1)) / columns;
  const places: SVGElement[] = [];
  let top = 0;
  for (let first = 0; first < all.length; first += columns) {
    const heights = all.slice(first, first + columns).map(({ name, plan }, place) => {
      // All to one scale, as nearly as their dimensions leave room.
      const room = Math.max(200, Math.min(column, beside + ((column - beside) * plan.length) / longest));
      const one = tankPlan(plan, { document, width: Math.floor(room), system, narrow });
      const left = margin + place * (column + gap);
      const title = made("text", { x: left + 2, y: top + 16, "font-size": 16, "font-weight": 600 });
      title.textContent = name;
      one.setAttribute("x", String(left));
      one.setAttribute("y", String(top + head));
      one.removeAttribute("role");
      one.removeAttribute("aria-label");
      places.push(title, one);
      return Number(one.getAttribute("height"));
    });
    top += head + Math.max(...heights) + gap;
  }
  const height = Math.ceil(top - gap);
  const root = made("svg", {
    xmlns: svgName,
    class: "figure",
    "data-figure": "the tanks to scale",
    role: "img",
    "aria-label": all.map(({ name, plan }) => `${name}: ${tankPlanFinding(plan, { system })}`).join(" "),
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    "font-family": '"National Park Variable", "National Park", sans-serif',
    fill: "var(--ink)",
  }) as SVGSVGElement;
  root.append(...places);
  root.style.setProperty("display", "block");
  return root;
}

/** Which cases do not take the part as it is to lie. */
const tooSmall = (input: BookFigureInput): readonly string[] =>
  casesOf(input).filter((name) => {
    const found = lying(input, name);
    return found !== undefined && found.pose === undefined;
  });

export const plans: BookFigureMaker = {
  title: "The tanks, to scale",
  caption: (input) => {
    const none = tooSmall(input);
    const not = none.length === 0 ? "" : ` No part is drawn in ${none.join(" and ")}: it does not fit so.`;
    return `From above and from the side, inside measures.${not}`;
  },
  draw: drawn,
};
