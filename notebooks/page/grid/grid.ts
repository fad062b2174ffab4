import { html, nothing, type TemplateResult } from "lit-html";
import { guard } from "lit-html/directives/guard.js";
import { ref } from "lit-html/directives/ref.js";
import { repeat } from "lit-html/directives/repeat.js";
import { foldName, type Trial } from "../../../lib/lines/index.ts";
import { feedsOf } from "../inHand/feedsOf.ts";
import { pageWidth } from "../pageWidth.ts";
import { byTrialMeans } from "../trials/shown.ts";
import { afterDraw } from "./afterDraw.ts";
import { onCopy, onPaste } from "./clipboard.ts";
import { handOf } from "./hand.ts";
import { gridHead } from "./head.ts";
import { onKeyDown, onKeyUp } from "./keys.ts";
import { ownIn } from "./ownWords.ts";
import { onClick, onFocusIn, onFocusOut, onPointerDown } from "./pointer.ts";
import { gridRow } from "./row.ts";
import { type CaseColumn, columnsOf, type GridRow, groupsOf, type RowGroup } from "./rows.ts";
import { namedWhereItScrolls } from "./scrolls.ts";
import type { GridProps } from "./types.ts";

/** px: below it one case is seen at a time. */
const phone = 640;
/** px for the intervals side by side, by the width of the page. */
const besideWidth = (page: number): number => (page <= phone ? page - 32 : page <= 1100 ? 96 : 150);
/** More lines than this are laid out only where they are seen. */
const many = 200;
/** More cases than this do not stand beside one another on paper. */
const manyCases = 3;

interface Drawn {
  readonly cases: readonly CaseColumn[];
  readonly caseKey: string;
  readonly shownCase: string;
  readonly width: number;
  readonly feeds: ReadonlySet<string>;
  readonly fed: ReadonlySet<string>;
  /** By line, in the order of the cases. */
  readonly tried: ReadonlyMap<string, readonly (Trial | undefined)[]>;
}

/** A row is drawn again only when something of it changed. */
function rowDrawn(row: GridRow, props: GridProps, drawn: Drawn): unknown {
  const { open, system, inHand } = props;
  const { cases, caseKey, shownCase, width, feeds, fed } = drawn;
  const tried = drawn.tried.get(row.name) ?? [];
  const { name, line, results } = row;
  const edit = handOf(open).edit;
  const mine = edit?.line === name ? edit : undefined;
  const isInHand = inHand !== undefined && foldName(inHand.line) === foldName(name);
  const relation = isInHand ? "in hand" : feeds.has(name) ? "feeds" : fed.has(name) ? "fed" : "";
  const given = line.kind === "given";
  const own = given ? ownIn(open, name, cases) : cases.map(() => false);
  const texts = given ? cases.map((one) => open.text(name, one.name)) : [];
  const holds = [line, caseKey, shownCase, system, width, relation, mine, ...results, ...tried, ...own, ...texts];
  return guard(holds, () => gridRow({ row, cases, system, shownCase, own, texts, tried, relation, edit: mine, width }));
}

const panelOf = (row: GridRow, { inHand, panel }: GridProps): TemplateResult | typeof nothing =>
  inHand && foldName(inHand.line) === foldName(row.name)
    ? html`<div role="row" class="panel"><div role="gridcell">${panel(inHand.line, inHand.inCase)}</div></div>`
    : nothing;

const help = html`<p class="small faint by-key">Arrows move; Enter or typing changes a given, Enter opens a worked line; Alt with up or down steps a given by its last digit; Shift with arrows marks, copy and paste take tables.</p>
  <p class="small faint by-touch">Touch a given to change it, or a line's name to open it.</p>`;

function triedIn(groups: readonly RowGroup[], cases: readonly CaseColumn[], { open, trials }: GridProps) {
  const ofRow = ({ name, line, results }: GridRow) =>
    results.map((result, at) => trials?.of({ open, line: name, inCase: cases[at]?.name }, line, result));
  return new Map(groups.flatMap(({ rows }) => rows.map((row) => [row.name, ofRow(row)] as const)));
}

/** The lines of a notebook in their cases: a table to read, to walk through by keys and to write in. */
export function grid(props: GridProps): TemplateResult {
  const { open, inHand, typing } = props;
  const cases = columnsOf(open);
  const groups = groupsOf(props, cases);
  const shownCase =
    (cases.find(({ name }) => name === props.shownCase) ?? cases.find(({ base }) => base) ?? cases[0])?.name ?? "";
  const related = inHand ? feedsOf(open, inHand.line) : { feeds: [], fed: [] };
  const drawn: Drawn = {
    cases,
    caseKey: JSON.stringify(cases),
    shownCase,
    width: besideWidth(pageWidth()),
    feeds: new Set(related.feeds),
    fed: new Set(related.fed),
    tried: triedIn(groups, cases, props),
  };
  const working = groups.some(({ rows }) =>
    rows.some(({ results }) => results.some(({ state }) => state === "working")),
  );
  const looks = [
    "grid",
    cases.length > 1 ? "" : "alone",
    cases.length > manyCases ? "many-cases" : "",
    groups.reduce((sum, { rows }) => sum + rows.length, 0) > many ? "long" : "",
  ].join(" ");
  return html`<div class="grid-of-lines">
    ${cases.length > 1 ? html`<p class="small faint">Second line of a number: the case less its base. ± is 95 % throughout.</p>` : html`<p class="small faint">± is 95 % throughout.</p>`}
    <div class="scroll" ${ref(namedWhereItScrolls)}><div role="grid" class=${looks} aria-label="Lines and cases" aria-multiselectable="true" aria-colcount=${cases.length + (cases.length > 1 ? 4 : 3)}
      style="--cases:${cases.length}" aria-busy=${typing.waiting || working ? "true" : "false"}
      ${ref((root) => afterDraw(root, props))}
      @keydown=${(event: KeyboardEvent) => onKeyDown(event, props)}
      @keyup=${(event: KeyboardEvent) => onKeyUp(event, props)}
      @pointerdown=${onPointerDown}
      @click=${(event: MouseEvent) => onClick(event, props)}
      @focusin=${(event: FocusEvent) => onFocusIn(event, props)}
      @focusout=${(event: FocusEvent) => onFocusOut(event, props)}
      @copy=${(event: ClipboardEvent) => onCopy(event, props)}
      @paste=${(event: ClipboardEvent) => onPaste(event, props)}>
      <div role="rowgroup">${gridHead({ cases, shownCase, caseActions: props.caseActions })}</div>
      ${repeat(
        groups,
        ({ name, rows }) => `${name}\n${rows[0]?.name}`,
        ({ name, rows }) => html`<div role="rowgroup">
          ${name === "" ? nothing : html`<div role="row" class="group"><div role="rowheader">${name}</div></div>`}
          ${repeat(
            rows,
            (row) => row.name,
            (row) => html`${rowDrawn(row, props, drawn)}${panelOf(row, props)}`,
          )}
        </div>`,
      )}
    </div></div>
    ${byTrialMeans([...drawn.tried.values()].some((ofLine) => ofLine.some((trial) => trial !== undefined)))}
    ${help}
    <div class="under">${props.footer ?? nothing}</div>
  </div>`;
}
