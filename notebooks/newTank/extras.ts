import { html, nothing, type TemplateResult } from "lit-html";
import { askFirst, type Caution, madeOf, neverOf, type WorkTank } from "../../lib/index.ts";
import { isValue } from "../page/shownIn.ts";
import { outputAs, spreadMark, unitOfAmount, written } from "../page/showValue.ts";
import type { Extra, ExtraInput } from "../page/tool/types.ts";
import { lineKey } from "../page/words.ts";
import { partIn, thingIn } from "./readLine.ts";

/** A line's amount in a case with its ± and unit; words where there is none. */
function amount({ open, system, busy }: ExtraInput, name: string, inCase: string): unknown {
  const thing = thingIn(open.result(name, inCase));
  if (!isValue(thing)) return html`<span class="faint">not known</span>`;
  const line = open.line(name);
  const unit = unitOfAmount(line, thing, system);
  const shown = written(thing, unit, system);
  const plain = line.kind !== "given" && line.plain;
  return html`<span class="kept">${outputAs(lineKey(name, line), thing, shown.number, "", busy)}${plain ? nothing : spreadMark(thing, unit, system)} <span class="unit">${shown.unit}</span></span>`;
}

const casesOf = ({ open }: ExtraInput): readonly string[] =>
  open
    .cases()
    .filter(({ hidden }) => !hidden)
    .map(({ name }) => name);

const baseOf = ({ open, shownCase }: ExtraInput): string => open.cases().find(({ base }) => base)?.name ?? shownCase;

/** Beside the answer: what plain proportion would have said of each tank, and how far off that is. */
function proportion(input: ExtraInput): readonly Extra[] {
  const rows = casesOf(input).filter((name) =>
    isValue(thingIn(input.open.result("by plain proportion to length", name))),
  );
  if (rows.length === 0) return [];
  const over = (line: string, name: string) => {
    const thing = thingIn(input.open.result(line, name));
    if (!isValue(thing)) return amount(input, line, name);
    const below = thing.value < 0;
    const turned = below
      ? {
          ...thing,
          value: -thing.value,
          ...(thing.interval95 ? { interval95: [-thing.interval95[1], -thing.interval95[0]] as const } : {}),
        }
      : thing;
    const shown = written(turned, "%", input.system);
    return html`<span class="kept">${outputAs(lineKey(line, input.open.line(line)), thing, shown.number, "", input.busy)}${spreadMark(turned, "%", input.system)} <span class="unit">%</span></span> too ${below ? "little" : "much"}`;
  };
  return [
    {
      id: "proportion",
      title: "How wrong plain proportion would be",
      stands: "under the answer",
      body: html`<p class="small">Twice the tank or twice the gas is not twice the boil-off: walls lose, and a flame gives less to a floor that it shares.</p>
        <dl class="said-of">${rows.map(
          (name) => html`<dt>${name}</dt>
          <dd>Boils off ${amount(input, "boil-off", name)}. In proportion to length it would be ${amount(input, "by plain proportion to length", name)}, ${over("proportion to length is over by", name)}; to gas ${amount(input, "by plain proportion to gas", name)}, ${over("proportion to gas is over by", name)}.</dd>`,
        )}</dl>`,
    },
  ];
}

const inch = 0.0254;
const size = ({ system }: ExtraInput, metres: number): string =>
  system === "US" ? `${Math.ceil(metres / inch - 1e-6)} in` : `${Math.ceil(100 * metres - 1e-6)} cm`;

const uses: Readonly<Record<WorkTank["name"], string>> = {
  clean: "Hot alkaline cleaner, as its maker says.",
  rinse: "Cold, running over; before the bath and after it.",
  "boiling rinse": "Plain water at a brisk boil, after the bath.",
  oil: "Away from every flame.",
};

/** The tanks beside it, in the order of the work. */
function others(input: ExtraInput): readonly Extra[] {
  const base = baseOf(input);
  const tanks = partIn(input.open, "other tanks for it", "tanks", base) as readonly WorkTank[] | undefined;
  if (!tanks) return [];
  const rinseTakes = html` From cold it takes ${amount(input, "boiling rinse heat-up", base)} and ${amount(input, "gas for the boiling rinse", base)} of gas, on ${amount(input, "rinse burner rate", base)}. Off the bath's own cylinder that adds to its draw.`;
  const known = isValue(thingIn(input.open.result("boiling rinse heat-up", base)));
  return [
    {
      id: "other-tanks",
      title: "The other tanks for this work",
      body: html`<p class="small">Each takes the work straight and under: what goes in slantwise traps air and caustic. Inside measures, wide and deep enough for a gloved hand.</p>
        <dl class="said-of">${tanks.map(
          (tank) => html`<dt>${tank.name}</dt>
          <dd>${size(input, tank.length)} long, ${size(input, tank.width)} wide, ${size(input, tank.depth)} deep and ${size(input, tank.freeboard)} of wall above. ${uses[tank.name]}${tank.name === "boiling rinse" && known ? rinseTakes : nothing}</dd>`,
        )}</dl>`,
    },
  ];
}

const list = (all: readonly Caution[]): TemplateResult =>
  html`<ul>${all.map(({ what, source }) => html`<li>${what} <span class="faint">(${source})</span></li>`)}</ul>`;

/** What the tank must never be made of, what it is made of, and where somebody else decides. */
const cautions: readonly Extra[] = [
  {
    id: "who-decides",
    title: "Where somebody licensed, or the local code, decides",
    body: html`<div class="caution danger"><p><strong>Danger.</strong> This tool decides none of these.</p>${list(askFirst)}</div>`,
  },
  {
    id: "never-of",
    title: "What the tank must never be made of",
    body: html`<div class="caution danger"><p><strong>Danger.</strong> Hot caustic eats these, or they burn or shatter.</p>${list(neverOf)}</div>
      <h3>What it is made of, and where the sources end</h3>${list(madeOf)}`,
  },
];

/** Where the sources end. */
function ends(): readonly Extra[] {
  const says = [
    "Cylinders: what one gives off without end is published for 100 lb alone; for smaller ones it is reckoned from that, to a half.",
    "Long ribbon and pipe burners: nothing published was found; how a flame shares a long floor is a judgement that held on invented tanks, which is no proof.",
    "Plate: no source says how thick a tank for hot caustic must be.",
    "Wind: a day windier than any that was logged is not in the spread.",
  ];
  return [
    {
      id: "where-sources-end",
      title: "Where the sources end",
      stands: "under the lines",
      folded: "Small cylinders, long burners, plate, wind",
      body: html`<ul>${says.map((one) => html`<li>${one}</li>`)}</ul>`,
    },
  ];
}

/** What the notebook adds to its answer, figures and lines. */
export const newTankExtras = (input: ExtraInput): readonly Extra[] => [
  ...proportion(input),
  ...others(input),
  ...cautions,
  ...ends(),
];
