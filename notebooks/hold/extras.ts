import { html, type TemplateResult } from "lit-html";
import { itemOf, type ShopRecord } from "../../lib/record/index.ts";
import { caution } from "../page/caution.ts";
import { valueIn } from "../page/showValue.ts";
import type { Extra, ExtraInput } from "../page/tool/types.ts";
import { type BathFacts, bathFacts } from "./bathFacts.ts";
import { elsewhere, newBath, thisBath } from "./bathShown.ts";
import { type Checklist, checklists } from "./checklists.ts";
import { correctionTableShown } from "./correctionTable.ts";
import { type CardFor, feedCard } from "./feedCard.ts";
import { type ShownPlan, shownPlan } from "./shownPlan.ts";

const amount = ({ open, shownCase }: ExtraInput, line: string): number | undefined =>
  open.names().includes(line) ? valueIn(open.result(line, shownCase))?.value : undefined;

/** What a case comes from: its run, that run's setup and bath. */
function cameFrom({ casesFrom = {} }: ReturnType<ExtraInput["open"]["notebook"]>, record: ShopRecord, inCase: string) {
  let from = casesFrom[inCase];
  // A case that is supposed comes from another; a ring of them ends somewhere.
  for (let i = 0; i < 20 && from?.kind === "case"; i++) from = casesFrom[from.id];
  const run = from?.kind === "run" ? itemOf(record, "runs", from.id) : undefined;
  const setup = itemOf(record, "setups", run?.setup ?? (from?.kind === "setup" ? from.id : "") ?? "");
  const bath = itemOf(record, "baths", run?.bath ?? (from?.kind === "bath" ? from.id : "") ?? "");
  return { run, setup, bath };
}

function cardFor(input: ExtraInput): CardFor {
  const { open, record, shownCase } = input;
  const { run, setup, bath } = cameFrom(open.notebook(), record, shownCase);
  return {
    setup: setup?.name ?? shownCase,
    bath: bath?.name ?? "",
    invented: [run, setup, bath].some((one) => one?.invented === true),
    from: run
      ? `Worked from the fitted run “${run.name}”${run.date ? ` of ${run.date}` : ""}.`
      : "Worked from handbook values, no log: wide.",
  };
}

const list = ({ danger, steps, source }: Checklist): TemplateResult =>
  html`${caution(`Danger. ${danger}`)}<ol class="checklist">${steps.map((step) => html`<li>${step}</li>`)}</ol><p class="small">${source}</p>`;

/** What of a bath can be said; words where it can not. */
function factsOf(input: ExtraInput, shown: ShownPlan): BathFacts | string {
  try {
    const facts = bathFacts(shown.work, {
      dragOut: amount(input, "bath dragged out") ?? 0,
      sludge: amount(input, "wet sludge taken out") ?? 0,
      depth: amount(input, "liquid depth"),
    });
    return facts ?? "No bath is given.";
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** What stands on the page beside the lines of a planned hold. */
export function holdExtras(input: ExtraInput): readonly Extra[] {
  const { open, system, shownCase } = input;
  const shown = shownPlan(open, shownCase);
  const lists = checklists.map(
    (one): Extra => ({ id: one.id, title: one.title, folded: one.finding, body: list(one) }),
  );
  if (!shown) return lists;
  const facts = factsOf(input, shown);
  const bath: readonly Extra[] =
    typeof facts === "string"
      ? [{ id: "bath", title: "The bath", folded: facts, body: html`<p>${facts}</p>` }]
      : bathExtras(facts, input);
  return [
    {
      id: "corrections",
      title: "What to do at a reading",
      body: correctionTableShown(shown, system),
    },
    {
      id: "feed-card",
      title: "Feed card",
      body: feedCard(shown, system, cardFor(input)),
    },
    ...bath,
    ...lists,
  ];
}

function bathExtras(facts: BathFacts, { system }: ExtraInput): readonly Extra[] {
  const { weaker, leaves } = facts;
  const now = weaker
    ? "above its target as it stands: water"
    : leaves === undefined
      ? "at its target as it stands"
      : "below its target as it stands: water boils off by itself";
  return [
    { id: "bath-now", title: "The bath in the tank", folded: now, body: thisBath(facts, system) },
    {
      id: "bath-new",
      title: "A new bath for this tank and air",
      folded: "salt and water, the order and the lots",
      body: newBath(facts, system),
    },
    {
      id: "bath-elsewhere",
      title: "The same bath on another day, at another height",
      folded: "what it reads there",
      body: elsewhere(facts, system),
    },
  ];
}
